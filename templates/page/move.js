// Figures that move: a slider, and a button that plays it from one end to the other. The
// engine draws each moment, one after the other, at the reader's numbers; what the slider
// says stays here and never reaches the record. Until somebody moves a figure its states
// stand beside one another.
import { all, one } from "./dom.js";
import * as engine from "./engine.js";
import * as record from "./record.js";
import { across, follow } from "./room.js";

/** @import { Question, Reply } from "./types.d.ts" */

const long = 5000; // ms from one end of the slider to the other

export class Mover {
  /** @type {number | undefined} where it is, once somebody moved it */
  at;
  from = 0; // where it was played from, and since when
  since = 0;
  playing = false;

  /** @param {HTMLElement} root */
  constructor(root) {
    this.root = root;
    this.place = one(root, ".shown");
    this.slider = one(root, "[type=range]", HTMLInputElement);
    this.button = one(root, "button");
    this.said = one(root, ".seen");
    this.play = this.button.textContent;
    this.button.onclick = () => (this.playing ? this.stop() : this.start());
    this.slider.oninput = () => {
      this.stop();
      this.go(Number(this.slider.value));
    };
    this.width = follow(root, () => across([this.place]), () => engine.ask(this));
  }

  /**
   * Draws one moment.
   * @param {number} at
   */
  go(at) {
    this.at = at;
    engine.ask(this);
    engine.begin();
  }

  /** Plays on from where the slider is, or from the beginning where it is at its end. */
  start() {
    const { slider, button } = this;
    if (slider.value === slider.max) slider.value = slider.min;
    this.from = Number(slider.value);
    this.since = performance.now();
    this.playing = true;
    button.textContent = button.dataset.stop ?? "";
    this.go(this.from);
  }

  stop() {
    this.playing = false;
    this.button.textContent = this.play;
  }

  /** The next moment, once the last one is on show. */
  step() {
    if (!this.playing) return;
    const low = Number(this.slider.min), high = Number(this.slider.max);
    const at = Math.min(high, this.from + (high - low) * (performance.now() - this.since) / long);
    this.slider.value = String(at);
    if (at === high) this.stop();
    this.go(at);
  }

  /** @returns {Question} */
  question() {
    const { id, dataset: { figure } } = this.root, at = this.at == null ? {} : { at: this.at };
    return { figure, place: id, width: this.width(), record: record.text(), units: record.units(), ...at };
  }

  /** @param {Reply} reply */
  take({ html }) {
    if (!html) {
      this.stop();
      return;
    }
    const box = document.createElement("template");
    box.innerHTML = html;
    this.place.replaceChildren(...one(box.content, ".shown").childNodes);
    this.said.textContent = this.slider.ariaValueText = one(box.content, ".seen").textContent;
    if (this.playing) requestAnimationFrame(() => this.step());
  }
}

/** Lets the figures of the page move. */
export function moves() {
  const movers = all(document, ".moves").map((root) => new Mover(root));
  const renew = () => movers.forEach((mover) => engine.ask(mover));
  /** @type {ReturnType<typeof setTimeout> | undefined} */
  let later;
  record.listen(() => { // after nobody has typed for a moment
    clearTimeout(later);
    later = setTimeout(renew, 400);
  });
  if (record.text()) renew();
}
