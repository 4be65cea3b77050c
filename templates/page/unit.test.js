import assert from "node:assert/strict";
import test from "node:test";
import { visit } from "../../testdata/judges/dom.js";

visit('<form><button type="button" data-unit-of="inseam" data-next="cm"><span>mm</span></button></form>', "#inseam=830&mass.unit=lb");
const owner = await import("./owner.js");
const record = await import("./record.js");
const { one } = await import("./dom.js");
const { chosen, follow, kept, units } = await import("./unit.js");

owner.open();
units(one(document, "form"));

test("a tap changes the field's unit and no value", () => {
  one(document, "span").click();
  assert.equal(record.at("inseam"), "830");
  assert.equal(record.at("inseam.unit"), "cm");
  assert.equal(chosen(), "mass.unit=lb&inseam.unit=cm");
});

test("a new value keeps the unit of its field", () => {
  record.put([["inseam", "840"]]);
  assert.equal(record.at("inseam.unit"), "cm");
});

test("the tap leaves the focus where it is", () => {
  const event = new Event("pointerdown", { bubbles: true, cancelable: true });
  one(document, "span").dispatchEvent(event);
  assert.equal(event.defaultPrevented, true);
});

test("all fields follow the guide's unit again", () => {
  follow("in");
  assert.equal(record.units(), "in");
  assert.equal(chosen(), "");
  assert.equal(record.at("inseam"), "840");
});

test("a number that was typed before the unit changed keeps its own", () => {
  assert.equal(kept("83", "cm", "mm"), "83 cm");
  assert.equal(kept("83", "cm", "cm"), "83");
  assert.equal(kept("83 in", "cm", "mm"), "83 in");
  assert.equal(kept("83", undefined, undefined), "83");
});
