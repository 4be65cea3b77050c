// Reads a knee off the reader's own photo: hip, knee and ankle are placed on it by
// hand. The photo lives on a canvas of this page and nowhere else.
import { bend } from "./bend.js";
import { draw, open as load } from "./photofile.js";
import * as record from "./record.js";

const low = 2.2; // degrees that film from the side reads low (Fonda, Šarabon and Li 2014)
const off = 3; // pixels on the screen by which a point may be misplaced
const near = 16; // pixels on the screen within which a click means a point that is there
const names = ["Hip", "Knee", "Ankle"];

const make = (tag, about, ...inside) => {
  const { role, ...rest } = about, element = Object.assign(document.createElement(tag), rest);
  if (role) element.setAttribute("role", role);
  element.append(...inside);
  return element;
};
const shape = (tag, about, ...inside) => {
  const element = document.createElementNS("http://www.w3.org/2000/svg", tag);
  for (const [name, value] of Object.entries(about)) element.setAttribute(name, value);
  element.append(...inside);
  return element;
};
// Every line is drawn twice, so that it stands out on whatever the photo shows.
const line = (d, kind) => [shape("path", { d, class: "halo" }), shape("path", { d, class: kind })];
const cross = (x, y, arm) => `M${x - arm} ${y}h${arm - 4}m8 0h${arm - 4}M${x} ${y - arm}v${arm - 4}m0 8v${arm - 4}`;

const canvas = make("canvas", { role: "img", ariaLabel: "Your photo" });
const sketch = shape("svg", { "aria-hidden": "true" });
const whole = make("div", { className: "whole" }, canvas, sketch);
const points = names.map((name, i) => {
  const glass = make("canvas", {}), mark = shape("svg", { "aria-hidden": "true", viewBox: "-50 -50 100 100" }, ...line(cross(0, 0, 26), "hot"));
  const state = make("small", {});
  const aim = make("div", { role: "slider", className: "aim", tabIndex: 0, ariaLabel: name, ariaRoleDescription: "cross on the photo", ariaValueMin: 0 }, glass, mark);
  aim.setAttribute("aria-describedby", "photo-keys");
  return { name, aim, glass, state, start: 0.3 + 0.25 * i, box: make("div", { className: "point" }, aim, make("p", {}, make("b", {}, name), " ", state)) };
});
const file = make("input", { type: "file", id: "photo-file", accept: "image/jpeg,image/png,image/webp" });
const wrong = make("p", { role: "alert", className: "wrong", id: "photo-wrong" });
const work = make("div", { className: "work", hidden: true },
  make("p", { id: "photo-keys" }, "Click hip, knee and ankle. Then slide each detail until its cross sits on the joint. By keys: Tab goes from point to point, arrows move by 1 pixel, with Shift by 10, Enter places."),
  whole, make("div", { className: "points" }, ...points.map(({ box }) => box)));
const status = make("p", { role: "status" });
const note = make("p", { className: "note" });
const ways = make("fieldset", {});
const add = make("input", { type: "checkbox" });
const use = make("button", { type: "button", className: "take" }, "Use this");
const again = make("button", { type: "button" }, "Clear the points");
const end = make("div", { className: "end", hidden: true }, note, ways,
  make("label", {}, add, ` Add ${low}°: film from the side read about that much low against a measurement in space (Fonda, Šarabon and Li 2014).`),
  make("div", { className: "buttons" }, use, again));
const shut = make("button", { type: "button" }, "Close");
const dialog = make("dialog", { className: "photo" },
  make("div", { className: "head" }, make("h2", { id: "photo-title" }, "Read your knee off a photo"), shut),
  make("p", {}, "Take it from the side, square to the bike, with the crank in line with the seat. The photo stays on this page: it is not sent and not kept."),
  make("label", { htmlFor: file.id }, "Your side photo"), file, wrong, work, status, end);
dialog.setAttribute("aria-labelledby", "photo-title");
file.setAttribute("aria-describedby", wrong.id);
document.body.append(dialog);

let form, reading, turn = 0, drag;

// The photo is shown as large as fits, in the middle of its box.
function view() {
  const { width, height } = canvas.getBoundingClientRect();
  const scale = Math.min(width / canvas.width, height / canvas.height) || 1;
  const left = (width - scale * canvas.width) / 2, top = (height - scale * canvas.height) / 2;
  return { scale, detail: Math.max(1, 4 * scale), x: (x) => left + scale * x, y: (y) => top + scale * y, back: (x, y) => [(x - left) / scale, (y - top) / scale] };
}

const hold = (value, end) => Math.min(Math.max(value, 0), end);

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
  use.disabled = !reading;
  tell(next, found);
  for (const point of points) magnify(point, at);
  const marks = points.filter(({ placed, aim }) => placed || aim === document.activeElement);
  sketch.replaceChildren(...leg(at, found), ...marks.flatMap((point) => label(point, at)));
}

function tell(next, found) {
  note.textContent = "";
  if (work.hidden) status.textContent = wrong.textContent ? "" : "Pick a photo first.";
  else if (next) status.textContent = `Click the ${next.name.toLowerCase()}.`;
  else if (!found) status.textContent = "Two of the points lie on one spot. Move one of them to its joint.";
  else {
    status.replaceChildren("Knee bend ", make("b", {}, `${reading}°`), ` ± ${found.margin.toFixed(1)}°${add.checked ? `, with ${low}° added` : ""}. A straight leg is 0.`);
    note.textContent = `The ± comes from ${off} pixels on your screen at each point; where the stickers sit adds to it.`;
    if (found.margin > 4) note.textContent += " The leg is small here: slide each detail, or take a photo in which it is larger.";
    if (found.angle > 70) note.textContent += " A knee as bent as this is not at the bottom of the stroke. Is each point on its joint?";
  }
}

// The leg's axes, the thigh's carried on beyond the knee, and the bend as an arc.
function leg({ x, y }, found) {
  const [hip, knee, ankle] = points.map((point) => ({ x: x(point.x), y: y(point.y), placed: point.placed }));
  const axis = (a, b) => (a.placed && b.placed ? line(`M${a.x} ${a.y}L${b.x} ${b.y}`, "centre") : []);
  const lines = [...axis(hip, knee), ...axis(knee, ankle)];
  if (!found) return lines;
  const upper = Math.hypot(knee.x - hip.x, knee.y - hip.y), lower = Math.hypot(ankle.x - knee.x, ankle.y - knee.y);
  const along = (r) => `${knee.x + r * (knee.x - hip.x) / upper} ${knee.y + r * (knee.y - hip.y) / upper}`;
  const r = 0.6 * Math.min(upper, lower), shin = `${knee.x + r * (ankle.x - knee.x) / lower} ${knee.y + r * (ankle.y - knee.y) / lower}`;
  return [...lines, ...line(`M${knee.x} ${knee.y}L${along(1.15 * r)}`, "thin"), ...line(`M${along(r)}A${r} ${r} 0 0 ${found.turn > 0 ? 1 : 0} ${shin}`, "hot")];
}

function label(point, at) {
  const x = at.x(point.x), y = at.y(point.y), right = x < at.x(canvas.width) - 70;
  const kind = point.placed ? "hot" : "hot loose";
  return [...line(cross(x, y, 14), kind), shape("text", { x: x + (right ? 18 : -18), y: y - 8, class: right ? "" : "left" }, point.name)];
}

// The surroundings of a point, with the point in the middle.
function magnify({ glass, aim, state, x, y, placed }, { detail }) {
  const sharp = globalThis.devicePixelRatio, width = aim.clientWidth, height = aim.clientHeight;
  glass.width = Math.max(1, Math.round(width * sharp));
  glass.height = Math.max(1, Math.round(height * sharp));
  const ink = glass.getContext("2d");
  ink.imageSmoothingEnabled = detail < 3;
  ink.drawImage(canvas, x - width / detail / 2, y - height / detail / 2, width / detail, height / detail, 0, 0, glass.width, glass.height);
  aim.classList.toggle("loose", !placed);
  state.textContent = placed ? "" : "not placed";
  aim.ariaValueMax = canvas.width;
  aim.ariaValueNow = Math.round(x);
  aim.ariaValueText = `${placed ? "" : "not placed, "}${Math.round(x)} across, ${Math.round(y)} down`;
}

file.onchange = async () => {
  const [picked] = file.files, mine = ++turn;
  if (!picked) return;
  wrong.textContent = "";
  status.textContent = "The photo is being opened.";
  let bitmap;
  try {
    bitmap = await load(picked);
  } catch ({ message }) {
    if (mine !== turn) return;
    putAway();
    wrong.textContent = message;
    return show();
  }
  if (mine !== turn) return bitmap.close();
  draw(bitmap, canvas);
  work.hidden = end.hidden = false;
  clear();
};

whole.onclick = ({ clientX, clientY }) => {
  const at = view(), box = canvas.getBoundingClientRect(), x = clientX - box.left, y = clientY - box.top;
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

for (const point of points) {
  const { aim } = point;
  aim.onfocus = aim.onblur = show;
  aim.onkeydown = (event) => {
    const { detail } = view(), step = event.shiftKey ? 10 : 1;
    const [x, y] = { ArrowLeft: [-step, 0], ArrowRight: [step, 0], ArrowUp: [0, -step], ArrowDown: [0, step], Enter: [0, 0], " ": [0, 0] }[event.key] ?? [];
    if (x == null || event.ctrlKey || event.altKey || event.metaKey) return;
    event.preventDefault();
    const placing = !x && !y;
    move(point, point.x + x, point.y + y, detail, placing || point.placed);
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

again.onclick = () => {
  clear();
  points[0].aim.focus();
};
add.onchange = show;
shut.onclick = () => dialog.close();

const inForm = (name) => [...form.elements].filter((field) => field.name === name);

use.onclick = () => {
  const choices = [...ways.querySelectorAll("input")], way = choices.find(({ checked }) => checked);
  if (choices.length && !way) {
    status.textContent = "Say first how the knee was read.";
    return choices[0].focus();
  }
  const [field] = inForm("knee-reading"), choice = way && inForm("knee-read").find(({ value }) => value === way.value);
  dialog.close();
  if (choice) {
    choice.checked = true;
    choice.dispatchEvent(new globalThis.Event("input", { bubbles: true }));
  }
  // The ± is left out: the field's own repeat error is larger and holds it.
  field.value = reading;
  field.dispatchEvent(new globalThis.Event("input", { bubbles: true }));
  field.focus();
};

/** Opens the dialog for a bench's form that has a field named knee-reading. */
export function open(bench) {
  form = bench;
  const choices = inForm("knee-read").filter(({ value }) => value);
  ways.hidden = !choices.length;
  ways.replaceChildren(make("legend", {}, choices[0]?.closest("fieldset").querySelector("legend").textContent ?? ""),
    ...choices.map(({ value, checked, labels }) => make("label", {}, make("input", { type: "radio", name: "photo-read", value, checked }), labels[0].textContent)));
  ways.onchange = show;
  dialog.showModal();
  show();
}

new globalThis.ResizeObserver(show).observe(whole);
record.listen((keys, source, all) => all && putAway());
putAway();
