// Standing figures, drawn anew at the reader's size by the engine, one after the
// other, so that somebody who types meanwhile waits for one at most.
import { all } from "./dom.js";
import * as engine from "./engine.js";
import * as record from "./record.js";

/** @import { Asker } from "./types.d.ts" */

/** @type {Asker[]} */
const plates = all(document, ".plate[id]").map((root, i) => ({
  question() {
    const { id } = root;
    return { figure: id.replace(/^figure-|-[^-]*$/g, ""), place: id, record: record.text(), units: record.units() };
  },
  take({ html }) {
    if (plates[i + 1]) engine.ask(plates[i + 1]);
    if (!html) return; // the figure of a calculator, which stays at its example
    const box = document.createElement("template");
    box.innerHTML = html;
    document.getElementById(root.id)?.replaceWith(box.content);
  },
}));

/** Draws them all, starting with the first. */
export const redraw = () => {
  engine.ask(plates[0]);
  engine.begin();
};
