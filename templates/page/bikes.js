// The bikes of whoever publishes the guide. Forms that ask for a bike's numbers offer their
// sizes by name, a form that asks for a size chart the whole bike. On their own page each
// size can be made the reader's bike.
import { restore, take } from "./chart.js";
import { all, hit, make, named, one } from "./dom.js";
import * as record from "./record.js";
import { say } from "./say.js";
import { t } from "./text.js";
/** @import { Bench } from "./bench.js" */
/** @import { Pair } from "./types.d.ts" */

/** @typedef {{ name: string, chart: string, sizes: { name: string, mine: string }[] }} Bike */
/** @typedef {{ parts: string, labels: Record<string, string>, bikes: Bike[] }} List */
/** @typedef {{ text: string, pairs: Pair[] }} Choice */

/** @param {string} text */
const pairsOf = (text) => /** @type {Pair[]} */ ([...new URLSearchParams(text)]);

/** The sizes of all bikes. @param {List} list @returns {Choice[]} */
const sizes = ({ bikes: list }) => list.flatMap(({ name, sizes: some }) => some.map((size) => ({ text: `${name}, ${size.name}`, pairs: pairsOf(size.mine) })));

/**
 * Offers the bikes in the forms of a page, and on their own page.
 * @param {Bench[]} benches
 */
export async function bikes(benches) {
  for (const place of all(document, ".bike")) onPage(place);
  if (document.querySelector(".bike tr[data-units]")) {
    record.listen(inUnits);
    inUnits();
  }
  const asking = benches.filter(({ form }) => ["sizes", "reach", "new-reach"].some((key) => named(form, key).length));
  if (!asking.length) return;
  const answer = await fetch(document.documentElement.dataset.bikes ?? "");
  const list = /** @type {List} */ (await answer.json());
  for (const bench of asking) offer(bench, list);
}

/** Shows of each row the one in the reader's units. */
function inUnits() {
  for (const row of all(document, ".bike tr[data-units]")) row.hidden = !(row.dataset.units ?? "").split(" ").includes(record.units());
}

/** @param {HTMLElement} place */
function onPage(place) {
  const group = one(place, ".mine");
  group.hidden = false;
  group.onclick = (event) => {
    const button = hit(event, "[data-mine]");
    if (!button) return;
    take({
      said: button.dataset.said ?? "", mine: pairsOf(button.dataset.mine ?? ""), parts: (group.dataset.parts ?? "").split(" "), line: one(place, ".taken"),
      label: (key) => place.querySelector(`tr[data-key="${key}"] th`)?.firstChild?.textContent?.trim() ?? key,
    });
  };
}

/**
 * Offers the bikes above the fields of a form.
 * @param {Bench} bench
 * @param {List} list
 */
export function offer(bench, list) {
  const { form } = bench, place = make("div", { className: "ours" }), line = make("p", { className: "taken", hidden: true });
  line.setAttribute("role", "status");
  const parts = list.parts.split(" "), asks = (/** @type {string} */ key) => named(form, key).length > 0;

  /** @param {string} label @param {Choice[]} choices @param {(choice: Choice) => void} does @param {string[]} keys */
  const add = (label, choices, does, keys) => {
    const select = make("select", { id: `${bench.root.id}-ours-${place.childElementCount}` }, make("option", { value: "" }, t("none")));
    for (const [i, { text }] of choices.entries()) select.append(make("option", { value: String(i) }, text));
    /** Shows the choice that the record has, if it has one. */
    const show = () => {
      const at = choices.findIndex(({ pairs }) => pairs.every(([key, value]) => !keys.includes(key) || same(record.at(key), value)));
      select.value = at < 0 ? "" : String(at);
    };
    select.onchange = () => {
      if (!select.value) return;
      if (bench.playing) import("./play.js").then(({ play }) => play(bench, false), () => {});
      does(choices[Number(select.value)]);
    };
    record.listen((_keys, _source, replaced) => replaced && show());
    show();
    place.append(make("p", {}, make("label", { htmlFor: select.id }, label), " ", select));
  };
  /** @param {Choice} choice */
  const put = ({ text, pairs }) => {
    const before = record.text(), undo = make("button", { type: "button" }, t("Undo"));
    record.put(pairs);
    line.replaceChildren(text, " ", undo);
    line.hidden = false;
    undo.onclick = () => {
      restore(before, pairs.map(([key]) => key));
      line.replaceChildren(t("Your numbers are as they were."));
      say(line.textContent);
    };
    say(text);
  };
  if (asks("sizes")) {
    add(t("One of our bikes"), list.bikes.map(({ name, chart }) => ({ text: name, pairs: [["sizes", chart]] })), put, ["sizes"]);
  }
  if (asks("reach") && asks("stack")) {
    add(t("Your bike is one of ours"), sizes(list), ({ text, pairs }) => {
      take({ said: text, mine: pairs, parts, line, label: (key) => list.labels[key] ?? key });
    }, ["reach", "stack", "head-angle", "seat-angle"]);
  }
  if (asks("new-reach")) {
    const other = sizes(list).map(({ text, pairs }) => ({ text, pairs: /** @type {Pair[]} */ (pairs.map(([key, value]) => [`new-${key}`, value]).filter(([key]) => asks(key))) }));
    add(t("The other size is one of ours"), other, put, ["new-reach", "new-stack"]);
  }
  if (!place.childElementCount) return;
  place.append(line);
  for (const kind of ["input", "change"]) place.addEventListener(kind, (event) => event.stopPropagation());
  form.insertBefore(place, form.querySelector("fieldset"));
}

/**
 * Whether the record has that value: a number, or the text of a chart.
 * @param {string | undefined} had
 * @param {string} value
 */
const same = (had, value) => had !== undefined && (had === value || Number(had) === Number(value));
