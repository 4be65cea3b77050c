// Reads the bend of a knee off the reader's own photo: hip, knee and ankle are placed on it by
// hand. The photo lives on a canvas of this page and nowhere else.
import { bend } from "./bend.js";
import { all, make, named } from "./dom.js";
import { draw, open as load } from "./photofile.js";
import * as record from "./record.js";
import { decimal, pieces, t } from "./text.js";
/** @import { Bend } from "./types.d.ts" */

const low = 2.2; // degrees that film from the side reads low (Fonda, Šarabon and Li 2014)
const off = 3; // pixels on the screen by which a point may be misplaced
const near = 16; // pixels on the screen within which a click means a point that is there
const names = [t("Hip"), t("Knee"), t("Ankle")], clicks = [t("Click the hip."), t("Click the knee."), t("Click the ankle.")];

/**
 * Makes an element of a drawing.
 * @param {string} tag
 * @param {Record<string, string | number>} about
 * @param {...(Node | string)} inside
 */
const shape = (tag, about, ...inside) => {
  const element = document.createElementNS("http://www.w3.org/2000/svg", tag);
  for (const [name, value] of Object.entries(about)) element.setAttribute(name, String(value));
  element.append(...inside);
  return element;
};
/**
 * Every line is drawn twice, so that it stands out on whatever the photo shows.
 * @param {string} d
 * @param {string} kind
 */
const line = (d, kind) => [shape("path", { d, class: "halo" }), shape("path", { d, class: kind })];
/**
 * @param {number} x
 * @param {number} y
 * @param {number} arm
 */
const cross = (x, y, arm) => `M${x - arm} ${y}h${arm - 4}m8 0h${arm - 4}M${x} ${y - arm}v${arm - 4}m0 8v${arm - 4}`;

const canvas = make("canvas", { role: "img", ariaLabel: t("Your photo") });
const sketch = shape("svg", { "aria-hidden": "true" });
const whole = make("div", { className: "whole" }, canvas, sketch);
const points = names.map((joint, i) => {
  const glass = make("canvas", {}), mark = shape("svg", { "aria-hidden": "true", viewBox: "-50 -50 100 100" }, ...line(cross(0, 0, 26), "hot"));
  const state = make("small", {});
  const aim = make("div", { role: "slider", className: "aim", tabIndex: 0, ariaLabel: joint, ariaRoleDescription: t("cross on the photo"), ariaValueMin: "0" }, glass, mark);
  aim.setAttribute("aria-describedby", "photo-keys");
  const box = make("div", { className: "point" }, aim, make("p", {}, make("b", {}, joint), " ", state));
  return { name: joint, aim, glass, state, start: 0.3 + 0.25 * i, box, x: 0, y: 0, by: 1, placed: false };
});
/** @typedef {typeof points[number]} Joint one of the three: where it is and what shows it */
/** @typedef {ReturnType<typeof view>} View */

const file = make("input", { type: "file", id: "photo-file", accept: "image/jpeg,image/png,image/webp" });
const wrong = make("p", { role: "alert", className: "wrong", id: "photo-wrong" });
const work = make("div", { className: "work", hidden: true },
  make("p", { id: "photo-keys" }, t("Click hip, knee and ankle. Then slide each detail until its cross sits on the joint. By keys: Tab goes from point to point, arrows move by 1 pixel, with Shift by 10, Enter places.")),
  whole, make("div", { className: "points" }, ...points.map(({ box }) => box)));
const status = make("p", { role: "status" });
const note = make("p", { className: "note" });
const ways = make("fieldset", {});
const add = make("input", { type: "checkbox" });
const use = make("button", { type: "button", className: "take" }, t("Use this"));
const again = make("button", { type: "button" }, t("Clear the points"));
const end = make("div", { className: "end", hidden: true }, note, ways,
  make("label", {}, add, " ", t("Add {0}°: film from the side read about that much low against a measurement in space (Fonda, Šarabon and Li 2014).", low)),
  make("div", { className: "buttons" }, use, again));
const shut = make("button", { type: "button" }, t("Close"));
const dialog = make("dialog", { className: "photo" },
  make("div", { className: "head" }, make("h2", { id: "photo-title" }, t("Read your knee off a photo")), shut),
  make("p", {}, t("Take it from the side, square to the bike, with the crank in line with the seat. The photo stays on this page: it is not sent and not kept.")),
  make("label", { htmlFor: file.id }, t("Your side photo")), file, wrong, work, status, end);
dialog.setAttribute("aria-labelledby", "photo-title");
file.setAttribute("aria-describedby", wrong.id);
document.body.append(dialog);

/** @type {HTMLFormElement | null} the form of the field that is read off the photo */
let form = null;
let name = "", how = "", within = ""; // that field, the choice that says how the photo was taken, and the ± that the field takes for granted
/** @type {string | undefined} */
let reading;
let doubt = 0; // its ±
/** @type {{ fromX: number, fromY: number, x: number, y: number, slid: boolean } | undefined} */
let drag;
let turn = 0;

// The photo is shown as large as fits, in the middle of its box.
function view() {
  const { width, height } = canvas.getBoundingClientRect();
  const scale = Math.min(width / canvas.width, height / canvas.height) || 1;
  const left = (width - scale * canvas.width) / 2, top = (height - scale * canvas.height) / 2;
  return {
    scale,
    detail: Math.max(1, 4 * scale),
    /** @param {number} x */
    x: (x) => left + scale * x,
    /** @param {number} y */
    y: (y) => top + scale * y,
    /**
     * @param {number} x
     * @param {number} y
     * @returns {[x: number, y: number]}
     */
    back: (x, y) => [(x - left) / scale, (y - top) / scale],
  };
}

/**
 * @param {number} value
 * @param {number} most
 */
const hold = (value, most) => Math.min(Math.max(value, 0), most);

/**
 * Moves a point to that pixel of the photo, as exactly as the scale lets one.
 * @param {Joint} point
 * @param {number} x
 * @param {number} y
 * @param {number} scale
 * @param {boolean} [placed]
 */
function move(point, x, y, scale, placed = point.placed) {
  Object.assign(point, { x: hold(x, canvas.width), y: hold(y, canvas.height), by: Math.max(1, off / scale), placed });
  show();
}

function clear() {
  for (const point of points) Object.assign(point, { x: canvas.width / 2, y: canvas.height * point.start, by: 1, placed: false });
  show();
}

function putAway() {
  turn++;
  file.value = wrong.textContent = "";
  canvas.width = canvas.height = 1;
  work.hidden = end.hidden = true;
  add.checked = false;
  clear();
}

function show() {
  const at = view(), [hip, knee, ankle] = points, next = points.find(({ placed }) => !placed);
  const found = next ? undefined : bend(hip, knee, ankle);
  reading = found && (found.angle + (add.checked ? low : 0)).toFixed(1);
  doubt = found?.margin ?? 0;
  use.disabled = !reading;
  tell(next, found);
  for (const point of points) magnify(point, at);
  const marks = points.filter(({ placed, aim }) => placed || aim === document.activeElement);
  sketch.replaceChildren(...leg(at, found), ...marks.flatMap((point) => label(point, at)));
}

/**
 * @param {Joint | undefined} next the next point to place
 * @param {Bend | undefined} found
 */
function tell(next, found) {
  note.textContent = "";
  if (work.hidden) status.textContent = wrong.textContent ? "" : t("Pick a photo first.");
  else if (next) status.textContent = clicks[points.indexOf(next)];
  else if (!found) status.textContent = t("Two of the points lie on one spot. Move one of them to its joint.");
  else {
    const bold = make("b", {}, `${decimal(Number(reading), 1)}°`), margin = decimal(found.margin, 1);
    status.replaceChildren(...add.checked ? pieces("Knee bend {0} ± {1}°, with {2}° added. A straight leg is 0.", bold, margin, String(low)) : pieces("Knee bend {0} ± {1}°. A straight leg is 0.", bold, margin));
    note.textContent = t("The ± comes from {0} pixels on your screen at each point; where the stickers sit adds to it.", off);
    if (found.margin > 4) note.append(" ", t("The leg is small here: slide each detail, or take a photo in which it is larger."));
    if (found.angle > 70) note.append(" ", t("A knee as bent as this is not at the bottom of the stroke. Is each point on its joint?"));
  }
}

/**
 * The leg's axes, the thigh's carried on beyond the knee, and the bend as an arc.
 * @param {View} at
 * @param {Bend | undefined} found
 */
function leg({ x, y }, found) {
  const [hip, knee, ankle] = points.map((point) => ({ x: x(point.x), y: y(point.y), placed: point.placed }));
  /**
   * @param {typeof hip} a
   * @param {typeof hip} b
   */
  const axis = (a, b) => (a.placed && b.placed ? line(`M${a.x} ${a.y}L${b.x} ${b.y}`, "centre") : []);
  const lines = [...axis(hip, knee), ...axis(knee, ankle)];
  if (!found) return lines;
  const upper = Math.hypot(knee.x - hip.x, knee.y - hip.y), lower = Math.hypot(ankle.x - knee.x, ankle.y - knee.y);
  /** @param {number} far */
  const along = (far) => `${knee.x + far * (knee.x - hip.x) / upper} ${knee.y + far * (knee.y - hip.y) / upper}`;
  const r = 0.6 * Math.min(upper, lower), shin = `${knee.x + r * (ankle.x - knee.x) / lower} ${knee.y + r * (ankle.y - knee.y) / lower}`;
  return [...lines, ...line(`M${knee.x} ${knee.y}L${along(1.15 * r)}`, "thin"), ...line(`M${along(r)}A${r} ${r} 0 0 ${found.turn > 0 ? 1 : 0} ${shin}`, "hot")];
}

/**
 * @param {Joint} point
 * @param {View} at
 */
function label(point, at) {
  const x = at.x(point.x), y = at.y(point.y), right = x < at.x(canvas.width) - 70;
  const kind = point.placed ? "hot" : "hot loose";
  return [...line(cross(x, y, 14), kind), shape("text", { x: x + (right ? 18 : -18), y: y - 8, class: right ? "" : "left" }, point.name)];
}

/**
 * The surroundings of a point, with the point in the middle.
 * @param {Joint} point
 * @param {View} at
 */
function magnify({ glass, aim, state, x, y, placed }, { detail }) {
  const sharp = globalThis.devicePixelRatio, width = aim.clientWidth, height = aim.clientHeight;
  glass.width = Math.max(1, Math.round(width * sharp));
  glass.height = Math.max(1, Math.round(height * sharp));
  const ink = glass.getContext("2d");
  if (ink) {
    ink.imageSmoothingEnabled = detail < 3;
    ink.drawImage(canvas, x - width / detail / 2, y - height / detail / 2, width / detail, height / detail, 0, 0, glass.width, glass.height);
  }
  aim.classList.toggle("loose", !placed);
  state.textContent = placed ? "" : t("not placed");
  aim.ariaValueMax = String(canvas.width);
  aim.ariaValueNow = String(Math.round(x));
  aim.ariaValueText = placed ? t("{0} across, {1} down", Math.round(x), Math.round(y)) : t("not placed, {0} across, {1} down", Math.round(x), Math.round(y));
}

file.onchange = async () => {
  const picked = file.files?.[0], mine = ++turn;
  if (!picked) return;
  wrong.textContent = "";
  status.textContent = t("The photo is being opened.");
  let bitmap;
  try {
    bitmap = await load(picked);
  } catch (error) {
    if (mine !== turn) return;
    putAway();
    wrong.textContent = error instanceof Error ? error.message : String(error);
    show();
    return;
  }
  if (mine !== turn) {
    bitmap.close();
    return;
  }
  draw(bitmap, canvas);
  work.hidden = end.hidden = false;
  clear();
};

whole.onclick = ({ clientX, clientY }) => {
  const at = view(), box = canvas.getBoundingClientRect(), x = clientX - box.left, y = clientY - box.top;
  /** @param {Joint} point */
  const away = (point) => Math.hypot(at.x(point.x) - x, at.y(point.y) - y);
  const here = points.filter((point) => point.placed && away(point) < near).sort((a, b) => away(a) - away(b))[0];
  const held = points.find(({ aim }) => aim === document.activeElement);
  const point = here ?? points.find(({ placed }) => !placed) ?? held ?? points[2];
  point.aim.focus({ preventScroll: true });
  // A click on a point that is there takes it up; the next one moves it.
  if (!here || here === held) move(point, ...at.back(x, y), at.scale, true);
};
// A press on the photo would take the focus from the point that is held.
whole.onmousedown = (event) => event.preventDefault();

/** @type {Record<string, [right: number, down: number]>} what a key does to a point */
const steps = { ArrowLeft: [-1, 0], ArrowRight: [1, 0], ArrowUp: [0, -1], ArrowDown: [0, 1], Enter: [0, 0], " ": [0, 0] };

/**
 * Lets a point be moved in its detail, by keys and by sliding.
 * @param {Joint} point
 */
function steer(point) {
  const { aim } = point;
  aim.onfocus = aim.onblur = show;
  aim.onkeydown = (event) => {
    if (!Object.hasOwn(steps, event.key) || event.ctrlKey || event.altKey || event.metaKey) return;
    event.preventDefault();
    const [x, y] = steps[event.key], { detail } = view(), step = event.shiftKey ? 10 : 1;
    const placing = !x && !y;
    move(point, point.x + step * x, point.y + step * y, detail, placing || point.placed);
    if (placing) points.find(({ placed }) => !placed)?.aim.focus();
  };
  aim.onpointerdown = (event) => {
    if (event.button) return;
    aim.setPointerCapture(event.pointerId);
    drag = { fromX: event.clientX, fromY: event.clientY, x: point.x, y: point.y, slid: false };
  };
  aim.onpointermove = (event) => {
    if (!drag || !aim.hasPointerCapture(event.pointerId)) return;
    const { detail } = view(), x = event.clientX - drag.fromX, y = event.clientY - drag.fromY;
    drag.slid ||= Math.hypot(x, y) > 3;
    if (drag.slid) move(point, drag.x - x / detail, drag.y - y / detail, detail, true);
  };
  // A tap brings the place that was tapped under the cross.
  aim.onpointerup = (event) => {
    const box = aim.getBoundingClientRect(), { detail } = view();
    if (drag && !drag.slid && point.placed) move(point, point.x + (event.clientX - box.left - box.width / 2) / detail, point.y + (event.clientY - box.top - box.height / 2) / detail, detail);
    drag = undefined;
  };
  aim.onpointercancel = () => {
    drag = undefined;
  };
}

points.forEach(steer);
again.onclick = () => {
  clear();
  points[0].aim.focus();
};
add.onchange = show;
shut.onclick = () => dialog.close();

// They are looked up each time, because an answer may write the form anew.
/** @param {string} key */
const inForm = (key) => (form ? named(form, key) : []);

use.onclick = () => {
  const choices = all(ways, "input", HTMLInputElement), way = choices.find(({ checked }) => checked);
  if (choices.length && !way) {
    status.textContent = t("Say first how the knee was read.");
    choices[0].focus();
    return;
  }
  const [field] = inForm(name), choice = way && inForm(how).find(({ value }) => value === way.value);
  dialog.close();
  if (choice) {
    choice.checked = true;
    choice.dispatchEvent(new Event("input", { bubbles: true }));
  }
  // The ± is left out where the field's own repeat error is larger and holds it.
  field.value = (reading ?? "") + (doubt > Number(within) ? ` ± ${doubt.toFixed(1)}` : "");
  field.dispatchEvent(new Event("input", { bubbles: true }));
  field.focus();
};

/**
 * Opens the dialog for a field whose data-photo names the choice that says how the
 * photo was taken.
 * @param {HTMLInputElement} asked
 */
export function open(asked) {
  ({ form, name, dataset: { photo: how = "", within = "" } } = asked);
  const choices = inForm(how).filter(({ value }) => value);
  ways.hidden = !choices.length;
  ways.replaceChildren(make("legend", {}, choices[0]?.closest("fieldset")?.querySelector("legend")?.textContent ?? ""),
    ...choices.map(({ value, checked, labels }) => make("label", {}, make("input", { type: "radio", name: "photo-read", value, checked }), labels?.[0].textContent ?? "")));
  ways.onchange = show;
  dialog.showModal();
  show();
}

new ResizeObserver(show).observe(whole);
record.listen((_keys, _source, replaced) => replaced && putAway());
putAway();
