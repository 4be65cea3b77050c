// Words of the glossary in forms and answers: the first use of each can be tapped, as in
// the chapters. The marks are set while nobody types and taken away before an answer is
// written, so that a stroke finds the nodes that it knows.

import { make } from "./dom.js";

/** @typedef {{ key: string, names: string[], not?: string[] }} Term as the guide's words.json has it, in the form that looked returns */
/** @typedef {{ text: Text, said: string, added: ChildNode[] }} Mark what a text was, and what stands behind it now */

const pause = 700; // ms without an answer before words are marked
const places = ".inputs div.field > label[for], .inputs .empty, .how p, .answer :is(p, dd, li)";
const never = "a, button, svg, table, summary, .heed, .caution, .value, .use, .whose";
/** The way to the guide’s top. */
const root = () => document.documentElement.dataset.root ?? "";

/** @type {Promise<Term[]> | undefined} */
let terms;
/** @type {WeakMap<Element, { marks: Mark[], later?: ReturnType<typeof setTimeout> }>} */
const marked = new WeakMap();

/**
 * Text in the form in which terms are looked for, as long as it was.
 * @param {string} text
 */
const looked = (text) => {
  const low = text.toLowerCase();
  return (low.length === text.length ? low : text).replaceAll("-", " ");
};

/**
 * Where a text has a term as whole words, with or without a plural s.
 * @param {string} text
 * @param {string} term
 */
function mentions(text, term) {
  /** @type {[from: number, to: number][]} */
  const found = [];
  const letter = /[\p{L}\p{N}]/u;
  for (let at = text.indexOf(term); at >= 0; at = text.indexOf(term, at + 1)) {
    const end = at + term.length + (text[at + term.length] === "s" ? 1 : 0);
    if (!letter.test(text[at - 1] ?? "") && !letter.test(text[end] ?? "")) found.push([at, end]);
  }
  return found;
}

/**
 * The first term in a text that is not among those said already, the longest where two
 * begin together.
 * @param {string} said
 * @param {Term[]} list
 * @param {Set<string>} before
 */
export function first(said, list, before) {
  const text = looked(said);
  let from = -1, to = -1, key = "";
  for (const term of list) {
    if (before.has(term.key)) continue;
    const hits = term.names.flatMap((name) => mentions(text, name));
    if (!hits.length) continue; // as with most: what it is not need not be looked for
    const other = (term.not ?? []).flatMap((phrase) => mentions(text, phrase));
    for (const hit of hits) {
      if (other.some(([a, b]) => hit[0] < b && a < hit[1])) continue;
      if (from < 0 || hit[0] < from || (hit[0] === from && hit[1] > to)) [from, to, key] = [...hit, term.key];
    }
  }
  return { from, to, key };
}

/**
 * Takes the marks of a bench away.
 * @param {Element} bench
 */
export function unmark(bench) {
  const state = marked.get(bench);
  if (!state) return;
  clearTimeout(state.later);
  for (const { text, said, added } of state.marks) {
    for (const node of added) node.remove();
    text.data = said;
  }
  state.marks = [];
}

/**
 * Marks the words of a bench once nothing has been written in it for a moment.
 * @param {Element} bench
 */
export function soon(bench) {
  const state = marked.get(bench) ?? { marks: [] };
  marked.set(bench, state);
  clearTimeout(state.later);
  state.later = setTimeout(() => {
    terms ??= fetch(`${root()}words.json`).then((answer) => answer.json());
    terms.then((list) => mark(bench, list), () => {
      terms = undefined; // the glossary is a link away all the same
    });
  }, pause);
}

/**
 * @param {Element} bench
 * @param {Term[]} list
 */
export function mark(bench, list) {
  unmark(bench);
  const state = marked.get(bench) ?? { marks: [] };
  marked.set(bench, state);
  /** @type {Set<string>} */
  const before = new Set();
  /** @type {Text[]} */
  const texts = [];
  for (const walk = document.createTreeWalker(bench, 4); walk.nextNode();) { // texts
    const node = walk.currentNode;
    if (node instanceof Text && node.parentElement?.closest(places) && !node.parentElement.closest(never)) texts.push(node);
  }
  for (const text of texts) {
    /** @type {Mark} */
    const done = { text, said: text.data, added: [] };
    for (let rest = text; ;) {
      const { from, to, key } = first(rest.data, list, before);
      if (from < 0) break;
      before.add(key);
      const word = rest.splitText(from), tail = word.splitText(to - from);
      const dfn = make("dfn", { className: "word" }, make("a", { href: `${root()}glossary.html#${key}` }, word.data));
      word.replaceWith(dfn);
      done.added.push(dfn, tail);
      rest = tail;
    }
    if (done.added.length) state.marks.push(done);
  }
}
