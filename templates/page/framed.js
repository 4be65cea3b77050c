// A page that stands in a frame of some other page: it tells that page how high it is, and
// nothing else, and its links to the guide open in the whole window.
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

if (parent !== window) {
  new ResizeObserver(tell).observe(main);
  document.addEventListener("pointerdown", out, true);
  document.addEventListener("focusin", out, true);
  out();
}
