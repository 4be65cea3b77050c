// A page that stands in a frame of some other page: it tells that page how high it is, and
// nothing else, takes two colours from it, and its links to the guide
// open in the whole window.
import { readable } from "./contrast.js";
import { all } from "./dom.js";

const main = /** @type {HTMLElement} */ (document.querySelector("main"));
let told = 0;

/** Tells the page around this one the height, where it has changed. */
export function tell() {
  const height = Math.ceil(main.getBoundingClientRect().height);
  if (height === told) return;
  told = height;
  parent.postMessage({ height }, "*");
}

/** Lets links out of the frame, those within the page excepted. */
export function out() {
  for (const link of all(document, "a[href]", HTMLAnchorElement)) {
    if (link.pathname !== location.pathname) link.target = "_top";
  }
}

/** The colours by what they are called here. @type {["first" | "second", string][]} */
const places = [["first", "--hot"], ["second", "--body"]];

/**
 * Takes the colours that the page around this one gives, where they can be read on both
 * grounds of the guide; the others stay as they are.
 * @param {MessageEvent} event
 */
export function take({ source, data }) {
  if (source !== parent || typeof data !== "object" || !data) return;
  const root = document.documentElement, style = getComputedStyle(root);
  for (const [name, place] of places) {
    const given = data[name];
    if (typeof given !== "string") continue;
    root.style.removeProperty(place);
    const grounds = ["--paper", "--sheet"].map((ground) => style.getPropertyValue(ground).trim());
    if (given && grounds.every((ground) => readable(given, ground))) root.style.setProperty(place, given);
  }
}

if (parent !== window) {
  addEventListener("message", take);
  new ResizeObserver(tell).observe(main);
  document.addEventListener("pointerdown", out, true);
  document.addEventListener("focusin", out, true);
  out();
}
