// Prepare for a fitting: leads a client through what was asked, one thing at a time,
// and makes the link of what they want to send. Sending is theirs.
import { ask, begin, canShare, code, copy, drawer, fill, isMark, lay, page, share, tell, today } from "./desk.js";
import { all, fieldOf, hit, make, named, one } from "./dom.js";
import { file } from "./file.js";
import * as record from "./record.js";
import { say } from "./say.js";
import { t } from "./text.js";
import { kept, units as tapped } from "./unit.js";

const pause = 400; // ms without typing before a reading is looked at
const store = "plumbline-answers";

const desk = one(document, '[data-desk="prepare"]');
const paper = one(desk, ".paper"), form = one(desk, "form.client", HTMLFormElement);
const progress = one(form, ".progress"), walk = one(form, ".walk"), hand = all(form, ".hand");
const message = one(form, "[data-do=message]", HTMLAnchorElement);
/** @type {HTMLElement[]} */
let steps = [];
/** @type {ReturnType<typeof setTimeout> | undefined} */
let pending;
let step = 0, sent = "";

// The request comes in the address, else it is the guide's own.
const whole = () => (record.at("ask") === undefined ? [record.text(), desk.dataset.request].filter(Boolean).join("&") : record.text());
/**
 * @param {string} name
 * @param {object} more
 */
const send = (name, more) => ask(desk, name, { record: whole(), ...more });

// Answers to the questions stand in no address: they are kept in this tab until the
// client sends them or forgets them.
/** @type {Map<string, string>} */
let answers = new Map();
try {
  answers = new Map(JSON.parse(sessionStorage.getItem(store) ?? "[]"));
} catch { /* nothing can be kept here */ }
function remember() {
  try {
    if (answers.size) sessionStorage.setItem(store, JSON.stringify([...answers]));
    else sessionStorage.removeItem(store);
  } catch { /* then they live as long as this page */ }
}

/** @type {Set<string>} keys of fields whose text was not taken */
const held = new Set();

/** @param {Event} event */
const keyOf = (event) => hit(event, ".step")?.dataset.step ?? "";
/** @param {string} key */
const isQuestion = (key) => key.startsWith("ask-");
/** @param {string} key */
const typed = (key) => {
  const list = named(form, key);
  if (list[0]?.type === "radio") return list.find((field) => field.checked)?.value ?? "";
  return list.map((field) => field.value.trim()).filter(Boolean).join(";");
};
/**
 * @param {string} key
 * @param {string} mark
 */
const part = (key, mark) => document.getElementById(`prepare-${desk.dataset.place}-${key}-${mark}`);

const draw = drawer(desk, "prepare", ({ html = "", error }) => {
  if (error) {
    say(error);
    return;
  }
  const here = steps[step]?.dataset.step;
  const { id } = /** @type {HTMLElement} */ (document.activeElement);
  const typing = [...held].map((key) => ({ key, texts: named(form, key).map(({ value }) => value), was: named(form, key)[0]?.dataset.unit }));
  paper.innerHTML = html;
  desk.querySelector(".offline")?.remove();
  for (const set of all(desk, ":not(.replies) > form > fieldset:disabled", HTMLFieldSetElement)) {
    set.disabled = false;
    if (fold.open && set.form === composer) compose();
  }
  for (const [key, value] of answers) {
    for (const field of named(form, key)) {
      if (field.type === "radio") field.checked = field.value === value;
      else field.value = value;
    }
  }
  // What was typed and not taken stays, with the unit that it was typed in.
  for (const { key, texts, was } of typing) {
    named(form, key).forEach((field, i) => {
      field.value = kept(texts[i] ?? "", was, field.dataset.unit);
    });
    check(key);
  }
  if (id && document.activeElement === document.body) document.getElementById(id)?.focus({ preventScroll: true });
  if (!steps.length && record.at("ask") !== undefined) desk.scrollIntoView();
  steps = all(paper, ".step");
  show(Math.max(0, steps.findIndex(({ dataset }) => dataset.step === here)), true);
}, () => ({ record: whole() }));

/**
 * Shows one step and hides the others; still: without moving focus and page.
 * @param {number} to
 * @param {boolean} [still]
 */
async function show(to, still) {
  step = Math.min(Math.max(to, 0), steps.length - 1);
  const last = steps[step].dataset.step === "send";
  steps.forEach((item, i) => {
    item.hidden = i !== step;
  });
  one(paper, ".asking").hidden = step > 0;
  progress.hidden = false;
  progress.textContent = last ? t("Ready to send") : t("{0} of {1}", step + 1, steps.length - 1);
  walk.hidden = false;
  one(walk, "[data-do=before]", HTMLButtonElement).disabled = step === 0;
  for (const name of ["skip", "after"]) one(walk, `[data-do=${name}]`).hidden = last;
  for (const item of hand) item.hidden = !last;
  desk.querySelector(".code-sheet")?.remove();
  if (last) await look();
  if (still) return;
  steps[step].focus({ preventScroll: true });
  form.scrollIntoView({ block: "start" });
}

// The address of the fitter's page, without a record.
const back = () => new URL(desk.dataset.back ?? "", document.baseURI).href.split("#")[0];

// The file is named for whom it is from and for when, so that a fitter finds it.
const fileName = () => ["measurements", record.at("name") || record.at("ask.for"), record.at("ask.when"), today()].filter(Boolean)
  .map((word) => String(word).toLowerCase().replace(/[^\p{L}\p{N}]+/gu, "-").replace(/^-|-$/g, "")).filter(Boolean).join("-");

// A last look at what would be sent.
async function look() {
  const query = new URLSearchParams([...answers]).toString();
  const { html = "", text = "", link } = await send("back", { query, link: back(), day: today() });
  fill(one(paper, ".look"), html);
  sent = text;
  message.hidden = !link;
  if (link) {
    message.href = link;
    const [, to = ""] = /^(?:mailto|sms):([^?]*)/.exec(link) ?? [];
    message.textContent = link.startsWith("sms:") ? t("Send a message to {0}", to) : t("Send a mail to {0}", to);
  }
  one(form, "[data-do=share]").hidden = !canShare();
}

/**
 * Looks at one measurement and takes it if it can be read. Returns whether it can.
 * @param {string} key
 */
async function check(key) {
  clearTimeout(pending);
  pending = undefined;
  if (isQuestion(key)) {
    const value = typed(key);
    if (value) answers.set(key, value);
    else answers.delete(key);
    remember();
    return true;
  }
  const { problems = [], doubts = [], record: pairs, error } = await send("check", { key, text: typed(key), bare: named(form, key)[0]?.dataset.unit });
  const line = part(key, "p"), list = part(key, "d");
  if (!line || !list) return true;
  const wrong = error ? [{ message: error }] : problems;
  if (wrong.length) held.add(key);
  else held.delete(key);
  tell(line, wrong, (text) => {
    const texts = text.split(";");
    named(form, key).forEach((field, i) => {
      field.value = texts[i]?.trim() ?? "";
    });
    named(form, key)[0]?.focus({ preventScroll: true });
    check(key);
  });
  for (const field of named(form, key)) {
    if (wrong.length && field.value) field.setAttribute("aria-invalid", "true");
    else field.removeAttribute("aria-invalid");
  }
  list.replaceChildren(...doubts.map((text) => make("li", {}, text)));
  list.hidden = !doubts.length;
  if (pairs.length) record.put(pairs, desk);
  say([...wrong.map((problem) => problem.message), ...doubts].join(" "));
  return !wrong.length;
}

form.addEventListener("input", (event) => {
  const key = keyOf(event);
  clearTimeout(pending);
  if (!isQuestion(key)) held.add(key);
  pending = setTimeout(() => check(key), pause);
});
form.addEventListener("change", (event) => check(keyOf(event)));

async function onward() {
  const { step: key = "" } = steps[step].dataset;
  if (await check(key)) show(step + 1);
  else named(form, key).find((field) => field.value)?.focus();
}
form.onsubmit = (event) => {
  event.preventDefault();
  if (steps[step]?.dataset.step !== "send") onward();
};

const sentLink = () => `${back()}#${sent}`;
const place = () => one(form, ".code-place");
/** @type {Record<string, () => unknown>} */
const ways = {
  before: () => show(step - 1),
  after: onward,
  skip: async () => {
    const { step: key = "" } = steps[step].dataset;
    for (const field of named(form, key)) {
      if (field.type === "radio") field.checked = field.value === "";
      else field.value = "";
    }
    await check(key);
    show(step + 1);
  },
  share: () => share(t("Measurements for a fitting"), sentLink()),
  copy: () => copy(sentLink(), place()),
  code: () => code(sentLink(), place()),
  json: async () => {
    const { text = "" } = await ask(desk, "json", { record: sent });
    file(`${fileName()}.json`, "application/json", text);
  },
};
form.addEventListener("click", (event) => ways[hit(event, "[data-do]")?.dataset.do ?? ""]?.());

record.listen((keys, source, replaced) => {
  if (replaced) {
    answers.clear();
    held.clear();
    remember();
  }
  if (source !== desk && [...keys, ...replaced ? ["all"] : []].some((key) => !isMark(key) || key.endsWith(".unit"))) draw();
});
tapped(form);

// The fitter's side.
const fold = one(desk, ".compose", HTMLDetailsElement), composer = one(fold, "form", HTMLFormElement);
const link = one(composer, "[name=link]", HTMLInputElement);
let composed = "";
// What a fitter has typed stays in this tab until it is closed.
const typing = "plumbline-request";
function rememberRequest() {
  const pairs = [...new FormData(composer)].filter(([name]) => name !== "link").map(([name, value]) => [name, String(value)]);
  try {
    sessionStorage.setItem(typing, new URLSearchParams(pairs).toString());
  } catch { /* then it lives as long as this page */ }
}
function recallRequest() {
  /** @type {string | null} */
  let text = null;
  try {
    text = sessionStorage.getItem(typing);
  } catch { /* nothing is kept here */ }
  if (text === null) return;
  const pairs = new URLSearchParams(text);
  for (const field of all(composer, "[name]")) {
    if (!(field instanceof HTMLInputElement || field instanceof HTMLTextAreaElement || field instanceof HTMLSelectElement) || field === link) continue;
    if (field instanceof HTMLInputElement && /^(?:checkbox|radio)$/.test(field.type)) field.checked = pairs.getAll(field.name).includes(field.value);
    else field.value = pairs.get(field.name) ?? field.value;
  }
  fold.open = true;
}
async function compose() {
  // Before the engine is there the form cannot be typed into, and has no values yet.
  if (composer.querySelector(":scope > fieldset:disabled")) return;
  const data = new FormData(composer), query = new URLSearchParams({ ask: data.getAll("ask").join(" ") });
  for (const name of ["ask.by", "ask.for", "ask.when", "ask.bike", "ask.note", "ask.reply", "ask.health"]) {
    const value = data.get(name);
    if (value) query.set(name, String(value));
  }
  const { text = "", problems } = await ask(desk, "compose", { query: query.toString() });
  composed = text;
  link.value = `${page()}#${composed}`;
  tell(one(fold, ".problem"), problems);
}
/**
 * Fills the form with a request that the guide keeps; for whom and when stay as they are.
 * @param {string} fragment
 */
function beginWith(fragment) {
  const pairs = new Map(new URLSearchParams(fragment)), asked = (pairs.get("ask") ?? "").split(" ");
  for (const field of named(composer, "ask")) field.checked = asked.includes(field.value);
  pairs.set("ask.reply", (pairs.get("ask.reply") ?? "").replace(/^(?:mailto|sms):/, ""));
  for (const name of ["ask.by", "ask.note", "ask.reply"]) for (const field of named(composer, name)) field.value = pairs.get(name) ?? "";
  for (const field of named(composer, "ask.health")) field.checked = pairs.get("ask.health") === "yes";
}
fold.addEventListener("toggle", () => fold.open && compose());
composer.oninput = (event) => {
  const field = fieldOf(event);
  if (field === link) return;
  if (field.name === "template") beginWith(field.value);
  rememberRequest();
  compose();
};
composer.onsubmit = (event) => event.preventDefault();
/** @type {Record<string, () => unknown>} */
const fitters = {
  copy: () => copy(link.value, one(composer, ".code-place")),
  share: () => share(t("Measurements for a fitting"), link.value),
  code: () => code(link.value, one(composer, ".code-place")),
  try: () => {
    lay([...new URLSearchParams(composed)]);
    show(0);
  },
};
composer.addEventListener("click", (event) => fitters[hit(event, "[data-do]")?.dataset.do ?? ""]?.());
one(composer, "[data-do=share]").hidden = !canShare();
recallRequest();

// What reads replies is loaded when a fitter opens its place, or left it open in this tab.
const replies = desk.querySelector("details.replies");
if (replies instanceof HTMLDetailsElement) {
  const load = () => import("./replies.js");
  replies.addEventListener("toggle", () => replies.open && load());
  // A file that is dropped before they are there would be shown by the browser itself.
  replies.addEventListener("dragover", (event) => {
    event.preventDefault();
    replies.open = true;
    replies.classList.add("over");
  });
  for (const name of ["dragleave", "drop"]) replies.addEventListener(name, () => replies.classList.remove("over"));
  replies.addEventListener("drop", async (event) => {
    event.preventDefault();
    const files = [...event.dataTransfer?.files ?? []], text = event.dataTransfer?.getData("text") ?? "";
    (await load()).dropped(files, text);
  });
  try {
    replies.open ||= sessionStorage.getItem("plumbline-replies") !== null;
  } catch { /* nothing is kept here */ }
}

begin(desk);
draw();
