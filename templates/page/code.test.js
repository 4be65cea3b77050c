import assert from "node:assert/strict";
import test from "node:test";
import { until, visit } from "../../testdata/judges/dom.js";

visit("<pre class='code'><code>one\ntwo</code></pre><pre>not this</pre>");
const { all } = await import("./dom.js");
const { code } = await import("./code.js");
/** @type {string[]} */
const copied = [];
let refuses = false;
Object.defineProperty(globalThis, "navigator", { configurable: true, value: { clipboard: {
  writeText: async (/** @type {string} */ text) => {
    if (refuses) throw new Error("refused");
    copied.push(text);
  },
} } });
code();

test("lines are copied as they stand, or marked where the browser refuses", async () => {
  const buttons = all(document, ".copies button");
  assert.equal(buttons.length, 1);
  buttons[0].click();
  await until(() => copied.length > 0);
  assert.deepEqual(copied, ["one\ntwo"]);
  refuses = true;
  /** @type {Node[]} */
  const marked = [];
  globalThis.getSelection = () => /** @type {any} */ ({ selectAllChildren: (/** @type {Node} */ node) => marked.push(node) });
  buttons[0].click();
  await until(() => marked.length > 0);
  assert.equal(marked[0]?.textContent, "one\ntwo");
});
