import assert from "node:assert/strict";
import test from "node:test";
import { setTimeout as pause } from "node:timers/promises";
import { Engine, until, visit } from "../../testdata/judges/dom.js";

visit(`<section data-desk="sheet" data-place="s"><form class="whom"><select name="rider"></select><button type="button" data-do="add-rider"></button><select name="bike"></select>
<button type="button" data-do="add-bike"></button><details><input name="name"><input name="bike-name"><input name="date"><input name="note"></details></form>
<div class="standing"><p></p><ol hidden><li><a href="../start/a.html">A</a></li><li><a href="../saddle/height.html">Saddle height</a></li></ol></div>
<div class="worth"></div><div class="paper"></div><form class="entry-line"><select name="key">
<option value="saddle-height" data-unit="mm">Saddle height</option><option value="saddle-tilt" data-unit="°" data-keyboard="text">Saddle tilt</option><option value="pedals" data-unit="" data-picks="kinds">Pedals</option></select>
<span class="entry"><input name="now"><span class="unit"></span></span><span class="entry"><input name="next"><span class="unit"></span></span>
<p class="problem" hidden></p><p class="how"></p></form>
<div class="logged"></div><form class="log-line"><input name="on"><textarea name="line"></textarea><input name="scores"><p class="problem" hidden></p></form>
<details class="compare"><div class="laid"></div></details>
<div class="keep"><button data-do="csv">CSV</button><button data-do="share">Share</button><input type="file"><div class="opened"></div><div class="code-place"></div></div>
<fieldset class="forget"><button data-forget="bike">Bike</button><button data-forget="all">All</button></fieldset></section>`);
const owner = await import("./owner.js");
const record = await import("./record.js");
await import("./sheet.js");
const engine = await import("./engine.js");
const { named, one } = await import("./dom.js");

const desk = one(document, "section"), form = one(desk, ".entry-line", HTMLFormElement), paper = one(desk, ".paper");
const key = one(form, "select", HTMLSelectElement);
const [now, next] = ["now", "next"].map((is) => named(form, is)[0]);
const whom = one(desk, ".whom", HTMLFormElement), [name] = named(whom, "name");
engine.begin();
const worker = Engine.ready();
/**
 * Answers what else is asked until that is.
 * @param {string} what
 */
const asks = async (what) => {
  for (let i = 0; i < 20 && worker.question.desk !== what; i++) {
    worker.answer({ html: "<p>drawn</p>" });
    await pause(20);
  }
  assert.equal(worker.question.desk, what);
};
const submit = async () => {
  form.dispatchEvent(new Event("submit", { cancelable: true }));
  await asks("write");
};
// Answers until nothing is asked any more, not even what waits for a quiet moment.
const draws = async () => {
  for (let before = -1; before < worker.asked.length;) {
    before = worker.asked.length;
    worker.answer({ html: "<p>drawn</p>" });
    await pause(350);
  }
};

test("the sheet is drawn at once, and the fields know their unit", async () => {
  assert.equal(worker.question.desk, "sheet");
  worker.answer({ html: "<p>empty</p>" });
  assert.equal(paper.innerHTML, "<p>empty</p>");
  assert.equal(one(form, ".unit span").textContent, "mm");
  key.selectedIndex = 1;
  key.dispatchEvent(new Event("change"));
  assert.deepEqual([now.inputMode, one(form, ".unit").outerHTML], ["text", '<span class="unit">°</span>']);
  key.selectedIndex = 2;
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

test("what was likely meant is one tap", async () => {
  next.value = "83";
  await submit();
  worker.answer({ problems: [{ input: "next", message: "Did you mean 83 cm?", suggest: "83 cm" }], record: "" });
  await until(() => form.querySelector(".mend"));
  one(form, ".mend").click();
  assert.deepEqual([next.value, next.getAttribute("aria-invalid"), one(form, ".problem").hidden], ["83 cm", null, true]);
  now.value = next.value = "";
});

test("a tap on the unit keeps what was typed, and the next question is in the new one", async () => {
  now.value = "735";
  one(form, "[data-unit-of]").click();
  assert.deepEqual([now.value, next.value, one(form, ".unit span").textContent], ["735 mm", "", "cm"]);
  assert.equal(record.at("saddle-height.unit"), "cm");
  await draws();
  await submit();
  assert.equal(worker.question.bare, "cm");
  worker.answer({ problems: [], record: "" });
  record.put([], undefined, [["saddle-height.unit", ""]]);
  await draws();
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
  use.click();
  back.click(); // a plan that was never made
  assert.deepEqual([record.at("saddle-height"), record.at("saddle-height.was"), record.text().includes("from")], ["735", undefined, false]);
  await draws();
});

test("a step on the way stays ticked when the sheet is drawn anew", async () => {
  const sheet = '<input type="checkbox" data-tick="saddle-height 727.0 made"><input type="checkbox" data-tick="saddle-height 732.0 made">';
  paper.innerHTML = sheet;
  const box = one(paper, "input", HTMLInputElement);
  box.checked = true;
  box.dispatchEvent(new Event("change", { bubbles: true }));
  assert.equal(record.ticked("saddle-height 727.0 made"), true);
  record.tick("saddle-height 732.0 ridden twice", true); // in the garage
  record.put([["note", "dry"]]);
  await asks("sheet");
  worker.answer({ html: sheet });
  assert.deepEqual([...paper.querySelectorAll("input")].map(({ checked }) => checked), [true, true]);
  record.tick("saddle-height 727.0 made", false);
  record.tick("saddle-height 732.0 ridden twice", false);
  await draws();
});

test("the sheet is not drawn under a pressed button", async () => {
  const sheets = () => worker.asked.filter(({ question }) => question.desk === "sheet").length, before = sheets();
  dispatchEvent(new Event("pointerdown"));
  record.put([["note", "wet"]]);
  await draws();
  assert.equal(sheets(), before);
  dispatchEvent(new Event("pointerup"));
  await draws();
  assert.equal(sheets(), before + 1);
});

test("a file that is too large is refused without being read", async () => {
  const picker = one(desk, "[type=file]", HTMLInputElement);
  Object.defineProperty(picker, "files", { value: [{ name: "big.json", size: 2 ** 20 + 1 }], configurable: true });
  picker.dispatchEvent(new Event("change"));
  await until(() => one(desk, ".opened").textContent);
  assert.equal(one(desk, ".opened").textContent, "big.json was not opened. Nothing is changed.It is larger than a record can be.");
});

test("a bike is added, named, chosen and forgotten", async () => {
  const bike = one(whom, "[name=bike]", HTMLSelectElement), line = one(desk, ".standing p");
  record.put([["bike", "Trail bike"]]);
  one(whom, "[data-do=add-bike]").click();
  const [field] = named(whom, "bike-name");
  field.value = "Hardtail";
  field.dispatchEvent(new Event("change"));
  assert.deepEqual([...bike.options].map(({ text }) => text), ["Trail bike", "Hardtail"]);
  assert.match(line.textContent ?? "", /^2 bikes, 1 rider\. 2 steps lead to a finished setup\. Begin: A$/);
  [bike.value] = [...bike.options].map(({ value }) => value);
  bike.dispatchEvent(new Event("change"));
  assert.equal(record.at("bike"), "Trail bike");
  record.tick("step saddle/height", true);
  assert.match(line.textContent ?? "", /Step 2 of 2 on Trail bike: go on with Saddle height$/);
  one(desk, "[data-forget=bike]").click();
  assert.equal(record.at("bike"), "Hardtail");
  owner.undo();
  assert.equal(record.at("bike"), "Trail bike");
  await draws();
});

test("what is typed and not written waits beside its bike", async () => {
  const bike = one(whom, "[name=bike]", HTMLSelectElement), [first, second] = [...bike.options].map(({ value }) => value);
  key.value = "saddle-height";
  now.value = "7x";
  now.dispatchEvent(new Event("input", { bubbles: true }));
  bike.value = second;
  bike.dispatchEvent(new Event("change"));
  assert.equal(now.value, "", "it is not of this bike");
  bike.value = first;
  bike.dispatchEvent(new Event("change"));
  assert.equal(now.value, "7x");
  now.value = "";
  now.dispatchEvent(new Event("input", { bubbles: true }));
  assert.equal(record.drafted("sheet now"), "");
  await draws();
});

test("a line is written into the log, and half a line survives", async () => {
  const writing = one(desk, ".log-line", HTMLFormElement), [on, line, scores] = ["on", "line", "scores"].map((is) => named(writing, is)[0]);
  line.value = "knees fine";
  line.dispatchEvent(new Event("input"));
  assert.equal(record.drafted("log line"), "knees fine");
  scores.value = "3 4";
  on.value = "2026-01-02";
  const before = record.log().length;
  writing.dispatchEvent(new Event("submit", { cancelable: true }));
  await asks("note");
  assert.equal(worker.question.query, "on=2026-01-02&note=knees+fine&scores=3+4");
  worker.answer({ record: "\0on\x002026-01-02\0note\0knees fine\0scores\x003;4" });
  await until(() => record.log().length > before);
  assert.deepEqual(record.log().at(-1), { on: "2026-01-02", note: "knees fine", scores: "3;4" });
  assert.deepEqual([line.value, record.drafted("log line")], ["", ""]);
});

// Here a link that saves would take the document away.
HTMLAnchorElement.prototype.click = () => {};
test("what leaves the page has a date on it", async () => {
  one(desk, "[data-do=csv]").click();
  await until(() => record.at("date"));
  await asks("csv");
  assert.match(worker.question.record, /date=\d{4}-\d\d-\d\d/);
  worker.answer({ text: "" });
});
