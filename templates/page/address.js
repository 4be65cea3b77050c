// The record in the page's address and in the guide's own links.
import { read } from "./book.js";
import { all, decoded } from "./dom.js";
/** @import { Pairs } from "./types.d.ts" */

/** @type {Map<Element, string>} the guide's own links and their addresses without a record */
const links = new Map();
let anchor = "";

/** Takes note of the guide's own links, which carry the record along. */
export function collect() {
  for (const link of all(document, "a[href]")) {
    const href = link.getAttribute("href") ?? "";
    if (!/^([a-z][a-z+.-]*:|\/\/|#)/i.test(href)) links.set(link, href);
  }
}

/**
 * Writes a record into the links.
 * @param {string} now
 */
export function carry(now) {
  for (const [link, href] of links) {
    const [path, to] = href.split("#");
    link.setAttribute("href", now ? `${path}#${now}${to ? `&at=${to}` : ""}` : href);
  }
}

/**
 * Writes a record into the address and the links.
 * @param {string} now
 */
export function address(now) {
  const hash = now && anchor ? `${now}&at=${encodeURIComponent(anchor)}` : now || anchor;
  history.replaceState({ store: true }, "", hash ? `#${hash}` : location.pathname + location.search);
  carry(now);
}

/**
 * The record in the address, undefined for none. Without = the address is an anchor, which
 * the browser has gone to by itself.
 * @returns {Pairs | undefined}
 */
export function addressed() {
  const hash = location.hash.slice(1), map = hash.includes("=") ? read(hash) : undefined;
  anchor = map ? map.get("at")?.[1] ?? "" : decoded(hash);
  map?.delete("at");
  if (map) document.getElementById(anchor)?.scrollIntoView();
  return map;
}
