// One calculator: sends what was typed, puts back what the engine made of it.
import { all, fieldOf, hit, named, one } from "./dom.js";
import * as engine from "./engine.js";
import { mend, retype } from "./mend.js";
import { patch, written } from "./patch.js";
import { ready } from "./ready.js";
import * as record from "./record.js";
import { across, follow, hold, phone } from "./room.js";
import { say } from "./say.js";
import { chosen, kept, units } from "./unit.js";
import { soon, unmark } from "./words.js";
/** @import { Pair, Problem, Question, Reply, Written } from "./types.d.ts" */

const longest = 20_000; // letters of a text that could not be read and is kept
const quiet = 600; // ms without typing before anything is said
const board = [".drawing", ".strip", ".cost"]; // where the first parts of an answer stand

export class Bench {
  /** @type {Set<string>} keys of fields edited since the form was written */
  touched = new Set();
  /** @type {Map<string, string>} keys and texts of the fields that the last question held */
  sent = new Map();
  /** @type {Written[]} the drawing and the elements of the answer, as written */
  shown = [];
  near = true; // the engine of the section is asked first
  whole = true; // the form is to be written anew
  wired = false; // what the fields do beside taking text is there
  published = false; // the answer on show is the published one, which is right for who has no numbers
  fresh = false; // and with the record's values alone
  again = true; // what could not be read when the page was left is to be typed in again
  own = false; // the answer on show is the reader's own
  playing = false; // with the example's numbers, which no record knows of
  played = ""; // those numbers as they are by now
  filling = false; // the form is being written
  over = false; // there is no need to offer the example's numbers
  loud = false; // somebody typed since something was said
  clear = false; // there is no problem on show
  hushed = 0; // when something may be said again
  units = document.documentElement.dataset.units; // that the form is written in
  asked = { units: this.units, whole: false, play: false, fresh: false };
  /** @type {ReturnType<typeof setTimeout> | undefined} */
  later;
  /** @type {{ button: HTMLElement, value: string, said: HTMLElement } | undefined} what was taken over last, and the line that says so */
  taken;

  /** @param {HTMLElement} root */
  constructor(root) {
    this.root = root;
    this.form = one(root, "form", HTMLFormElement);
    this.form.onsubmit = (event) => event.preventDefault();
    this.form.oninput = (event) => this.typed(fieldOf(event).name, performance.now() + quiet);
    this.form.onchange = (event) => this.typed(fieldOf(event).name, 0);
    this.plays = [one(root, ".play.offer"), one(root, ".play.end")];
    this.form.addEventListener("focusout", () => setTimeout(() => this.offer()));
    for (const [i, line] of this.plays.entries()) {
      one(line, "button").onclick = () => import("./play.js").then(({ play }) => play(this, i === 0), () => {});
    }
    root.addEventListener("click", (event) => this.use(hit(event, "[data-use]")));
    units(this.form);
    this.published = ready(this.form) && !record.text();
    this.whole = !this.published; // its form is right as well
    /** How wide the drawing stands. */
    this.width = follow(root, () => across(all(root, ".drawing")), () => {
      one(root, ".drawing").style.minBlockSize = "";
      engine.ask(this);
    });
    hold(root);
    // Who goes on before the engine is there finds what was typed again.
    addEventListener("pagehide", () => this.leave());
    engine.ask(this);
  }

  /** What the engine was not asked yet waits for the reader to come back. */
  leave() {
    const data = new FormData(this.form);
    for (const key of this.playing ? [] : this.touched) {
      const text = String(data.get(key) ?? "");
      if (text !== this.sent.get(key)) record.draft(this.draft(key), text);
    }
  }

  /**
   * A field was edited; nothing is said before that time.
   * @param {string} key
   * @param {number} until
   */
  typed(key, until) {
    if (this.filling) return; // a field that is taken out says that it changed
    for (const of of named(this.form, key)[0]?.dataset.clears?.split(" ") ?? []) {
      for (const field of named(this.form, of)) field.value = "";
      this.touched.add(of);
    }
    this.touched.add(key);
    this.loud = true;
    this.hushed = until;
    clearTimeout(this.later);
    engine.ask(this);
  }

  // The line above the fields goes while none of them has the focus, or they would jump.
  offer() {
    if (!this.form.contains(document.activeElement)) this.plays[0].hidden = this.over;
  }

  /**
   * Another bench, tab or link changed the record, or replaced it.
   * @param {Set<string>} keys
   * @param {boolean} [replaced]
   */
  renew(keys, replaced = false) {
    if (this.playing && !replaced && ![...keys].some((key) => key === "u" || key.endsWith(".unit"))) return;
    if (!replaced && ![...keys].some((key) => key === "u" || named(this.form, key.replace(/\.(unit|was)$/, "")).length)) return;
    const here = document.hasFocus() && document.activeElement?.getAttribute("name");
    for (const key of this.touched) {
      if (!replaced && (!keys.has(key) || here === key)) continue;
      this.touched.delete(key);
      if (!replaced) record.draft(this.draft(key), "");
    }
    if (replaced) this.sent = new Map(); // an answer under way brings nothing back
    this.whole = true;
    this.fresh = replaced;
    this.again = this.again || replaced;
    engine.ask(this);
  }

  /** @returns {Question} */
  question() {
    const data = new FormData(this.form);
    /** @type {Iterable<HTMLInputElement>} */
    const unread = this.fresh ? [] : this.form.querySelectorAll("[data-unread]:not([type=radio])");
    const keys = [...this.touched, ...[...unread].map(({ name }) => name)];
    this.sent = new Map(keys.map((key) => [key, String(data.get(key) ?? "")]));
    this.asked = { units: record.units(), whole: this.whole, play: this.playing, fresh: this.fresh };
    this.published &&= !this.playing && this.asked.units === this.units;
    this.whole = this.fresh = false; // the engine asks for the form again if it died of this
    const { calculator: name, place } = this.root.dataset;
    const bare = keys.flatMap((key) => {
      const { unit } = named(this.form, key)[0]?.dataset ?? {};
      return unit ? [[`${key}.unit`, unit]] : [];
    });
    const query = new URLSearchParams([...this.sent, ...bare]).toString();
    return { ...this.asked, name, place, width: this.width(), bare: this.units, fields: chosen(), record: this.playing ? this.played : record.text(), query };
  }

  /**
   * A question was not answered, and will be asked elsewhere.
   * @param {Question} question
   */
  undo({ whole, fresh }) {
    this.whole ||= whole === true;
    this.fresh ||= fresh === true;
  }

  /** @param {Reply} reply */
  take({ error, parts = [], form = "", example = false, problems = [], waiting = "", spoken, record: pairs }) {
    this.root.classList.add("answered");
    if (error) {
      this.show([{ message: error }], "", true);
      return;
    }
    if (this.asked.play !== this.playing) return; // it is asked again already
    const own = new Map(pairs), wrong = problems.filter(({ needed, doubt }) => !needed && !doubt);
    const old = example && this.own && (wrong.length || own.size) > 0;
    const tall = this.tall(); // before anything is written
    if (this.asked.whole) this.keep(() => this.fill(form));
    this.wire();
    if (!old) {
      this.own = !example;
      this.still(() => this.put(parts, tall, example));
    }
    if (this.playing) this.played = new URLSearchParams(pairs).toString();
    else this.record(pairs);
    this.over = this.playing || this.own || wrong.length > 0;
    this.offer();
    this.tell([...wrong, ...problems.filter(({ doubt }) => doubt)], own.size ? waiting : "", old, spoken || waiting);
  }

  /**
   * Puts what was read of the fields into the record, and keeps the text of the others.
   * @param {Pair[]} pairs
   */
  record(pairs) {
    const own = new Map(pairs);
    /** @type {Pair[]} */
    const changes = [];
    for (const [key, text] of this.sent) {
      const read = own.has(key) || !text.trim();
      // How the bike is leaves what is planned for it.
      const mark = named(this.form, key)[0]?.dataset.asIs == null ? "" : ".was";
      if (read) changes.push([key + mark, own.get(key) ?? ""]);
      record.draft(this.draft(key), read || text.length > longest ? "" : text);
    }
    record.put(changes, this, pairs.filter(([key]) => this.sent.has(key.replace(/\.unit$/, "")) && key.endsWith(".unit")));
  }

  /**
   * The name under which the text of a field is kept that could not be read.
   * @param {string} key
   */
  draft(key) {
    return `${this.root.dataset.calculator} ${key}`;
  }

  /**
   * A field that somebody types in stays where it is in the window, also where the
   * drawing above it becomes taller or lower.
   * @param {() => void} change
   */
  still(change) {
    const field = document.activeElement;
    if (!field || !this.form.contains(field)) {
      change();
      return;
    }
    const before = field.getBoundingClientRect().top;
    change();
    const by = field.getBoundingClientRect().top - before;
    if (by) scrollBy({ top: by, behavior: "instant" });
  }

  /**
   * Shows what an answer brings beside itself. Problems wait until nobody has typed for
   * a moment, and so does what is said.
   * @param {Problem[]} wrong
   * @param {string} waiting
   * @param {boolean} old
   * @param {string} spoken
   */
  tell(wrong, waiting, old, spoken) {
    this.root.classList.toggle("old", old && this.own); // at once: nobody may take it for the answer
    clearTimeout(this.later);
    if (!old && !wrong.length) this.show(wrong, waiting, old);
    this.later = setTimeout(() => {
      this.show(wrong, waiting, old);
      if (this.loud) say(wrong[0]?.message || spoken);
      this.loud = false;
    }, this.hushed - performance.now());
  }

  /**
   * The room that the published drawing takes above the form, in px. The first answer's
   * drawing has at least that, so that the form stays where it is.
   */
  tall() {
    if (this.shown.length) return 0;
    const { left, right, top, height } = one(this.root, ".drawing").getBoundingClientRect();
    const form = this.form.getBoundingClientRect();
    return form.left < right && left < form.right && top < form.top ? height : 0;
  }

  /**
   * Of a part only what differs is touched, if it is built as the one before it.
   * @param {string[]} parts
   * @param {number} tall
   * @param {boolean} example
   */
  put(parts, tall, example) {
    unmark(this.root);
    const answer = one(this.root, ".answer"), box = document.createElement("template");
    /** @param {number} i */
    const place = (i) => (i < board.length ? one(this.root, board[i]) : answer.children[i - board.length]);
    let before = this.shown.length === parts.length ? this.shown : [];
    this.shown = parts.map((html, i) => (before[i]?.html === String(html) ? before[i] : written(String(html))));
    // The example's answer stands there already, but for a drawing of another width.
    if (this.published && example) {
      before = [written(""), ...this.shown.slice(1)];
      if (this.width() === phone) [this.shown[0]] = before;
    }
    this.published = false;
    const whole = this.shown.flatMap((now, i) => {
      if (now === before[i]) return [];
      return before[i] && patch(place(i), before[i], now) ? [] : [i];
    });
    if (whole.length) {
      this.keep(() => {
        if (!before.length) answer.replaceChildren();
        for (const i of whole) {
          box.innerHTML = parts[i];
          if (place(i)) place(i).replaceWith(box.content);
          else answer.append(box.content);
        }
      });
      if (tall) one(this.root, ".drawing").style.minBlockSize = `${tall}px`;
    }
    const { taken } = this;
    if (taken && taken.button.dataset.value !== taken.value) taken.said.hidden = true; // that number is gone
    soon(this.root);
  }

  /**
   * Writes the fields anew, but for what was typed while the engine was busy.
   * @param {string} form
   */
  fill(form) {
    const fields = one(this.form, "fieldset", HTMLFieldSetElement), data = new FormData(this.form);
    const since = [...this.touched].filter((key) => data.get(key) !== this.sent.get(key));
    const before = new Map(since.map((key) => [key, named(this.form, key)[0]?.dataset.unit]));
    this.filling = true;
    fields.innerHTML = form;
    this.filling = false;
    if (this.shown.length) this.shown[board.indexOf(".cost")] = written(""); // it is written with the form
    fields.disabled = false;
    this.units = this.asked.units;
    this.touched = new Set(since);
    for (const key of since) {
      const text = String(data.get(key) ?? "");
      for (const field of named(this.form, key)) {
        if (field.type === "radio") field.checked = field.value === text;
        else field.value = kept(text, before.get(key), field.dataset.unit);
      }
    }
    this.wired = false;
    this.wire();
  }

  /** What fields do beside taking text, as soon as there is an engine. */
  wire() {
    if (this.wired) return;
    this.wired = true;
    this.root.querySelector(".offline")?.remove();
    const shown = all(this.form, "[data-photo]", HTMLInputElement);
    if (shown.length) import("./offer.js").then(({ offer }) => shown.forEach(offer), () => {});
    const charts = all(this.form, "[data-chart]", HTMLTextAreaElement);
    if (charts.length) import("./chart.js").then(({ chart }) => charts.forEach((field) => chart(field, () => this.playing)), () => {});
    const slides = all(this.form, "[type=range]", HTMLInputElement);
    for (const moved of slides) moved.disabled = false;
    if (slides.length) import("./slide.js").then(({ slide }) => slide(this.form), () => {});
    if (this.again && !this.playing) this.restore();
  }

  /** What was typed before the page was left, and could not be read, stands there again. */
  restore() {
    this.again = false;
    for (const key of new Set(all(this.form, "[name]").map((field) => field.getAttribute("name") ?? ""))) {
      const text = this.touched.has(key) ? "" : record.drafted(this.draft(key));
      if (!text) continue;
      for (const field of named(this.form, key)) field.value = text;
      this.touched.add(key);
    }
    if (this.touched.size) engine.ask(this);
  }

  /**
   * Problems stand beside their fields; an answer that they keep is marked old.
   * @param {Problem[]} problems
   * @param {string} waiting
   * @param {boolean} old
   */
  show(problems, waiting, old) {
    const clear = !problems.length && !waiting && !old;
    if (clear && this.clear) return; // as nearly every stroke leaves it
    this.clear = clear;
    for (const field of this.form.querySelectorAll("[name][aria-invalid]")) field.removeAttribute("aria-invalid");
    for (const line of all(this.form, ".problem")) line.hidden = true;
    for (const problem of problems) {
      const { input = "", message } = problem;
      const line = one(document, `#${CSS.escape(`${this.root.id}${input && "-"}${input}-p`)}`);
      if (line.hidden) line.replaceChildren(message);
      else line.append(" ", message);
      line.hidden = false;
      line.classList.toggle("doubt", problem.doubt === true);
      mend(line, problem, (text) => retype(named(this.form, input)[0], text));
      if (problem.doubt) continue; // it is used all the same
      line.closest("details")?.setAttribute("open", "");
      for (const field of named(this.form, input)) if (field.type !== "radio") field.setAttribute("aria-invalid", "true");
    }
    const line = one(this.form, ".waiting");
    line.textContent = waiting;
    line.hidden = !waiting;
    this.root.classList.toggle("old", old && this.own);
  }

  /**
   * An engine could not be loaded, or died too often.
   * @param {boolean} loaded
   */
  down(loaded) {
    clearTimeout(this.later); // an answer that came before has nothing more to say
    const line = one(this.form, loaded ? ".stopped" : ".unstarted");
    line.hidden = this.clear = false;
    one(line, "button").onclick = () => {
      line.hidden = true;
      engine.ask(this);
      engine.again();
    };
    this.root.classList.toggle("old", this.own);
    say(line.firstChild?.textContent);
  }

  /**
   * Takes what was computed over into the record.
   * @param {HTMLElement | null} button
   */
  use(button) {
    if (!button) return;
    const { use = "", value = "", guess, now } = button.dataset, said = /** @type {HTMLElement} */ (button.nextElementSibling);
    /** @type {(key: string) => Pair[]} */
    const marks = (key) => [["from", `${key}.${this.root.dataset.calculator}`], ...(guess == null ? [] : [/** @type {Pair} */ (["estimated", key])])];
    this.taken = { button, value, said };
    const keys = use.split(" "), values = value.split(" ");
    // What this calculator planned before, and no longer asks for, is planned no more.
    for (const { name } of all(this.form, "[data-as-is]", HTMLInputElement)) {
      if (!keys.includes(name) && record.at(`from ${name}`) === `${name}.${this.root.dataset.calculator}`) record.back(name);
    }
    // How the bike is already is no change that is still to be made.
    if (now == null) keys.forEach((key, i) => record.use(key, values[i], marks(key)));
    else record.put(keys.map((key, i) => [key, values[i]]), undefined, keys.flatMap((key) => marks(key).slice(1)));
    said.hidden = false;
    say(said.textContent);
  }

  /**
   * Focus, caret and open details survive a change of the page.
   * @param {() => void} change
   */
  keep(change) {
    const { id, selectionStart: from, selectionEnd: to } = /** @type {HTMLInputElement} */ (document.activeElement);
    const folds = all(this.root, "details", HTMLDetailsElement); // as they were, in the page or not
    change();
    for (const fold of folds) document.getElementById(fold.id)?.toggleAttribute("open", fold.open);
    const now = /** @type {HTMLInputElement | "" | null} */ (id && this.root.querySelector(`#${CSS.escape(id)}`));
    if (!now || now === document.activeElement) return;
    now.focus({ preventScroll: true });
    if (from != null) now.setSelectionRange(from, to);
  }
}
