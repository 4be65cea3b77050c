import assert from "node:assert/strict";
import test from "node:test";
import { Engine, type, until, visit } from "../../testdata/judges/dom.js";

visit('<div data-pasted="sizes" data-label="Sizes"></div>', "#sizes=name%3Breach%0AM%3B460&u=cm");
const engine = await import("./engine.js");
const owner = await import("./owner.js");
const record = await import("./record.js");
const { one } = await import("./dom.js");
const { pasted } = await import("./pasted.js");

owner.open();
pasted();
engine.begin();
const worker = Engine.ready();
const field = one(document, "textarea", HTMLTextAreaElement), problem = one(document, ".problem");

const input = /** @type {HTMLInputElement} */ (/** @type {unknown} */ (field));
let seen = 1;
// Answers the table's own questions until the one that is meant comes.
const asked = async (/** @type {string} */ desk) => {
  await until(() => {
    if (worker.asked.length > seen && worker.question.desk !== desk) {
      seen = worker.asked.length;
      worker.answer({ html: "" });
    }
    return worker.asked.length > seen && worker.question.desk === desk;
  });
  seen = worker.asked.length;
};

test("the chart of the record stands in the field, in the reader's unit", async () => {
  assert.deepEqual([worker.question.desk, worker.question.bare, worker.question.units], ["chart", "mm", "cm"]);
  worker.answer({ text: "name;reach\nM;46" });
  assert.equal(field.value, "name;reach\nM;46");
});

test("what cannot be read is told and stays, and the record is not touched", async () => {
  type(input, "Reach\t46");
  input.dispatchEvent(new Event("change"));
  await asked("check");
  assert.deepEqual([worker.question.text, worker.question.bare], ["Reach\t46", "cm"]);
  worker.answer({ problems: [{ message: "No column for the stack." }], record: "" });
  assert.deepEqual([problem.textContent, problem.hidden, field.getAttribute("aria-invalid"), field.value], ["No column for the stack.", false, "true", "Reach\t46"]);
  assert.equal(record.at("sizes"), "name;reach\nM;460");
});

test("what can be read is kept", async () => {
  type(input, "\tL\nReach\t48");
  input.dispatchEvent(new Event("change"));
  await asked("check");
  worker.answer({ problems: [], record: "\0sizes\x00name;reach\nL;480" });
  await until(() => record.at("sizes") === "name;reach\nL;480");
  assert.equal(problem.hidden, true);
});
