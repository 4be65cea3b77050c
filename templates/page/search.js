// The find page: reads the guide's index once, on this device, and lists what answers
// the words that were typed. Without script the page lists everything.

import { make, one } from "./dom.js";
import MiniSearch from "./minisearch.js";
import { openedBy } from "./number.js";
import { splitter, tongueOf, written } from "./split.js";
import { counted, t } from "./text.js";
/** @import { Index, Opened, Thing } from "./types.d.ts" */

// How much each kind of thing weighs against the others with the same words.
/** @type {Record<string, number>} */
const weights = { chapter: 1, symptom: 1.15, calculator: 0.8, word: 0.6, section: 0.6, input: 0.5, answer: 0.4, table: 0.4 };

// The library compares what split has made; words that are typed are corrected and
// split before they reach it.
const asIs = { tokenize: (/** @type {string} */ text) => text.split(" "), processTerm: (/** @type {string} */ term) => term };

/**
 * Reads the index: the things, the words that mean the same, and the fields that a
 * number opens. It is done in pieces, so that the page answers meanwhile.
 * @param {string} text
 * @returns {Promise<Index>}
 */
export async function readIndex(text) {
  /** @type {{ things: Thing[], same: string[][], numbers: Opened[], language?: string }} */
  const { things, same, numbers, language } = JSON.parse(text);
  const tongue = await tongueOf(language);
  const vocabulary = new Set(tongue.compounds ? things.flatMap(({ title, says, asked, text: body }) => written([title, says, ...asked ?? [], body].join(" "))) : []);
  const split = splitter(same, tongue, vocabulary);
  const joined = (/** @type {string | undefined} */ s) => split(s ?? "").join(" ");
  /** @type {MiniSearch<{ id: number }>} */
  const lookup = new MiniSearch({ fields: ["title", "asked", "says", "text"], ...asIs, searchOptions: asIs });
  /** @type {Map<string, number>} how often each word is used */
  const known = new Map();
  const whole = bodies(things);
  for (const [id, { url, title, kind, says, asked, text: body }] of things.entries()) {
    const all = kind === "chapter" ? [...whole.get(pageOf(url)) ?? []].join(" ") : body;
    for (const word of written([title, says, ...asked ?? [], body].join(" "))) {
      known.set(word, (known.get(word) ?? 0) + 1);
    }
    lookup.add({ id, title: joined(title), asked: joined(asked?.join(" ; ")), says: joined(says), text: joined(all) });
    if (id % 40 === 39) await pause();
  }
  for (const word of written(same.flat().join(" "))) {
    known.set(word, (known.get(word) ?? 0) + 1);
  }
  /** @type {MiniSearch<{ id: string }>} */
  const spelling = new MiniSearch({ fields: ["id"], ...asIs, searchOptions: asIs });
  spelling.addAll([...known.keys()].filter((word) => /^\p{L}{3,}$/u.test(word)).map((id) => ({ id })));
  const phrases = things.map(({ title, asked }) => [title, ...asked ?? []].map((s) => new Set(split(s))));
  return { things, numbers, split, lookup, known, spelling, phrases };
}

/** Lets the page do what waits. */
const pause = () => new Promise((resume) => {
  setTimeout(resume, 0);
});

/** @param {string} url */
const pageOf = (url) => url.split("#")[0];

/**
 * What a page says in all its sections, each word once.
 * @param {Thing[]} things
 */
function bodies(things) {
  /** @type {Map<string, Set<string>>} */
  const whole = new Map();
  for (const { url, kind, text } of things) {
    if (kind === "chapter" || kind === "section") {
      const page = whole.get(pageOf(url)) ?? new Set();
      written(text ?? "").forEach((word) => page.add(word));
      whole.set(pageOf(url), page);
    }
  }
  return whole;
}

/**
 * Reads a typed word that the guide does not have as the nearest one that it has: with
 * one or two slips, or, for the last word, as the beginning of one. "" where nothing is
 * near.
 * @param {Index} index
 * @param {string} word
 * @param {boolean} last
 */
function corrected({ known, spelling }, word, last) {
  if (known.has(word) || !/^\p{L}+$/u.test(word)) return word;
  const beginnings = [...known.keys()].filter((other) => other.startsWith(word))
    .sort((a, b) => (known.get(b) ?? 0) - (known.get(a) ?? 0));
  if (last && word.length > 2 && beginnings.length > 0) return beginnings[0];
  if (word.length < 4) return "";
  for (const slips of word.length > 4 ? [1, 2] : [1]) {
    const near = spelling.search(word, { fuzzy: slips }).filter(({ id }) => Math.abs(id.length - word.length) <= slips)
      .map(({ id }) => ({ id, own: (id[0] === word[0] ? 2 : 0) + (sameLetters(id, word) ? 4 : 0) }));
    near.sort((a, b) => b.own - a.own || (known.get(b.id) ?? 0) - (known.get(a.id) ?? 0));
    if (near.length > 0) return near[0].id;
  }
  return "";
}

/**
 * Two letters swapped are the commonest slip.
 * @param {string} a
 * @param {string} b
 */
const sameLetters = (a, b) => [...a].sort().join("") === [...b].sort().join("");

/**
 * How much of a question a phrase is, and the other way round: 1 where both have the
 * same words.
 * @param {Set<string>} asked
 * @param {Set<string>} phrase
 */
const alike = (asked, phrase) => {
  const both = [...asked].filter((word) => phrase.has(word)).length;
  return both / (asked.size + phrase.size - both);
};

/**
 * Returns the things that answer a question, the best first, each with others of its
 * page; what a number in it fills in; what was typed as it was read where that differs;
 * and the words that nothing has.
 * @param {Index} index
 * @param {string} query
 */
export function search(index, query) {
  const { things, lookup, split, phrases } = index;
  const opens = openedBy(query, index.numbers, split);
  const typed = written(opens?.rest ?? query);
  const read = typed.map((word, i) => corrected(index, word, i === typed.length - 1));
  const terms = [...new Set(split(read.join(" ")))];
  const asked = new Set(terms);
  /** @type {Map<string, { thing: Thing, score: number, more: Thing[] }>} */
  const pages = new Map();
  const hits = lookup.search(terms.join(" "), { boost: { title: 3, asked: 3, says: 1.5 }, bm25: { k: 1.2, b: 0.4, d: 0.5 } })
    .map(({ id, score, terms: matched }) => {
      const close = Math.max(...phrases[id].map((phrase) => alike(asked, phrase)));
      const share = matched.length / Math.max(1, terms.length);
      return { thing: things[id], score: score * weights[things[id].kind] * (0.4 + 4 * close ** 2) * share };
    }).sort((a, b) => b.score - a.score).filter(({ score }, _, [best]) => score > best.score / 25);
  for (const { thing, score } of hits) {
    const page = thing.kind === "word" ? thing.url : pageOf(thing.url);
    const first = pages.get(page);
    if (!first) {
      pages.set(page, { thing, score, more: [] });
    } else if (score > first.score / 3 && first.more.length < 3) {
      first.more.push(thing);
    }
  }
  return {
    opens,
    found: [...pages.values()],
    read: read.some((word, i) => word !== "" && word !== typed[i]) ? read.filter((word) => word !== "").join(" ") : "",
    missing: typed.filter((word, i) => read[i] === "" && split(word).length > 0),
  };
}

/**
 * A reader's numbers live in the address and go along with every link.
 * @param {string} url
 * @param {string} hash
 * @param {Record<string, string>} [also] numbers that take the place of the reader's own
 */
export function carrying(url, hash, also = {}) {
  const pairs = hash.replace(/^#/, "").split("&")
    .filter((pair) => pair.includes("=") && !pair.startsWith("at=") && !Object.hasOwn(also, pair.split("=")[0]));
  pairs.push(...Object.entries(also).map(([key, value]) => `${key}=${value}`));
  if (pairs.length === 0) return url;
  const [path, anchor] = url.split("#");
  return `${path}#${pairs.join("&")}${anchor ? `&at=${anchor}` : ""}`;
}

/**
 * Where a thing is, from this page: the find page is at the top of the guide, the page
 * for a lost address may be anywhere.
 * @param {string} url
 * @param {Record<string, string>} [also]
 */
const way = (url, also) => carrying((document.documentElement.dataset.root ?? "") + url, location.hash, also);

/**
 * What somebody may have looked for who came to an address that has no page: the words
 * of its last two parts.
 * @param {string} path
 */
export const lostWords = (path) => written(path.split("/").slice(-2).join(" ").replace(/\.html?$/u, "").replace(/%../gu, " "))
  .filter((word) => word !== "index").join(" ");

/** @type {Record<string, string>} */
const kinds = {
  chapter: t("Chapter"), section: t("Section"), calculator: t("Calculator"), input: t("Measurement"), answer: t("Answer"),
  table: t("Table"), symptom: t("Symptom"), word: t("Word"),
};

/**
 * One thing that was found: what it is, where, and further places on its page.
 * @param {Thing} thing
 * @param {Thing[]} more
 */
function entry({ url, title, kind, in: where, says }, more) {
  const about = where ? t("{0} in {1}", kinds[kind] ?? kind, where) : kinds[kind] ?? kind;
  const item = make("li", {}, make("a", { href: way(url) }, title), " ",
    make("span", { className: "kind" }, about));
  if (says) item.append(make("p", {}, says));
  if (more.length > 0) {
    item.append(make("p", { className: "also" }, t("Also there:"), " ", ...more.flatMap((thing, i) => [i > 0 ? " · " : "",
      make("a", { href: way(thing.url) }, thing.title)])));
  }
  return item;
}

/**
 * The calculator that a number in the question opens.
 * @param {NonNullable<ReturnType<typeof openedBy>>} opens
 */
function filled({ field, value, said }) {
  const href = way(field.url, { [field.key]: String(value) });
  return make("li", { className: "filled" }, make("a", { href }, `${field.title}: ${field.label} ${said}`), " ",
    make("span", { className: "kind" }, kinds.calculator), make("p", {}, t("Opens with this number filled in.")));
}

/**
 * Puts the form and the list of what was found into place.
 * @param {HTMLElement} place
 * @param {HTMLElement} whole what lists everything
 */
function start(place, whole) {
  const label = make("label", { htmlFor: "find-words" }, t("What are you looking for?"));
  const input = make("input", { id: "find-words", type: "search", name: "q", autocomplete: "off", spellcheck: false });
  const status = make("p", { role: "status" });
  const form = make("form", { role: "search" }, label, input, status);
  const list = make("ol", { className: "contents results" });
  place.append(form, list);

  /** @type {Promise<Index> | undefined} */
  let index;
  const load = () => {
    index ??= fetch(place.dataset.find ?? "").then((answer) => {
      if (!answer.ok) throw new Error(`the index could not be read: ${answer.status}`);
      return answer.text();
    }).then(readIndex);
    return index;
  };

  let turn = 0;
  const show = async () => {
    turn += 1;
    const mine = turn;
    const query = input.value.trim();
    whole.hidden = query !== "";
    if (query === "") {
      list.replaceChildren();
      status.textContent = "";
      return;
    }
    let result;
    try {
      result = search(await load(), query);
    } catch {
      index = undefined;
      whole.hidden = false;
      status.textContent = t("The index could not be read. Everything is listed below.");
      return;
    }
    if (mine !== turn) return;
    const { opens, found, read, missing } = result;
    list.replaceChildren(...opens ? [filled(opens)] : [], ...found.slice(0, 20).map(({ thing, more }) => entry(thing, more)));
    const said = [];
    if (found.length === 0 && !opens) said.push(t("Nothing found. Try another word, or choose from the list below."));
    if (read) said.push(t("Shown for “{0}”.", read));
    if (missing.length > 0 && found.length > 0) said.push(...missing.map((word) => t("Nothing has “{0}”.", word)));
    whole.hidden = found.length > 0 || opens !== undefined;
    status.textContent = said.join(" ") || counted(found.length, "{0} page found.", "{0} pages found.");
  };

  load().catch(() => {
    index = undefined;
  });
  input.addEventListener("input", show);
  form.addEventListener("submit", (event) => {
    event.preventDefault();
    show();
  });
  const asked = new URLSearchParams(location.search).get("q") ?? (place.dataset.lost === undefined ? "" : lostWords(location.pathname));
  if (asked) {
    input.value = asked;
    show();
  }
}

// The tests have no page.
if (typeof document !== "undefined") {
  start(one(document, "[data-find]"), one(document, "[data-found]"));
}
