import assert from "node:assert/strict";
import test from "node:test";
import { visit } from "../../testdata/judges/dom.js";

visit("");
const books = await import("./book.js");
const { read, write } = books;

test("what the first version kept is read as one rider on one bike", () => {
  const book = books.parse(JSON.stringify({ version: 1, record: "inseam=830&inseam.unit=cm&reach=460&u=in&name=Rowan&estimated=inseam&from=reach.frame-geometry&odd=1" }));
  assert.ok(book);
  assert.equal(book.units, "in");
  assert.deepEqual(book.riders.map(({ record, bikes }) => [record, bikes.map((bike) => bike.record)]), [
    ["inseam=830&inseam.unit=cm&name=Rowan&estimated=inseam", ["reach=460&from=reach.frame-geometry&odd=1"]],
  ]);
  assert.equal(write(books.join(book)), "inseam=830&inseam.unit=cm&name=Rowan&estimated=inseam&reach=460&from=reach.frame-geometry&odd=1&u=in");
});

test("what is no book, or a later version's, is read as none", () => {
  for (const text of [null, "", "{", "[]", "7", '{"version":9,"riders":[]}', '{"version":2}']) assert.equal(books.parse(text), undefined, String(text));
  assert.equal(books.later('{"version":9,"riders":[]}'), true);
  assert.equal(books.later('{"version":2,"riders":[]}'), false);
  assert.equal(books.later("{"), false);
});

test("body and shoes go along to another bike, the rest stays with each", () => {
  const book = books.empty(), first = books.lay(book, undefined, read("inseam=830&cleat-behind-ball=12&saddle-height=722"));
  const { rider } = books.find(book, first), { bike } = books.add(book, rider), second = { rider: first?.rider ?? "", bike: bike.id };
  assert.equal(write(books.join(book, second)), "inseam=830&cleat-behind-ball=12");
  books.lay(book, second, new Map([...read("inseam=835&saddle-height=700"), ["cleat-behind-ball", undefined]]));
  assert.equal(write(books.join(book, first)), "inseam=835&saddle-height=722");
  assert.equal(write(books.join(book, second)), "inseam=835&saddle-height=700");
  assert.deepEqual(books.placed(book, { rider: "gone", bike: "gone" }), first, "a place that is gone is the one chosen last");
});

test("what a fitter asks is kept nowhere", () => {
  const book = books.empty();
  books.lay(book, undefined, read("ask=inseam&ask.by=Larch&ask-pain=yes&u=cm"));
  assert.deepEqual(book.riders, []);
  assert.equal(book.units, "cm");
});

test("the same numbers are told from other ones", () => {
  const own = read("inseam=830&reach=460&name=Rowan&u=mm");
  for (const given of ["inseam=830", "u=in", "ask=stature", ""]) assert.ok(books.same(own, read(given)), given);
  for (const given of ["inseam=831", "stature=1740", "name=Kim", "inseam=830&estimated=inseam"]) assert.ok(!books.same(own, read(given)), given);
});

test("another rider stands beside the first; the same one gets the bike", () => {
  const book = books.bookOf(read("name=Rowan&inseam=830&reach=460"));
  books.addAll(book, undefined, books.bookOf(read("name=Kim&inseam=790&reach=430")));
  const place = books.addAll(book, undefined, books.bookOf(read("name=Rowan&inseam=830&reach=480")));
  assert.deepEqual(book.riders.map(({ record, bikes }) => [record, bikes.map((bike) => bike.record)]), [
    ["name=Rowan&inseam=830", ["reach=460", "reach=480"]], ["name=Kim&inseam=790", ["reach=430"]],
  ]);
  assert.equal(books.find(book, place).bike?.record, "reach=480");
  const ids = book.riders.flatMap(({ id, bikes }) => [id, ...bikes.map((bike) => bike.id)]);
  assert.equal(new Set(ids).size, ids.length, "no id stands twice");
  const other = books.addAll(book, undefined, books.bookOf(read("inseam=830&reach=1")));
  assert.equal(book.riders.length, 3, "somebody without a name is nobody known");
  assert.equal(books.find(book, other).rider?.record, "inseam=830");
});

test("one record takes the place of one, a book of several that of all", () => {
  const book = books.bookOf(read("name=Rowan&inseam=830&reach=460"));
  const { rider } = books.find(book);
  books.add(book, rider).bike.record = "reach=480";
  const place = books.replaceBy(book, books.placed(book), books.bookOf(read("name=Kim&inseam=790")));
  assert.deepEqual(book.riders.map(({ record, bikes }) => [record, bikes.map((bike) => bike.record)]), [["name=Kim&inseam=790", ["", "reach=480"]]]);
  assert.deepEqual(place, books.placed(book));
  const two = books.bookOf(read("name=A&inseam=1"));
  books.addAll(two, undefined, books.bookOf(read("name=B&inseam=2")));
  books.replaceBy(book, place, two);
  assert.deepEqual(book.riders.map(({ record }) => record), ["name=A&inseam=1", "name=B&inseam=2"]);
});

test("what the bike has is what it had before a change that is not made", () => {
  for (const [text, now] of [["a=2", "2"], ["a=2&a.was=1", "1"], ["a=2&a.was=1&a.done=yes", "2"], ["a=2&from=a.knee-bend", undefined], ["", undefined]]) {
    assert.equal(books.present(read(text ?? ""), "a"), now, text);
  }
  assert.deepEqual(books.logged(read("a=2&a.was=1"), read("a=2&a.was=1&a.done=2026-01-02"), ["a"], "2026-03-04"), [{ on: "2026-01-02", key: "a", value: "2", was: "1" }]);
  assert.deepEqual(books.logged(read("a=2&a.was=1&a.done=yes"), read("a=1"), ["a"], "2026-03-04"), [{ on: "2026-03-04", key: "a", value: "1", was: "2" }]);
  assert.deepEqual(books.logged(read("a=2&a.was=1"), read("a=1"), ["a"], "2026-03-04"), [], "a plan that is given up was no change");
});
