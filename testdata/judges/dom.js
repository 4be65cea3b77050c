// A page without a browser, for the tests of the modules in templates/page: happy-dom
// stands in for the document, Engine for the worker. What a browser lays out, paints
// or decodes is tested in site/browser.
import { setTimeout as wait } from "node:timers/promises";
import { Window } from "happy-dom";

const names = [
  "document", "location", "history", "localStorage", "sessionStorage", "navigator", "FormData", "CSS", "Event",
  "InputEvent", "KeyboardEvent", "MouseEvent", "StorageEvent", "Element", "HTMLElement", "HTMLAnchorElement",
  "HTMLButtonElement", "HTMLDetailsElement", "HTMLFieldSetElement", "HTMLFormElement", "HTMLInputElement",
  "HTMLSelectElement", "HTMLTextAreaElement", "Text", "getComputedStyle",
];

/** The worker's place: keeps what it is asked, and answers when the test says so. */
export class Engine {
  /** @type {Engine[]} all that were started, the newest last */
  static all = [];
  /** @type {{ id: number, question: Record<string, any> }[]} */
  asked = [];
  ended = false;
  /** @type {(event: { data: object }) => void} */
  onmessage = () => {};
  onerror = () => {};

  /** @param {string} url */
  constructor(url) {
    this.url = url;
    Engine.all.push(this);
  }

  /** The newest, ready to be asked. */
  static ready() {
    const engine = /** @type {Engine} */ (Engine.all.at(-1));
    engine.onmessage({ data: { ready: true } });
    return engine;
  }

  /** @param {{ id: number, question: Record<string, any> }} message */
  postMessage(message) {
    if (!message.question) return; // the compiled engine is no question
    this.asked.push(message);
    this.onmessage({ data: { id: message.id, begun: true } });
  }

  terminate() {
    this.ended = true;
  }

  /** The newest question. */
  get question() {
    return this.asked.at(-1)?.question ?? {};
  }

  /**
   * Answers the newest question.
   * @param {object} reply
   */
  answer(reply) {
    this.onmessage({ data: { id: this.asked.at(-1)?.id, reply } });
  }
}

/** What watches how far a page is scrolled: everything is in view. */
class Overview {
  /** @param {(seen: { target: Element, isIntersecting: boolean }[]) => void} call */
  constructor(call) {
    this.call = call;
  }

  /** @param {Element} target */
  observe(target) {
    queueMicrotask(() => this.call([{ target, isIntersecting: true }]));
  }
}

// A few of the keys that a page is told to belong to the rider.
const carried = "inseam stature mass arm-length foot-length cleat-behind-ball";

/**
 * Opens a page, so that modules which are imported from now on find it.
 * @param {string} body
 * @param {string} [hash] with its #
 */
export function visit(body, hash = "") {
  const window = new Window({ url: `https://guide.example/saddle/height.html${hash}` });
  window.document.write(`<!DOCTYPE html><html data-root="../" data-engine="../assets/engine-1/" data-units="mm"><body data-carried="${carried}">${body}</body></html>`);
  const found = /** @type {Record<string, any>} */ (/** @type {unknown} */ (window));
  for (const name of names) Object.defineProperty(globalThis, name, { value: found[name], configurable: true, writable: true });
  Object.assign(globalThis, {
    Worker: Engine,
    engineParts: async () => ({}),
    IntersectionObserver: Overview,
    addEventListener: window.addEventListener.bind(window),
    dispatchEvent: window.dispatchEvent.bind(window),
  });
  return window;
}

/**
 * Waits until that is true, a second at most.
 * @param {() => unknown} is
 */
export async function until(is) {
  for (let i = 0; i < 200 && !is(); i++) await wait(5);
  if (!is()) throw new Error(`It is not so after a second: ${is}`);
}

/**
 * Types a text into a field as a reader does.
 * @param {HTMLInputElement} field
 * @param {string} text
 */
export function type(field, text) {
  field.value = text;
  field.dispatchEvent(new Event("input", { bubbles: true }));
}
