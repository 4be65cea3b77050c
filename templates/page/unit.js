// The unit beside a field: a tap changes it, and never the value.
import { hit, make } from "./dom.js";
import * as record from "./record.js";
import { t } from "./text.js";
/** @import { Pair } from "./types.d.ts" */

/**
 * Follows taps on the units of that part of a page. The field keeps the focus, so that
 * the keyboard of a phone stays.
 * @param {HTMLElement} place
 */
export function units(place) {
  place.addEventListener("pointerdown", (event) => hit(event, "[data-unit-of]") && event.preventDefault());
  place.addEventListener("click", (event) => {
    const { unitOf: key, next = "" } = hit(event, "[data-unit-of]")?.dataset ?? {};
    if (key) record.put([], undefined, [[`${key}.unit`, next]]);
  });
}

/** @type {Record<string, string>} the unit after a tap */
const next = { mm: "cm", cm: "in", in: "mm", kg: "lb", lb: "kg" };

/**
 * The unit that a field of that key is read in; own is that of its quantity.
 * @param {string} key
 * @param {string} own
 */
export function unitOf(key, own) {
  const guide = record.units();
  return record.at(`${key}.unit`) ?? (own === "mm" ? guide : own === "kg" && guide === "in" ? "lb" : own);
}

/**
 * The unit beside a field: a button where it can be changed.
 * @param {string} key
 * @param {string} unit
 */
export function beside(key, unit) {
  if (!next[unit]) return make("span", { className: "unit" }, unit);
  const button = make("button", { type: "button", className: "unit" }, make("span", {}, unit), make("span", { className: "unseen" }, `, ${t("read it in another unit")}`));
  Object.assign(button.dataset, { unitOf: key, next: next[unit] });
  return button;
}

/** The units that single fields are read in, as the engine takes them. */
export const chosen = () => new URLSearchParams(marks()).toString();

/**
 * Makes that the guide's own unit, which every field follows again.
 * @param {string} unit
 */
export const follow = (unit) => record.put([["u", unit], .../** @type {Pair[]} */ (marks().map(([key]) => [key, ""]))]);

const marks = () => [...new URLSearchParams(record.text())].filter(([key]) => key.endsWith(".unit"));

/**
 * Writes the unit behind a bare number that was typed while the field had another.
 * @param {string} text
 * @param {string | undefined} was
 * @param {string | undefined} is
 */
export const kept = (text, was, is) => (was && was !== is && /\d\s*$/.test(text) ? `${text.trimEnd()} ${was}` : text);
