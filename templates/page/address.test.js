import assert from "node:assert/strict";
import test from "node:test";
import { visit } from "../../testdata/judges/dom.js";

visit('<h2 id="how">How</h2><a id="in" href="../feet/cleat.html#where">Feet</a><a id="own" href="#how">How</a><a id="out" href="mailto:a@b.example">Mail</a>', "#name=Rowan&inseam=830&at=how");
let seen = "";
document.getElementById("how")?.addEventListener("shown", () => {
  seen += "how";
});
HTMLElement.prototype.scrollIntoView = function show() {
  this.dispatchEvent(new Event("shown"));
};
const { address, addressed, carry, collect } = await import("./address.js");
/** @param {string} id */
const href = (id) => document.getElementById(id)?.getAttribute("href");

test("an address is a record, and where on the page to go", () => {
  assert.deepEqual([...addressed() ?? []], [["name", ["name", "Rowan"]], ["inseam", ["inseam", "830"]]]);
  assert.equal(seen, "how");
});

test("the guide's own links carry a record along, and give it back", () => {
  collect();
  carry("inseam=831");
  assert.deepEqual(["in", "own", "out"].map(href), ["../feet/cleat.html#inseam=831&at=where", "#how", "mailto:a@b.example"]);
  carry("");
  assert.equal(href("in"), "../feet/cleat.html#where");
});

test("a record is written before the place, and the place alone where there is none", () => {
  address("inseam=832");
  assert.equal(location.hash, "#inseam=832&at=how");
  address("");
  assert.equal(location.hash, "#how");
  assert.equal(addressed(), undefined, "an anchor is no record");
});
