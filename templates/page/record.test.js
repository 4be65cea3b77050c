import assert from "node:assert/strict";
import test from "node:test";
import { until, visit } from "../../testdata/judges/dom.js";

visit('<a id="in" href="../feet/cleat.html#how">Feet</a><a id="out" href="https://elsewhere.example/">Out</a>', "#inseam=830&u=in&at=how");
localStorage.setItem("plumbline", JSON.stringify({ version: 1, record: "inseam=830&stature=1740" }));
const owner = await import("./owner.js");
const record = await import("./record.js");

/** @type {[string[], unknown, boolean | undefined][]} */
const heard = [];
record.listen((keys, source, replaced) => heard.push([[...keys], source, replaced]));
owner.open();

const kept = () => JSON.parse(localStorage.getItem("plumbline") ?? "null");
const keptText = () => kept().riders.map((/** @type {{ record: string, bikes: { record: string }[] }} */ { record: of, bikes }) => [of, ...bikes.map((bike) => bike.record)].join(" | ")).join("; ");

test("an address of the same numbers is the device's own, and the anchor is no number", () => {
  assert.equal(record.text(), "inseam=830&stature=1740&u=in");
  assert.equal(record.units(), "in");
  assert.equal(owner.kept(), true);
  assert.equal(location.hash, "#inseam=830&stature=1740&u=in&at=how");
  assert.equal(owner.apart(), false);
});

test("the guide's own links carry the record, others do not", () => {
  assert.equal(document.getElementById("in")?.getAttribute("href"), "../feet/cleat.html#inseam=830&stature=1740&u=in&at=how");
  assert.equal(document.getElementById("out")?.getAttribute("href"), "https://elsewhere.example/");
});

test("everybody hears what differs, and from whom", async () => {
  heard.length = 0;
  record.put([["inseam", "830"]], "bench");
  assert.deepEqual(heard, [], "nothing differs");
  record.put([["inseam", "835"], ["stature", ""]], "bench");
  assert.deepEqual(heard, [[["inseam", "stature"], "bench", undefined]]);
  await until(() => location.hash.includes("inseam=835"));
  assert.equal(keptText(), "inseam=835 | ", "and what the first version kept is kept in the form of this one");
  assert.equal(kept().version, 2);
});

test("a new value drops what was said of the old one", () => {
  record.put([["saddle-height", "735"]], undefined, [["estimated", "saddle-height"], ["saddle-height.on", "2026-01-02"]]);
  assert.equal(record.at("estimated saddle-height"), "saddle-height");
  record.put([["saddle-height", "740"]]);
  assert.equal(record.at("estimated saddle-height"), undefined);
  assert.equal(record.at("saddle-height.on"), undefined);
  assert.equal(record.at("saddle-height"), "740");
});

test("a value that is taken over leaves what the bike has beside it", () => {
  record.use("saddle-height", "750", [["from", "saddle-height.knee-bend"]]);
  assert.equal(record.at("saddle-height.was"), "740");
  assert.equal(record.at("from saddle-height"), "saddle-height.knee-bend");
  record.use("saddle-height", "752", [["from", "saddle-height.saddle-height"]]);
  assert.equal(record.at("saddle-height.was"), "740", "the bike was not changed in between");
  record.put([], undefined, [["saddle-height.done", "2026-01-02"]]);
  record.use("saddle-height", "760", [["from", "saddle-height.knee-bend"]]);
  assert.equal(record.at("saddle-height.was"), "752", "it was changed");
});

test("a change that is made, and one that is taken back, stand in the log", () => {
  record.put([], undefined, [["saddle-height.done", "2026-02-03"]]);
  record.back("saddle-height");
  assert.deepEqual(record.log().map(({ value, was }) => [value, was]), [["752", "740"], ["760", "752"], ["752", "760"]]);
  assert.deepEqual(record.log().map(({ on }) => on), ["2026-01-02", "2026-02-03", record.today()]);
  assert.equal(record.at("saddle-height"), "752");
  assert.equal(record.at("saddle-height.done"), undefined);
});

test("a line that is taken out of the log comes back", () => {
  record.note({ on: "2026-02-04", note: "wet" });
  record.unnote(3);
  assert.equal(record.log().length, 3);
  owner.undo();
  assert.equal(record.log().at(-1)?.note, "wet");
});

test("ticks and drafts are kept beside the bike", () => {
  record.tick("saddle/height 1", true);
  record.draft("sheet note", "half a sen");
  assert.equal(record.ticked("saddle/height 1"), true);
  const [bike] = kept().riders[0].bikes;
  assert.equal(record.drafted("sheet note"), "half a sen");
  assert.equal(bike.drafts, undefined, "they are the tab's, and no other tab hears of each stroke");
  assert.deepEqual(Object.keys(bike.ticks), ["saddle/height 1"]);
  record.tick("saddle/height 1", false);
  record.draft("sheet note", "");
  assert.equal(record.ticked("saddle/height 1"), false);
  assert.equal(record.drafted("sheet note"), "");
});

test("what an earlier version kept of a field is there until it is typed over", async () => {
  const { state } = await import("./state.js");
  Object.assign(state.book.riders[0].bikes[0], { drafts: { "sheet now": "74 c" } });
  assert.equal(record.drafted("sheet now"), "74 c");
  record.draft("sheet now", "");
  assert.equal(record.drafted("sheet now"), "");
});

test("another bike has the rider's body, and ticks of its own", () => {
  record.tick("a", true);
  const [first] = owner.riders().map(({ id, bikes }) => ({ rider: id, bike: bikes[0].id }));
  owner.addBike("Hardtail");
  assert.equal(record.text(), "inseam=835&bike=Hardtail&u=in");
  assert.equal(record.ticked("a"), false);
  record.put([["saddle-height", "700"]]);
  owner.choose(first);
  assert.equal(record.at("saddle-height"), "752");
  assert.equal(record.ticked("a"), true);
  assert.deepEqual(owner.riders().map(({ bikes }) => bikes.map(({ name }) => name)), [["", "Hardtail"]]);
  owner.choose({ rider: first.rider, bike: owner.riders()[0].bikes[1].id });
  owner.forget("bike");
  assert.equal(record.at("saddle-height"), "752", "the other bike is on show");
  owner.undo();
  assert.equal(record.at("saddle-height"), "700");
  owner.choose(first);
});

// A browser tells a page that it had put away what a later page of the same tab wrote into
// the tab's own storage (HTML standard, 12.2.3).
test("what another page of this tab wrote keeps nothing on the device", () => {
  const was = localStorage.getItem("plumbline") ?? "";
  owner.keep(false);
  const book = sessionStorage.getItem("plumbline");
  dispatchEvent(new StorageEvent("storage", { key: "plumbline", oldValue: book, newValue: book, storageArea: sessionStorage }));
  assert.equal(owner.kept(), false);
  assert.equal(localStorage.getItem("plumbline"), null);
  assert.ok(was);
  owner.keep(true);
});

test("another tab's changes are merged into what is here", async () => {
  const now = kept(), other = (/** @type {(text: string) => string} */ edit) => {
    const was = JSON.stringify(kept()), next = edit(was);
    localStorage.setItem("plumbline", next);
    dispatchEvent(new StorageEvent("storage", { key: "plumbline", oldValue: was, newValue: next, storageArea: localStorage }));
  };
  assert.ok(now);
  record.put([["arm-length", "650"]]);
  other((text) => text.replace("inseam=835", "inseam=836&foot-length=260"));
  assert.equal(record.at("inseam"), "836");
  assert.equal(record.at("foot-length"), "260");
  assert.equal(record.at("arm-length"), "650", "which only this tab has");
  await until(() => keptText().includes("arm-length=650"));
  assert.match(keptText(), /foot-length=260/);
  other((text) => text.replace("&foot-length=260", ""));
  assert.equal(record.at("foot-length"), undefined);
  localStorage.removeItem("plumbline");
  dispatchEvent(new StorageEvent("storage", { key: "plumbline", oldValue: JSON.stringify(now), newValue: null, storageArea: localStorage }));
  assert.equal(owner.kept(), false, "the other tab ended the keeping");
  assert.equal(record.at("inseam"), "836");
});

test("forgetting takes all but the units, here and on the device, and can be undone", () => {
  owner.keep(true);
  assert.match(keptText(), /inseam=836/);
  heard.length = 0;
  owner.forget();
  assert.equal(record.text(), "u=in");
  assert.equal(localStorage.getItem("plumbline"), null);
  assert.doesNotMatch(JSON.stringify(sessionStorage), /836|Hardtail/);
  assert.equal(heard.some(([, , all]) => all), true);
  assert.equal(record.ticked("a"), false);
  assert.equal(location.hash, "#u=in&at=how");
  assert.equal(owner.undoable(), "Your numbers are forgotten.");
  owner.undo();
  assert.equal(record.at("inseam"), "836");
  assert.equal(record.ticked("a"), true);
  assert.match(keptText(), /inseam=836/, "on the device too");
  assert.equal(owner.riders()[0].bikes.length, 2);
  assert.equal(owner.undoable(), "It is as it was before.");
  owner.undo();
  assert.equal(record.at("inseam"), undefined, "the undoing can be undone");
  owner.undo();
});

test("a stray percent sign in the address is no anchor and throws nothing", () => {
  location.hash = "#50%";
  dispatchEvent(new Event("hashchange"));
  assert.equal(record.at("inseam"), "836");
});

test("keeping that fails says so", () => {
  const full = () => {
    throw new Error("QuotaExceededError");
  };
  Object.defineProperty(globalThis, "localStorage", { value: { getItem: () => null, setItem: full, removeItem() {} } });
  assert.equal(owner.keep(true), false);
});
