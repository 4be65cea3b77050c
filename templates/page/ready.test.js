import assert from "node:assert/strict";
import test from "node:test";
import { visit } from "../../testdata/judges/dom.js";

visit(`<form><fieldset disabled><legend>Your numbers</legend>
<input type="text" name="inseam" value="" placeholder="like 830"><input type="range" value="830"><input type="text" name="crank" value="">
<input type="radio" name="pedals" value="clip"><input type="radio" name="pedals" value="" checked>
</fieldset><p class="offline">Worked example.</p></form>`);
const owner = await import("./owner.js");
const record = await import("./record.js");
const { ready } = await import("./ready.js");
const { one } = await import("./dom.js");

const form = one(document, "form", HTMLFormElement), before = form.innerHTML;
const fields = () => one(form, "fieldset", HTMLFieldSetElement);

test("without a number the form can be typed into; what the browser put back goes", () => {
  owner.open();
  record.put([["stature", "1800"]]);
  const inseam = one(form, "[name=inseam]", HTMLInputElement);
  inseam.value = "790";
  assert.equal(ready(form), true);
  assert.equal(fields().disabled, false);
  assert.deepEqual([inseam.value, inseam.placeholder], ["", "like 830"]);
  assert.deepEqual([...form.querySelectorAll("[name=pedals]")].map((x) => /** @type {HTMLInputElement} */ (x).checked), [false, true]);
  assert.equal(one(form, "[type=range]", HTMLInputElement).disabled, true);
  assert.match(one(document, ".offline").textContent, /^You can type already/);
});

/**
 * @param {string} key
 * @param {string} value
 */
const waits = (key, value) => {
  form.innerHTML = before;
  record.put([[key, value]]);
  ready(form);
  assert.equal(form.innerHTML, before, key);
  record.put([[key, ""]]);
};

test("with a number of its own, or in another unit, the form waits for the engine", () => {
  waits("inseam", "840");
  waits("crank.unit", "in");
  waits("u", "in");
});
