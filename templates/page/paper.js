// The garage print of a chapter: the answer with its figure, the acts to tick, every
// caution of the page and the check on the trail. The browser's own print has the whole
// chapter.

import { make } from "./dom.js";
import { t } from "./text.js";

/**
 * Offers the print below the acts.
 * @param {HTMLElement} acts
 */
export function offer(acts) {
  const { dataset } = document.documentElement;
  const button = make("button", {
    type: "button",
    onclick() {
      dataset.paper = "garage";
      print();
    },
  }, t("Print this for the garage"));
  acts.after(make("p", { className: "paper" }, button));
  addEventListener("afterprint", () => {
    delete dataset.paper;
  });
}
