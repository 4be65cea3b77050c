import assert from "node:assert/strict";
import test from "node:test";
import { carrying, readIndex, search, wordsOf } from "./search.js";

const index = readIndex(JSON.stringify({
  things: [
    { url: "saddle/height.html", title: "Saddle height", kind: "chapter", says: "How high?" },
    { url: "saddle/tilt.html", title: "Tilt", kind: "chapter", says: "Which way?" },
    { url: "glossary.html#saddle", title: "saddle", kind: "term", says: "What you sit on." },
  ],
  words: "height 0*3\nknee 0\nnose 1\nsaddle 0*3 1 2*3\ntilt 1*3\n",
}));

/** @param {string} query */
const titles = (query) => search(index, query).things.map((thing) => thing.url);

test("a word in a title comes before one in the text", () => {
  assert.deepEqual(titles("saddle"), ["saddle/height.html", "glossary.html#saddle", "saddle/tilt.html"]);
});

test("every word counts", () => {
  assert.deepEqual(titles("saddle nose"), ["saddle/tilt.html"]);
  assert.deepEqual(titles("Saddles, heights"), ["saddle/height.html"]);
});

test("the beginning of a word and a slip find it as well", () => {
  assert.deepEqual(titles("heig"), ["saddle/height.html"]);
  for (const slip of ["hieght", "heigt", "heigght", "heyght"]) {
    assert.deepEqual(titles(slip), ["saddle/height.html"], slip);
  }
});

test("what is in no page is named", () => {
  assert.deepEqual(search(index, "saddle unicycle").missing, ["unicycle"]);
  assert.deepEqual(titles("unicycle"), []);
  assert.deepEqual(titles(" "), []);
});

test("words are cut as the index cuts them", () => {
  assert.deepEqual(wordsOf("The rider’s legs, 32 ÉTÉS press"), ["the", "rider", "s", "leg", "32", "été", "press"]);
});

test("a link carries the reader's numbers", () => {
  assert.equal(carrying("a.html", ""), "a.html");
  assert.equal(carrying("a.html", "#main"), "a.html");
  assert.equal(carrying("a.html#b", "#inseam=830&at=old"), "a.html#inseam=830&at=b");
  assert.equal(carrying("a.html", "#inseam=830&u=in"), "a.html#inseam=830&u=in");
});
