import assert from "node:assert/strict";
import test from "node:test";
import { visit } from "../../testdata/judges/dom.js";

visit(`<form><fieldset disabled><legend>The example’s numbers</legend>
<input type="text" name="inseam" value="830"><input type="range" value="830"><input type="text" name="crank" value="">
<input type="radio" name="pedals" value="clip" checked><input type="radio" name="pedals" value="">
<select name="kind"><option value="" >Not sure</option><option value="a" selected>A</option></select>
<textarea name="rows">a;b</textarea></fieldset><p class="offline">Worked example.</p></form>`);
const owner = await import("./owner.js");
const record = await import("./record.js");
const { ready } = await import("./ready.js");
const { one } = await import("./dom.js");

const form = one(document, "form", HTMLFormElement), before = form.innerHTML;
const fields = () => one(form, "fieldset", HTMLFieldSetElement);

test("without a number the form can be typed into, with the example as a hint", () => {
  owner.open();
  record.put([["stature", "1800"]]);
  ready(form);
  assert.equal(fields().disabled, false);
  const inseam = one(form, "[name=inseam]", HTMLInputElement);
  assert.deepEqual([inseam.value, inseam.placeholder], ["", "like 830"]);
  assert.equal(one(form, "[name=crank]", HTMLInputElement).placeholder, "");
  assert.equal(one(form, "[name=rows]", HTMLTextAreaElement).placeholder, "like a;b");
  assert.equal(one(form, "[name=kind]", HTMLSelectElement).value, "");
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
