// The find page: reads the guide's index once, on this device, and lists what
// has the words that were typed. Without script the page lists everything.

const strip = (word) => (word.length > 3 && word.endsWith("s") && !word.endsWith("ss") ? word.slice(0, -1) : word);

export const wordsOf = (text) =>
  text.toLowerCase().split(/[^\p{L}\p{N}]+/u).filter((word) => word !== "").map(strip);

// The index has one line a word: the word, then the number of each thing that
// has it, with a weight where it stands in a title or heading.
export function readIndex(text) {
  const { things, words } = JSON.parse(text);
  const lines = words.split("\n").filter((line) => line !== "").map((line) => {
    const [word, ...marks] = line.split(" ");
    return {
      word,
      hits: marks.map((mark) => {
        const [thing, weight] = mark.split("*");
        return [Number(thing), Number(weight ?? 1)];
      }),
    };
  });
  return { things, lines };
}

// One letter added, dropped, changed or swapped.
function slip(a, b) {
  if (Math.abs(a.length - b.length) > 1) {
    return false;
  }
  let i = 0;
  while (i < a.length && a[i] === b[i]) {
    i += 1;
  }
  const rest = (x, n) => x.slice(i + n);
  return rest(a, 1) === rest(b, 1) || rest(a, 1) === rest(b, 0) || rest(a, 0) === rest(b, 1) ||
    (a[i] === b[i + 1] && a[i + 1] === b[i] && rest(a, 2) === rest(b, 2));
}

// How well an indexed word answers a typed one: whole, its beginning, inside a
// long word, or with one slip.
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

// search returns the things that have every typed word, the best first; where
// none has all, those that have most.
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

// A reader's numbers live in the address and go along with every link.
export function carrying(url, hash) {
  const pairs = hash.replace(/^#/, "").split("&").filter((pair) => pair.includes("=") && !pair.startsWith("at="));
  if (pairs.length === 0) {
    return url;
  }
  const [path, anchor] = url.split("#");
  return `${path}#${pairs.join("&")}${anchor ? `&at=${anchor}` : ""}`;
}

const kinds = { chapter: "Chapter", calculator: "Calculator", term: "Term" };

function entry(thing) {
  const item = document.createElement("li");
  const link = document.createElement("a");
  link.href = carrying(thing.url, location.hash);
  link.textContent = thing.title;
  const kind = document.createElement("span");
  kind.className = "kind";
  kind.textContent = kinds[thing.kind] ?? thing.kind;
  const says = document.createElement("p");
  says.textContent = thing.says;
  item.append(link, " ", kind, says);
  return item;
}

function start(place, whole) {
  const form = document.createElement("form");
  form.setAttribute("role", "search");
  const label = document.createElement("label");
  label.htmlFor = "find-words";
  label.textContent = "What are you looking for?";
  const input = document.createElement("input");
  Object.assign(input, { id: "find-words", type: "search", name: "q", autocomplete: "off", spellcheck: false });
  const status = document.createElement("p");
  status.setAttribute("role", "status");
  const list = document.createElement("ul");
  list.className = "contents";
  form.append(label, input, status);
  place.append(form, list);

  let index;
  const load = async () => {
    index ??= fetch(place.dataset.find).then((answer) => {
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
    status.textContent = `${count === 0 ? "Nothing found." : count === 1 ? "1 found." : `${count} found.`}${lacking}`;
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

if (typeof document !== "undefined") {
  const place = document.querySelector("[data-find]");
  const whole = document.querySelector("[data-found]");
  if (place && whole) {
    start(place, whole);
  }
}
