import assert from "node:assert/strict";
import test from "node:test";
import { visit } from "../../testdata/judges/dom.js";

visit('<p class="garage" hidden><button type="button" data-settings="saddle-height">Set it</button></p><ol class="acts"><li><p><input type="checkbox" data-tick="saddle/height wrap-tape">Wrap tape.</p></li><li><p><input type="checkbox" data-tick="saddle/height loosen">Loosen.</p></li></ol>', "#inseam=830");
const owner = await import("./owner.js");
const record = await import("./record.js");
const { all, one } = await import("./dom.js");
owner.open();
record.tick("saddle/height loosen", true);
await import("./acts.js");
const boxes = all(document, "[data-tick]", HTMLInputElement);

test("what was ticked before is ticked again, and the way through the acts is offered", () => {
  assert.deepEqual(boxes.map(({ checked }) => checked), [false, true]);
  assert.equal(one(document, ".garage").hidden, false);
});

test("a tick is kept under the act's own name, and taken back", () => {
  boxes[0].click();
  assert.equal(record.ticked("saddle/height wrap-tape"), true);
  assert.equal(record.at("inseam"), "830", "a tick is no number of the record");
  boxes[0].click();
  assert.equal(record.ticked("saddle/height wrap-tape"), false);
});

test("a tick that is made elsewhere shows in the list", () => {
  record.tick("saddle/height wrap-tape", true);
  assert.equal(boxes[0].checked, true);
});
