// The worker that computes: one question under way, the newest of each bench
// waiting. A dead worker is replaced and asked again.
import { policy, sameOrigin } from "./policy.js";

const patience = 3000; // ms for one answer
const fragment = policy("plumbline-fragment", { createHTML: html => html });
const trusted = (html) => fragment.createHTML(html);
const waiting = new Set();
let begun = false, worker, ready, busy, timer, count = 0, deaths = [];

export const on = { down() {} };

/** Queues a bench: it has question() and take(reply). */
export function ask(bench) {
  waiting.add(bench);
  if (begun) start();
}

export function begin() {
  begun = true;
  start();
}

function start() {
  if (worker) return next();
  deaths = deaths.filter(t => t > performance.now() - 60000);
  if (deaths.length > 2) return on.down();
  ready = false;
  const url = new URL(document.documentElement.dataset.engine + "worker.js", document.baseURI);
  const mine = worker = new Worker(sameOrigin(url.href), { type: "module" });
  mine.onmessage = ({ data }) => mine === worker && heard(data);
  mine.onerror = () => mine === worker && died();
}

function heard({ id, reply, dead }) {
  if (dead) return died();
  if (!busy) ready = true;
  else if (id === busy.id) {
    const { bench } = busy;
    busy = clearTimeout(timer);
    // The only strings that become HTML are those of our own worker.
    for (const part of ["html", "form"]) if (reply[part]) reply[part] = trusted(reply[part]);
    if (reply.drawn) reply.parts = [reply.drawn, ...reply.parts?.split("\0") ?? []].map(trusted);
    const texts = reply.record?.split("\0") ?? [];
    reply.record = texts.flatMap((text, i) => (i % 2 ? [[text, texts[i + 1]]] : []));
    bench.take(reply);
  }
  next();
}

function next() {
  if (!ready || busy || !waiting.size) return;
  const [bench] = waiting;
  waiting.delete(bench);
  busy = { bench, id: ++count };
  worker.postMessage({ id: count, question: bench.question() });
  timer = setTimeout(died, patience);
}

function died() {
  clearTimeout(timer);
  worker.terminate();
  if (busy) {
    busy.bench.whole = true;
    waiting.add(busy.bench);
  }
  worker = busy = undefined;
  deaths.push(performance.now());
  start();
}
