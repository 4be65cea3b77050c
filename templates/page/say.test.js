import assert from "node:assert/strict";
import test from "node:test";
import { visit } from "../../testdata/judges/dom.js";

visit("<main></main>");
const { one } = await import("./dom.js");
const { say } = await import("./say.js");

test("a sentence is put where screen readers hear of it", () => {
  say("742 mm.");
  assert.equal(one(document, "[role=status].unseen").textContent, "742 mm.");
});

test("nothing to say leaves what was said", () => {
  say("");
  say(null);
  assert.equal(one(document, "[role=status].unseen").textContent, "742 mm.");
});
