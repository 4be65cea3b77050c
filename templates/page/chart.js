// A pasted chart as it was understood: a table below the field, whose cells can be
// mended, and the size that is the reader's own bike.
import { all, fieldOf, hit, make } from "./dom.js";
import * as engine from "./engine.js";
import * as record from "./record.js";
import { say } from "./say.js";
import { t } from "./text.js";
/** @import { Pair } from "./types.d.ts" */

const pause = 400; // ms without typing before the table is drawn
const source = "size-match"; // the calculator that such numbers are said to come from

/** @typedef {{ field: HTMLTextAreaElement, place: HTMLElement, shown?: string, draw: () => void }} Shown */
/** @type {Map<string, Shown>} by the field's id: a form that is written anew keeps its tables */
const known = new Map();

/**
 * Shows below the field how its chart is understood.
 * @param {HTMLTextAreaElement} field
 * @param {() => boolean} [example] whether the numbers are nobody's
 */
export function chart(field, example = () => false) {
  const it = known.get(field.id) ?? begun(field, example);
  it.field = field;
  field.after(it.place);
  /** @type {ReturnType<typeof setTimeout> | undefined} */
  let later;
  field.addEventListener("input", () => {
    clearTimeout(later);
    later = setTimeout(it.draw, pause);
  });
  if (field.value.trim() || it.shown) it.draw();
}

/**
 * @param {HTMLTextAreaElement} first
 * @param {() => boolean} example
 */
function begun(first, example) {
  const place = make("div", { className: "chart", id: `${first.id}-chart` });
  const asker = {
    question: () => ({
      desk: "chart", key: it.field.dataset.chart ?? "", place: place.id, text: it.field.value,
      record: "", bare: record.units(), units: record.units(),
    }),
    /** @param {{ html?: string }} reply */
    take({ html = "" }) {
      if (place.contains(document.activeElement) && document.activeElement?.matches("input")) return; // it is being mended
      if (String(html) === it.shown) return; // what was said of it stays
      it.shown = String(html);
      if (html) place.innerHTML = html;
      else place.replaceChildren(); // a text that is no answer of the engine may not become HTML
      if (example()) place.querySelector(".mine")?.remove();
    },
  };
  /** @type {Shown} */
  const it = { field: first, place, draw: () => engine.ask(asker) };
  place.addEventListener("input", (event) => {
    event.stopPropagation();
    fieldOf(event).removeAttribute("aria-invalid");
    it.field.value = text(place);
    it.field.dispatchEvent(new Event("input", { bubbles: true }));
    it.shown = undefined; // it is drawn anew when it is mended
  });
  place.addEventListener("change", (event) => event.stopPropagation());
  place.addEventListener("focusout", ({ relatedTarget }) => {
    if (!(relatedTarget instanceof HTMLElement && place.contains(relatedTarget))) setTimeout(it.draw);
  });
  place.addEventListener("click", (event) => {
    const button = hit(event, "[data-mine]");
    if (button) own(place, button);
  });
  known.set(first.id, it);
  return it;
}

/**
 * The table as a chart that can be pasted: one line for each size.
 * @param {HTMLElement} place
 */
export function text(place) {
  const cells = (/** @type {Element} */ row) => all(row, "input", HTMLInputElement).map(({ value }) => value.replaceAll(/[;\n"]/g, " ").trim());
  const names = cells(place.querySelector("thead") ?? place);
  const rows = all(place, "tbody tr");
  const lines = names.map((name, i) => [name || String(i + 1), ...rows.map((row) => cells(row)[i])]);
  return [["name", ...rows.map(({ dataset }) => dataset.key)], ...lines].map((line) => line.join(";")).join("\n");
}

/**
 * Makes a size of the table the reader's bike.
 * @param {HTMLElement} place
 * @param {HTMLElement} button
 */
function own(place, button) {
  take({
    said: button.textContent ?? "", mine: /** @type {Pair[]} */ ([...new URLSearchParams(button.dataset.mine)]),
    parts: (button.parentElement?.dataset.parts ?? "").split(" "),
    line: /** @type {HTMLElement} */ (place.querySelector(".taken")), label: (key) => name(place, key),
  });
}

/**
 * Makes a size the reader's bike, and says so in a line. What they measured or wrote down
 * themselves stays. parts are the keys of what may have been exchanged.
 * @param {{ said: string, mine: Pair[], parts: string[], line: HTMLElement, label: (key: string) => string }} size
 */
export function take({ said: begins, mine, parts, line, label }) {
  const before = record.text();
  const free = (/** @type {string} */ key) => !record.at(key) || record.at(`from ${key}`) === `${key}.${source}`;
  const kept = mine.filter(([key, value]) => !free(key) && Number(record.at(key)) !== Number(value));
  lay(mine.filter(([key]) => free(key)), parts);
  const said = t("{0}. Numbers of the chart that every chapter uses now: {1}.", begins, mine.length - kept.length);
  line.replaceChildren(said);
  const act = (/** @type {string} */ words, /** @type {() => void} */ does) => {
    const it = make("button", { type: "button" }, words);
    it.onclick = () => {
      does();
      it.remove();
    };
    line.append(" ", it);
  };
  if (kept.length) {
    line.append(" ", t("Kept as you have them: {0}.", kept.map(([key]) => label(key)).join(", ")));
    act(t("Take the chart’s for these too"), () => lay(kept, parts));
  }
  act(t("Undo"), () => {
    restore(before, mine.map(([key]) => key));
    line.replaceChildren(t("Your numbers are as they were."));
    say(line.textContent);
  });
  line.hidden = false;
  say(said);
}

/**
 * Puts back what a record, as text, had of these keys.
 * @param {string} before
 * @param {string[]} keys
 */
export function restore(before, keys) {
  const pairs = /** @type {Pair[]} */ ([...new URLSearchParams(before)]), mark = (/** @type {string} */ key) => key === "from" || key === "estimated";
  const was = new Map(pairs.filter(([key]) => !mark(key)));
  const marks = pairs.filter(([key, value]) => mark(key) && keys.includes(value.split(".")[0]));
  record.put(keys.map((key) => [key, was.get(key) ?? ""]), undefined, marks);
}

/**
 * Puts numbers of the chart into the record. What is a part of the frame is said to come
 * from it; a part that can be exchanged is what the bike has now.
 * @param {Pair[]} pairs
 * @param {string[]} parts
 */
function lay(pairs, parts) {
  record.put(pairs, undefined, pairs.filter(([key]) => !parts.includes(key)).map(([key]) => ["from", `${key}.${source}`]));
}

/**
 * What the table calls a quantity.
 * @param {HTMLElement} place
 * @param {string} key
 */
const name = (place, key) => place.querySelector(`tr[data-key="${key}"] th`)?.firstChild?.textContent?.trim() ?? key;
