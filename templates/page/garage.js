// Walks through a chapter's acts with dirty hands: one act a screen, the number large,
// the caution at its act, two rides after each step. The screen stays on where the
// browser can do that, and the acts are read aloud by a voice of the device alone.
import { ask, today } from "./desk.js";
import { all, make, one } from "./dom.js";
import * as engine from "./engine.js";
import * as record from "./record.js";
import { say } from "./say.js";
import { t } from "./text.js";
import * as voice from "./voice.js";

/** @type {HTMLElement[]} the acts of the list that is walked through */
let acts = [];
const rides = ["ridden once", "ridden twice"]; // the names of their ticks
/** @param {string} ride */
const rideSaid = (ride) => (ride === rides[0] ? t("ridden once") : t("ridden twice"));

const where = make("p", { className: "at" });
const plan = make("div", { className: "setting" }), act = make("div", { className: "act", tabIndex: -1 });
const aloud = make("button", { type: "button", hidden: true }, t("Read aloud"));
const shut = make("button", { type: "button" }, t("Close"));
const back = make("button", { type: "button" }, t("Back")), on = make("button", { type: "button", className: "main" }, t("on a button\u0004Next"));
const dialog = make("dialog", { className: "walk-through", ariaLabel: t("Set it, one act a screen") },
  make("div", { className: "head" }, where, aloud, shut),
  make("div", { className: "room" }, plan, act), make("div", { className: "turn" }, back, on));
document.body.append(dialog);

let at = 0; // the act on show; beyond the last one the rides
let settings = "";
/** @type {string | undefined} the step of the number that is worked on */
let step;
/** @type {WakeLockSentinel | undefined} */
let lock;

/** The steps of the number, none where nothing is known. */
const steps = () => all(plan, ".plan > li");
/**
 * The name of a tick that belongs to one step.
 * @param {HTMLElement} item
 * @param {string} what
 */
const name = ({ dataset, parentElement }, what) => `${parentElement?.dataset.key} ${dataset.step} ${what}`;
/** @param {HTMLElement} item */
const ridden = (item) => rides.every((ride) => record.ticked(name(item, ride)));

/** The step that is worked on: the first that was not ridden when it was begun. */
function current() {
  const list = steps(), found = list.find(({ dataset }) => dataset.step === step) ?? list.find((item) => !ridden(item)) ?? list.at(-1);
  step = found?.dataset.step;
  return found;
}

/** @param {string} words */
const titled = (words) => make("h2", {}, words);

/**
 * A box to tick with a gloved finger.
 * @param {string} tick
 * @param {string} words
 */
function box(tick, words) {
  const input = make("input", { type: "checkbox", checked: record.ticked(tick) });
  input.dataset.tick = tick;
  return make("label", { className: "tick" }, input, " ", words);
}

/** The act as the chapter has it, its caution included. */
function doing() {
  const item = /** @type {HTMLElement} */ (acts[at].cloneNode(true));
  const tick = one(item, "[data-tick]", HTMLInputElement), cautions = all(item, ".caution");
  for (const part of [tick, ...cautions]) part.remove();
  return [make("div", { className: "do" }, ...item.childNodes), ...cautions, box(tick.dataset.tick ?? "", t("Done"))];
}

/** What is ridden before the next step, and what then stands on the sheet. */
function riding() {
  const here = current(), list = here?.parentElement;
  if (!here || !list?.dataset.value) {
    const page = acts[0].querySelector("[data-tick]")?.getAttribute("data-tick")?.split(" ")[0];
    return [titled(t("Ride it")), make("p", {}, t("Ride this setting twice before you change anything else.")), ...rides.map((ride) => box(`${page} ${ride}`, rideSaid(ride)))];
  }
  return [titled(t("Ride {0}", one(here, ".big").textContent ?? "")), make("p", {}, t("Slowly and on safe ground first, then a loop that you know.")),
    ...rides.map((ride) => box(name(here, ride), rideSaid(ride))), ...(ridden(here) ? afterwards(here, list) : [])];
}

/**
 * What comes after the second ride: the next step, or the sheet.
 * @param {HTMLElement} here
 * @param {HTMLElement} list
 */
function afterwards(here, { dataset: { key = "", value = "", from } }) {
  const last = "last" in here.dataset, press = make("button", { type: "button", className: "main" }, last ? t("Write it on the sheet as made") : t("Take the next step"));
  press.onclick = () => {
    if (!last) {
      for (const item of acts) record.tick(one(item, "[data-tick]").dataset.tick ?? "", false);
      step = undefined;
      at = 0;
      show();
      return;
    }
    if (record.at(key) !== value) record.use(key, value, from ? [["from", `${key}.${from}`]] : []);
    record.put([], undefined, [[`${key}.done`, today()]]);
    dialog.close();
    say(t("It stands on your sheet as made. The old value is kept beside it."));
  };
  return [make("p", {}, last ? t("That was the last step.") : t("Go on, or stop here if it feels good.")), press];
}

/** Shows the act, and takes the focus to it. */
function show() {
  const end = at >= acts.length;
  where.replaceChildren(make("b", {}, end ? t("The ride") : t("Act {0} of {1}", at + 1, acts.length)), ` ${document.querySelector("h1")?.textContent ?? ""}`);
  const here = current();
  for (const item of steps()) item.hidden = item !== here;
  act.replaceChildren(...(end ? riding() : doing()));
  back.disabled = at === 0;
  on.textContent = end ? t("on a button\u0004Finish") : at === acts.length - 1 ? t("Next: ride") : t("on a button\u0004Next");
  act.parentElement?.scrollTo(0, 0);
  voice.stop();
}

/** @param {number} way */
function turn(way) {
  at += way;
  if (at > acts.length) {
    dialog.close();
    return;
  }
  show();
  act.focus();
}

/** The number, as the engine has it for the record as it is now. */
async function draw() {
  if (!settings) return;
  const { html = "" } = await ask(dialog, "act", { key: settings });
  if (html) plan.innerHTML = html;
  else plan.replaceChildren();
  show();
}

/** Keeps the screen on while the dialog is open and seen. */
async function awake() {
  try {
    if (dialog.open && document.visibilityState === "visible") lock = await navigator.wakeLock?.request("screen");
  } catch { /* low on battery, or the browser does not want to */ }
}

back.onclick = () => turn(-1);
on.onclick = () => turn(1);
shut.onclick = () => dialog.close();
aloud.onclick = () => voice.say([plan.querySelector("li:not([hidden])"), ...act.querySelectorAll(":scope > :not(.tick, button)")].map((part) => part?.textContent ?? "").join(" "));
dialog.onclose = () => {
  voice.stop();
  lock?.release();
  lock = undefined;
};
dialog.addEventListener("change", ({ target }) => {
  // The page's own list and this one are told by the record; only the rides are redrawn.
  if (at >= acts.length && target instanceof HTMLInputElement) setTimeout(show);
});
document.addEventListener("visibilitychange", awake);
voice.ready((there) => {
  aloud.hidden = !there;
});

/**
 * Opens the first act that is not ticked.
 * @param {HTMLElement} button
 */
export function walk(button) {
  settings = button.dataset.settings ?? "";
  acts = [...(button.closest(".garage")?.nextElementSibling?.querySelectorAll(":scope > li") ?? [])].filter((item) => item instanceof HTMLElement);
  plan.replaceChildren();
  const open = acts.findIndex((item) => !record.ticked(one(item, "[data-tick]").dataset.tick ?? ""));
  at = open < 0 ? acts.length : open;
  step = undefined;
  dialog.dataset.place = "1";
  dialog.showModal();
  show();
  awake();
  engine.begin();
  draw();
}
