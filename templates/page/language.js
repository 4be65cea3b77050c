// The way to the same page in another language keeps the place where the reader is: the
// headings have the same ids in every language. The numbers go along as with every link.
import { all } from "./dom.js";

/**
 * The id of the last of some headings that stands above a height of the screen; "" for none.
 * @param {Element[]} headings
 * @param {number} height
 */
export const lastAbove = (headings, height) => headings.findLast((heading) => heading.getBoundingClientRect().top < height)?.id ?? "";

/** @param {HTMLAnchorElement} link */
function follow(link) {
  const at = scrollY > 0 ? lastAbove(all(document, "main :is(h2, h3)[id]"), innerHeight / 3) : "";
  if (at) link.hash = link.hash.includes("=") ? `${link.hash.replace(/&at=.*/u, "")}&at=${at}` : at;
}

/** Follows the links to other languages. */
export function languages() {
  for (const link of all(document, ".language a", HTMLAnchorElement)) link.addEventListener("click", () => follow(link));
}
