import assert from "node:assert/strict";
import test from "node:test";
import { Engine, visit } from "../../testdata/judges/dom.js";

/** @type {((seen: { target: Element, isIntersecting: boolean }[]) => void) | undefined} */
let seen;
/** @type {(() => void)[]} */
const rests = [];

visit('<figure class="plate" id="figure-inseam-1"></figure><figure class="plate" id="figure-stature-2"></figure><figure class="plate" id="figure-reach-3"></figure>', "#inseam=830");
Object.assign(globalThis, {
  IntersectionObserver: class {
    /** @param {(seen: { target: Element, isIntersecting: boolean }[]) => void} call */
    constructor(call) { seen = call; }
    observe() {}
  },
  requestIdleCallback: (/** @type {() => void} */ call) => rests.push(call),
});
const owner = await import("./owner.js");
owner.open();
const { redraw } = await import("./plates.js");

/** @param {string} id */
const place = (id) => /** @type {Element} */ (document.getElementById(id));

test("a figure in view is drawn first, with the reader's numbers", () => {
  seen?.([{ target: place("figure-stature-2"), isIntersecting: true }, { target: place("figure-inseam-1"), isIntersecting: false }]);
  redraw();
  const worker = Engine.ready();
  assert.deepEqual([worker.question.figure, worker.question.place, worker.question.record], ["stature", "figure-stature-2", "inseam=830"]);
  worker.answer({ html: '<figure class="plate" id="figure-stature-2">1780 mm</figure>' });
  assert.equal(place("figure-stature-2").textContent, "1780 mm");
  assert.equal(worker.asked.length, 1, "nothing else is asked until the page rests");
});

test("the others follow when the page rests, and at once when they come into view", () => {
  const worker = /** @type {Engine} */ (Engine.all.at(-1));
  rests.shift()?.();
  assert.equal(worker.question.figure, "inseam");
  seen?.([{ target: place("figure-reach-3"), isIntersecting: true }]);
  worker.answer({ html: '<figure class="plate" id="figure-inseam-1">830 mm</figure>' });
  assert.equal(worker.question.figure, "reach");
});

test("a figure that the engine has not stays as it is", () => {
  const worker = /** @type {Engine} */ (Engine.all.at(-1));
  worker.answer({ html: "" });
  assert.equal(place("figure-reach-3").outerHTML, '<figure class="plate" id="figure-reach-3"></figure>');
});
