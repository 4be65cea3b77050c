// The workers that compute: one with the calculators of the page's section, and one with
// everything, which is loaded when something wants it. Each has one question under way,
// the newest of each bench waiting. A dead worker is replaced, and never asked again what
// it died of.
import { policy, sameOrigin } from "./policy.js";
import { t } from "./text.js";
/** @import { Asker, Message, Question, Reply } from "./types.d.ts" */

const patience = 5000; // ms for one answer
const fragment = policy("plumbline-fragment", { createHTML: (/** @type {string} */ html) => html });
/** @param {string} html */
const trusted = (html) => fragment.createHTML(html);
/** @type {Set<string>} questions that a worker died of */
const deadly = new Set();
const spared = t("The engine stopped while it computed this and was started again. Your numbers are kept. Change one of them to ask again.");
let begun = false, count = 0;

/**
 * What happens when an engine cannot be loaded, or has died three times within a minute.
 * @type {{ down(loaded: boolean): void }}
 */
export const on = { down() {} };

/** Calls of those who wait until the page's first engine answers. */
const calls = new Set();

/**
 * Calls once the page's first engine answers; at once if it does.
 * @param {() => void} call
 */
export function answering(call) {
  if (first.ready) call();
  else calls.add(call);
}

class Engine {
  /** @type {Set<Asker>} */
  waiting = new Set();
  /** @type {Worker | undefined} */
  worker;
  /** @type {{ bench: Asker, id: number, question: Question, asked: string, begun?: boolean } | undefined} */
  busy;
  /** @type {ReturnType<typeof setTimeout> | undefined} */
  timer;
  /** @type {number[]} */
  deaths = [];
  ready = false;
  failed = false; // it could not be loaded
  doubted = false; // a worker died, of its file perhaps

  /** @param {string} name */
  constructor(name) {
    this.name = name;
  }

  start() {
    if (this.worker) {
      this.next();
      return;
    }
    // What the page is about comes first.
    if (this.failed || this !== first && !first.ready && !first.failed) return;
    this.deaths = this.deaths.filter((at) => at > performance.now() - 60000);
    if (this.deaths.length > 2) {
      on.down(true);
      return;
    }
    this.ready = false;
    const url = new URL(`${document.documentElement.dataset.engine}worker.js`, document.baseURI);
    const mine = this.worker = new Worker(sameOrigin(url.href), { type: "module", name: this.name });
    mine.onmessage = ({ data }) => mine === this.worker && this.heard(data);
    mine.onerror = () => mine === this.worker && this.died();
    globalThis.engineParts(this.name, this.doubted).then((parts) => mine.postMessage(parts), () => mine === this.worker && this.missing());
  }

  missing() {
    this.worker?.terminate();
    this.worker = undefined;
    this.failed = true;
    on.down(false);
    if (this !== whole && whole.waiting.size) whole.start();
  }

  /** @param {{ id?: number, reply?: Message, begun?: boolean, dead?: boolean }} data */
  heard({ id, reply, begun: computes, dead }) {
    if (dead) {
      this.died();
      return;
    }
    const { busy } = this;
    if (computes) {
      if (busy && busy.id === id) busy.begun = true;
      return;
    }
    if (!busy) {
      this.ready = true;
      this.doubted = false;
      if (this === first) for (const call of calls) call();
      calls.clear();
      if (this !== whole && whole.waiting.size) whole.start();
    } else if (id === busy.id && reply) {
      clearTimeout(this.timer);
      this.busy = undefined;
      if (reply.elsewhere) pass(busy.bench, busy.question);
      else busy.bench.take(unpack(reply));
    }
    this.next();
  }

  next() {
    const [bench] = this.waiting;
    if (!this.worker || !this.ready || this.busy || !bench) return;
    this.waiting.delete(bench);
    const { whole: wanted } = bench, question = bench.question(), asked = essence(question);
    if (deadly.has(asked)) {
      bench.whole = wanted; // a form that is to be written anew is so with the next question
      bench.take({ error: spared, record: [] });
      this.next();
      return;
    }
    this.busy = { bench, id: ++count, question, asked };
    this.worker.postMessage({ id: count, question });
    this.timer = setTimeout(() => this.died(), patience);
  }

  died() {
    if (this.busy?.begun) deadly.add(this.busy.asked); // else the browser had ended the worker before
    this.end();
    this.doubted = true;
    this.deaths.push(performance.now());
    this.start();
  }

  /** Ends the worker; what it was asked waits again. */
  end() {
    clearTimeout(this.timer);
    this.worker?.terminate();
    if (this.busy) {
      this.busy.bench.whole = true;
      this.waiting.add(this.busy.bench);
    }
    this.worker = this.busy = undefined;
    this.ready = false;
  }

  /** Begins as if nothing had happened. */
  renew() {
    this.deaths = [];
    this.failed = false;
    if (begun && (this === first || this.waiting.size)) this.start();
  }
}

const whole = new Engine("whole");
const section = document.documentElement.dataset.near;
/** What the page needs first. */
const first = section && section !== "whole" ? new Engine(section) : whole;
const engines = new Set([first, whole]);

/**
 * Queues a bench or whatever else asks.
 * @param {Asker} bench
 */
export function ask(bench) {
  const engine = bench.near ? first : whole;
  engine.waiting.add(bench);
  if (begun) engine.start();
}

/**
 * Asks the whole engine what the section's has not.
 * @param {Asker} bench
 * @param {Question} question
 */
function pass(bench, question) {
  bench.near = false;
  bench.undo?.(question);
  first.waiting.delete(bench);
  ask(bench);
}

/** Starts the engine, which until then only queues. */
export function begin() {
  begun = true;
  for (const engine of engines) if (engine === first || engine.waiting.size) engine.start();
}

/** Tries anew what failed. */
export function again() {
  for (const engine of engines) engine.renew();
}

// A page that the browser had put away begins with new workers, whatever became of the old.
addEventListener("pageshow", ({ persisted }) => {
  if (!persisted) return;
  for (const engine of engines) engine.end();
  again();
});

/**
 * Takes an answer apart. The only strings that become HTML are those of our own workers.
 * @param {Message} message
 * @returns {Reply}
 */
function unpack({ html, form, drawn, parts, record, ...rest }) {
  const texts = record?.split("\0") ?? [];
  return {
    ...rest,
    html: html && trusted(html),
    form: form && trusted(form),
    parts: drawn ? [drawn, ...parts?.split("\0") ?? []].map(trusted) : undefined,
    record: texts.flatMap((text, i) => (i % 2 ? [[text, texts[i + 1]]] : [])),
  };
}

/**
 * What is asked, as a text: without what the record had of the numbers that are typed now.
 * @param {Question} question
 */
function essence({ record, query = "", whole: _, fresh: _fresh, ...rest }) {
  const typed = new Map(new URLSearchParams(String(query))), kept = [...new URLSearchParams(record)].filter(([key]) => !typed.has(key));
  return JSON.stringify([rest, [...typed], kept]);
}
