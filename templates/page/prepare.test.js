import assert from "node:assert/strict";
import test from "node:test";
import { Engine, type, until, visit } from "../../testdata/judges/dom.js";

visit(`<section data-desk="prepare" data-place="p" data-request="ask=inseam" data-back="../sheet.html"><form class="client"><p class="progress" hidden></p>
<div class="paper"></div><div class="walk" hidden><button type="button" data-do="before">Before</button><button type="button" data-do="skip">Skip</button><button type="button" data-do="after">After</button></div>
<div class="hand" hidden><a data-do="message" hidden></a><button type="button" data-do="share">Share</button></div><div class="code-place"></div></form>
<details class="compose"><form><input type="checkbox" name="ask" value="inseam" checked><input type="checkbox" name="ask" value="mass" checked><input name="ask.by" value="Larch">
<input name="link"><p class="problem"></p><button type="button" data-do="share">Share</button><div class="code-place"></div></form></details></section>`);
HTMLElement.prototype.scrollIntoView = () => {};
const owner = await import("./owner.js");
const record = await import("./record.js");
await import("./prepare.js");
const engine = await import("./engine.js");
const { all, named, one } = await import("./dom.js");

const desk = one(document, "section"), form = one(desk, "form.client", HTMLFormElement);
const progress = one(form, ".progress");
engine.begin();
const worker = Engine.ready();
const paper = `<p class="asking">Asked</p><div class="step" data-step="inseam" tabindex="-1"><input id="i1" name="inseam" data-unit="mm"><input name="inseam" data-unit="mm"><button type="button" data-unit-of="inseam" data-next="cm"></button>
<p id="prepare-p-inseam-p" hidden></p><ul id="prepare-p-inseam-d" hidden></ul></div>
<div class="step" data-step="ask-pain" tabindex="-1"><input type="radio" name="ask-pain" value="yes"><input type="radio" name="ask-pain" value=""></div>
<div class="step" data-step="send" tabindex="-1"><div class="look"></div></div>`;
/** @param {string} what */
const asked = (what) => until(() => worker.question.desk === what);
const press = (/** @type {string} */ what) => one(form, `[data-do=${what}]`).click();
const inseam = () => named(form, "inseam")[0];
const shown = () => all(form, ".step").filter(({ hidden }) => !hidden).map(({ dataset }) => dataset.step).join();

test("the guide's own request stands in until a fitter's comes", () => {
  assert.equal(worker.question.record, "ask=inseam");
  worker.answer({ html: paper });
  assert.deepEqual([shown(), progress.textContent], ["inseam", "1 of 2"]);
  assert.equal(one(form, "[data-do=before]", HTMLButtonElement).disabled, true);
});

test("a wrong measurement is told and keeps the step", async () => {
  type(inseam(), "8x");
  await asked("check");
  assert.deepEqual([worker.question.key, worker.question.text], ["inseam", "8x"]);
  worker.answer({ problems: [{ message: "No length." }], record: "" });
  await until(() => inseam().getAttribute("aria-invalid") === "true");
  const before = worker.asked.length;
  press("after");
  await until(() => worker.asked.length > before);
  worker.answer({ problems: [{ message: "No length." }], record: "" });
  assert.equal(one(form, "#prepare-p-inseam-p").textContent, "No length.");
  assert.equal(shown(), "inseam");
});

test("a right one is taken, with its doubts, and leads on", async () => {
  const before = worker.asked.length;
  inseam().value = "930";
  press("after");
  await until(() => worker.asked.length > before);
  worker.answer({ problems: [], doubts: ["That is long."], record: "\0inseam\x00930" });
  await until(() => shown() === "ask-pain");
  assert.equal(record.at("inseam"), "930");
  assert.equal(one(form, "#prepare-p-inseam-d").textContent, "That is long.");
  assert.equal(inseam().hasAttribute("aria-invalid"), false);
});

test("what was likely meant is one tap", async () => {
  press("before");
  type(inseam(), "83");
  await until(() => worker.question.text === "83");
  worker.answer({ problems: [{ message: "Did you mean 83 cm?", suggest: "83 cm" }], record: "" });
  await until(() => form.querySelector(".mend"));
  one(form, ".mend").click();
  assert.equal(inseam().value, "83 cm");
  await until(() => worker.question.text === "83 cm");
  worker.answer({ problems: [], record: "\0inseam\x00830" });
  await until(() => record.at("inseam") === "830");
});

test("a tap on the unit keeps what cannot be read yet, and the focus", async () => {
  type(inseam(), "83x 7");
  await until(() => worker.question.text === "83x 7");
  worker.answer({ problems: [{ message: "No length." }], record: "" });
  await until(() => inseam().getAttribute("aria-invalid") === "true");
  inseam().focus();
  one(form, "[data-unit-of]").click();
  await asked("prepare");
  assert.match(worker.question.record, /inseam.unit=cm/);
  worker.answer({ html: paper.replaceAll('data-unit="mm"', 'data-unit="cm"').replace('data-next="cm"', 'data-next="in"') });
  assert.deepEqual([inseam().value, document.activeElement?.id], ["83x 7 mm", "i1"]);
  await asked("check");
  assert.equal(worker.question.bare, "cm");
  worker.answer({ problems: [{ message: "No length." }], record: "" });
  type(inseam(), "93");
  await until(() => worker.question.text === "93");
  worker.answer({ problems: [], record: "\0inseam\x00930" });
  press("after");
  await until(() => worker.question.text === "93");
  worker.answer({ problems: [], record: "\0inseam\x00930" });
  await until(() => shown() === "ask-pain");
});

test("the answer to a question stays in this tab and out of the address", async () => {
  named(form, "ask-pain")[0].checked = true;
  press("after");
  await asked("back");
  assert.equal(worker.question.query, "ask-pain=yes");
  assert.equal(worker.question.link, "https://guide.example/sheet.html");
  assert.equal(sessionStorage.getItem("plumbline-answers"), '[["ask-pain","yes"]]');
  assert.doesNotMatch(record.text(), /pain/);
  worker.answer({ html: "<p>All</p>", text: "inseam=930", link: "sms:+1555?body=x" });
  await until(() => !one(form, "[data-do=message]").hidden);
  assert.equal(one(form, "[data-do=message]").textContent, "Send a message to +1555");
  assert.deepEqual([shown(), progress.textContent, one(form, ".look").textContent], ["send", "Ready to send", "All"]);
  assert.equal(one(form, "[data-do=after]").hidden, true);
});

test("skipping a step takes its answer out", async () => {
  press("before");
  assert.equal(shown(), "ask-pain");
  press("skip");
  await asked("back");
  assert.equal(sessionStorage.getItem("plumbline-answers"), null);
  assert.equal(worker.question.query, "");
  worker.answer({ html: "", text: "inseam=930" });
});

test("a fitter's request is composed of what is ticked", async () => {
  const fold = one(desk, ".compose", HTMLDetailsElement);
  fold.open = true;
  fold.dispatchEvent(new Event("toggle"));
  await asked("compose");
  assert.equal(worker.question.query, "ask=inseam+mass&ask.by=Larch");
  worker.answer({ text: "ask=inseam+mass", problems: [] });
  const link = one(fold, "[name=link]", HTMLInputElement);
  await until(() => link.value);
  assert.equal(link.value, "https://guide.example/saddle/height.html#ask=inseam+mass");
});

test("a request that is half written waits in this tab", () => {
  const by = one(desk, ".compose [name='ask.by']", HTMLInputElement);
  by.value = "Birch";
  named(one(desk, ".compose form", HTMLFormElement), "ask")[1].checked = false;
  by.dispatchEvent(new Event("input", { bubbles: true }));
  assert.equal(sessionStorage.getItem("plumbline-request"), "ask=inseam&ask.by=Birch");
  owner.forget();
  assert.equal(sessionStorage.getItem("plumbline-request"), null);
});
