// Standing figures, drawn anew at the reader's size by the engine, one after the
// other, so that somebody who types meanwhile waits for one at most.
import { all } from "./dom.js";
import * as engine from "./engine.js";
import * as record from "./record.js";
import { across, follow } from "./room.js";

/** @import { Asker } from "./types.d.ts" */

const roots = all(document, ".plate[id]:not(.moves)"), places = () => all(document, ".plate[id]:not(.moves)");
/** @type {Asker[]} */
const plates = roots.map(({ id }, i) => ({
  question: () => ({ figure: id.replace(/^figure-|-[^-]*$/g, ""), place: id, width: across([document.getElementById(id) ?? roots[i]]), record: record.text(), units: record.units() }),
  take({ html }) {
    if (plates[i + 1]) engine.ask(plates[i + 1]);
    if (!html) return; // the figure of a calculator, which stays at its example
    const box = document.createElement("template");
    box.innerHTML = html;
    document.getElementById(id)?.replaceWith(box.content);
  },
}));
let drawn = false;

/** Draws them all, starting with the first. */
export const redraw = () => {
  engine.ask(plates[0]);
  engine.begin();
  if (!drawn) follow(document.body, () => across(places()), () => engine.ask(plates[0]));
  drawn = true;
};
