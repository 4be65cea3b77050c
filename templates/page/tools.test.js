import assert from "node:assert/strict";
import test from "node:test";
import { visit } from "../../testdata/judges/dom.js";

visit('<div data-tools data-setup="sheet.html"><label>Lengths in <select><option>mm</option><option>cm</option><option value="in">inches</option></select></label><label class="keeping"><input type="checkbox"> Keep</label><a class="whose" hidden></a></div>', "#inseam=830&u=cm");
const owner = await import("./owner.js");
const record = await import("./record.js");
const { one } = await import("./dom.js");
const { fill } = await import("./tools.js");

owner.open();
const place = one(document, "[data-tools]");
fill(place);
const units = one(place, "select", HTMLSelectElement), kept = one(place, "[type=checkbox]", HTMLInputElement);
const heard = () => document.querySelector(".unseen")?.textContent;

test("the units are the record's, both ways", () => {
  assert.equal(units.value, "cm");
  units.value = "in";
  units.dispatchEvent(new Event("change"));
  assert.equal(record.units(), "in");
  record.put([["u", "mm"]]);
  assert.equal(units.value, "mm");
});

test("keeping is the reader's to begin and to end", () => {
  kept.checked = true;
  kept.dispatchEvent(new Event("change"));
  assert.match(localStorage.getItem("plumbline") ?? "", /inseam=830/);
  assert.equal(heard(), "Your numbers stay in this browser until you forget them.");
  kept.checked = false;
  kept.dispatchEvent(new Event("change"));
  assert.equal(localStorage.getItem("plumbline"), null);
});

test("whose bike it is stands there once it has a name", () => {
  const whose = one(place, ".whose", HTMLAnchorElement);
  assert.equal(whose.hidden, true);
  record.put([["bike", "Trail bike"], ["name", "Ada"]]);
  assert.deepEqual([whose.hidden, whose.textContent, whose.getAttribute("href")], [false, "Trail bike, Ada", "sheet.html"]);
  whose.dispatchEvent(new Event("click"));
  assert.match(whose.getAttribute("href") ?? "", /^sheet\.html#.*bike=Trail/);
  assert.equal(whose.classList.contains("several"), false);
  owner.addBike("Hardtail");
  assert.deepEqual([whose.classList.contains("several"), whose.textContent], [true, "Hardtail, Ada"]);
});
