import assert from "node:assert/strict";
import test from "node:test";
import { Engine, until, visit } from "../../testdata/judges/dom.js";

visit(`<section data-desk="sheet" data-place="s"><div class="paper"></div><form><select name="key">
<option value="saddle-height" data-unit="mm">Saddle height</option><option value="pedals" data-unit="" data-picks="kinds">Pedals</option></select>
<label><input name="now"><span class="unit"></span></label><label><input name="next"><span class="unit"></span></label>
<input name="name"><input name="date"><input name="note"><p class="problem" hidden></p><p class="how"></p></form>
<div class="keep"><button data-do="csv">CSV</button><input type="file"><div class="opened"></div><div class="code-place"></div></div></section>`);
const record = await import("./record.js");
await import("./sheet.js");
const engine = await import("./engine.js");
const { named, one } = await import("./dom.js");

const desk = one(document, "section"), form = one(desk, "form", HTMLFormElement), paper = one(desk, ".paper");
const key = one(form, "select", HTMLSelectElement);
const [now, next, name] = ["now", "next", "name"].map((is) => named(form, is)[0]);
engine.begin();
const worker = Engine.ready();
const submit = async () => {
  const before = worker.asked.length;
  form.dispatchEvent(new Event("submit", { cancelable: true }));
  await until(() => worker.asked.length > before);
};
// Answers until nothing is asked any more.
const draws = async () => {
  await until(() => worker.question.desk === "sheet");
  for (let before = 0; before < worker.asked.length;) {
    before = worker.asked.length;
    worker.answer({ html: "<p>drawn</p>" });
  }
};

test("the sheet is drawn at once, and the fields know their unit", async () => {
  assert.equal(worker.question.desk, "sheet");
  worker.answer({ html: "<p>empty</p>" });
  assert.equal(paper.innerHTML, "<p>empty</p>");
  assert.equal(one(form, ".unit").textContent, "mm");
  key.selectedIndex = 1;
  key.dispatchEvent(new Event("change"));
  assert.deepEqual([now.getAttribute("list"), now.inputMode, one(form, ".unit").textContent], ["kinds", "text", ""]);
  key.selectedIndex = 0;
  key.dispatchEvent(new Event("change"));
  assert.deepEqual([now.getAttribute("list"), now.inputMode], [null, "decimal"]);
});

test("a name is written into the record", async () => {
  name.value = " Kim ";
  name.dispatchEvent(new Event("change"));
  assert.equal(record.at("name"), "Kim");
  await draws();
});

test("what cannot be read is told beside its field", async () => {
  now.value = "7x";
  await submit();
  assert.equal(worker.question.query, "key=saddle-height&now=7x&next=");
  worker.answer({ problems: [{ input: "now", message: "No length." }], record: "" });
  await until(() => now.getAttribute("aria-invalid") === "true");
  assert.equal(one(form, ".problem").textContent, "No length.");
  assert.equal(next.hasAttribute("aria-invalid"), false);
});

test("what can be read is written, with what is doubtful about it", async () => {
  now.value = "735";
  await submit();
  worker.answer({ problems: [], doubts: ["That is high."], record: "\0saddle-height\x00735" });
  await until(() => record.at("saddle-height") === "735");
  assert.deepEqual([now.value, one(form, ".how").textContent], ["", "That is high."]);
  await draws();
});

test("a change is taken over, marked as made, and taken back", async () => {
  paper.innerHTML = `<button data-use="saddle-height" data-value="740" data-from="knee-bend"></button>
<input type="checkbox" data-done="saddle-height"><button data-back="saddle-height"></button>`;
  const [use, back] = paper.querySelectorAll("button"), done = one(paper, "input", HTMLInputElement);
  use.click();
  assert.deepEqual([record.at("saddle-height"), record.at("saddle-height.was")], ["740", "735"]);
  done.checked = true;
  done.dispatchEvent(new Event("change", { bubbles: true }));
  assert.match(record.at("saddle-height.done") ?? "", /^\d{4}-\d\d-\d\d$/);
  back.click();
  assert.equal(record.at("saddle-height"), "735");
  await draws();
});

test("the sheet is not drawn under a pressed button", async () => {
  const before = worker.asked.length;
  dispatchEvent(new Event("pointerdown"));
  record.put([["note", "wet"]]);
  assert.equal(worker.asked.length, before);
  dispatchEvent(new Event("pointerup"));
  await until(() => worker.asked.length > before);
  await draws();
});

test("what leaves the page has a date on it", async () => {
  one(desk, "[data-do=csv]").click();
  await until(() => record.at("date"));
  await draws();
  assert.equal(worker.question.desk, "csv");
  assert.match(worker.question.record, /date=\d{4}-\d\d-\d\d/);
  worker.answer({ text: "" });
});

test("a file that is too large is refused without being read", async () => {
  const picker = one(desk, "[type=file]", HTMLInputElement);
  Object.defineProperty(picker, "files", { value: [{ name: "big.json", size: 2 ** 20 + 1 }], configurable: true });
  picker.dispatchEvent(new Event("change"));
  await until(() => one(desk, ".opened").textContent);
  assert.equal(one(desk, ".opened").textContent, "big.json was not opened. Nothing is changed.It is larger than a record can be.");
});
