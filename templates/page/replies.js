// The fitter's side of a fitting: opens what clients sent, each by itself and never among
// the reader's own numbers, and makes the link that goes back. All of it stays in this tab.
import { ask, canShare, code, copy, fill, share, tell } from "./desk.js";
import { all, fieldOf, hit, make, named, one } from "./dom.js";
import { file } from "./file.js";
import { join, slotsOf } from "./noted.js";
import { openFiles, openText } from "./opened.js";
import * as record from "./record.js";
import { say } from "./say.js";
import { counted, t } from "./text.js";
/** @import { Benched, Noted, Read, Wrote } from "./types.d.ts" */

const store = "plumbline-replies";
const desk = one(document, '[data-desk="prepare"]'), fold = one(desk, ".replies", HTMLDetailsElement);
const opening = one(fold, "form.opening", HTMLFormElement), paper = one(fold, ".received"), form = one(fold, "form.advice", HTMLFormElement);
const picker = one(opening, "[name=files]", HTMLInputElement), pasted = one(opening, "[name=pasted]", HTMLTextAreaElement);
const [wrong, bad] = [one(opening, ".problem"), one(form, ".problem")], place = one(form, ".code-place");
const key = one(form, "[name=key]", HTMLSelectElement), [value, note, message, from, link] = ["value", "note", "message", "from", "link"].map((name) => named(form, name)[0]);
const waiting = make("p", { className: "how", hidden: true });
one(opening, "fieldset").append(waiting);

/** @returns {Benched} */
const empty = () => ({ replies: [], at: -1, wrote: {}, waiting: [] });
/** @returns {Benched} */
function kept() {
  try {
    return { ...empty(), ...JSON.parse(sessionStorage.getItem(store) ?? "") };
  } catch {
    return empty();
  }
}
let held = kept();
if (held.from !== undefined) from.value = held.from;
function keep() {
  try {
    if (held.replies.length || held.waiting.length) sessionStorage.setItem(store, JSON.stringify(held));
    else sessionStorage.removeItem(store);
  } catch { /* then they live as long as this page */ }
}

/** The replies on the page as the engine listed them: which, and whose. */
const listed = () => all(paper, ".arrivals [data-at]").map(({ dataset: { at, slot: of, rider, name = "", bike = "", from: by = "", client = "" } }) =>
  ({ at: Number(at), slot: Number(of), rider, name, bike, from: by, client }));

/** Where is kept what the fitter writes for the client on show. */
let slot = 0;
/** @returns {Wrote} */
const wrote = (of = slot) => (held.wrote[of] ??= { note: "", message: "", next: [] });

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
  waiting.hidden = !held.waiting.length;
  waiting.textContent = t("Notes that belong to no reply here, kept for your file: {0}.", held.waiting.map(({ client }) => client).join("; "));
  form.hidden = !held.replies.length;
  if (!held.replies.length) {
    paper.replaceChildren();
    return;
  }
  turn += 1;
  const mine = turn;
  const written = Object.entries(held.wrote).flatMap(([of, { message: to, next }]) => [[`${of}.message`, to], ...next.map(({ key: name, value: is }) => [`${of}.next.${name}`, is])]);
  const query = new URLSearchParams([["at", String(held.at)], ["from", from.value], ...written]).toString();
  const { html = "", link: back = "", error } = await ask(desk, "replies", { record: "", text: held.replies.flat().join("\0"), query, link: sheet() });
  if (mine !== turn) return;
  if (error) {
    say(error);
    return;
  }
  fill(paper, html);
  const arrived = paper.querySelector(".arrived");
  form.hidden = !(arrived instanceof HTMLElement);
  if (!(arrived instanceof HTMLElement)) return;
  const now = held; // what was put away meanwhile is gone
  now.at = Number(arrived.dataset.at);
  slot = listed().find(({ at }) => at === held.at)?.slot ?? 0;
  keep();
  // Ticks and ways back are the client's own.
  for (const box of all(paper, "input[type=checkbox]", HTMLInputElement)) box.disabled = true;
  for (const way of all(paper, "[data-back]")) way.remove();
  for (const [field, text] of /** @type {[HTMLInputElement, string][]} */ ([[note, wrote().note], [message, wrote().message]])) if (document.activeElement !== field) field.value = text;
  link.value = back;
  for (const button of all(form, "[data-do=copy], [data-do=share], [data-do=code]", HTMLButtonElement)) button.disabled = !back;
  one(form, "[data-do=share]").hidden = !canShare();
  settings();
  const told = /** @type {string[]} */ ([]), laid = await lay(told);
  if (told.length) amiss(told);
  if (laid && mine === turn) await draw();
}

/**
 * Adds what files or a field hold, each under a name of its own, and shows the first of it.
 * @param {[name: string, text: string][]} list
 */
async function add(list) {
  const fresh = list.filter(([, text]) => text.trim()), names = new Set(held.replies.map(([name]) => name));
  for (const [name, text] of fresh) {
    let own = name;
    for (let n = 2; names.has(own); n += 1) own = `${name} (${n})`;
    names.add(own);
    held.replies.push([own, text.replaceAll("\0", " ")]);
  }
  if (fresh.length) await draw();
  say(counted(fresh.length, "{0} reply is opened.", "{0} replies are opened."));
}

/**
 * Shows what was read, and says what was not.
 * @param {Read} read
 */
async function shown({ list, problems, notes: files }) {
  said = [];
  amiss(problems);
  await add(list); // first, so that notes find whom they are about
  for (const [name, text] of files) await notesIn(name, text);
}

/** @type {string[]} */
let said = [];
/** Says what is wrong with what came last. @param {string[]} more */
function amiss(more) {
  said = [...said, ...more];
  wrong.textContent = said.join("\n");
  wrong.hidden = !said.length;
}

/** @param {Iterable<File>} files */
const take = async (files) => shown(await openFiles(files, desk));
/** @type {(name: string, text: string) => void} */
const takeText = async (name, text) => shown(await openText(name, text, desk));

/**
 * Takes notes from a file, to be laid beside the replies that they are about.
 * @param {string} name
 * @param {string} text
 */
async function notesIn(name, text) {
  const { readNotes } = await import("./notes.js"), read = readNotes(name, text);
  if (read.from && (from.value === from.defaultValue || !from.value)) held.from = from.value = read.from;
  held.guide = read.guide || held.guide;
  held.waiting.push(...read.clients);
  amiss(read.problems);
  await draw();
}

/**
 * Lays notes beside the replies that they are about; the others wait. Whatever is wrong is
 * put into told. Returns whether any was laid.
 * @param {string[]} told
 */
async function lay(told) {
  const list = listed(), pending = held.waiting;
  let laid = false;
  held.waiting = [];
  for (const noted of pending) {
    const before = told.length, slots = slotsOf(noted, list, noted.told ? undefined : told);
    if (!slots.length) {
      held.waiting.push({ ...noted, told: noted.told || told.length > before });
      continue;
    }
    laid = true;
    for (const of of slots) join(wrote(of), noted);
    const left = [];
    for (const setting of noted.next) if (!await setAs(wrote(slots[0]), setting, told)) left.push(setting);
    if (left.length) held.waiting.push({ ...noted, note: "", message: "", next: left, tried: true });
  }
  return laid;
}

/**
 * Takes a setting of a file, and returns whether it stands as the file has it. What the
 * fitter chose on the page stays.
 * @param {Wrote} mark
 * @param {Noted["next"][number]} setting
 * @param {string[]} told
 */
async function setAs(mark, { key: of, typed, place: line = "" }, told) {
  const { problems = [], record: pairs } = await ask(desk, "set", { record: "", key: of, text: typed, bare: "mm" });
  if (!pairs?.length) {
    told.push(`${line}: ${problems.map(({ message: why, suggest }) => [why, suggest && t("Did you mean {0}?", suggest)].filter(Boolean).join(" ")).join(" ")}`);
    return false;
  }
  const [[name, is]] = pairs, option = optionOf(name), old = mark.next.find((each) => each.key === name);
  if (!old) {
    mark.next.push({ key: name, value: is, typed: withUnit(typed, option?.dataset.unit), label: option?.textContent ?? name });
    return true;
  }
  if (old.value !== is) told.push(t("{0}: “{1}” stays {2}, as on this page.", line, old.label, old.typed));
  return old.value === is;
}

/** @param {string} name */
const optionOf = (name) => [...key.options].find((option) => option.value === name);
/** @type {(typed: string, unit?: string) => string} */
const withUnit = (typed, is = "") => (/[a-z°%″"']\s*$/i.test(typed) ? typed : `${typed} ${is}`.trim());

picker.onchange = () => {
  take([...picker.files ?? []]);
  picker.value = ""; // the same file can be picked again
};

/**
 * Opens what was dropped.
 * @param {File[]} files
 * @param {string} text
 */
export function dropped(files, text) {
  if (files.length) take(files);
  else takeText(t("a link"), text);
}

/**
 * Sets what the client's bike is to have, in place of an earlier value.
 * @param {string} of
 * @param {string} is canonical
 * @param {string} typed
 */
function set(of, is, typed) {
  const mark = wrote(), label = optionOf(of)?.textContent ?? of;
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
  set(of, is, withUnit(text, unit()));
}
/** The unit in which a bare number is read. */
function unit() {
  const { unit: is = "" } = key.options[key.selectedIndex]?.dataset ?? {};
  return is === "mm" ? record.units() : is;
}

/** Saves what was written, and what waits for its reply, as a file that the command reads. */
async function notes() {
  const { writeNotes } = await import("./notes.js"), names = new Map(listed().map(({ slot: of, client }) => [String(of), client]));
  const clients = Object.entries(held.wrote).filter(([, { note: own, message: to, next }]) => own || to || next.length).map(([of, mark]) =>
    ({ ...mark, client: names.get(of) ?? held.replies[Number(of)]?.[0] ?? of, next: mark.next.map(({ key: name, value: is }) => ({ key: name, typed: is })) }));
  file("notes.yaml", "application/yaml", writeNotes({ from: from.value, guide: held.guide ?? sheet(), clients: [...clients, ...held.waiting] }));
}

/** @type {Record<string, () => unknown>} */
const ways = {
  paste: () => {
    takeText(t("what was pasted"), pasted.value);
    pasted.value = "";
  },
  set: write,
  copy: () => copy(link.value, place),
  share: () => share(t("Settings for your bike"), link.value),
  code: () => code(link.value, place),
  notes,
  away: () => {
    held = empty();
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
  if (field === from) held.from = from.value;
  if (field === note) keep();
  else if (field === message || field === from) draw();
});
for (const typed of [opening, form]) typed.onsubmit = (event) => event.preventDefault();
form.addEventListener("keydown", (event) => {
  if (event.key === "Enter" && event.target === value) write();
});
for (const fields of all(fold, "fieldset", HTMLFieldSetElement)) fields.disabled = false;
draw();
