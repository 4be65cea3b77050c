import assert from "node:assert/strict";
import test from "node:test";
import { Engine, until, visit } from "../../testdata/judges/dom.js";

visit('<main data-place="p" data-ways="w"><p class="line" hidden></p><div class="paper"><a href="a.html#b">A</a><a href="#c">C</a></div><div class="code-place"></div></main>', "#inseam=830");
const owner = await import("./owner.js");
const record = await import("./record.js");
const { ask, begin, canShare, code, copy, drawer, isMark, lay, page, tell, today } = await import("./desk.js");
const engine = await import("./engine.js");
const { one } = await import("./dom.js");

owner.open();
const place = one(document, "main"), heard = () => document.querySelector(".unseen")?.textContent;

test("questions name the desk and carry the record", async () => {
  const answer = ask(place, "json", { key: "x" });
  engine.begin();
  const worker = Engine.ready();
  assert.deepEqual(worker.question, {
    desk: "json", place: "p", ways: "w", width: 0, root: "../", record: "inseam=830", units: "mm", bare: "mm", key: "x",
  });
  worker.answer({ text: "{}" });
  assert.equal((await answer).text, "{}");
});

test("a drawing that is asked for again while one is under way is drawn once more", () => {
  const worker = /** @type {Engine} */ (Engine.all.at(-1)), before = worker.asked.length;
  /** @type {(string | undefined)[]} */
  const drawn = [];
  const draw = drawer(place, "sheet", ({ html }) => drawn.push(html));
  for (let i = 0; i < 4; i++) draw();
  worker.answer({ html: "1" });
  worker.answer({ html: "2" });
  assert.deepEqual([drawn, worker.asked.length - before], [["1", "2"], 2]);
});

test("marks are told from numbers, also where they come together", () => {
  for (const key of ["from", "estimated", "inseam.unit", "saddle-height.was", "saddle-height.done", "inseam.on"]) assert.ok(isMark(key), key);
  for (const key of ["inseam", "ask.by", ".on", "u", "inseam.only"]) assert.ok(!isMark(key), key);
  lay([["saddle-height.was", "735"], ["saddle-height", "740"], ["from", "saddle-height.knee-bend"]]);
  assert.deepEqual([record.at("saddle-height"), record.at("saddle-height.was"), record.at("from saddle-height")], ["740", "735", "saddle-height.knee-bend"]);
});

test("the date is the reader's own", () => {
  const d = new Date();
  assert.match(today(), /^\d{4}-\d\d-\d\d$/);
  assert.deepEqual(today().split("-").map(Number), [d.getFullYear(), d.getMonth() + 1, d.getDate()]);
});

test("the page's address is without the record", () => {
  assert.equal(page(), "https://guide.example/saddle/height.html");
});

test("problems are told in one line, which hides without any", () => {
  const line = one(place, ".line");
  tell(line, [{ message: "One." }, { message: "Two." }]);
  assert.deepEqual([line.textContent, line.hidden], ["One. Two.", false]);
  tell(line);
  assert.deepEqual([line.textContent, line.hidden], ["", true]);
});

test("what cannot be copied is shown, to be copied by hand, until it can be", async () => {
  Object.defineProperty(globalThis, "navigator", { value: {}, configurable: true });
  assert.equal(canShare(), false);
  assert.equal(await copy("first", place), false);
  assert.equal(await copy("second", place), false);
  const boxes = [...place.querySelectorAll("textarea")];
  assert.deepEqual(boxes.map(({ value }) => value), ["second"]);
  /** @type {string[]} */
  const copied = [];
  const clipboard = { writeText: async (/** @type {string} */ text) => copied.push(text) };
  Object.defineProperty(globalThis, "navigator", { value: { clipboard, share() {} }, configurable: true });
  assert.equal(await copy("third", place), true);
  assert.deepEqual([copied, place.querySelectorAll("textarea").length, heard(), canShare()], [["third"], 0, "The link is copied.", true]);
});

// ISO/IEC 18004, 5.3.2: a code of version v has 17 + 4v modules a side, and 4 more around it stay
// light. Version 1 holds 14 letters at level M (table 7), so that a short text is of version 1.
test("a code appears, and goes when the same is asked for again", async () => {
  HTMLElement.prototype.scrollIntoView = () => {};
  const at = one(place, ".code-place");
  await code("HTTPS", at);
  assert.equal(at.querySelector("svg")?.getAttribute("viewBox"), `0 0 ${21 + 8} ${21 + 8}`);
  assert.match(at.querySelector("path")?.getAttribute("d") ?? "", /^M4 4h1v1h-1z/, "a corner of the finder pattern is dark");
  await code("HTTPS", at);
  assert.equal(at.children.length, 0);
  await code("x".repeat(4000), at);
  assert.equal(at.textContent, "That is too much for a code. Send the link or the file.");
});

test("links that the engine wrote carry the numbers along", () => {
  begin(place);
  const [there, here] = place.querySelectorAll("a");
  there.click();
  here.click();
  assert.equal(there.getAttribute("href"), `a.html#${record.text()}&at=b`);
  assert.equal(here.getAttribute("href"), "#c");
});

test("an engine that is down is told once, at the top", async () => {
  engine.on.down(true);
  engine.on.down(false);
  await until(() => place.querySelector(".offline"));
  assert.equal(place.querySelectorAll(".offline").length, 1);
  assert.match(place.firstChild?.textContent ?? "", /^What computes on this page could not be loaded/);
});
