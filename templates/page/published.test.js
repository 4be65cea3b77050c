import assert from "node:assert/strict";
import test from "node:test";
import { Engine, type, visit } from "../../testdata/judges/dom.js";

const strip = '<div class="strip">735 mm</div>', cost = '<span class="cost" hidden></span>', reading = '<p class="r">735 mm</p>';
visit(`<section class="bench" id="b" data-calculator="saddle-height" data-place="b"><form>
<p class="play offer" hidden><button type="button">Play</button></p><p class="play end" hidden>Playing.<button type="button">End</button></p>
<fieldset disabled><legend>Your numbers</legend><input name="inseam" value="" placeholder="like 830"><input type="range" min="700" max="900" value="830">${cost}</fieldset><p class="waiting" hidden></p><p class="problem" id="b-p" hidden></p>
<p class="unstarted" hidden>It did not start.<button type="button">Again</button></p><p class="stopped" hidden>It stopped.<button type="button">Again</button></p></form>
<div class="drawing">for a phone</div>${strip}<div class="answer">${reading}</div></section>`);
const engine = await import("./engine.js");
const owner = await import("./owner.js");
const { Bench } = await import("./bench.js");
const { one } = await import("./dom.js");

owner.open();
const root = one(document, ".bench");
new Bench(root);
engine.begin();
const worker = Engine.ready();
const line = one(root, ".r"), field = one(root, "[name=inseam]", HTMLInputElement);

test("the form and the example's answer stay as they were published, but for the drawing", () => {
  assert.equal(worker.question.whole, false);
  worker.answer({ drawn: '<div class="drawing">for this width</div>', parts: [strip, cost, reading].join("\0"), example: true, record: "" });
  assert.equal(one(root, ".r"), line);
  assert.equal(one(root, ".drawing").textContent, "for this width");
  assert.equal(one(root, "[name=inseam]"), field);
  assert.equal(one(root, "[type=range]", HTMLInputElement).disabled, false);
});

test("and is changed where it stands by the first number", () => {
  type(field, "840");
  worker.answer({ drawn: '<div class="drawing">for this width</div>', parts: [strip, cost, reading].join("\0").replaceAll("735", "744"), record: "\0inseam\x00840" });
  assert.equal(line.textContent, "744 mm");
  assert.equal(line.isConnected, true);
  assert.equal(one(root, ".strip").textContent, "744 mm");
});
