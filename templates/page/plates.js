// Standing figures, drawn anew at the reader's size by the engine.
import * as engine from "./engine.js";
import * as record from "./record.js";

const plates = [...document.querySelectorAll(".plate[id]")].map((root) => ({
  whole: false,
  question() {
    const { id } = root;
    return { figure: id.replace(/^figure-|-[^-]*$/g, ""), place: id, record: record.text(), units: record.units() };
  },
  take({ html }) {
    if (!html) return; // the figure of a calculator, which stays at its example
    const box = document.createElement("template");
    box.innerHTML = html;
    root.replaceChildren(...box.content.firstElementChild.childNodes);
  },
}));

export const redraw = () => {
  plates.forEach(engine.ask);
  engine.begin();
};
