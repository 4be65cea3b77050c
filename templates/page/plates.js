// Standing figures, drawn anew at the reader's size by the engine, one after the other, so
// that somebody who types meanwhile waits for one at most: those in view first, the others,
// which nobody sees yet, when the page has nothing else to do.
import { all } from "./dom.js";
import * as engine from "./engine.js";
import * as record from "./record.js";
import { across, follow } from "./room.js";

/** @import { Asker } from "./types.d.ts" */

const places = () => all(document, ".plate[id]:not(.moves)");
const idle = globalThis.requestIdleCallback ?? ((/** @type {() => void} */ call) => setTimeout(call, 200));
/** @type {Set<string>} figures that were not drawn since the numbers changed */
const stale = new Set();
/** @type {Set<string>} figures in view, or within half a screen of it */
const near = new Set();
let asked = false, rests = false, drawn = false;

const look = new IntersectionObserver((seen) => {
  for (const { target, isIntersecting } of seen) {
    if (isIntersecting) near.add(target.id);
    else near.delete(target.id);
  }
  next();
}, { rootMargin: "50% 0px" });

const plates = new Map(places().map((root) => {
  const { id } = root;
  look.observe(root);
  /** @type {Asker} */
  const plate = {
    question: () => ({ figure: id.replace(/^figure-|-[^-]*$/g, ""), place: id, width: across([document.getElementById(id) ?? root]), record: record.text(), units: record.units() }),
    take({ html }) {
      asked = false;
      if (html) { // else it is the figure of a calculator, which stays at its example
        const box = document.createElement("template");
        box.innerHTML = html;
        document.getElementById(id)?.replaceWith(box.content);
        const now = document.getElementById(id);
        if (now) look.observe(now);
      }
      next();
    },
  };
  return [id, plate];
}));

/** @param {string} id */
function draw(id) {
  const plate = plates.get(id);
  stale.delete(id);
  if (!plate) return;
  asked = true;
  engine.ask(plate);
}

function next() {
  if (asked) return;
  const [far] = stale, seen = [...stale].find((id) => near.has(id));
  if (seen) draw(seen);
  else if (far && !rests) {
    rests = true;
    idle(() => {
      rests = false;
      const [one] = stale;
      if (one && !asked) draw(one);
    });
  }
}

/** Draws them all, those in view first. */
export const redraw = () => {
  for (const id of plates.keys()) stale.add(id);
  next();
  engine.begin();
  if (!drawn) follow(document.body, () => across(places()), redraw);
  drawn = true;
};
