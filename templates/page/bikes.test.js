import assert from "node:assert/strict";
import test from "node:test";
import { until, visit } from "../../testdata/judges/dom.js";

const list = {
  parts: "stem-length", labels: { reach: "Reach", "stem-length": "Stem" },
  bikes: [{
    name: "Otter Hardtail", chart: "name;reach;stack\nSmall;425;622\nLarge;475;640",
    sizes: [{ name: "Small", mine: "reach=425&stack=622&stem-length=35" }, { name: "Large", mine: "reach=475&stack=640&stem-length=40" }],
  }],
};
const bench = (/** @type {string} */ name, /** @type {string} */ fields) => `<section class="bench" id="${name}-1" data-calculator="${name}"><div class="drawing"></div><div class="strip"></div><div class="cost"></div>
<form><p class="play end" hidden><button type="button"></button></p><fieldset><legend></legend>${fields}</fieldset><p class="play offer" hidden><button type="button"></button></p><p class="waiting" hidden></p></form><div class="answer"></div></section>`;
visit(`${bench("size-match", '<textarea name="sizes"></textarea>')}${bench("size-trial", '<input name="reach"><input name="stack"><input name="new-reach"><input name="new-stack">')}${bench("saddle-height", '<input name="inseam">')}
<section class="bike"><table><tr data-key="reach" data-units="mm"><th>Reach <span>mm</span></th></tr><tr data-key="reach" data-units="cm" hidden><th>Reach <span>cm</span></th></tr><tr data-key="head-angle"><th>Head angle</th></tr></table><div class="mine" data-parts="stem-length" hidden><button data-mine="reach=475&amp;stack=640" data-said="Otter, Large">x</button></div><p class="taken" hidden></p></section>`, "#reach=480");
document.documentElement.dataset.bikes = "bikes.json";
globalThis.fetch = async () => new Response(JSON.stringify(list));
const owner = await import("./owner.js");
const record = await import("./record.js");
const { Bench } = await import("./bench.js");
const { all, one } = await import("./dom.js");
const { bikes } = await import("./bikes.js");

owner.open();
const benches = all(document, ".bench").map((root) => new Bench(root));
await bikes(benches);
const selects = all(document, ".ours select", HTMLSelectElement);
/** @param {HTMLSelectElement} select @param {string} value */
const choose = (select, value) => {
  select.value = value;
  select.dispatchEvent(new Event("change", { bubbles: true }));
};

test("a form that asks for a bike's numbers offers the bikes, another does not", () => {
  assert.deepEqual(selects.map(({ id }) => id), ["size-match-1-ours-0", "size-trial-1-ours-0", "size-trial-1-ours-1"]);
  assert.deepEqual(all(selects[0], "option").map(({ textContent }) => textContent), ["none", "Otter Hardtail"]);
  assert.deepEqual(all(selects[1], "option").map(({ textContent }) => textContent), ["none", "Otter Hardtail, Small", "Otter Hardtail, Large"]);
});

test("the form itself hears nothing of it", () => {
  const [{ touched }] = benches;
  choose(selects[0], "0");
  assert.equal(record.at("sizes"), list.bikes[0].chart);
  assert.equal(touched.size, 0);
});

test("a size goes into the record, but for what its rider wrote down, and can be taken back", async () => {
  choose(selects[1], "0");
  assert.deepEqual([record.at("reach"), record.at("stack"), record.at("stem-length")], ["480", "622", "35"]);
  assert.equal(record.at("from stack"), "stack.size-match");
  assert.equal(record.at("from stem-length"), undefined, "a part is what the bike has, wherever it came from");
  const line = one(one(document, "#size-trial-1"), ".taken");
  assert.match(line.textContent ?? "", /^Otter Hardtail, Small\. .*Kept as you have them: Reach\./);
  const undo = all(line, "button").at(-1);
  undo?.click();
  await until(() => record.at("stack") === undefined);
  assert.equal(record.at("reach"), "480");
});

test("the size in question goes into the fields for another bike", () => {
  choose(selects[2], "1");
  assert.deepEqual([record.at("new-reach"), record.at("new-stack"), record.at("new-stem-length")], ["475", "640", undefined]);
  one(one(document, "#size-trial-1"), ".taken button").click();
  assert.equal(record.at("new-reach"), undefined);
});

test("on the bikes' own page a size is taken over with a button", () => {
  const group = one(document, ".bike .mine");
  assert.equal(group.hidden, false);
  one(group, "button").click();
  assert.equal(record.at("stack"), "640");
  assert.match(one(document, ".bike .taken").textContent ?? "", /^Otter, Large\. .*Kept as you have them: Reach\./);
});

test("a chart is shown in the reader's units", () => {
  const shown = () => all(document, ".bike tr").map(({ hidden }) => !hidden);
  assert.deepEqual(shown(), [true, false, true]);
  record.put([["u", "cm"]]);
  assert.deepEqual(shown(), [false, true, true]);
  record.put([["u", "mm"]]);
  assert.deepEqual(shown(), [true, false, true]);
});
