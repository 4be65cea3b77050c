import assert from "node:assert/strict";
import test from "node:test";
import { fromText, sixteenths } from "./fraction.js";

test("sixteenths are written as a rule of inches is read", () => {
  // Counted on a rule: 0.6875 is eleven sixteenths, 0.5 a half.
  for (const [x, text] of /** @type {[number, string][]} */ ([[32.75, "32 3/4"], [32.6875, "32 11/16"], [0.5, "1/2"], [7, "7"], [0, "0"], [-0.0625, "-1/16"], [-2.25, "-2 1/4"], [-0.01, "0"], [31.99, "32"]])) {
    assert.equal(sixteenths(x), text);
  }
});

test("what is written is read back, and decimals with a comma too", () => {
  for (const x of [0, 32.75, -2.25, 0.0625, -0.5, 11]) assert.equal(fromText(sixteenths(x)), x);
  assert.equal(fromText("42,5"), 42.5);
  assert.ok(Number.isNaN(fromText("inch")));
});
