import assert from "node:assert/strict";
import test from "node:test";
import { visit } from "../../testdata/judges/dom.js";

visit("");
/** @type {string[]} */
const made = [];
globalThis.trustedTypes = {
  createPolicy(name, rules) {
    made.push(name);
    return rules;
  },
};
const { policy, sameOrigin } = await import("./policy.js");

test("a worker starts from our own origin or not at all", () => {
  const own = "https://guide.example/assets/engine-1/worker.js";
  assert.equal(sameOrigin(own), own);
  assert.equal(sameOrigin("../assets/worker.js"), "../assets/worker.js");
  for (const other of ["https://elsewhere.example/worker.js", "http://guide.example/worker.js", "data:text/javascript,0"]) {
    assert.throws(() => sameOrigin(other), TypeError, other);
  }
  assert.deepEqual(made, ["plumbline-script"]);
});

test("where the browser knows no policies the rules work by themselves", () => {
  globalThis.trustedTypes = undefined;
  const rules = { createHTML: (/** @type {string} */ html) => html };
  assert.equal(policy("x", rules), rules);
});
