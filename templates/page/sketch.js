// The picture of how something is measured, drawn when its fold in a form is opened.
import * as engine from "./engine.js";
import * as record from "./record.js";
import { across } from "./room.js";

/**
 * Draws the picture at the reader's size in its place.
 * @param {HTMLElement} place
 */
export function sketch(place) {
  engine.ask({
    question: () => ({ figure: place.dataset.figure ?? "", place: `${place.id}-p`, width: across([place]), record: record.text(), units: record.units() }),
    take({ html }) {
      if (!html) return;
      const box = document.createElement("template");
      box.innerHTML = html;
      place.replaceChildren(box.content);
    },
  });
  engine.begin();
}
