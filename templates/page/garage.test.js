import assert from "node:assert/strict";
import test from "node:test";
import { Engine, until, visit } from "../../testdata/judges/dom.js";

visit('<h1>Saddle height</h1><p class="garage"><button type="button" data-settings="saddle-height">Set it</button></p><ol class="acts"><li><p><input type="checkbox" data-tick="saddle/height wrap">Wrap tape.</p></li><li><p><input type="checkbox" data-tick="saddle/height loosen">Loosen.</p><aside class="caution">The mark stays inside.</aside></li></ol>', "#saddle-height=722");
const owner = await import("./owner.js");
const record = await import("./record.js");
const { all, one } = await import("./dom.js");
owner.open();
record.tick("saddle/height wrap", true);
const { walk } = await import("./garage.js");
const dialog = one(document, ".walk-through"), act = one(dialog, ".act");
const [back, on] = all(dialog, ".turn button", HTMLButtonElement);
walk(one(document, ".garage button"));
const worker = Engine.ready();

test("it opens at the first act that is not ticked, with the caution there", () => {
  assert.equal(one(dialog, ".at").textContent, "Act 2 of 2 Saddle height");
  assert.equal(one(act, ".do").textContent, "Loosen.");
  assert.equal(one(act, ".caution").textContent, "The mark stays inside.");
  assert.equal(on.textContent, "Next: ride");
});

test("back stops at the first act", () => {
  back.click();
  assert.equal(one(act, ".do").textContent, "Wrap tape.");
  assert.equal(one(act, "[data-tick]", HTMLInputElement).checked, true);
  assert.equal(back.disabled, true);
  on.click();
});

test("the number comes from the engine, for the record as it is", async () => {
  await until(() => worker.question.desk === "act");
  assert.deepEqual([worker.question.key, worker.question.record], ["saddle-height", "saddle-height=722"]);
  worker.answer({ html: '<ol class="plan" data-key="saddle-height" data-value="727"><li data-step="727" data-last><span class="big">727 mm</span></li></ol>' });
  await until(() => dialog.querySelector(".plan"));
});

test("only after two rides the last step is written down as made", () => {
  on.click();
  const ticks = () => all(act, "[data-tick]", HTMLInputElement);
  const made = () => all(act, "button").find(({ textContent }) => textContent === "Write it on the sheet as made");
  assert.equal(one(act, "h2").textContent, "Ride 727 mm");
  assert.equal(ticks().length, 2);
  assert.equal(made(), undefined);
  for (const { dataset } of ticks()) record.tick(dataset.tick ?? "", true);
  back.click();
  on.click();
  made()?.click();
  assert.equal(record.at("saddle-height"), "727");
  assert.equal(record.at("saddle-height.was"), "722");
  assert.ok(record.at("saddle-height.done"), "with the day");
});

test("another list of the page is walked through by itself", () => {
  one(dialog, ".head button:last-child", HTMLButtonElement).click();
  const other = document.createElement("div");
  other.innerHTML = '<p class="garage"><button type="button" data-settings="">Clips</button></p><ol class="acts"><li><p><input type="checkbox" data-tick="saddle/height hold">Hold on to a wall.</p></li></ol>';
  document.body.append(other);
  walk(one(other, ".garage button"));
  assert.match(one(dialog, ".at").textContent ?? "", /^Act 1 of 1 /u);
  assert.equal(one(act, ".do").textContent, "Hold on to a wall.");
  assert.equal(dialog.querySelector(".plan"), null);
});
