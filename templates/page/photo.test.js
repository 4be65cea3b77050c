import assert from "node:assert/strict";
import test from "node:test";
import { until, visit } from "../../testdata/judges/dom.js";

visit(`<form><div class="field"><input name="elbow" data-photo="elbow-read" data-within="6"></div>
<fieldset><legend>Elbow is read</legend><label><input type="radio" name="elbow-read" value="still">Holding still</label>
<label><input type="radio" name="elbow-read" value="moving">While riding</label><label><input type="radio" name="elbow-read" value="">Not sure</label></fieldset></form>`);
Object.assign(globalThis, {
  ResizeObserver: class {
    observe() {}
  },
  createImageBitmap: async () => ({ width: 800, height: 600, close() {} }),
});
const { all, one } = await import("./dom.js");
const owner = await import("./owner.js");
const { open } = await import("./photo.js");

const form = one(document, "form", HTMLFormElement), field = one(form, "[name=elbow]", HTMLInputElement);
const dialog = one(document, "dialog.photo"), status = one(dialog, ".work + [role=status]");
const picker = one(dialog, "#photo-file", HTMLInputElement), work = one(dialog, ".work");
const aims = all(dialog, ".aim"), take = one(dialog, ".take", HTMLButtonElement);

/**
 * Presses a key in a point's detail so many times.
 * @param {HTMLElement} aim
 * @param {string} key
 * @param {number} [times]
 */
const press = (aim, key, times = 1) => {
  for (let i = 0; i < times; i++) aim.onkeydown?.(/** @type {KeyboardEvent} */ (new KeyboardEvent("keydown", { key, shiftKey: true })));
};
const pick = (/** @type {Blob} */ file) => {
  Object.defineProperty(picker, "files", { value: [file], configurable: true });
  picker.dispatchEvent(new Event("change"));
};
// PNG (ISO/IEC 15948, 11.2.2): the signature, then IHDR with width and height.
const png = new File([Buffer.from("89504e470d0a1a0a0000000d4948445200000320000002580000000000000000000000", "hex")], "side.png");

test("it asks how the photo was taken in the words of the form", () => {
  open(field);
  assert.equal(one(dialog, "legend").textContent, "Elbow is read");
  assert.deepEqual(all(dialog, "fieldset label").map((label) => label.textContent), ["Holding still", "While riding"]);
  assert.equal(status.textContent, "Pick a photo first.");
});

test("what is no photo is refused", async () => {
  pick(new File(["GIF89a and so on, thirty bytes and more"], "a.gif"));
  await until(() => /“a\.gif” is no photo/.test(one(dialog, "[role=alert]").textContent ?? ""));
  assert.equal(work.hidden, true);
});

// The canvas is 800 by 600, and the points begin in the middle of its width, at 0.3, 0.55
// and 0.8 of its height. Ten presses move one by 100 pixels, so that the ankle comes to
// (550, 480) under the knee at (400, 330): the shank leans atan(150/150) = 45 degrees.
test("three points placed by keys give the bend", async () => {
  pick(png);
  await until(() => !work.hidden);
  assert.equal(status.textContent, "Click the hip.");
  for (const aim of aims) press(aim, "Enter");
  assert.match(status.textContent ?? "", /^Knee bend 0\.0° ± /);
  press(aims[2], "ArrowRight", 15);
  assert.match(status.textContent ?? "", /^Knee bend 45\.0° ± /);
  assert.equal(aims[2].ariaValueText, "550 across, 480 down");
  press(aims[2], "a");
  assert.match(status.textContent ?? "", /^Knee bend 45\.0°/, "other keys are the browser's");
});

test("a point stays on the photo, and two on one spot have no bend", () => {
  press(aims[1], "ArrowUp", 15);
  assert.match(status.textContent ?? "", /^Two of the points lie on one spot/);
  assert.equal(take.disabled, true);
  press(aims[1], "ArrowUp", 40);
  assert.equal(aims[1].ariaValueText, "400 across, 0 down");
  press(aims[1], "ArrowDown", 33);
  assert.match(status.textContent ?? "", /^Knee bend 45\.0° ± /);
});

test("the correction is the reader's to add", () => {
  const add = one(dialog, ".end > label [type=checkbox]", HTMLInputElement);
  add.checked = true;
  add.dispatchEvent(new Event("change"));
  assert.match(status.textContent ?? "", /^Knee bend 47\.2° ± .*, with 2\.2° added/);
  add.checked = false;
  add.dispatchEvent(new Event("change"));
});

test("it is used once it is said how it was taken, in the field that asked", () => {
  /** @type {string[]} */
  const told = [];
  form.oninput = ({ target }) => told.push(/** @type {HTMLInputElement} */ (target).name);
  take.focus();
  take.click();
  assert.equal(status.textContent, "Say first how the knee was read.");
  one(dialog, "[value=moving]", HTMLInputElement).checked = true;
  take.click();
  assert.equal(field.value, "45.0");
  assert.equal(one(form, "[value=moving]", HTMLInputElement).checked, true);
  assert.deepEqual(told, ["elbow-read", "elbow"]);
});

test("a form that was written anew meanwhile gets the reading too", () => {
  open(field);
  field.outerHTML = '<input name="elbow">';
  one(dialog, "[value=still]", HTMLInputElement).checked = true;
  take.click();
  assert.equal(one(form, "[name=elbow]", HTMLInputElement).value, "45.0");
});

test("a leg too small to be read well hands its ± over", () => {
  const asked = one(form, "[name=elbow]", HTMLInputElement);
  Object.assign(asked.dataset, { photo: "elbow-read", within: "6" });
  open(asked);
  const told = () => Number(/ ± ([\d.]+)°/.exec(status.textContent ?? "")?.[1]);
  press(aims[2], "ArrowLeft", 14);
  press(aims[2], "ArrowUp", 15); // to 10 pixels beside the knee
  assert.ok(told() > 6, status.textContent ?? "");
  one(dialog, "[value=still]", HTMLInputElement).checked = true;
  take.click();
  assert.match(asked.value, /^[\d.]+ ± [\d.]+$/);
  assert.equal(Number(asked.value.split(" ± ")[1]), told());
});

test("forgetting puts the photo away", () => {
  owner.forget();
  assert.equal(work.hidden, true);
  assert.equal(one(dialog, "canvas", HTMLElement).getAttribute("width"), "1");
});
