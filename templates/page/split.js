// How a text becomes the words that the search compares. What can be found and what
// is typed go through the same function, so that both always agree.

import { stemmer } from "./stemmer.js";

// Words that nearly every sentence has and that nobody looks for.
const fillers = new Set(`
  a about after all also am an and any are as at be because been before but by can could did do does doing each even
  every few for from get give go got had has have how i if in into is it its just kind make many may me mine more most
  much must my need no nor of off often on one only or other our out own please should so some such than that the
  their them then there these they thing this to try until up use using very want was we were what when where which
  while who why will with would you your yours mtb mountain`.trim().split(/\s+/u));

/**
 * The words of a text as they are written, in small letters and without accents: a
 * number with its decimals is one of them.
 * @param {string} text
 */
export const written = (text) => text.toLowerCase().normalize("NFKD").replace(/\p{M}/gu, "").replace(/[’']s?(?!\p{L})/gu, "")
  .replace(/[’']/gu, "").match(/\p{N}+(?:[.,]\p{N}+)*|\p{L}+/gu) ?? [];

/** @type {Map<string, string>} */
const stemmed = new Map();

/**
 * The stem of a word, looked up where it was found before: a guide repeats its words.
 * @param {string} word
 */
function stemOf(word) {
  let stem = stemmed.get(word);
  if (stem === undefined) {
    stem = stemmer(word);
    stemmed.set(word, stem);
  }
  return stem;
}

/**
 * Makes the splitter of a guide.
 * @param {string[][]} same groups of words and phrases that mean the same, the guide's own first
 * @returns {(text: string) => string[]}
 */
export function splitter(same) {
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
        terms.push(list[i]);
      }
      i += phrase?.from.length ?? 1;
    }
    return terms;
  };
}
