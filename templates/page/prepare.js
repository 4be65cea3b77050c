// Prepare for a fitting: leads a client through what was asked, one thing at a time,
// and makes the link of what they want to send. Sending is theirs.
import { ask, begin, canShare, code, copy, drawer, file, isMark, lay, page, share, tell, today } from "./desk.js";
import * as record from "./record.js";
import { say } from "./say.js";

const pause = 400; // ms without typing before a reading is looked at
const store = "plumbline-answers";

const desk = document.querySelector('[data-desk="prepare"]');
const paper = desk.querySelector(".paper"), form = desk.querySelector("form.client");
const progress = form.querySelector(".progress"), walk = form.querySelector(".walk"), hand = form.querySelectorAll(".hand");
const message = form.querySelector("[data-do=message]");
let steps = [], step = 0, units, pending, sent = "";

// The request comes in the address, else it is the guide's own.
const whole = () => (record.at("ask") === undefined ? [record.text(), desk.dataset.request].filter(Boolean).join("&") : record.text());
const send = (name, more) => ask(desk, name, { record: whole(), bare: units, ...more });

// Answers to the questions stand in no address: they are kept in this tab until the
// client sends them or forgets them.
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

const keyOf = (element) => element.closest(".step")?.dataset.step ?? "";
const isQuestion = (key) => key.startsWith("ask-");
const fieldsOf = (key) => [...form.elements].filter((field) => field.name === key);
const typed = (key) => {
  const list = fieldsOf(key);
  if (list[0]?.type === "radio") return list.find((field) => field.checked)?.value ?? "";
  return list.map((field) => field.value.trim()).filter(Boolean).join(";");
};
const part = (key, mark) => document.getElementById(`prepare-${desk.dataset.place}-${key}-${mark}`);

const draw = drawer(desk, "prepare", ({ html, error }) => {
  if (error) {
    say(error);
    return;
  }
  const here = steps[step]?.dataset.step;
  units = record.units();
  paper.innerHTML = html;
  desk.querySelector(".offline")?.remove();
  for (const set of desk.querySelectorAll("fieldset:disabled")) set.disabled = false;
  for (const [key, value] of answers) {
    for (const field of fieldsOf(key)) {
      if (field.type === "radio") field.checked = field.value === value;
      else field.value = value;
    }
  }
  if (!steps.length && record.at("ask") !== undefined) desk.scrollIntoView();
  steps = [...paper.querySelectorAll(".step")];
  show(Math.max(0, steps.findIndex(({ dataset }) => dataset.step === here)), true);
}, () => ({ record: whole() }));

async function show(to, still) {
  step = Math.min(Math.max(to, 0), steps.length - 1);
  const last = steps[step].dataset.step === "send";
  steps.forEach((item, i) => {
    item.hidden = i !== step;
  });
  paper.querySelector(".asking").hidden = step > 0;
  progress.hidden = false;
  progress.textContent = last ? "Ready to send" : `${step + 1} of ${steps.length - 1}`;
  walk.hidden = false;
  walk.querySelector("[data-do=before]").disabled = step === 0;
  for (const name of ["skip", "after"]) walk.querySelector(`[data-do=${name}]`).hidden = last;
  for (const item of hand) item.hidden = !last;
  desk.querySelector(".code-sheet")?.remove();
  if (last) await look();
  if (still) return;
  steps[step].focus({ preventScroll: true });
  form.scrollIntoView({ block: "start" });
}

// A last look at what would be sent.
async function look() {
  const query = new URLSearchParams([...answers]).toString();
  const { html, text, link } = await send("back", { query, link: new URL(desk.dataset.back, document.baseURI).href.split("#")[0] });
  paper.querySelector(".look").innerHTML = html;
  sent = text;
  message.hidden = !link;
  if (link) {
    message.href = link;
    const [, to] = /^(?:mailto|sms):([^?]*)/.exec(link);
    message.textContent = link.startsWith("sms:") ? `Send a message to ${to}` : `Send a mail to ${to}`;
  }
  form.querySelector("[data-do=share]").hidden = !canShare();
}

// Looks at one measurement and takes it if it can be read.
async function look1(key) {
  clearTimeout(pending);
  pending = undefined;
  if (isQuestion(key)) {
    const value = typed(key);
    if (value) answers.set(key, value);
    else answers.delete(key);
    remember();
    return true;
  }
  const { problems, doubts, record: pairs, error } = await send("check", { key, text: typed(key) });
  const line = part(key, "p"), list = part(key, "d");
  if (!line) return true;
  const wrong = error ? [{ message: error }] : problems;
  tell(line, wrong);
  for (const field of fieldsOf(key)) {
    if (wrong.length && field.value) field.setAttribute("aria-invalid", "true");
    else field.removeAttribute("aria-invalid");
  }
  list.replaceChildren(...(doubts ?? []).map((text) => Object.assign(document.createElement("li"), { textContent: text })));
  list.hidden = !doubts?.length;
  if (pairs?.length) record.put(pairs, desk);
  if (wrong.length || doubts?.length) say([...wrong.map((p) => p.message), ...doubts ?? []].join(" "));
  return !wrong.length;
}

form.addEventListener("input", ({ target }) => {
  clearTimeout(pending);
  pending = setTimeout(look1, pause, keyOf(target));
});
form.addEventListener("change", ({ target }) => look1(keyOf(target)));

async function onward() {
  const key = steps[step].dataset.step;
  if (await look1(key)) show(step + 1);
  else fieldsOf(key).find((field) => field.value)?.focus();
}
form.onsubmit = (event) => {
  event.preventDefault();
  if (steps[step]?.dataset.step !== "send") onward();
};

const sentLink = () => `${new URL(desk.dataset.back, document.baseURI).href.split("#")[0]}#${sent}`;
const place = () => form.querySelector(".code-place");
const ways = {
  before: () => show(step - 1),
  after: onward,
  skip: async () => {
    const key = steps[step].dataset.step;
    for (const field of fieldsOf(key)) {
      if (field.type === "radio") field.checked = field.value === "";
      else field.value = "";
    }
    await look1(key);
    show(step + 1);
  },
  share: () => share("Measurements for a fitting", sentLink()),
  copy: () => copy(sentLink(), place()),
  code: () => code(sentLink(), place()),
  json: async () => {
    const { text } = await ask(desk, "json", { record: sent });
    file(`measurements-${today()}.json`, "application/json", text);
  },
};
form.addEventListener("click", ({ target }) => ways[target.closest("[data-do]")?.dataset.do]?.());

record.listen((keys, source, all) => {
  if (all) {
    answers.clear();
    remember();
  }
  if (source !== desk && [...keys, ...all ? ["all"] : []].some((key) => !isMark(key))) draw();
});

// The fitter's side.
const fold = desk.querySelector(".compose"), composer = fold.querySelector("form"), { link } = composer.elements;
let composed = "";
async function compose() {
  const data = new FormData(composer), query = new URLSearchParams({ ask: data.getAll("ask").join(" ") });
  for (const name of ["ask.by", "ask.note", "ask.reply", "ask.health"]) if (data.get(name)) query.set(name, data.get(name));
  const { text, problems } = await ask(desk, "compose", { query: query.toString() });
  composed = text;
  link.value = `${page()}#${composed}`;
  tell(fold.querySelector(".problem"), problems);
}
fold.addEventListener("toggle", () => fold.open && compose());
composer.oninput = ({ target }) => target !== link && compose();
composer.onsubmit = (event) => event.preventDefault();
const fitters = {
  copy: () => copy(link.value, composer.querySelector(".code-place")),
  share: () => share("Measurements for a fitting", link.value),
  code: () => code(link.value, composer.querySelector(".code-place")),
  try: () => {
    lay([...new URLSearchParams(composed)]);
    show(0);
  },
};
composer.addEventListener("click", ({ target }) => fitters[target.closest("[data-do]")?.dataset.do]?.());
composer.querySelector("[data-do=share]").hidden = !canShare();

begin(desk);
draw();
