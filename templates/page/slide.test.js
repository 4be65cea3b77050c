import assert from "node:assert/strict";
import test from "node:test";
import { type, visit } from "../../testdata/judges/dom.js";

visit('<form><div><input name="x" value="30"><input type="range" min="0" max="100" value="0"></div></form>');
const { one } = await import("./dom.js");
const { slide } = await import("./slide.js");

const form = one(document, "form", HTMLFormElement);
const field = one(form, "[name=x]", HTMLInputElement), bar = one(form, "[type=range]", HTMLInputElement);
/** @type {string[]} */
const told = [];
form.oninput = ({ target }) => told.push(/** @type {HTMLInputElement} */ (target).name);
slide(form);

test("the slider starts where the field is and follows it", () => {
  assert.equal(bar.value, "30");
  type(field, "42,5");
  assert.equal(Number(bar.value), 42.5);
  type(field, "?");
  assert.equal(Number(bar.value), 42.5, "what is no number moves nothing");
});

test("moving it types into the field, and the form hears of the field alone", () => {
  told.length = 0;
  type(bar, "55");
  assert.equal(field.value, "55");
  assert.deepEqual(told, ["x"]);
});
