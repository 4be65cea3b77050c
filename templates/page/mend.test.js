import assert from "node:assert/strict";
import test from "node:test";
import { visit } from "../../testdata/judges/dom.js";

visit('<form><input name="inseam" value="83"><p></p></form>');
const { one } = await import("./dom.js");
const { mend, retype } = await import("./mend.js");

const field = one(document, "[name=inseam]", HTMLInputElement), line = one(document, "p");

test("what was likely meant is a button that types it", () => {
  /** @type {string[]} */
  const told = [];
  for (const kind of ["input", "change"]) one(document, "form").addEventListener(kind, ({ type }) => told.push(type));
  line.textContent = "Did you mean 83 cm?";
  mend(line, { message: "", suggest: "83 cm" }, (text) => retype(field, text));
  const button = one(line, "button");
  assert.equal(button.textContent, "Use 83 cm");
  button.click();
  assert.equal(field.value, "83 cm");
  assert.deepEqual(told, ["input", "change"]);
  assert.equal(document.activeElement, field);
});

test("without a suggestion there is no button, and without a field nothing happens", () => {
  line.textContent = "That is no number.";
  mend(line, { message: "" }, () => assert.fail());
  assert.equal(line.querySelector("button"), null);
  retype(undefined, "83 cm");
});
