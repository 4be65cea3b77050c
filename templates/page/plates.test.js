import assert from "node:assert/strict";
import test from "node:test";
import { Engine, visit } from "../../testdata/judges/dom.js";

visit('<figure class="plate" id="figure-inseam-1"></figure><figure class="plate" id="figure-stature-2"></figure>', "#inseam=830");
const owner = await import("./owner.js");
owner.open();
const { redraw } = await import("./plates.js");

test("figures are asked for one after the other, with the reader's numbers", () => {
  redraw();
  const worker = Engine.ready();
  assert.deepEqual([worker.question.figure, worker.question.place, worker.question.record], ["inseam", "figure-inseam-1", "inseam=830"]);
  worker.answer({ html: '<figure class="plate" id="figure-inseam-1">830 mm</figure>' });
  assert.equal(document.getElementById("figure-inseam-1")?.textContent, "830 mm");
  assert.equal(worker.question.figure, "stature");
});

test("a figure that the engine has not stays as it is", () => {
  const worker = /** @type {Engine} */ (Engine.all.at(-1));
  worker.answer({ html: "" });
  assert.equal(document.getElementById("figure-stature-2")?.outerHTML, '<figure class="plate" id="figure-stature-2"></figure>');
});
