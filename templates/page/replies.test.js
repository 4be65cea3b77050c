import assert from "node:assert/strict";
import test from "node:test";
import { Engine, until, visit } from "../../testdata/judges/dom.js";

visit(`<section data-desk="prepare" data-place="1" data-back="../sheet.html"><details class="replies" open><form class="opening"><fieldset><input type="file" name="files"><textarea name="pasted"></textarea>
<button type="button" data-do="paste">Open</button><p class="problem" hidden></p></fieldset></form><div class="paper received"></div>
<form class="advice" hidden><select name="key"><option value="saddle-height" data-unit="mm">Saddle height</option></select><input name="value"><button type="button" data-do="set">Write</button>
<p class="problem" hidden></p><ul class="chosen"></ul><textarea name="note"></textarea><textarea name="message"></textarea><input name="from" value="Larch"><input name="link">
<button type="button" data-do="copy">Copy</button><button type="button" data-do="share">Share</button><button type="button" data-do="notes">Notes</button><button type="button" data-do="away">Away</button><div class="code-place"></div></form></details></section>`, "#name=Fitter&inseam=900");
const owner = await import("./owner.js");
owner.open();
const record = await import("./record.js");
const replies = await import("./replies.js");
const engine = await import("./engine.js");
const { named, one } = await import("./dom.js");
engine.begin();
const worker = Engine.ready();
const fold = one(document, "details"), form = one(fold, "form.advice", HTMLFormElement), opening = one(fold, "form.opening", HTMLFormElement);
/** @param {number} at */
const html = (at) => `<ul class="arrivals"><li><button type="button" data-at="0" data-slot="0" data-rider="0" data-name="Rowan" data-from="a.txt" data-client="Rowan">Rowan</button></li>
<li><button type="button" data-at="1" data-slot="1" data-rider="1" data-name="Birch" data-bike="Hardtail" data-from="b.txt" data-client="Birch">Birch</button></li></ul>
<section class="arrived" tabindex="-1" data-at="${at}"><input type="checkbox" data-done="x"><button type="button" data-back="x">Go back</button>
<button type="button" data-use="bar-width" data-value="755" data-from="bar-width">Use</button></section>`;
const query = () => new URLSearchParams(worker.question.query);
/** @param {number} n */
const asked = (n) => until(() => worker.asked.length > n);

test("what is pasted and dropped is opened apart, beside the fitter's own numbers", async () => {
  named(opening, "pasted")[0].value = "https://x.example/#name=Rowan&inseam=831";
  const n = worker.asked.length;
  one(opening, "[data-do=paste]").click();
  await asked(n);
  assert.deepEqual([worker.question.desk, worker.question.record, worker.question.text], ["replies", "", "what was pasted\0https://x.example/#name=Rowan&inseam=831"]);
  worker.answer({ html: html(0) });
  await until(() => fold.querySelector(".arrived"));
  assert.equal(form.hidden, false);
  assert.equal(one(fold, "input[type=checkbox]", HTMLInputElement).disabled, true, "what is ticked is the client's to tick");
  assert.equal(fold.querySelector("[data-back]"), null);
  const more = worker.asked.length;
  replies.dropped([new File(["\ufeffname,value"], "b.csv"), new File(["x".repeat(2 ** 20 + 1)], "film.txt")], "");
  await asked(more);
  assert.match(String(worker.question.text), /b\.csv\0/);
  assert.match(one(opening, ".problem").textContent ?? "", /film\.txt is larger/);
  worker.answer({ html: html(0) });
  assert.equal(record.text(), "name=Fitter&inseam=900", "nothing of it is the fitter's");
});

test("a setting is read, becomes Next and a link, and can be taken out", async () => {
  const n = worker.asked.length;
  named(form, "value")[0].value = "74";
  one(form, "[data-do=set]").click();
  await asked(n);
  assert.deepEqual([worker.question.desk, worker.question.key, worker.question.text], ["set", "saddle-height", "74"]);
  worker.answer({ problems: [{ message: "Not possible.", suggest: "74 cm" }], record: "" });
  await until(() => form.querySelector(".mend"));
  assert.equal(named(form, "value")[0].value, "74", "what was typed stays");
  one(form, ".mend").click();
  await until(() => worker.question.text === "74 cm");
  const more = worker.asked.length;
  worker.answer({ record: "\0saddle-height\x00740" });
  await asked(more);
  assert.deepEqual([query().get("0.next.saddle-height"), query().get("from")], ["740", "Larch"]);
  worker.answer({ html: html(0), link: "https://x.example/sheet.html#ask.from=Larch" });
  await until(() => named(form, "link")[0].value);
  assert.match(one(form, ".chosen").textContent ?? "", /Saddle height: 74 cm/);
  const last = worker.asked.length;
  one(form, ".chosen button").click();
  await asked(last);
  assert.equal(query().get("0.next.saddle-height"), null);
  worker.answer({ html: html(0) });
});

test("what is written of one client is not the other's", async () => {
  named(form, "note")[0].value = "left cleat";
  named(form, "note")[0].dispatchEvent(new Event("input", { bubbles: true }));
  const n = worker.asked.length;
  one(fold, '[data-at="1"]').click();
  await asked(n);
  assert.equal(query().get("at"), "1");
  worker.answer({ html: html(1) });
  await until(() => named(form, "note")[0].value === "");
  const more = worker.asked.length;
  one(fold, "[data-use]").click();
  await asked(more);
  assert.deepEqual([query().get("at"), query().get("1.next.bar-width"), query().get("0.next.bar-width")], ["1", "755", null], "a suggestion is taken for this client");
  worker.answer({ html: html(1) });
  const kept = JSON.parse(sessionStorage.getItem("plumbline-replies") ?? "");
  assert.deepEqual([kept.wrote[0].note, kept.wrote[1].note, kept.wrote[0].next.length], ["left cleat", "", 0]);
});

/** Has a file dropped. @param {string} name @param {string | Uint8Array<ArrayBuffer>} text */
const drop = (name, text) => replies.dropped([new File([text], name)], "");
/** @param {string} desk @param {object} reply */
async function answered(desk, reply) {
  await until(() => worker.question.desk === desk);
  worker.answer(reply);
}

test("notes of a file are laid beside whom they are about, and nothing of the others is lost", async () => {
  named(form, "value")[0].value = "";
  const n = worker.asked.length;
  drop("notes.yaml", `from: Beech
guide: https://y.example/
clients:
  rowan:
    note: right cleat
    next: {saddle-height: 73.6 cm}
  Elm:
    message: See you
    next: {bar-width: 700}
  nobody: [x]
`);
  await asked(n);
  await answered("replies", { html: html(1) });
  await answered("set", { record: "\0saddle-height\x00736" });
  await answered("replies", { html: html(1) });
  await until(() => /notes\.yaml:10/.test(one(opening, ".problem").textContent ?? ""));
  const kept = JSON.parse(sessionStorage.getItem("plumbline-replies") ?? "");
  assert.deepEqual([kept.wrote[0].note, kept.wrote[0].next[0].value, kept.wrote[0].next[0].typed], ["left cleat\nright cleat", "736", "73.6 cm"]);
  assert.deepEqual(kept.waiting.map((/** @type {{ client: string }} */ { client }) => client), ["Elm", "nobody"]);
  assert.match(fold.textContent ?? "", /kept for your file: Elm; nobody\./);
  /** @type {Blob[]} */
  const saved = [];
  const { createObjectURL } = URL;
  URL.createObjectURL = (blob) => {
    saved.push(/** @type {Blob} */ (blob));
    return "#";
  };
  one(form, "[data-do=notes]").click();
  await until(() => saved.length);
  URL.createObjectURL = createObjectURL;
  const { readNotes } = await import("./notes.js"), text = await saved[0].text(), read = readNotes("n", text);
  assert.deepEqual([read.from, read.guide, read.problems], ["Beech", "https://y.example/", []]);
  assert.deepEqual(read.clients.map(({ client, note, message, next }) => [client, note, message, ...next.map(({ key, typed }) => `${key} ${typed}`)]), [
    ["Rowan", "left cleat\nright cleat", "", "saddle-height 736"], ["Birch", "", "", "bar-width 755"], ["Elm", "", "See you", "bar-width 700"], ["nobody", "", ""]]);
});

test("a mail is taken apart, and a photo is named", async () => {
  drop("mail.eml", "From: a@b.example\r\nSubject: =?utf-8?q?Ma=C3=9Fe?=\r\nContent-Transfer-Encoding: quoted-printable\r\n\r\nhttps://x.example/#name=3DElm&inseam=3D8=\r\n31\r\n");
  await until(() => worker.question.desk === "mail");
  assert.equal(worker.question.text, "Maße\0\0https://x.example/#name=Elm&inseam=831\n");
  worker.answer({ text: "https://x.example/#name=Elm&inseam=831" });
  await answered("replies", { html: html(1) });
  assert.match(String(worker.question.text), /\0mail\.eml\0https:\/\/x\.example\/#name=Elm/);
  drop("bike.jpg", new Uint8Array([0xff, 0xd8, 0xff, 0xe0, 0]));
  await until(() => /bike\.jpg is a photo/.test(one(opening, ".problem").textContent ?? ""));
});

test("all is put away at once", () => {
  one(form, "[data-do=away]").click();
  assert.equal(sessionStorage.getItem("plumbline-replies"), null);
  assert.equal(form.hidden, true);
  assert.equal(fold.querySelector(".arrived"), null);
  assert.equal(record.text(), "name=Fitter&inseam=900");
});
