import assert from "node:assert/strict";
import test from "node:test";
import { first } from "./words.js";

const list = [
  { key: "seat-angle", names: ["seat angle", "angle"] },
  { key: "trail", names: ["trail"], not: ["on the trail", "trails"] },
  { key: "stand-over", names: ["stand over"] },
];

test("the longest name of the first term is found, as whole words", () => {
  assert.deepEqual(first("The seat angle counts", list, new Set()), { from: 4, to: 14, key: "seat-angle" });
  assert.deepEqual(first("Two seat angles", list, new Set()), { from: 4, to: 15, key: "seat-angle" });
  assert.equal(first("A triangle, and a trailer", list, new Set()).from, -1);
  assert.equal(first("Stand-over height", list, new Set()).key, "stand-over");
});

test("a term that was said, or means something else, is passed over", () => {
  assert.equal(first("The seat angle counts", list, new Set(["seat-angle"])).from, -1);
  assert.equal(first("Ride on the trail", list, new Set()).from, -1);
  assert.equal(first("On the trail you feel more trail", list, new Set()).from, 27);
});
