import assert from "node:assert/strict";
import test from "node:test";
import { Engine, type, until, visit } from "../../testdata/judges/dom.js";

/**
 * A field as the engine writes it.
 * @param {string} name
 * @param {string} [value]
 * @param {string} [more]
 */
const field = (name, value = "", more = "") =>
  `<div class="field"><input id="b-${name}" name="${name}" value="${value}" ${more}><p class="problem" id="b-${name}-p" hidden></p></div>`;

visit(`<section class="bench" id="b" data-calculator="saddle-height" data-place="b"><form>
<p class="play offer" hidden><button type="button">Play</button></p><p class="play end" hidden>Playing.<button type="button">End</button></p>
<fieldset disabled>${field("inseam")}${field("crank")}<span class="cost"></span></fieldset><p class="waiting" hidden></p><p class="problem" id="b-p" hidden></p>
<p class="unstarted" hidden>It did not start.<button type="button">Again</button></p><p class="stopped" hidden>It stopped.<button type="button">Again</button></p></form>
<div class="drawing"></div><div class="strip"></div><div class="answer"><p>Worked example</p></div></section>`, "#inseam=830");
const engine = await import("./engine.js");
const owner = await import("./owner.js");
const record = await import("./record.js");
const { Bench } = await import("./bench.js");
const { one } = await import("./dom.js");
const { play } = await import("./play.js");

owner.open();
const root = one(document, ".bench"), answer = one(root, ".answer");
const bench = new Bench(root);
engine.begin();
const worker = Engine.ready();
const heard = () => document.querySelector(".unseen")?.textContent;
/** @param {string} name */
const input = (name) => one(root, `[name=${name}]`, HTMLInputElement);
const cost = '<span class="cost">as the form says</span>';
/** @param {string} mm */
const parts = (mm) => ({ drawn: '<div class="drawing">d</div>', parts: `<div class="strip">s</div>\0<span class="cost">${mm}</span>\0<p class="r">${mm}</p>\0<details id="why"><summary>Why</summary></details>` });

test("the first question asks for the form and sends the record", () => {
  const { whole, play: playing, record: sent, name, place, query, bare } = worker.question;
  assert.deepEqual({ whole, playing, sent, name, place, query, bare },
    { whole: true, playing: false, sent: "inseam=830", name: "saddle-height", place: "b", query: "", bare: "mm" });
  worker.answer({ ...parts("735 mm"), form: field("inseam", "830") + field("crank") + cost, record: "\0inseam\x00830" });
  assert.equal(input("inseam").value, "830");
  assert.equal(one(root, "fieldset", HTMLFieldSetElement).disabled, false);
  assert.equal(answer.innerHTML, '<p class="r">735 mm</p><details id="why"><summary>Why</summary></details>');
});

test("what is typed is sent, put into the record, and changes what differs alone", () => {
  const line = one(answer, ".r");
  type(input("inseam"), "840");
  assert.equal(worker.question.query, "inseam=840");
  assert.equal(worker.question.whole, false);
  worker.answer({ ...parts("744 mm"), record: "\0inseam\x00840", spoken: "744 millimetres" });
  assert.equal(line.textContent, "744 mm");
  assert.equal(line.isConnected, true);
  assert.equal(record.at("inseam"), "840");
  assert.notEqual(heard(), "744 millimetres", "not while somebody types");
});

test("a problem stands beside its field, and the answer before it stays and is old", async () => {
  type(input("inseam"), "84x");
  input("inseam").dispatchEvent(new Event("change", { bubbles: true }));
  const wrong = { input: "inseam", message: "That is no length.", needed: false };
  // The question of the change waits behind that of the input.
  for (let i = 0; i < 2; i++) worker.answer({ ...parts("735 mm"), example: true, record: "", problems: [wrong] });
  await until(() => input("inseam").getAttribute("aria-invalid") === "true");
  const line = one(root, "#b-inseam-p");
  assert.deepEqual([line.hidden, line.textContent], [false, "That is no length."]);
  assert.equal(one(answer, ".r").textContent, "744 mm");
  assert.equal(root.classList.contains("old"), true);
  assert.equal(heard(), "That is no length.");
  assert.equal(record.at("inseam"), "840", "what cannot be read does not touch the record");
  assert.equal(record.drafted("saddle-height inseam"), "84x", "and waits in case the page is left");
});

test("what could not be read stands there again when the page was left", async () => {
  bench.renew(new Set(), true);
  worker.answer({ ...parts("735 mm"), form: field("inseam", "840") + field("crank") + cost, record: "\0inseam\x00840" });
  assert.equal(input("inseam").value, "84x");
  assert.equal(worker.question.query, "inseam=84x", "and is asked again");
  worker.answer({ ...parts("735 mm"), example: true, record: "", problems: [{ input: "inseam", message: "That is no length.", needed: false }] });
  await until(() => input("inseam").getAttribute("aria-invalid") === "true");
});

test("emptying a field takes it out of the record", () => {
  type(input("inseam"), " ");
  worker.answer({ ...parts("735 mm"), example: true, record: "" });
  assert.equal(record.at("inseam"), undefined);
  assert.equal(one(answer, ".r").textContent, "735 mm");
  assert.equal(root.classList.contains("old"), false);
  assert.equal(one(root, "#b-inseam-p").hidden, true);
});

test("another change of the record renews the form, but for what is being typed", () => {
  const before = worker.asked.length;
  bench.renew(new Set(["mass"]));
  assert.equal(worker.asked.length, before, "it has no such field");
  bench.renew(new Set(["crank"]));
  assert.equal(worker.question.whole, true);
  type(input("inseam"), "850");
  worker.answer({ ...parts("735 mm"), example: true, form: field("inseam") + field("crank", "170") + cost, record: "" });
  assert.equal(input("crank").value, "170");
  assert.equal(input("inseam").value, "850");
  assert.equal(worker.question.query, "inseam=850", "which is asked next");
  worker.answer({ ...parts("752 mm"), record: "\0inseam\x00850" });
});

test("what a form says of its guesses follows the answer", () => {
  assert.equal(one(root, ".cost").textContent, "752 mm");
  assert.equal(one(root, ".strip").textContent, "s");
});

test("a value is taken over with its mark and said", () => {
  worker.answer({});
  answer.insertAdjacentHTML("beforeend", '<button data-use="saddle-height" data-value="752" data-guess></button><span hidden>It is in your numbers.</span>');
  one(answer, "button").click();
  assert.equal(record.at("saddle-height"), "752");
  assert.equal(record.at("from saddle-height"), "saddle-height.saddle-height");
  assert.equal(record.at("estimated saddle-height"), "saddle-height");
  assert.equal(heard(), "It is in your numbers.");
});

test("what says how the bike is already is no change to be made", () => {
  record.put([["saddle-setback", "200"]]);
  answer.insertAdjacentHTML("beforeend", '<button class="as-is" data-use="saddle-setback" data-value="215" data-now></button><span hidden></span>');
  one(answer, ".as-is").click();
  assert.equal(record.at("saddle-setback"), "215");
  assert.equal(record.at("from saddle-setback"), undefined);
  assert.equal(record.at("saddle-setback.was"), undefined);
  record.put([["saddle-setback", ""]]);
});

test("one button takes over what is set together", () => {
  answer.insertAdjacentHTML("beforeend", '<button class="two" data-use="grip-x grip-y" data-value="442±4 715±5"></button><span hidden>Both.</span>');
  one(answer, ".two").click();
  assert.deepEqual([record.at("grip-x"), record.at("grip-y")], ["442±4", "715±5"]);
  assert.equal(record.at("from grip-y"), "grip-y.saddle-height");
});

test("how the bike is leaves what is planned, and a plan that is asked for no more goes", () => {
  record.put([["inseam", "865"]], undefined, [["inseam.was", "870"], ["from", "inseam.saddle-height"]]);
  input("inseam").dataset.asIs = "";
  type(input("inseam"), "872");
  worker.answer({ ...parts("750 mm"), record: "\0inseam\x00872" });
  assert.equal(record.at("inseam"), "865");
  assert.equal(record.at("inseam.was"), "872");
  answer.insertAdjacentHTML("beforeend", '<button class="now" data-use="saddle-height" data-value="740">Use</button><span hidden>Used.</span>');
  one(answer, ".now").click();
  assert.equal(record.at("saddle-height"), "740");
  assert.equal(record.at("inseam"), "872", "what is now counts again");
  assert.equal(record.at("inseam.was"), undefined);
  delete input("inseam").dataset.asIs;
});

test("the example's numbers are played with and reach no record", () => {
  const mine = record.text(), [offer, end] = bench.plays;
  play(bench, true);
  assert.deepEqual([offer.hidden, end.hidden, worker.question.play, worker.question.record], [true, false, true, ""]);
  assert.equal(heard(), "Playing.");
  worker.answer({ ...parts("735 mm"), form: field("inseam", "830") + field("crank") + cost, record: "\0inseam\x00830" });
  type(input("inseam"), "900");
  assert.equal(worker.question.record, "inseam=830");
  worker.answer({ ...parts("795 mm"), record: "\0inseam\x00900" });
  assert.equal(record.text(), mine);
  play(bench, false);
  assert.deepEqual([offer.hidden, end.hidden, worker.question.play, worker.question.record], [false, true, false, mine]);
  worker.answer({ ...parts("752 mm"), form: field("inseam", "850") + field("crank") + cost, record: "\0inseam\x00850" });
  assert.equal(input("inseam").value, "850");
});

test("a field whose declaration says so is offered the photo reader, whatever its name", async () => {
  bench.renew(new Set(["inseam"]));
  worker.answer({ ...parts("752 mm"), form: field("elbow", "20", 'data-photo="elbow-read"') + field("inseam", "850") + cost, record: "\0inseam\x00850" });
  await until(() => root.querySelector("#b-elbow-photo"));
  assert.equal(root.querySelectorAll(".off-photo").length, 1);
});

test("an open detail stays open", () => {
  one(root, "#why").setAttribute("open", "");
  bench.keep(() => {
    one(root, "#why").outerHTML = '<details id="why"></details>';
  });
  assert.equal(one(root, "#why").hasAttribute("open"), true);
});

test("an engine that is down says so beside the form", () => {
  bench.down(true);
  assert.equal(one(root, ".stopped").hidden, false);
  assert.equal(heard(), "It stopped.");
  assert.equal(root.classList.contains("old"), true);
  one(one(root, ".stopped"), "button").click();
  assert.equal(one(root, ".stopped").hidden, true, "it is tried again");
  bench.down(false);
  assert.equal(one(root, ".unstarted").hidden, false);
  assert.equal(heard(), "It did not start.");
});

test("another choice empties what belonged to the old one", () => {
  input("inseam").dataset.clears = "elbow";
  input("elbow").value = "172";
  type(input("inseam"), "850");
  assert.equal(input("elbow").value, "");
  assert.equal(bench.touched.has("elbow"), true);
  delete input("inseam").dataset.clears;
});

test("what was typed before the engine was asked waits for the reader", () => {
  const later = new Bench(root);
  later.touched.add("inseam");
  input("inseam").value = "841";
  later.leave();
  assert.equal(record.drafted("saddle-height inseam"), "841");
});
