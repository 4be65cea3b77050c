// The find page: reads the guide's index once, on this device, and lists what
// has the words that were typed. Without script the page lists everything.

import { make, one } from "./dom.js";
/** @import { Index, Thing } from "./types.d.ts" */

/** @param {string} word */
const strip = (word) => (word.length > 3 && word.endsWith("s") && !word.endsWith("ss") ? word.slice(0, -1) : word);

/**
 * The words of a text, as the index cuts them.
 * @param {string} text
 */
export const wordsOf = (text) =>
  text.toLowerCase().split(/[^\p{L}\p{N}]+/u).filter((word) => word !== "").map(strip);

/**
 * Reads the index. It has one line a word: the word, then the number of each thing
 * that has it, with a weight where it stands in a title or heading.
 * @param {string} text
 * @returns {Index}
 */
export function readIndex(text) {
  /** @type {{ things: Thing[], words: string }} */
  const { things, words } = JSON.parse(text);
  const lines = words.split("\n").filter((line) => line !== "").map((line) => {
    const [word, ...marks] = line.split(" ");
    return {
      word,
      hits: marks.map((mark) => {
        const [thing, weight] = mark.split("*");
        return /** @type {[number, number]} */ ([Number(thing), Number(weight ?? 1)]);
      }),
    };
  });
  return { things, lines };
}

/**
 * One letter added, dropped, changed or swapped.
 * @param {string} a
 * @param {string} b
 */
function slip(a, b) {
  if (Math.abs(a.length - b.length) > 1) {
    return false;
  }
  let i = 0;
  while (i < a.length && a[i] === b[i]) {
    i += 1;
  }
  /**
   * @param {string} x
   * @param {number} n
   */
  const rest = (x, n) => x.slice(i + n);
  return rest(a, 1) === rest(b, 1) || rest(a, 1) === rest(b, 0) || rest(a, 0) === rest(b, 1) ||
    (a[i] === b[i + 1] && a[i + 1] === b[i] && rest(a, 2) === rest(b, 2));
}

/**
 * How well an indexed word answers a typed one: whole, its beginning, inside a long
 * word, or with one slip.
 * @param {string} typed
 * @param {string} word
 */
function likeness(typed, word) {
  if (word === typed) {
    return 4;
  }
  if (word.startsWith(typed)) {
    return 2;
  }
  if (typed.length > 4 && word.includes(typed)) {
    return 1;
  }
  return typed.length > 4 && slip(typed, word) ? 0.5 : 0;
}

/**
 * Returns the things that have every typed word, the best first; where none has all,
 * those that have most. missing are the words that nothing has.
 * @param {Index} index
 * @param {string} query
 * @returns {{ missing: string[], things: Thing[] }}
 */
export function search(index, query) {
  const typed = [...new Set(wordsOf(query))];
  const scores = index.things.map(() => ({ words: 0, score: 0 }));
  const known = typed.filter((word) => {
    const best = new Map();
    for (const line of index.lines) {
      const like = likeness(word, line.word);
      if (like > 0) {
        for (const [thing, weight] of line.hits) {
          best.set(thing, Math.max(best.get(thing) ?? 0, like * weight));
        }
      }
    }
    for (const [thing, score] of best) {
      scores[thing].words += 1;
      scores[thing].score += score;
    }
    return best.size > 0;
  });
  const most = Math.max(0, ...scores.map((s) => s.words));
  return {
    missing: typed.filter((word) => !known.includes(word)),
    things: scores.map((s, i) => ({ ...s, i })).filter((s) => s.words === most && most > 0)
      .sort((a, b) => b.score - a.score || a.i - b.i).map((s) => index.things[s.i]),
  };
}

/**
 * A reader's numbers live in the address and go along with every link.
 * @param {string} url
 * @param {string} hash
 */
export function carrying(url, hash) {
  const pairs = hash.replace(/^#/, "").split("&").filter((pair) => pair.includes("=") && !pair.startsWith("at="));
  if (pairs.length === 0) {
    return url;
  }
  const [path, anchor] = url.split("#");
  return `${path}#${pairs.join("&")}${anchor ? `&at=${anchor}` : ""}`;
}

/** @type {Record<string, string>} */
const kinds = { chapter: "Chapter", calculator: "Calculator", term: "Term" };

/** @param {Thing} thing */
function entry({ url, title, kind, says }) {
  const link = make("a", { href: carrying(url, location.hash) }, title);
  return make("li", {}, link, " ", make("span", { className: "kind" }, kinds[kind] ?? kind), make("p", {}, says));
}

/**
 * Puts the form and the list of what was found into place.
 * @param {HTMLElement} place
 * @param {HTMLElement} whole what lists everything
 */
function start(place, whole) {
  const label = make("label", { htmlFor: "find-words" }, "What are you looking for?");
  const input = make("input", { id: "find-words", type: "search", name: "q", autocomplete: "off", spellcheck: false });
  const status = make("p", { role: "status" });
  const form = make("form", { role: "search" }, label, input, status);
  const list = make("ul", { className: "contents" });
  place.append(form, list);

  /** @type {Promise<Index> | undefined} */
  let index;
  const load = () => {
    index ??= fetch(place.dataset.find ?? "").then((answer) => {
      if (!answer.ok) {
        throw new Error(`the index could not be read: ${answer.status}`);
      }
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
      status.textContent = "The index could not be read. Everything is listed below.";
      return;
    }
    if (mine !== turn) {
      return;
    }
    list.replaceChildren(...result.things.slice(0, 30).map(entry));
    const count = result.things.length;
    const lacking = result.missing.length > 0 ? ` Nothing has “${result.missing.join("”, “")}”.` : "";
    status.textContent = `${count === 0 ? "Nothing" : count} found.${lacking}`;
  };

  input.addEventListener("focus", () => load().catch(() => {
    index = undefined;
  }), { once: true });
  input.addEventListener("input", show);
  form.addEventListener("submit", (event) => {
    event.preventDefault();
    show();
  });
  const asked = new URLSearchParams(location.search).get("q");
  if (asked) {
    input.value = asked;
    show();
  }
}

// The tests have no page.
if (typeof document !== "undefined") {
  start(one(document, "[data-find]"), one(document, "[data-found]"));
}
