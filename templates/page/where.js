// Where the reader is on the way through the guide: the furthest step that was opened.
import * as record from "./record.js";

const { root = "./" } = document.documentElement.dataset, top = new URL(root, location.href);
/**
 * The chapter that an address leads to, such as "saddle/height".
 * @param {string} href
 */
const chapter = (href) => new URL(href, top).pathname.slice(top.pathname.length).replace(/\.html$/, "");

/** Remembers that this step of the way was opened. */
export function arrive() {
  const name = `step ${chapter(location.href)}`;
  if (!record.ticked(name)) record.tick(name, true);
}

/**
 * The furthest of these steps that was opened, from 1; 0 for none.
 * @param {HTMLAnchorElement[]} steps
 */
export const reached = (steps) => 1 + steps.findLastIndex((link) => record.ticked(`step ${chapter(link.href)}`));
