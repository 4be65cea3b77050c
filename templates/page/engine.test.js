import assert from "node:assert/strict";
import test from "node:test";
import { Engine, until, visit } from "../../testdata/judges/dom.js";

visit("");
document.documentElement.dataset.near = "saddle";
/** @type {string[]} the engines that were asked for */
const loaded = [];
let broken = false;
globalThis.engineParts = (name) => {
  loaded.push(name);
  return broken ? Promise.reject(new Error("no network")) : Promise.resolve({ engine: new Blob(), texts: [] });
};
const engine = await import("./engine.js");

/** @param {string} name */
const asker = (name) => ({
  whole: false,
  near: true,
  /** @type {any[]} */
  taken: [],
  question: () => ({ record: "", name }),
  /** @param {object} reply */
  take(reply) {
    this.taken.push(reply);
  },
});
const [one, two] = [asker("one"), asker("two")];

test("nothing starts before it is wanted, and then from our own origin", () => {
  engine.ask(one);
  assert.equal(Engine.all.length, 0);
  engine.begin();
  assert.equal(Engine.all[0].url, "https://guide.example/assets/engine-1/worker.js");
  assert.deepEqual(Engine.all[0].asked, [], "it is not ready");
  assert.deepEqual(loaded, ["saddle"]);
});

test("one question is under way, and of each bench the newest waits", () => {
  const worker = Engine.ready();
  assert.equal(worker.question.name, "one");
  engine.ask(two);
  engine.ask(one);
  engine.ask(two);
  assert.equal(worker.asked.length, 1);
  worker.answer({ text: "1" });
  assert.equal(worker.question.name, "two");
  worker.answer({ text: "2" });
  worker.answer({ text: "3" });
  assert.deepEqual([worker.asked.length, one.taken.length, two.taken.length], [3, 2, 1]);
});

test("lists come joined by NUL and are taken apart", () => {
  const worker = Engine.ready();
  engine.ask(one);
  worker.answer({ drawn: "<div></div>", parts: "<p>a</p>\0<p>b</p>", record: "\0inseam\x00830\0u\0in", form: "<p></p>" });
  const { parts, record, form } = one.taken.at(-1);
  assert.deepEqual(parts, ["<div></div>", "<p>a</p>", "<p>b</p>"]);
  assert.deepEqual(record, [["inseam", "830"], ["u", "in"]]);
  assert.equal(form, "<p></p>");
  engine.ask(one);
  worker.answer({ text: "x" });
  assert.deepEqual(one.taken.at(-1).record, []);
});

test("an answer to an older question is passed over", () => {
  const worker = Engine.ready(), before = one.taken.length;
  engine.ask(one);
  worker.onmessage({ data: { id: 1, reply: { text: "late" } } });
  assert.equal(one.taken.length, before);
  worker.answer({ text: "now" });
  assert.equal(one.taken.at(-1).text, "now");
});

/** A question that is another one each time it is asked. */
const changing = { ...asker(""), count: 0, question: () => ({ record: "", name: `two ${changing.count++}` }) };

test("a dead worker is replaced and never asked again what it died of", () => {
  engine.ask(two);
  const first = /** @type {Engine} */ (Engine.all.at(-1)), taken = two.taken.length;
  first.onmessage({ data: { dead: true } });
  assert.equal(first.ended, true);
  assert.equal(two.whole, true, "the form is to be written anew");
  const second = Engine.ready();
  assert.notEqual(second, first);
  assert.deepEqual(second.asked, [], "it is told, and not asked");
  assert.match(two.taken[taken].error, /stopped while it computed this/u);
  assert.equal(two.whole, true, "with the next question the form comes as well");
  engine.ask(two);
  engine.ask(one);
  assert.equal(second.question.name, "one", "what waits behind it is answered");
  assert.equal(two.taken.length, taken + 2);
  second.answer({ text: "1" });
  first.onerror();
  assert.equal(second.ended, false, "what the old one still says counts no more");
});

test("a question that no worker began is asked again", () => {
  const worker = Engine.ready(), { onmessage } = worker;
  worker.onmessage = () => {};
  engine.ask(one);
  worker.onmessage = onmessage;
  worker.onerror();
  const next = Engine.ready();
  assert.equal(next.question.name, "one");
  next.answer({ text: "1" });
});

test("an engine that dies of everything is down after three deaths within a minute", () => {
  let down = 0;
  engine.on.down = () => {
    down++;
  };
  const started = Engine.all.length;
  engine.ask(changing);
  assert.equal(down, 0);
  /** @type {Engine} */ (Engine.all.at(-1)).onerror();
  assert.deepEqual([down, Engine.all.length], [1, started]);
});

const three = asker("three");

test("what is tried again begins anew", () => {
  const started = Engine.all.length;
  engine.again();
  const worker = Engine.ready();
  assert.equal(Engine.all.length, started + 1);
  worker.answer({ text: "at last" });
  assert.equal(changing.taken.at(-1).text, "at last");
});

test("what the section's engine has not is asked of the whole one", () => {
  const near = Engine.ready();
  /** @type {any} */
  let undone;
  Object.assign(one, {
    undo(/** @type {any} */ q) {
      undone = q;
    },
  });
  engine.ask(one);
  near.answer({ elsewhere: true });
  assert.equal(undone.name, "one");
  assert.equal(loaded.at(-1), "whole");
  const whole = Engine.ready();
  assert.notEqual(whole, near);
  assert.equal(whole.question.name, "one");
  whole.answer({ text: "from afar" });
  assert.equal(one.taken.at(-1).text, "from afar");
  engine.ask(three);
  assert.equal(near.question.name, "three", "what the section has is asked there as before");
  near.answer({ text: "near" });
  assert.equal(three.taken.at(-1).text, "near");
});

test("an engine that cannot be loaded says so, and is tried again when somebody asks for that", async () => {
  /** @type {boolean[]} */
  const down = [];
  engine.on.down = (ran) => {
    down.push(ran);
  };
  broken = true;
  dispatchEvent(Object.assign(new Event("pageshow"), { persisted: true }));
  await until(() => down.length);
  const started = Engine.all.length;
  engine.ask(three);
  assert.deepEqual([down[0], Engine.all.length], [false, started], "it is not tried again by itself");
  broken = false;
  engine.again();
  Engine.ready().answer({ text: "loaded" });
  assert.equal(three.taken.at(-1).text, "loaded");
});
