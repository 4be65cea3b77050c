import assert from "node:assert/strict";
import test from "node:test";
import { openedBy } from "./number.js";
import { carrying, lostWords, readIndex, search } from "./search.js";
import { splitter } from "./split.js";

const same = [["tyre", "tire"], ["post", "seatpost", "seat post"], ["ache", "pain", "hurt"], ["e bike", "ebike"]];
const field = { url: "saddle/height.html#saddle-height-1", title: "Saddle height", key: "inseam", label: "Inside leg",
  kind: "length", range: /** @type {[number, number]} */ ([600, 1000]), said: ["inseam", "saddle inseam"] };
const tall = { ...field, url: "size.html#size-1", key: "stature", range: /** @type {[number, number]} */ ([1400, 2100]), said: ["size"] };

const index = await readIndex(JSON.stringify({
  same,
  numbers: [field, tall],
  things: [
    { url: "saddle/height.html", title: "Saddle height", kind: "chapter", says: "How high?", text: "knee number post" },
    { url: "saddle/height.html#why", title: "Why the knee decides", kind: "section", in: "Saddle height", text: "bend" },
    { url: "saddle/tilt.html", title: "Tilt", kind: "chapter", says: "Which way?", asked: ["nose down"], text: "saddle" },
    { url: "find.html#hands", title: "Hands go numb", kind: "symptom", text: "bar" },
    { url: "find.html#knee", title: "Knee aches", kind: "symptom", text: "saddle" },
    { url: "glossary.html#tyre", title: "tyre", kind: "word", says: "The rubber." },
    { url: "glossary.html#saddle", title: "saddle", kind: "word", says: "What you sit on." },
    { url: "other.html", title: "Other bikes", kind: "chapter", says: "And e-bikes?" },
    { url: "every.html", title: "Every edge", kind: "chapter", says: "Where?", text: "eager element" },
  ],
}));

/** @param {string} query */
const urls = (query) => search(index, query).found.map(({ thing }) => thing.url);

test("a phrase that says what was typed comes first", () => {
  assert.equal(urls("saddle height")[0], "saddle/height.html");
  assert.equal(urls("nose down")[0], "saddle/tilt.html");
});

test("endings, accents and apostrophes make no difference", () => {
  for (const query of ["saddles heights", "Sáddle Height", "the saddle's height"]) {
    assert.equal(urls(query)[0], "saddle/height.html", query);
  }
});

test("words that mean the same find the same", () => {
  assert.equal(urls("tires")[0], "glossary.html#tyre");
  assert.equal(urls("knee pain")[0], "find.html#knee");
  assert.equal(urls("my knee hurts")[0], "find.html#knee");
  assert.deepEqual(urls("seat post"), urls("post"));
});

test("a short word is a whole word", () => {
  assert.deepEqual(urls("numb"), ["find.html#hands"]);
  assert.deepEqual(urls("e-bike"), urls("ebikes"));
  assert.equal(urls("e-bike")[0], "other.html");
  assert.ok(!urls("e-bike").includes("every.html"));
});

test("a slip is mended and told, and the last word may be unfinished", () => {
  for (const slip of ["hieght", "heigt", "heigght", "heyght", "heig"]) {
    const result = search(index, `saddle ${slip}`);
    assert.equal(result.found[0].thing.url, "saddle/height.html", slip);
    assert.equal(result.read, "saddle height", slip);
  }
  assert.equal(search(index, "saddle height").read, "");
});

test("what is in no page is named", () => {
  assert.deepEqual(search(index, "saddle unicycle").missing, ["unicycle"]);
  assert.deepEqual(urls("unicycle"), []);
  assert.deepEqual(urls(" "), []);
  assert.deepEqual(urls("the of and"), []);
});

test("a page is found once, with what else it has", () => {
  const [first] = search(index, "knee height").found;
  assert.equal(first.thing.url, "saddle/height.html");
  assert.deepEqual(first.more.map(({ url }) => url), []);
  const knee = search(index, "why the knee decides").found.find(({ thing }) => thing.url.startsWith("saddle/height"));
  assert.equal(knee?.thing.url, "saddle/height.html#why");
});

test("a number fills in the field that it is about", () => {
  const split = splitter(same);
  /** @param {string} query */
  const opens = (query) => {
    const found = openedBy(query, [field, tall], split);
    return found && [found.field.key, found.value, found.said];
  };
  assert.deepEqual(opens("inseam 83"), ["inseam", 830, "83 cm"]);
  assert.deepEqual(opens("inseam 83,5 cm"), ["inseam", 835, "83,5 cm"]);
  assert.deepEqual(opens("Inseam 830mm"), ["inseam", 830, "830mm"]);
  assert.deepEqual(opens("inseam 33"), ["inseam", 838.2, "33 in"]);
  assert.deepEqual(opens("inseam 33\""), ["inseam", 838.2, "33\""]);
  assert.deepEqual(opens("what size bike for 180 cm"), ["stature", 1800, "180 cm"]);
  assert.deepEqual(opens("size 5'10"), ["stature", 1778, "5'10"]);
  assert.deepEqual(opens("size for 6 ft 1 in"), ["stature", 1854.2, "6 ft 1 in"]);
  assert.equal(opens("inseam 8"), undefined, "not plausible in any unit");
  assert.equal(opens("inseam 83 kg"), undefined, "not a length");
  assert.equal(opens("83 cm"), undefined, "which field is not said");
  assert.equal(opens("size 165 or 170"), undefined, "two numbers");
  assert.equal(search(index, "inseam 83").opens?.value, 830);
});

test("a link carries the reader's numbers", () => {
  assert.equal(carrying("a.html", ""), "a.html");
  assert.equal(carrying("a.html", "#main"), "a.html");
  assert.equal(carrying("a.html#b", "#inseam=830&at=old"), "a.html#inseam=830&at=b");
  assert.equal(carrying("a.html", "#inseam=830&u=in"), "a.html#inseam=830&u=in");
  assert.equal(carrying("a.html#b", "#inseam=800&u=in", { inseam: "830" }), "a.html#u=in&inseam=830&at=b");
});

test("a lost address is read as a question", () => {
  assert.equal(lostWords("/fit/saddle/hieght.html"), "saddle hieght");
  assert.equal(lostWords("/saddle/index.html"), "saddle");
  assert.equal(lostWords("/"), "");
});

test("a German compound is found by its parts, and finds what has them", async () => {
  const german = await readIndex(JSON.stringify({
    language: "de",
    same: [["Schmerz", "weh"]],
    numbers: [],
    things: [
      { url: "hoehe.html", title: "Sattelhöhe", kind: "chapter", says: "Wie hoch der Sattel steht", text: "die Höhe und das Knie" },
      { url: "breite.html", title: "Lenkerbreite", kind: "chapter", says: "Wie breit?", text: "Lenker Breite" },
      { url: "knie.html", title: "Knie schmerzt", kind: "symptom" },
    ],
  }));
  const first = (/** @type {string} */ query) => search(german, query).found[0]?.thing.url;
  for (const query of ["Sattelhöhe", "Höhe Sattel", "die Höhe des Sattels", "Satelhöhe"]) assert.equal(first(query), "hoehe.html", query);
  assert.equal(first("breiter Lenker"), "breite.html");
  assert.equal(first("das Knie tut weh"), "knie.html");
});
