import assert from "node:assert/strict";
import test from "node:test";
import { Engine, until, visit } from "../../testdata/judges/dom.js";

const figure = (/** @type {string} */ shown, /** @type {string} */ seen) => `<figure class="plate moves" id="figure-bike-sinks-1" data-figure="bike-sinks">
<div class="move"><label for="m">Sink both ends</label><input type="range" id="m" min="0" max="50" step="1" value="0"><button type="button" data-stop="Stop">Play</button><p class="seen">${seen}</p></div>
<div class="shown">${shown}</div></figure>`;
visit(figure("<svg><title>states</title></svg>", ""), "#inseam=830");
Object.assign(globalThis, { requestAnimationFrame: (/** @type {() => void} */ f) => setTimeout(f) });
const engine = await import("./engine.js");
const owner = await import("./owner.js");
const { one } = await import("./dom.js");
owner.open();
const { moves } = await import("./move.js");
const slider = one(document, "[type=range]", HTMLInputElement), button = one(document, ".move button");
const before = location.hash;
moves();
engine.begin();
const worker = Engine.ready();

test("the states are drawn with the reader's numbers, as long as nobody moves them", () => {
  assert.equal(worker.question.figure, "bike-sinks");
  assert.equal("at" in worker.question, false);
  assert.match(worker.question.record, /inseam=830/);
  worker.answer({ html: figure("<svg><title>own states</title></svg>", "") });
  assert.match(one(document, ".shown").innerHTML, /own states/);
});

test("the slider asks for its moment, and says what is seen there", () => {
  slider.value = "20";
  slider.dispatchEvent(new Event("input", { bubbles: true }));
  assert.equal(worker.question.at, 20);
  worker.answer({ html: figure("<svg><title>at 20</title></svg>", "20 %: lower") });
  assert.match(one(document, ".shown").innerHTML, /at 20/);
  assert.equal(one(document, ".seen").textContent, "20 %: lower");
  assert.equal(slider.ariaValueText, "20 %: lower");
});

test("it plays on from there, one moment after the other, until somebody stops it", async () => {
  button.click();
  assert.equal(button.textContent, "Stop");
  const asked = worker.asked.length;
  worker.answer({ html: figure("<svg></svg>", "") });
  await until(() => worker.asked.length > asked);
  assert.ok(worker.question.at > 20 && worker.question.at < 50, `at ${worker.question.at}`);
  button.click();
  assert.equal(button.textContent, "Play");
  const last = worker.asked.length;
  worker.answer({ html: figure("<svg></svg>", "") });
  await new Promise((again) => { setTimeout(again, 30); });
  assert.equal(worker.asked.length, last);
});

test("at its end it stops, and plays from the beginning the next time", async () => {
  slider.value = "50";
  slider.dispatchEvent(new Event("input", { bubbles: true }));
  worker.answer({ html: figure("<svg></svg>", "") });
  button.click();
  assert.equal(worker.question.at, 0);
  const { now } = performance;
  performance.now = () => now.call(performance) + 60000;
  const asked = worker.asked.length;
  worker.answer({ html: figure("<svg></svg>", "") });
  await until(() => worker.asked.length > asked);
  performance.now = now;
  assert.equal(worker.question.at, 50);
  assert.equal(button.textContent, "Play");
  worker.answer({ html: figure("<svg></svg>", "") });
});

test("what moves is no number of the reader's", () => {
  assert.equal(location.hash, before);
});

test("an engine that has no such figure leaves what stands there, and stops", () => {
  one(document, ".shown").innerHTML = "<svg><title>kept</title></svg>";
  button.click();
  worker.answer({ html: "" });
  assert.match(one(document, ".shown").innerHTML, /kept/);
  assert.equal(button.textContent, "Play");
});
