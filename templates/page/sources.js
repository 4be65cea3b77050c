// The page of sources: sorts the list by topic, as it is written, or by kind of work.

import { all, make, one } from "./dom.js";
import { t } from "./text.js";

/**
 * Groups the sources by their kind, in that order; kinds that it lacks come last.
 * @param {HTMLElement[]} items
 * @param {string[]} order
 * @returns {[string, HTMLElement[]][]}
 */
export function byKind(items, order) {
  /** @type {Map<string, HTMLElement[]>} */
  const groups = new Map(order.map((kind) => [kind, []]));
  for (const item of items) {
    const kind = item.dataset.kind ?? "";
    groups.set(kind, [...groups.get(kind) ?? [], item]);
  }
  return [...groups].filter(([, list]) => list.length > 0);
}

// The kinds of work, the strongest first.
const order = ["randomised trial", "review", "controlled study", "study without a control group", "cross-sectional study",
  "standard or law", "data set", "textbook or theory", "common practice"];

/** @param {string} kind */
const titled = (kind) => (kind === "" ? t("Other") : kind[0].toUpperCase() + kind.slice(1));

/** @param {HTMLElement} place */
function start(place) {
  const written = [...place.children];
  const lists = all(place, "ul.library").map((list) => ({ list, items: all(list, ":scope > li") }));
  const items = lists.flatMap((topic) => topic.items);
  const sort = (/** @type {string} */ how) => {
    if (how === "topic") {
      for (const topic of lists) topic.list.append(...topic.items);
      place.replaceChildren(...written);
      return;
    }
    place.replaceChildren(...byKind(items, order).flatMap(([kind, list]) =>
      [make("h2", {}, titled(list[0].dataset.said ?? kind)), make("ul", { className: "library" }, ...list)]));
  };
  const choice = (/** @type {string} */ how, /** @type {string} */ name, /** @type {boolean} */ checked) =>
    make("label", {}, make("input", { type: "radio", name: "sort", value: how, defaultChecked: checked, onchange: () => sort(how) }), ` ${name}`);
  place.before(make("fieldset", { className: "sort" }, make("legend", {}, t("Sort by")), choice("topic", t("topic"), true),
    choice("kind", t("strength"), false)));
}

// The tests have no page.
if (typeof document !== "undefined") start(one(document, "[data-sorted]"));
