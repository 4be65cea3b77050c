import assert from "node:assert/strict";
import test from "node:test";
import { visit } from "../../testdata/judges/dom.js";

visit("", "#name=Kim&inseam=790&reach=430");
const mine = "name=Rowan&inseam=830&stature=1740&reach=460";
localStorage.setItem("plumbline", JSON.stringify({ version: 1, record: mine }));
const owner = await import("./owner.js");
const record = await import("./record.js");
const { bookOf, read } = await import("./book.js");

/** @type {(boolean | undefined)[]} */
const heard = [];
record.listen((_keys, _source, replaced) => heard.push(replaced));
owner.open();
const names = () => owner.riders().map(({ name }) => name);
const kept = () => localStorage.getItem("plumbline") ?? "";
/** @param {string} hash */
const follow = (hash) => {
  history.pushState(null, "", hash);
  dispatchEvent(new Event("hashchange"));
};

test("a link of other numbers is shown apart, and nothing of it reaches the device", () => {
  assert.equal(record.text(), "name=Kim&inseam=790&reach=430");
  assert.equal(owner.apart(), true);
  record.put([["inseam", "795"]]);
  record.tick("x", true);
  assert.equal(record.ticked("x"), true);
  assert.doesNotMatch(kept(), /Kim|79|"x"/);
});

test("the reader goes back to their own", () => {
  owner.answer("cancel");
  assert.equal(record.text(), mine);
  assert.equal(owner.apart(), false);
  assert.equal(record.ticked("x"), false, "a tick of somebody else's goes with them");
  assert.equal(heard.at(-2), true);
});

test("both are kept, beside one another, and that can be undone", () => {
  follow("#name=Kim&inseam=790&reach=430");
  assert.deepEqual([record.at("inseam"), owner.apart(), record.at("stature")], ["790", true, undefined]);
  owner.answer("both");
  assert.deepEqual(names(), ["Rowan", "Kim"]);
  assert.deepEqual([record.at("name"), owner.apart()], ["Kim", false]);
  assert.match(kept(), /Kim/);
  owner.undo();
  assert.deepEqual(names(), ["Rowan"]);
  assert.doesNotMatch(kept(), /Kim/);
  assert.equal(record.at("name"), "Kim", "the link is on show as before");
  owner.answer("cancel");
});

test("the other numbers take the place of these whole, and that can be undone", () => {
  follow("#name=Kim&inseam=790&reach=430");
  owner.answer("replace");
  assert.equal(record.text(), "name=Kim&inseam=790&reach=430");
  assert.doesNotMatch(kept(), /Rowan|1740/, "no number of the first stays among those of the second");
  owner.undo();
  owner.answer("cancel");
  assert.equal(record.text(), mine);
});

test("what a client sent back stays apart even from the same numbers", () => {
  follow("#inseam=830&ask=inseam&ask.back=yes");
  assert.equal(owner.apart(), true);
  owner.forget();
  assert.equal(record.text(), mine, "forgetting what they sent leaves the own numbers");
});

test("a fitter's settings stay apart, and are planned on the bike of the same rider alone", () => {
  record.put([["saddle-height", "720"]]);
  const sent = "#ask.from=Larch+Hollow&ask.note=Slowly.&name=Rowan&inseam=830&stature=1740&reach=460&saddle-height=736&from=saddle-height.fitting&saddle-height.was=718&bar-width=755&from=bar-width.fitting&ask.end=9.0";
  follow(sent.replace("inseam=830", "inseam=790"));
  assert.deepEqual([owner.apart(), owner.adviser(), owner.plannable()], [true, "Larch Hollow", false], "another body is another person");
  follow(sent);
  assert.deepEqual([owner.apart(), owner.plannable(), record.at("saddle-height.was")], [true, true, "718"]);
  assert.doesNotMatch(kept(), /736|755|Larch/, "nothing is taken before the answer");
  owner.answer("plan");
  assert.equal(owner.apart(), false);
  assert.deepEqual(["saddle-height", "saddle-height.was", "from saddle-height", "bar-width", "bar-width.was", "reach", "ask.from"].map(record.at),
    ["736", "720", "saddle-height.fitting", "755", undefined, "460", undefined], "the bike's own value is the way back, not the one in the link");
  assert.equal(record.log().at(-1)?.note, "Settings from Larch Hollow: Slowly.");
  owner.undo();
  owner.answer("cancel");
  assert.equal(record.at("saddle-height"), "720");
  record.put([["saddle-height", ""]]);
});

test("a link of the same numbers asks nothing, and neither does a request", () => {
  follow("#inseam=830");
  assert.deepEqual([owner.apart(), record.text()], [false, mine]);
  follow("#ask=stature&ask.by=Larch");
  assert.deepEqual([owner.apart(), record.at("ask"), record.at("inseam")], [false, "stature", "830"]);
  assert.doesNotMatch(kept(), /ask/);
});

test("a file waits for its answer, and changes nothing until then", () => {
  follow("#inseam=830");
  assert.equal(owner.receive(bookOf(read("name=Kim&inseam=790"))), true);
  assert.deepEqual([record.text(), owner.apart()], [mine, false]);
  owner.answer("cancel");
  assert.equal(record.text(), mine);
  owner.receive(bookOf(read("name=Kim&inseam=790")));
  owner.answer("both");
  assert.deepEqual(names(), ["Rowan", "Kim"]);
  assert.equal(record.at("stature"), undefined);
});

test("where nothing is kept a corrected link is followed, and can be undone", () => {
  owner.keep(false);
  follow("#inseam=84O");
  assert.deepEqual([record.text(), owner.apart()], ["inseam=84O", false]);
  heard.length = 0;
  follow("#inseam=840");
  assert.equal(record.text(), "inseam=840");
  assert.equal(heard.includes(true), true, "fields with what could not be read are written anew");
  owner.undo();
  assert.equal(record.text(), "inseam=84O");
});

test("where nothing is kept a link of another name is asked about all the same", () => {
  follow("#name=Rowan&inseam=830");
  follow("#name=Kim&inseam=790");
  assert.deepEqual([record.at("name"), owner.apart()], ["Kim", true]);
  owner.answer("both");
  assert.deepEqual([owner.kept(), names().slice(-2)], [false, ["Rowan", "Kim"]]);
  owner.undo();
  owner.answer("cancel");
  assert.equal(record.text(), "name=Rowan&inseam=830");
});

test("a page that comes back undoes nothing where the numbers are others by now", () => {
  owner.forget();
  assert.ok(owner.undoable());
  const back = () => dispatchEvent(Object.assign(new Event("pageshow"), { persisted: true }));
  back();
  assert.ok(owner.undoable(), "nothing has changed");
  const tab = JSON.parse(sessionStorage.getItem("plumbline-tab") ?? "{}");
  sessionStorage.setItem("plumbline", JSON.stringify({ version: 1, record: "name=Sam&inseam=850" }));
  sessionStorage.setItem("plumbline-tab", JSON.stringify({ ...tab, text: "name=Sam&inseam=850" }));
  history.replaceState({ store: true }, "", "#name=Sam&inseam=850");
  back();
  assert.deepEqual([record.at("name"), owner.undoable()], ["Sam", undefined]);
  owner.forget();
});

test("numbers come in without a question where there are none", () => {
  owner.forget();
  assert.equal(owner.receive(bookOf(read("name=Kim&inseam=790"))), false);
  assert.equal(record.text(), "inseam=790&name=Kim".split("&").reverse().join("&"));
});

test("a later version's book on the device is left alone", () => {
  owner.keep(false);
  localStorage.setItem("plumbline", '{"version":9}');
  assert.equal(owner.keep(true), false);
  assert.equal(kept(), '{"version":9}');
});
