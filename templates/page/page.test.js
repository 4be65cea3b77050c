import assert from "node:assert/strict";
import test from "node:test";
import { Engine, until, visit } from "../../testdata/judges/dom.js";

visit(`<div data-tools><label>Lengths in <select><option>mm</option></select></label><label class="keeping"><input type="checkbox"> Keep</label><a class="whose" hidden></a></div>
<figure class="plate" id="figure-measure-bike-1">1</figure><figure class="plate" id="figure-saddle-height-2">2</figure>
<figure class="plate" id="figure-whole-rider-3">3</figure>`);
await import("./page.js");
const owner = await import("./owner.js");
const record = await import("./record.js");

test("a page without numbers asks for nothing", async () => {
  await new Promise((after) => {
    setTimeout(after, 500);
  });
  assert.equal(Engine.all.length, 0);
});

test("figures are drawn anew, one after the other, once there is any number", async () => {
  record.put([["some-length", "1650"]]);
  await until(() => Engine.all.length);
  const worker = Engine.ready();
  const { figure, place, record: sent, units } = worker.question;
  assert.deepEqual([figure, place, sent, units], ["measure-bike", "figure-measure-bike-1", "some-length=1650", "mm"]);
  worker.answer({ html: '<figure class="plate" id="figure-measure-bike-1">new</figure>' });
  assert.equal(document.getElementById("figure-measure-bike-1")?.textContent, "new");
  worker.answer({}); // a calculator's figure stays at its example
  assert.equal(document.getElementById("figure-saddle-height-2")?.textContent, "2");
  assert.equal(worker.question.figure, "whole-rider");
  worker.answer({ html: '<figure class="plate" id="figure-whole-rider-3">new</figure>' });
  assert.equal(worker.asked.length, 3);
});

test("and as they were when the numbers are gone", async () => {
  const worker = Engine.ready();
  owner.forget();
  await until(() => worker.asked.length === 4);
  assert.equal(worker.question.record, "");
});
