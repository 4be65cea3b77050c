import assert from "node:assert/strict";
import test from "node:test";
import { until, visit } from "../../testdata/judges/dom.js";

visit('<a id="in" href="../feet/cleat.html#how">Feet</a><a id="out" href="https://elsewhere.example/">Out</a>', "#inseam=830&u=in&at=how");
localStorage.setItem("plumbline", JSON.stringify({ version: 1, record: "inseam=800&stature=1740" }));
const record = await import("./record.js");

/** @type {[string[], unknown, boolean | undefined][]} */
const heard = [];
record.listen((keys, source, replaced) => heard.push([[...keys], source, replaced]));
record.open();

const kept = () => JSON.parse(localStorage.getItem("plumbline") ?? "null");

test("the address goes before the device, and the anchor is no number", () => {
  assert.equal(record.text(), "inseam=830&stature=1740&u=in");
  assert.equal(record.units(), "in");
  assert.equal(record.kept(), true);
  assert.equal(location.hash, "#inseam=830&stature=1740&u=in&at=how");
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
  assert.equal(kept().record, "inseam=835", "the device gets what changed here, not what a link brought");
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

test("another tab's changes are merged into what is here", async () => {
  const other = (/** @type {string} */ was, /** @type {string | null} */ now) => dispatchEvent(new StorageEvent("storage", {
    key: "plumbline", oldValue: JSON.stringify({ version: 1, record: was }), newValue: now && JSON.stringify({ version: 1, record: now }),
  }));
  record.put([["arm-length", "650"]]);
  other("inseam=835&mass=80", "inseam=836&foot-length=260");
  assert.equal(record.at("inseam"), "836");
  assert.equal(record.at("foot-length"), "260");
  assert.equal(record.at("arm-length"), "650", "which only this tab has");
  await until(() => kept().record.includes("arm-length=650"));
  assert.doesNotMatch(kept().record, /foot-length/, "which the other tab writes itself");
  other("inseam=836&foot-length=260", "inseam=836");
  assert.equal(record.at("foot-length"), undefined);
  other("inseam=836", null);
  assert.equal(record.kept(), false, "the other tab ended the keeping");
  assert.equal(record.at("inseam"), "836");
});

test("forgetting takes all but the units, here and on the device", () => {
  record.keep(true);
  assert.match(kept().record, /inseam=836/);
  heard.length = 0;
  record.forget();
  assert.equal(record.text(), "u=in");
  assert.equal(localStorage.getItem("plumbline"), null);
  assert.equal(heard.at(-1)?.[2], true);
  assert.equal(location.hash, "#u=in&at=how");
});

test("keeping that fails says so", () => {
  const full = () => {
    throw new Error("QuotaExceededError");
  };
  Object.defineProperty(globalThis, "localStorage", { value: { getItem: () => null, setItem: full } });
  assert.equal(record.keep(true), false);
});
