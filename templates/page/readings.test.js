import assert from "node:assert/strict";
import test from "node:test";
import { Engine, type, until, visit } from "../../testdata/judges/dom.js";

visit('<div data-reading="inseam" data-label="Inside leg" data-unit="mm" data-keyboard="decimal"></div><div data-reading="mass" data-label="Body mass" data-unit="kg" data-keyboard="decimal"></div><div class="reading row" data-reading="reach" data-label="Reach" data-unit="mm" data-keyboard="decimal"></div>', "#inseam=830%3B834&mass=70&mass.unit=lb");
const engine = await import("./engine.js");
const owner = await import("./owner.js");
const record = await import("./record.js");
const { all, one } = await import("./dom.js");
const { readings } = await import("./readings.js");

owner.open();
readings();
engine.begin();
const worker = Engine.ready();
const place = one(document, "[data-reading=inseam]");
const fields = () => all(place, "input", HTMLInputElement);
const unit = () => one(place, "[data-unit-of]");

test("the readings of the record stand in their own fields, in the field's unit", () => {
  assert.deepEqual(fields().map(({ value }) => value), ["830", "834"]);
  // 70 kg are 70/0.45359237 = 154.32 lb.
  assert.equal(one(document, "[data-reading=mass] input", HTMLInputElement).value, "154.32");
});

test("a tap reads them in another unit and changes nothing", () => {
  unit().click();
  assert.deepEqual(fields().map(({ value }) => value), ["83", "83.4"]);
  unit().click();
  assert.deepEqual(fields().map(({ value }) => value), ["32 11/16", "32 13/16"]);
  assert.equal(fields()[0].inputMode, "text");
  assert.equal(record.at("inseam"), "830;834");
  unit().click();
});

test("a third reading is added, and all are looked at and kept", async () => {
  all(place, "button").find(({ textContent }) => textContent === "Add a reading")?.click();
  type(fields()[2], "829");
  await until(() => worker.asked.length > 0);
  assert.deepEqual([worker.question.desk, worker.question.key, worker.question.text, worker.question.bare], ["check", "inseam", "830;834;829", "mm"]);
  worker.answer({ record: "\0inseam\x00830;834;829" });
  assert.equal(record.at("inseam"), "830;834;829");
  assert.equal(all(place, "button").find(({ textContent }) => textContent === "Add a reading")?.hidden, true);
});

test("what was likely meant is one tap, and fills the fields", async () => {
  const before = worker.asked.length;
  type(fields()[2], "83");
  await until(() => worker.asked.length > before);
  worker.answer({ record: "", problems: [{ input: "inseam", message: "Did you mean 83 cm?", suggest: "830;834;83 cm" }] });
  assert.equal(fields()[2].getAttribute("aria-invalid"), "true");
  assert.equal(record.at("inseam"), "830;834;829", "what cannot be read does not touch the record");
  assert.equal(record.drafted("reading inseam"), "830;834;83");
  unit().click();
  assert.equal(fields()[2].value, "83 mm", "it stays when the units change");
  worker.answer({ record: "", problems: [{ input: "inseam", message: "Did you mean 83 cm?", suggest: "830;834;83 cm" }] });
  one(place, ".mend").click();
  assert.equal(fields()[2].value, "83 cm");
});

test("a row has one field and no button for another", () => {
  const row = one(document, "[data-reading=reach]");
  assert.equal(all(row, "input").length, 1);
  assert.equal(all(row, "button").some(({ textContent }) => textContent === "Add a reading"), false);
});

test("a change that is to be made stays Next, and what is measured is Now", async () => {
  worker.answer({ record: "\0inseam\x00830;834;830" }); // what the last test left
  const row = one(document, "[data-reading=reach]");
  record.use("reach", "475", []);
  record.put([], undefined, [["reach.was", "460"]]);
  const field = one(row, "input", HTMLInputElement);
  assert.equal(field.value, "460");
  const before = worker.asked.length;
  type(field, "462");
  await until(() => worker.asked.length > before);
  worker.answer({ record: "\0reach\x00462" });
  assert.deepEqual([record.at("reach"), record.at("reach.was")], ["475", "462"]);
});

test("what was typed before the engine was asked waits for the reader", () => {
  const field = one(document, "[data-reading=reach] input", HTMLInputElement);
  type(field, "47");
  assert.equal(record.drafted("reading reach"), "47");
  type(field, "");
  assert.equal(record.drafted("reading reach"), "");
});
