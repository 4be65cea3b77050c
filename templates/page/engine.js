// The worker that computes: one question under way, the newest of each bench
// waiting. A dead worker is replaced, and never asked again what it died of.
import { policy, sameOrigin } from "./policy.js";
/** @import { Asker, Message, Question, Reply } from "./types.d.ts" */

const patience = 5000; // ms for one answer
const fragment = policy("plumbline-fragment", { createHTML: (/** @type {string} */ html) => html });
/** @param {string} html */
const trusted = (html) => fragment.createHTML(html);
/** @type {Set<Asker>} */
const waiting = new Set();
/** @type {Worker | undefined} */
let worker;
/** @type {{ bench: Asker, id: number, asked: string, begun?: boolean } | undefined} */
let busy;
/** @type {Set<string>} questions that a worker died of */
const deadly = new Set();
const spared = "The engine stopped while it computed this and was started again. Your numbers are kept. Change one of them to ask again.";
/** @type {ReturnType<typeof setTimeout> | undefined} */
let timer;
/** @type {number[]} */
let deaths = [];
let begun = false, ready = false, count = 0;

/** What happens when the engine has died three times within a minute. */
export const on = { down() {} };

/**
 * Queues a bench or whatever else asks.
 * @param {Asker} bench
 */
export function ask(bench) {
  waiting.add(bench);
  if (begun) start();
}

/** Starts the engine, which until then only queues. */
export function begin() {
  begun = true;
  start();
}

// A page that the browser had put away begins with a new worker, whatever became of the old.
addEventListener("pageshow", ({ persisted }) => {
  if (!persisted) return;
  clearTimeout(timer);
  worker?.terminate();
  if (busy) waiting.add(busy.bench);
  worker = busy = undefined;
  deaths = [];
  if (begun) start();
});

function start() {
  if (worker) {
    next();
    return;
  }
  deaths = deaths.filter((t) => t > performance.now() - 60000);
  if (deaths.length > 2) {
    on.down();
    return;
  }
  ready = false;
  const url = new URL(`${document.documentElement.dataset.engine}worker.js`, document.baseURI);
  const mine = worker = new Worker(sameOrigin(url.href), { type: "module" });
  mine.onmessage = ({ data }) => mine === worker && heard(data);
  mine.onerror = () => mine === worker && died();
}

/**
 * Takes an answer apart. The only strings that become HTML are those of our own worker.
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

/** @param {{ id?: number, reply?: Message, begun?: boolean, dead?: boolean }} data */
function heard({ id, reply, begun: computes, dead }) {
  if (dead) {
    died();
    return;
  }
  if (computes) {
    if (busy && busy.id === id) busy.begun = true;
    return;
  }
  if (!busy) ready = true;
  else if (id === busy.id && reply) {
    const { bench } = busy;
    clearTimeout(timer);
    busy = undefined;
    bench.take(unpack(reply));
  }
  next();
}

/**
 * What is asked, as a text: without what the record had of the numbers that are typed now.
 * @param {Question} question
 */
function essence({ record, query = "", whole: _, ...rest }) {
  const typed = new Map(new URLSearchParams(String(query))), kept = [...new URLSearchParams(record)].filter(([key]) => !typed.has(key));
  return JSON.stringify([rest, [...typed], kept]);
}

function next() {
  const [bench] = waiting;
  if (!worker || !ready || busy || !bench) return;
  waiting.delete(bench);
  const { whole } = bench, question = bench.question(), asked = essence(question);
  if (deadly.has(asked)) {
    bench.whole = whole; // a form that is to be written anew is so with the next question
    bench.take({ error: spared, record: [] });
    next();
    return;
  }
  busy = { bench, id: ++count, asked };
  worker.postMessage({ id: count, question });
  timer = setTimeout(died, patience);
}

function died() {
  clearTimeout(timer);
  worker?.terminate();
  if (busy) {
    if (busy.begun) deadly.add(busy.asked); // else the browser had ended the worker before
    busy.bench.whole = true;
    waiting.add(busy.bench);
  }
  worker = busy = undefined;
  deaths.push(performance.now());
  start();
}
