// A question with one number in it, such as “size for 180 cm”, is about a field that
// the number fills in. This needs no engine: it only chooses the field and the unit.
/** @import { Opened } from "./types.d.ts" */

// The units that people type, by kind, with the base units in one of each. Those that
// are tried where no unit was typed come first.
/** @type {Record<string, [spelling: RegExp, base: number, symbol: string][]>} */
const units = {
  length: [[/^(?:mm|milli.*)$/u, 1, "mm"], [/^(?:cm|centi.*)$/u, 10, "cm"], [/^(?:in|inch|inches|"|″|”|'')$/u, 25.4, "in"],
    [/^(?:m|met(?:re|er)s?)$/u, 1000, "m"], [/^(?:ft|foot|feet|'|′|’)$/u, 304.8, "ft"]],
  mass: [[/^(?:kgs?|kilo.*)$/u, 1, "kg"], [/^(?:lbs?|pounds?)$/u, 0.45359237, "lb"], [/^(?:st|stones?)$/u, 6.35029318, "st"]],
  angle: [[/^(?:deg|degrees?|°)$/u, 1, "°"]],
  share: [[/^(?:%|percent)$/u, 1, "%"]],
  number: [],
};

const feet = /(?<![\d.])(\d)\s*(?:'|′|’|ft\b|feet\b|foot\b)\s*(\d{1,2}(?:[.,]\d+)?)?\s*(?:"|″|”|in\b|inch\b|inches\b)?/u;
const plain = /(\d+(?:[.,]\d+)?)\s*(mm|cm|m|in|inch|inches|kgs?|kilos?|lbs?|pounds?|st|stones?|deg|degrees?|percent|°|%|"|″|”)?(?![\p{L}\d])/gu;

/**
 * Returns the one number of a question with what was typed of it, or nothing where
 * there is none, or more than one.
 * @param {string} query
 * @returns {{ said: string, value: number, unit: string } | undefined}
 */
function numberIn(query) {
  const tall = feet.exec(query);
  if (tall) {
    const inches = Number(tall[1]) * 12 + Number((tall[2] ?? "0").replace(",", "."));
    return { said: tall[0].trim(), value: inches, unit: "in" };
  }
  const all = [...query.matchAll(plain)];
  if (all.length !== 1) return undefined;
  const [said, value, unit = ""] = all[0];
  return { said: said.trim(), value: Number(value.replace(",", ".")), unit };
}

/**
 * Returns the field that a question fills in, with the value in base units, the words
 * that are left of the question, and the number as it was understood.
 * @param {string} query
 * @param {Opened[]} fields
 * @param {(text: string) => string[]} split
 */
export function openedBy(query, fields, split) {
  const number = numberIn(query.toLowerCase());
  if (!number) return undefined;
  const rest = query.toLowerCase().replace(number.said, " ");
  const words = new Set(split(rest));
  let best;
  for (const field of fields) {
    const read = reading(number, field);
    const fit = Math.max(...field.said.map((phrase) => {
      const wanted = split(phrase);
      return wanted.length > 0 && wanted.every((word) => words.has(word)) ? wanted.length : 0;
    }));
    if (read && fit > 0 && fit > (best?.fit ?? 0)) {
      best = { fit, field, value: read.value, said: read.said, rest };
    }
  }
  return best;
}

/**
 * A number as a field's value: in the unit that was typed, or else in the first in
 * which it is plausible.
 * @param {{ value: number, unit: string, said: string }} number
 * @param {Opened} field
 */
function reading({ value, unit, said }, { kind, range }) {
  const known = units[kind] ?? [];
  const tried = unit === "" ? known : known.filter(([spelling]) => spelling.test(unit));
  for (const [, base, symbol] of tried) {
    const x = value * base;
    if (x >= range[0] && x <= range[1]) {
      return { value: Math.round(x * 100) / 100, said: unit === "" ? `${value} ${symbol}` : said };
    }
  }
  return undefined;
}
