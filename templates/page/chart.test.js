import assert from "node:assert/strict";
import test from "node:test";
import { Engine, type, until, visit } from "../../testdata/judges/dom.js";

visit('<form><textarea id="b-sizes" name="sizes" data-chart="sizes">Size\tM\tL</textarea></form>', "#stem-length=50&reach=455");
const engine = await import("./engine.js");
const owner = await import("./owner.js");
const record = await import("./record.js");
const { one } = await import("./dom.js");
const { chart, text } = await import("./chart.js");

owner.open();
const form = one(document, "form", HTMLFormElement), field = one(form, "textarea", HTMLTextAreaElement);
chart(field);
engine.begin();
const worker = Engine.ready();
const place = one(document, ".chart");
const cell = (/** @type {string} */ id) => one(place, `#${id}`, HTMLInputElement);
const html = `<p class="understood"></p><table><thead><tr><th>Size</th><th><input type="text" id="n0" value="M"></th><th><input type="text" id="n1" value="L"></th></tr></thead>
<tbody><tr data-key="reach"><th>Reach <span>mm</span></th><td><input type="text" id="r0" value="460"></td><td><input type="text" id="r1" value="x" aria-invalid="true"></td></tr>
<tr data-key="stem-length"><th>Stem</th><td><input type="text" id="s0" value="45"></td><td><input type="text" id="s1" value=""></td></tr>
<tr data-key="stack"><th>Stack</th><td><input type="text" id="k0" value="625"></td><td><input type="text" id="k1" value="640"></td></tr></tbody></table>
<div class="mine" data-parts="stem-length"><button type="button" data-mine="reach=460&amp;stem-length=45&amp;stack=625">My size is M</button></div><p class="taken" hidden></p>`;

test("what is pasted is asked about and shown", async () => {
  const { desk, key, text: asked, bare } = worker.question;
  assert.deepEqual({ desk, key, asked, bare }, { desk: "chart", key: "sizes", asked: "Size\tM\tL", bare: "mm" });
  worker.answer({ html });
  assert.equal(cell("r0").value, "460");
});

test("a mended cell goes into the field as a whole chart, and the form hears of the field alone", () => {
  /** @type {string[]} */
  const told = [];
  form.oninput = ({ target }) => told.push(/** @type {HTMLInputElement} */ (target).name);
  cell("r1").focus();
  type(cell("r1"), "485");
  assert.equal(field.value, "name;reach;stem-length;stack\nM;460;45;625\nL;485;;640");
  assert.deepEqual(told, ["sizes"]);
  assert.equal(cell("r1").hasAttribute("aria-invalid"), false);
  type(cell("n1"), "");
  assert.match(text(place), /^2;485;;640$/m, "a size without a name gets its number");
});

test("the table is not written over while somebody mends it", async () => {
  await until(() => worker.asked.length > 1);
  const mine = cell("r1");
  worker.answer({ html: "" });
  assert.equal(cell("r1"), mine);
  mine.blur();
  await until(() => worker.asked.length > 2); // when they are done
  worker.answer({ html });
});

test("the size becomes the bike, but for what its rider wrote down", () => {
  one(place, "[data-mine]").click();
  assert.equal(record.at("stack"), "625");
  assert.equal(record.at("from stack"), "stack.size-match");
  assert.deepEqual([record.at("reach"), record.at("stem-length")], ["455", "50"]);
  const line = one(place, ".taken");
  assert.match(line.textContent ?? "", /^My size is M\. Numbers of the chart that every chapter uses now: 1\. Kept as you have them: Reach, Stem\./);
  one(line, "button").click();
  assert.deepEqual([record.at("reach"), record.at("stem-length")], ["460", "45"]);
  assert.equal(record.at("from stem-length"), undefined, "a part that can be exchanged is what the bike has");
});

test("and it can be undone", () => {
  one(place, ".taken button:last-of-type").click();
  assert.deepEqual([record.at("reach"), record.at("stem-length"), record.at("stack")], ["455", "50", undefined]);
});
