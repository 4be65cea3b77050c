import assert from "node:assert/strict";
import test from "node:test";
import { contrast, parts, readable } from "./contrast.js";

// WCAG 2.2: black on white is 21 to 1. #767676 is the lightest grey that passes AA on
// white, at 4.54, and #777777 the first that fails, at 4.48 (WebAIM, from memory).
test("contrast is that of WCAG", () => {
  assert.equal(Math.round(contrast("#000", "#ffffff") * 100) / 100, 21);
  assert.equal(Math.round(contrast("#767676", "#fff") * 100) / 100, 4.54);
  assert.equal(Math.round(contrast("rgb(119, 119, 119)", "#fff") * 100) / 100, 4.48);
  assert.equal(readable("#767676", "#fff"), true);
  assert.equal(readable("#777777", "#fff"), false);
});

test("what is no plain colour is never readable", () => {
  for (const text of ["", "red; x", "url(x)", "#12345", "rgb(1 2)", "rgba(0, 0, 0, 0.1)"]) {
    assert.equal(parts(text), undefined);
    assert.equal(readable(text, "#fff"), false);
  }
});
