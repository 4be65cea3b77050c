// The fitter's side of a fitting: opens what clients sent, each by itself and never among
// the reader's own numbers, and makes the link that goes back. All of it stays in this tab.
import { ask, canShare, code, copy, fill, share, tell } from "./desk.js";
import { all, fieldOf, hit, make, named, one } from "./dom.js";
import { file } from "./file.js";
import * as record from "./record.js";
import { say } from "./say.js";
import { counted, t } from "./text.js";
/** @import { Benched, Wrote } from "./types.d.ts" */

const store = "plumbline-replies", most = 2 ** 20; // bytes of a file that is opened
const desk = one(document, '[data-desk="prepare"]'), fold = one(desk, ".replies", HTMLDetailsElement);
const opening = one(fold, "form.opening", HTMLFormElement), paper = one(fold, ".received"), form = one(fold, "form.advice", HTMLFormElement);
const picker = one(opening, "[name=files]", HTMLInputElement), pasted = one(opening, "[name=pasted]", HTMLTextAreaElement);
const [wrong, bad] = [one(opening, ".problem"), one(form, ".problem")], place = one(form, ".code-place");
const key = one(form, "[name=key]", HTMLSelectElement), [value, note, message, from, link] = ["value", "note", "message", "from", "link"].map((name) => named(form, name)[0]);

/** @returns {Benched} */
function kept() {
  try {
    return JSON.parse(sessionStorage.getItem(store) ?? "") ?? undefined;
  } catch {
    return { replies: [], at: 0, wrote: {} };
  }
}
let held = kept();
function keep() {
  try {
    if (held.replies.length) sessionStorage.setItem(store, JSON.stringify(held));
    else sessionStorage.removeItem(store);
  } catch { /* then they live as long as this page */ }
}

/** What the fitter wrote for the client on show. @returns {Wrote} */
const wrote = () => (held.wrote[held.at] ??= { note: "", message: "", next: [] });

/** The address of the guide's setup sheet, which a client's link opens. */
const sheet = () => new URL(desk.dataset.back ?? "", document.baseURI).href.split("#")[0];

function settings() {
  one(form, ".chosen").replaceChildren(...wrote().next.map(({ key: of, typed, label }) => make("li", {}, `${label}: ${typed} `,
    make("button", { type: "button", onclick: () => unset(of), ariaLabel: t("Take out {0}", label) }, t("Take out")))));
}

/** The newest drawing counts, should two be under way. */
let turn = 0;
async function draw() {
  keep();
  form.hidden = !held.replies.length;
  if (!held.replies.length) {
    paper.replaceChildren();
    return;
  }
  turn += 1;
  const mine = turn, mark = wrote();
  const query = new URLSearchParams([["at", String(held.at)], ["from", from.value], ["message", mark.message], ...mark.next.map(({ key: of, value: is }) => [`next.${of}`, is])]).toString();
  const { html = "", link: back = "", error } = await ask(desk, "replies", { record: "", text: held.replies.flat().join("\0"), query, link: sheet() });
  if (mine !== turn) return;
  if (error) {
    say(error);
    return;
  }
  fill(paper, html);
  const shown = paper.querySelector(".arrived");
  form.hidden = !(shown instanceof HTMLElement);
  if (!(shown instanceof HTMLElement)) return;
  if (Number(shown.dataset.at) !== held.at) { // the one that was meant is none
    held.at = Number(shown.dataset.at);
    keep();
  }
  Object.assign(wrote(), { client: [shown.dataset.name, shown.dataset.bike].filter(Boolean).join(", ") });
  // Ticks and ways back are the client's own.
  for (const box of all(paper, "input[type=checkbox]", HTMLInputElement)) box.disabled = true;
  for (const way of all(paper, "[data-back]")) way.remove();
  for (const [field, text] of /** @type {[HTMLInputElement, string][]} */ ([[note, wrote().note], [message, wrote().message]])) if (document.activeElement !== field) field.value = text;
  link.value = back;
  for (const button of all(form, "[data-do=copy], [data-do=share], [data-do=code]", HTMLButtonElement)) button.disabled = !back;
  one(form, "[data-do=share]").hidden = !canShare();
  settings();
}

/**
 * Adds what a file or a field holds, and shows the first of it.
 * @param {[name: string, text: string][]} list
 */
function add(list) {
  const fresh = list.filter(([, text]) => text.trim());
  held.replies.push(...fresh);
  if (fresh.length) draw();
  say(counted(fresh.length, "{0} reply is opened.", "{0} replies are opened."));
}

/**
 * The text of a file.
 * @param {File} sent
 */
async function textOf(sent) {
  const bytes = new Uint8Array(await sent.arrayBuffer()), [a, b] = bytes;
  const code16 = a === 0xff && b === 0xfe ? "utf-16le" : a === 0xfe && b === 0xff ? "utf-16be" : "utf-8";
  return new TextDecoder(code16).decode(bytes);
}

/** @param {Iterable<File>} files */
async function take(files) {
  /** @type {[string, string][]} */
  const list = [];
  const large = [];
  for (const sent of files) {
    if (sent.size > most) large.push({ message: t("{0} is larger than a reply can be.", sent.name) });
    else list.push([sent.name, await textOf(sent)]);
  }
  tell(wrong, large);
  add(list);
}

picker.onchange = () => {
  take([...picker.files ?? []]);
  picker.value = ""; // the same file can be picked again
};
fold.addEventListener("dragover", (event) => {
  event.preventDefault();
  fold.classList.add("over");
});
for (const name of ["dragleave", "drop"]) fold.addEventListener(name, () => fold.classList.remove("over"));
fold.addEventListener("drop", (event) => {
  event.preventDefault();
  const { files, text } = { files: [...event.dataTransfer?.files ?? []], text: event.dataTransfer?.getData("text") ?? "" };
  if (files.length) take(files);
  else add([[t("a link"), text]]);
});

/**
 * Sets what the client's bike is to have, in place of an earlier value.
 * @param {string} of
 * @param {string} is canonical
 * @param {string} typed
 */
function set(of, is, typed) {
  const mark = wrote(), label = [...key.options].find((option) => option.value === of)?.textContent ?? of;
  mark.next = [...mark.next.filter((old) => old.key !== of), { key: of, value: is, typed, label }];
  draw();
  say(`${label}: ${typed}`);
}
/** @param {string} of */
function unset(of) {
  const mark = wrote();
  mark.next = mark.next.filter((old) => old.key !== of);
  draw();
  say(t("It is taken out."));
}

async function write() {
  const text = value.value.trim();
  if (!text) return;
  const { problems = [], record: pairs, error } = await ask(desk, "set", { record: "", key: key.value, text, bare: record.units() });
  tell(bad, error ? [{ message: error }] : problems, (meant) => {
    value.value = meant;
    write();
  });
  value.toggleAttribute("aria-invalid", !pairs.length);
  if (!pairs.length) return;
  value.value = "";
  const [[of, is]] = pairs;
  set(of, is, /[a-z°%″"']\s*$/i.test(text) ? text : `${text} ${unit()}`.trim());
}
/** The unit in which a bare number is read. */
function unit() {
  const { unit: is = "" } = key.options[key.selectedIndex]?.dataset ?? {};
  return is === "mm" ? record.units() : is;
}

// A file that the command reads beside the replies. JSON is YAML too (YAML 1.2, 1.3).
function notes() {
  const clients = Object.values(held.wrote).filter(({ client, note: own, message: to, next }) => client && (own || to || next.length)).map(({ client, note: own, message: to, next }) =>
    [client, { note: own, message: to, next: Object.fromEntries(next.map(({ key: of, value: is }) => [of, is])) }]);
  const text = { from: from.value, guide: sheet(), clients: Object.fromEntries(clients) };
  file("notes.yaml", "application/yaml", `${JSON.stringify(text, null, 2)}\n`);
}

/** @type {Record<string, () => unknown>} */
const ways = {
  paste: () => {
    add([[t("what was pasted"), pasted.value]]);
    pasted.value = "";
  },
  set: write,
  copy: () => copy(link.value, place),
  share: () => share(t("Settings for your bike"), link.value),
  code: () => code(link.value, place),
  notes,
  away: () => {
    held = { replies: [], at: 0, wrote: {} };
    place.replaceChildren();
    draw();
    say(t("All replies are put away."));
  },
};
fold.addEventListener("click", (event) => {
  const button = hit(event, "button");
  if (!(button instanceof HTMLElement)) return;
  const { do: way = "", at, use, value: is = "" } = button.dataset;
  ways[way]?.();
  if (use) set(use, is, is);
  if (at === undefined || !paper.contains(button)) return;
  held.at = Number(at);
  draw().then(() => one(paper, ".arrived").focus());
});
form.addEventListener("input", (event) => {
  const field = fieldOf(event);
  if (field === note || field === message) Object.assign(wrote(), { [field.name]: field.value });
  if (field === note) keep();
  else if (field === message || field === from) draw();
});
for (const typed of [opening, form]) typed.onsubmit = (event) => event.preventDefault();
form.addEventListener("keydown", (event) => {
  if (event.key === "Enter" && event.target === value) write();
});
draw();
