import assert from "node:assert/strict";
import test from "node:test";
import { visit } from "../../testdata/judges/dom.js";

visit("<main><h1>Saddle height</h1></main>", "#name=Kim&inseam=790");
localStorage.setItem("plumbline", JSON.stringify({ version: 1, record: "name=Rowan&inseam=830" }));
const owner = await import("./owner.js");
const record = await import("./record.js");
owner.open();
const { show } = await import("./news.js");
const { all, one } = await import("./dom.js");

const place = one(document, ".news");
const buttons = () => all(place, "button").map((button) => button.textContent);
/** @param {string} text */
const press = (text) => all(place, "button").find((button) => button.textContent === text)?.click();

test("somebody else's numbers are named, with three ways on", () => {
  show();
  assert.equal(place.hidden, false);
  assert.equal(place.querySelector("p")?.textContent, "This page shows Kim’s numbers, from a link. Nothing of them is kept here yet.");
  assert.deepEqual(buttons(), ["Keep both", "Replace mine", "Back to mine"]);
});

test("going back leaves nothing to say", () => {
  press("Back to mine");
  assert.equal(record.at("name"), "Rowan");
  assert.equal(place.hidden, true);
});

test("what was done is said, and undone", () => {
  owner.forget();
  assert.deepEqual([place.querySelector("span")?.textContent, buttons()], ["Your numbers are forgotten.", ["Undo", "Close"]]);
  press("Undo");
  assert.equal(record.at("inseam"), "830");
});

test("what can be undone is put away until there is something else to undo", () => {
  owner.forget();
  press("Close");
  assert.equal(place.hidden, true);
  record.put([["inseam", "700"]]);
  assert.equal(place.hidden, true);
  owner.undo();
  assert.deepEqual([place.hidden, buttons()], [false, ["Undo", "Close"]]);
});

test("a fitter's settings name whom they are from, and are planned where they fit", () => {
  history.pushState(null, "", "#ask.from=Larch+Hollow&name=Rowan&inseam=830&saddle-height=736&from=saddle-height.fitting");
  dispatchEvent(new Event("hashchange"));
  assert.equal(place.querySelector("p")?.textContent, "This page shows Rowan’s numbers, with settings from Larch Hollow as Next. Nothing of them is kept here yet.");
  assert.deepEqual(buttons(), ["Plan these settings on my bike", "Keep both", "Back to mine"]);
  press("Plan these settings on my bike");
  assert.equal(record.at("saddle-height"), "736");
  assert.deepEqual(buttons(), ["Undo", "Close"]);
  press("Undo");
  press("Back to mine");
});

test("where there are no own numbers nothing can be replaced", () => {
  owner.forget();
  history.pushState(null, "", "#inseam=700&ask.back=yes");
  dispatchEvent(new Event("hashchange"));
  assert.match(place.querySelector("p")?.textContent ?? "", /^This page shows numbers that are not yours on this device, sent for a fitting/);
  assert.deepEqual(buttons(), ["Keep them", "Leave them"]);
  press("Keep them");
  assert.equal(owner.undoable(), "The numbers are yours now.", "nothing was there that both could be");
  assert.equal(record.at("inseam"), "700");
  assert.equal(owner.apart(), false);
});
