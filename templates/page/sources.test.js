import assert from "node:assert/strict";
import test from "node:test";
import { byKind } from "./sources.js";

test("sources are grouped by kind, the strongest first, and none is lost", () => {
  const items = ["review", "habit", "trial", "review", ""].map((kind, id) => /** @type {any} */ ({ id, dataset: { kind } }));
  assert.deepEqual(byKind(items, ["trial", "survey", "review"]).map(([kind, list]) => [kind, list.map(({ id }) => id)]),
    [["trial", [2]], ["review", [0, 3]], ["habit", [1]], ["", [4]]]);
});
