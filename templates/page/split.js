// How a text becomes the words that the search compares. What can be found and what
// is typed go through the same function, so that both always agree.

import { stemmer } from "./stemmer.js";

// Words that nearly every sentence has and that nobody looks for.
const english = new Set(`
  a about after all also am an and any are as at be because been before but by can could did do does doing each even
  every few for from get give go got had has have how i if in into is it its just kind make many may me mine more most
  much must my need no nor of off often on one only or other our out own please should so some such than that the
  their them then there these they thing this to try until up use using very want was we were what when where which
  while who why will with would you your yours mtb mountain`.trim().split(/\s+/u));

const german = new Set(`
  aber alle alles als also am an auch auf aus bei beim bin bis da damit dann das dass dein deine deinem deinen deiner dem
  den denn der des die dies diese diesem diesen dieser dir doch du durch ein eine einem einen einer eines er es etwas euch
  fur gibt hab habe haben hast hat ich ihm ihn ihr im in ins ist ja jede jedem jeden jeder kann kannst kein keine konnen
  man mein meine meinem meinen meiner mich mir mit muss mussen nach nicht noch nun nur ob oder ohne sein seine sich sie
  sind so soll sollte sollten um und uns unter vom von vor war was welche welchem welchen welcher welches wenn wer wie wird
  wo wozu zu zum zur mtb mountainbike bike rad fahrrad`.trim().split(/\s+/u));

/**
 * How a language makes its words: which nobody looks for, what stem each has, and whether
 * it writes several together as one.
 * @typedef {{ fillers: Set<string>, stemmer: (word: string) => string, compounds: boolean }} Tongue
 */

/** @type {Tongue} */
const plain = { fillers: english, stemmer, compounds: false };

/**
 * Loads what a language needs; of one that nobody has described the words stay as they are.
 * @param {string} [language] BCP 47
 * @returns {Promise<Tongue>}
 */
export async function tongueOf(language = "en") {
  const [base] = language.split("-");
  if (base === "en") return plain;
  if (base !== "de") return { fillers: new Set(), stemmer: (word) => word, compounds: false };
  const module = await import("./stemmer-de.js");
  return { fillers: german, stemmer: module.stemmer, compounds: true };
}

// The letters that stand between the parts of a German compound.
const joints = ["", "s", "es", "n", "en", "e"];
const least = 4; // letters of a part

/**
 * The parts of a word that is made of others, their stems; none for any other word.
 * @param {string} word
 * @param {Set<string>} known stems
 * @param {(word: string) => string} stem
 * @returns {string[]}
 */
export function parts(word, known, stem) {
  for (let at = word.length - least; at >= least; at -= 1) {
    const tail = word.slice(at);
    const rest = known.has(stem(tail)) ? [stem(tail)] : parts(tail, known, stem);
    if (!rest.length) continue;
    for (const joint of joints) {
      const head = word.slice(0, at - joint.length);
      if (head.length >= least && word.slice(head.length, at) === joint && known.has(stem(head))) return [stem(head), ...rest];
    }
  }
  return [];
}

/**
 * The words of a text as they are written, in small letters and without accents: a
 * number with its decimals is one of them.
 * @param {string} text
 */
export const written = (text) => text.toLowerCase().normalize("NFKD").replace(/\p{M}/gu, "").replace(/[’']s?(?!\p{L})/gu, "")
  .replace(/[’']/gu, "").match(/\p{N}+(?:[.,]\p{N}+)*|\p{L}+/gu) ?? [];

/**
 * Remembers what a function made of a word: a guide repeats its words.
 * @template T
 * @param {(word: string) => T} make
 */
function remembered(make) {
  /** @type {Map<string, T>} */
  const made = new Map();
  return (/** @type {string} */ word) => {
    const known = made.get(word) ?? make(word);
    made.set(word, known);
    return known;
  };
}

/**
 * Makes the splitter of a guide.
 * @param {string[][]} same groups of words and phrases that mean the same, the guide's own first
 * @param {Tongue} [tongue]
 * @param {Iterable<string>} [all] the guide's words, of which compounds are made
 * @returns {(text: string) => string[]}
 */
export function splitter(same, { fillers, stemmer: make, compounds } = plain, all = []) {
  const stemOf = remembered(make);
  const known = new Set(compounds ? [...all].filter((word) => word.length >= least).map(stemOf) : []);
  const partsOf = remembered((word) => (compounds && word.length >= 2 * least ? parts(word, known, stemOf) : []));
  const stems = (/** @type {string} */ text) => written(text).map(stemOf);
  /** @type {Map<string, { from: string[], to: string[] }[]>} by the first word of a phrase, the longest phrase in front */
  const phrases = new Map();
  for (const group of same) {
    const to = stems(group[0]);
    for (const from of group.map(stems)) {
      phrases.set(from[0], [...phrases.get(from[0]) ?? [], { from, to }].sort((a, b) => b.from.length - a.from.length));
    }
  }
  return (text) => {
    const words = written(text);
    const list = words.map(stemOf);
    /** @type {string[]} */
    const terms = [];
    for (let i = 0; i < list.length;) {
      const phrase = phrases.get(list[i])?.find(({ from }) => from.every((word, n) => list[i + n] === word));
      if (phrase) {
        terms.push(...phrase.to);
      } else if (!fillers.has(words[i])) {
        terms.push(list[i], ...partsOf(words[i]));
      }
      i += phrase?.from.length ?? 1;
    }
    return terms;
  };
}
