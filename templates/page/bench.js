// One calculator: sends what was typed, puts back what the engine made of it.
import * as engine from "./engine.js";
import { patch, written } from "./patch.js";
import * as record from "./record.js";
import { say } from "./say.js";

const quiet = 600; // ms without typing before anything is said

export class Bench {
  touched = new Set(); // keys of fields edited since the form was written
  whole = true; // the form is to be written anew
  own = false; // the answer on show is the reader's own
  shown = []; // the drawing and the elements of the answer, as written
  playing = false; // with the example's numbers, which no record knows of
  units = document.documentElement.dataset.units;

  constructor(root) {
    this.root = root;
    this.form = root.querySelector("form");
    this.form.onsubmit = (event) => event.preventDefault();
    this.form.oninput = ({ target }) => this.typed(target.name, performance.now() + quiet);
    this.form.onchange = ({ target }) => this.typed(target.name, 0);
    this.plays = [...root.querySelectorAll(".play")];
    this.plays.forEach((line, i) => (line.querySelector("button").onclick = () => import("./play.js").then(({ play }) => play(this, !i), () => {})));
    root.addEventListener("click", ({ target }) => this.use(target.closest("[data-use]")));
    engine.ask(this);
  }

  typed(key, until) {
    if (this.filling) return; // a field that is taken out says that it changed
    this.touched.add(key);
    this.loud = true;
    this.hushed = until;
    clearTimeout(this.later);
    engine.ask(this);
  }

  // Another bench, tab or link changed the record.
  renew(keys, all) {
    if (this.playing && !all && !keys.has("u")) return;
    if (!all && ![...keys].some((key) => key === "u" || this.controls(key).length)) return;
    for (const key of this.touched) {
      if (all || keys.has(key) && !(document.hasFocus() && document.activeElement.name === key)) this.touched.delete(key);
    }
    if (all) this.sent = new Map(); // an answer under way brings nothing back
    this.whole = true;
    this.fresh = all;
    engine.ask(this);
  }

  controls(key) {
    return [...this.form.elements].filter(({ name }) => name === key);
  }

  question() {
    const data = new FormData(this.form);
    const unread = this.fresh ? [] : this.form.querySelectorAll("[data-unread]:not([type=radio])");
    this.sent = new Map([...this.touched, ...[...unread].map(({ name }) => name)].map((key) => [key, data.get(key) ?? ""]));
    this.asked = { units: record.units(), whole: this.whole, play: this.playing };
    this.whole = this.fresh = false; // the engine asks for the form again if it died of this
    const { calculator: name, place } = this.root.dataset;
    return { ...this.asked, name, place, bare: this.units, record: this.playing ? this.played : record.text(), query: new URLSearchParams([...this.sent]).toString() };
  }

  take({ error, parts, form, example = false, problems = [], waiting = "", spoken, record: pairs }) {
    if (error) return this.show([{ message: error }], "", true);
    if (this.asked.play !== this.playing) return; // it is asked again already
    const own = new Map(pairs), wrong = problems.filter(({ needed }) => !needed);
    const old = example && this.own && (wrong.length || own.size) > 0;
    if (this.asked.whole) this.keep(() => this.fill(form));
    if (!old) {
      this.own = !example;
      this.put(parts);
    }
    const changes = [...this.sent].filter(([key, text]) => own.has(key) || !text.trim());
    if (this.playing) this.played = new URLSearchParams(pairs).toString();
    else record.put(changes.map(([key]) => [key, own.get(key) ?? ""]), this);
    this.plays[0].hidden = this.playing || this.own || wrong.length > 0;
    clearTimeout(this.later);
    const show = () => this.show(wrong, own.size ? waiting : "", old);
    if (!old && !wrong.length) show();
    this.later = setTimeout(() => {
      show();
      if (this.loud) say(wrong[0]?.message || spoken || waiting);
      this.loud = false;
    }, this.hushed - performance.now());
  }

  // Of a part only what differs is touched, if it is built as the one before it.
  put(parts) {
    const answer = this.root.querySelector(".answer"), box = document.createElement("template");
    const place = (i) => (i ? answer.children[i - 1] : this.root.querySelector(".drawing"));
    const before = this.shown.length === parts.length ? this.shown : [];
    this.shown = parts.map((html, i) => (before[i]?.html === String(html) ? before[i] : written(String(html))));
    const whole = this.shown.flatMap((now, i) => {
      if (now === before[i]) return [];
      if (this.said) this.said.hidden = true; // of a number that may be gone
      return before[i] && patch(place(i), before[i], now) ? [] : [i];
    });
    if (whole.length) this.keep(() => {
      if (!before.length) answer.replaceChildren();
      for (const i of whole) {
        box.innerHTML = parts[i];
        if (place(i)) place(i).replaceWith(box.content);
        else answer.append(box.content);
      }
    });
  }

  // Writes the fields anew, but for what was typed while the engine was busy.
  fill(form) {
    const fields = this.form.querySelector("fieldset"), data = new FormData(this.form);
    const since = [...this.touched].filter((key) => data.get(key) !== this.sent.get(key));
    this.filling = true;
    fields.innerHTML = form;
    this.filling = false;
    fields.disabled = false;
    const knee = this.form.elements["knee-reading"];
    if (knee) import("./offer.js").then(({ offer }) => offer(knee), () => {});
    if (this.form.querySelector("[type=range]")) import("./slide.js").then(({ slide }) => slide(this.form), () => {});
    this.root.querySelector(".offline")?.remove();
    this.units = this.asked.units;
    this.touched = new Set(since);
    for (const key of since) {
      for (const field of this.controls(key)) {
        if (field.type === "radio") field.checked = field.value === data.get(key);
        else field.value = data.get(key);
      }
    }
  }

  // Problems stand beside their fields; an answer that they keep is marked old.
  show(problems, waiting, old) {
    const clear = !problems.length && !waiting && !old;
    if (clear && this.clear) return; // as nearly every stroke leaves it
    this.clear = clear;
    for (const field of this.form.querySelectorAll("[aria-invalid]")) field.removeAttribute("aria-invalid");
    for (const line of this.form.querySelectorAll(".problem")) line.hidden = true;
    for (const { input, message } of problems) {
      const line = document.getElementById(`${this.root.id}${input ? "-" + input : ""}-p`);
      line.textContent = line.hidden ? message : `${line.textContent} ${message}`;
      line.hidden = false;
      line.closest("details")?.setAttribute("open", "");
      for (const field of this.controls(input)) if (field.type !== "radio") field.setAttribute("aria-invalid", "true");
    }
    const line = this.form.querySelector(".waiting");
    line.textContent = waiting;
    line.hidden = !waiting;
    this.root.classList.toggle("old", old && this.own);
  }

  down() {
    clearTimeout(this.later); // an answer that came before has nothing more to say
    const line = this.form.querySelector(this.form.querySelector("fieldset").disabled ? ".unstarted" : ".stopped");
    line.hidden = this.clear = false;
    this.root.classList.toggle("old", this.own);
    say(line.textContent);
  }

  use(button) {
    if (!button) return;
    const { use, value, guess } = button.dataset, said = this.said = button.nextElementSibling;
    record.use(use, value, [["from", `${use}.${this.root.dataset.calculator}`], ...guess == null ? [] : [["estimated", use]]]);
    said.hidden = false;
    say(said.textContent);
  }

  // Focus, caret and open details survive a change of the page.
  keep(change) {
    const { id, selectionStart: from, selectionEnd: to } = document.activeElement;
    const open = [...this.root.querySelectorAll("details")].map((fold) => [fold.id, fold.open]);
    change();
    for (const [name, was] of open) document.getElementById(name)?.toggleAttribute("open", was);
    const now = id && this.root.querySelector("#" + CSS.escape(id));
    if (!now || now === document.activeElement) return;
    now.focus({ preventScroll: true });
    if (from != null) now.setSelectionRange(from, to);
  }
}
