// One calculator: sends what was typed, puts back what the engine made of it.
import * as engine from "./engine.js";
import * as record from "./record.js";
import { say } from "./say.js";

const quiet = 600; // ms without typing before anything is said

export class Bench {
  touched = new Set(); // keys of fields that the reader edited since the form was written
  whole = true; // the form is to be written anew
  own = false; // the answer on show is the reader's own
  hushed = 0; // until then nothing is said
  units = document.documentElement.dataset.units || "mm";

  constructor(root) {
    this.root = root;
    this.form = root.querySelector("form");
    this.fields = this.form.querySelector("fieldset");
    this.form.addEventListener("submit", (event) => event.preventDefault());
    this.form.addEventListener("input", ({ target }) => this.typed(target, performance.now() + quiet));
    this.form.addEventListener("change", ({ target }) => this.typed(target, 0));
    root.addEventListener("click", ({ target }) => this.use(target.closest("[data-use]")));
    engine.ask(this);
  }

  typed({ name }, until) {
    if (name) this.touched.add(name);
    this.loud = true;
    this.hushed = until;
    clearTimeout(this.later);
    engine.ask(this);
  }

  // Another bench, tab or link changed the record.
  renew(keys, all) {
    if (!all && ![...keys].some((key) => key === "u" || this.controls(key).length)) return;
    for (const key of this.touched) {
      if (all || keys.has(key) && !this.controls(key).includes(document.activeElement)) this.touched.delete(key);
    }
    this.whole = true;
    this.all = all;
    engine.ask(this);
  }

  controls(key) {
    return [...this.form.elements].filter((control) => control.name === key);
  }

  value(key) {
    const [first, ...more] = this.controls(key);
    return (more.length ? [first, ...more].find((radio) => radio.checked) : first)?.value ?? "";
  }

  question() {
    const unread = this.all ? [] : [...this.form.querySelectorAll("[data-unread]:not([type=radio])")];
    this.sent = new Map([...this.touched, ...unread.map((field) => field.name)].map((key) => [key, this.value(key)]));
    this.wanted = { units: record.units(), whole: this.whole };
    this.whole = this.all = false;
    return {
      ...this.wanted, name: this.root.dataset.calculator, place: this.root.dataset.place,
      record: record.text(), query: new URLSearchParams([...this.sent]).toString(), bare: this.units,
    };
  }

  take(reply) {
    if (reply.error) return this.settle([{ input: "", message: reply.error }], "", true);
    const own = new Map(reply.record);
    const needed = reply.problems.filter((problem) => problem.needed);
    const problems = reply.problems.filter((problem) => !problem.needed);
    const stays = reply.example && this.own && (problems.length || own.size);
    this.keep(() => {
      if (this.wanted.whole) this.fill(reply.form);
      if (stays) return;
      this.own = !reply.example;
      const box = document.createElement("template");
      box.innerHTML = reply.html;
      for (const part of [".drawing", ".answer"]) this.root.querySelector(part).replaceWith(box.content.querySelector(part));
    });
    const changes = [];
    for (const [key, text] of this.sent) if (own.has(key) || !text.trim()) changes.push([key, own.get(key) ?? ""]);
    record.put(changes, this);
    clearTimeout(this.later);
    const settle = () => this.settle(problems, needed.length && own.size ? reply.waiting : "", stays, reply.spoken);
    if (stays || problems.length || this.loud) this.later = setTimeout(settle, this.hushed - performance.now());
    if (!stays && !problems.length) this.show(problems, reply.waiting, false);
  }

  // Writes the fields anew, except for what was typed while the engine was busy.
  fill(form) {
    const since = [...this.touched].map((key) => [key, this.value(key)]).filter(([key, text]) => text !== this.sent.get(key));
    this.fields.innerHTML = form;
    this.fields.disabled = false;
    this.root.querySelector(".offline")?.remove();
    this.units = this.wanted.units;
    this.touched = new Set(since.map(([key]) => key));
    for (const [key, text] of since) {
      for (const control of this.controls(key)) control.type === "radio" ? control.checked = control.value === text : control.value = text;
    }
  }

  settle(problems, waiting, old, spoken) {
    this.show(problems, waiting, old);
    if (this.loud) say(problems[0]?.message || spoken || waiting);
    this.loud = false;
  }

  show(problems, waiting, old) {
    for (const field of this.form.querySelectorAll("[aria-invalid]")) field.removeAttribute("aria-invalid");
    for (const line of this.form.querySelectorAll(".problem")) line.hidden = true;
    for (const { input, message } of problems) {
      const line = document.getElementById([this.root.id, input, "p"].filter(Boolean).join("-"));
      line.textContent = line.hidden ? message : `${line.textContent} ${message}`;
      line.hidden = false;
      for (const control of this.controls(input)) if (control.type !== "radio") control.setAttribute("aria-invalid", "true");
      const fold = line.closest("details");
      if (fold) fold.open = true;
    }
    const line = this.form.querySelector(".waiting");
    line.textContent = waiting;
    line.hidden = !waiting;
    this.root.classList.toggle("old", old && this.own);
    const whose = this.root.querySelector(".whose");
    if (this.own) whose.textContent = old ? "Your earlier numbers; the last change could not be computed" : "Your numbers";
  }

  down() {
    this.settle([{ input: "", message: this.fields.disabled ? "The calculator could not be started here. The worked example stands."
      : "The calculator stopped three times within a minute. What you see is its last result. Your numbers are kept; try again in a minute." }], "", true);
  }

  use(button) {
    if (!button) return;
    const { use, value, guess, said } = button.dataset;
    record.put([[use, value]], undefined, [["from", `${use}.${this.root.dataset.calculator}`], ...guess === undefined ? [] : [["estimated", use]]]);
    const line = document.createElement("span");
    line.className = "said";
    line.textContent = said;
    button.parentElement.replaceChildren(button, line);
    say(said);
  }

  // Focus, caret and open details survive a change of the page.
  keep(change) {
    const { id, selectionStart, selectionEnd } = document.activeElement;
    const open = [...this.root.querySelectorAll("details")].map((fold) => [fold.id, fold.open]);
    change();
    for (const [name, was] of open) document.getElementById(name)?.toggleAttribute("open", was);
    const now = id && this.root.querySelector("#" + CSS.escape(id));
    if (!now || now === document.activeElement) return;
    now.focus({ preventScroll: true });
    if (selectionStart != null) now.setSelectionRange(selectionStart, selectionEnd);
  }
}
