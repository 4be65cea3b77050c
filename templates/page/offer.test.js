import assert from "node:assert/strict";
import test from "node:test";
import { until, visit } from "../../testdata/judges/dom.js";

visit('<form><div class="field"><input id="b-elbow" name="elbow" data-photo="elbow-read"></div></form>');
const { one } = await import("./dom.js");
const { offer } = await import("./offer.js");

test("the button stands in the field's box and opens the reader, which fails in words", async () => {
  offer(one(document, "input", HTMLInputElement));
  const button = one(document, ".field > #b-elbow-photo");
  assert.equal(button.textContent, "Read it off a photo");
  button.click(); // there is no ResizeObserver here, so the reader does not load
  await until(() => button.textContent === "That did not load. Try again");
});
