import assert from "node:assert/strict";
import test from "node:test";
import { Engine, until, visit } from "../../testdata/judges/dom.js";

/** @type {(list: { isIntersecting: boolean }[]) => void} */
let scrolled = () => {};
visit('<div class="symptoms"><a class="spot" href="#hands"></a><section id="hands"><details></details></section><a class="spot" href="#back"></a><details><p id="back"></p></details><input type="checkbox" data-symptom="numb-hands"><input type="checkbox" data-symptom="sore-sit-bones"><section class="together" hidden></section><p class="ticked" hidden><a href="#together"></a></p></div>', "#saddle-tilt=-1");
Object.assign(globalThis, {
  IntersectionObserver: class {
    /** @param {typeof scrolled} hear */
    constructor(hear) {
      scrolled = hear;
    }

    observe() {}
  },
});
const engine = await import("./engine.js");
const owner = await import("./owner.js");
const record = await import("./record.js");
const { all, one } = await import("./dom.js");
owner.open();
await import("./symptoms.js");
engine.begin();
const worker = Engine.ready();
const boxes = all(document, "[data-symptom]", HTMLInputElement);
const together = one(document, ".together"), bar = one(document, ".ticked");

test("what is ticked is asked together, and the bar says how many", async () => {
  boxes[0].click();
  await until(() => worker.question.key === "numb-hands");
  worker.answer({ html: "<p>One alone.</p>" });
  await until(() => together.textContent === "One alone.");
  boxes[1].click();
  await until(() => worker.question.key === "numb-hands sore-sit-bones");
  assert.equal(worker.question.desk, "felt");
  assert.equal(worker.question.record, "saddle-tilt=-1", "the engine decides with what the bike has");
  assert.equal(bar.hidden, false);
  assert.equal(bar.textContent, "2 ticked: what to try first");
  worker.answer({ html: '<button type="button" data-use="saddle-tilt" data-value="0">Use this</button>' });
  await until(() => together.querySelector("[data-use]"));
  assert.equal(together.hidden, false);
});

test("the bar is of no use beside the answer", () => {
  scrolled([{ isIntersecting: true }]);
  assert.equal(bar.hidden, true);
  scrolled([{ isIntersecting: false }]);
  assert.equal(bar.hidden, false);
});

test("the first change goes on the sheet, and the bike's own value stays beside it", () => {
  one(together, "[data-use]").click();
  assert.equal(record.at("saddle-tilt"), "0");
  assert.equal(record.at("saddle-tilt.was"), "-1");
});

test("a place on the drawing opens what is felt there", () => {
  one(document, ".spot").click();
  assert.equal(one(document, "#hands details", HTMLDetailsElement).open, true);
  one(document, ".spot[href='#back']").click();
  assert.equal(one(document, "details:has(#back)", HTMLDetailsElement).open, true);
});

test("nothing ticked, nothing on show", async () => {
  boxes[0].click();
  boxes[1].click();
  await until(() => together.hidden);
  assert.equal(bar.hidden, true);
});
