// What a tab holds: the record on show, the book that it comes from, and what is on its way
// into either. record.js changes the numbers, owner.js says whose they are; both tell and
// save through here.
import { address } from "./address.js";
import * as books from "./book.js";
import * as device from "./device.js";
/** @import { Book, Hear, Held, Pairs } from "./types.d.ts" */

const pause = 500; // ms between addresses
/** @type {Hear[]} */
const hearers = [];
/** @type {ReturnType<typeof setTimeout> | undefined} */
let timer;
let written = -pause;

/** @type {Held} */
export const state = { pairs: new Map(), unsaved: new Map(), book: books.empty(), keeping: false, alone: false, passing: {} };

/** The whole record as a query. */
export const text = () => books.write(state.pairs);
/** The date where the reader is, as ISO 8601 writes it. */
export const today = () => {
  const d = new Date();
  return [d.getFullYear(), d.getMonth() + 1, d.getDate()].map((n) => String(n).padStart(2, "0")).join("-");
};
/**
 * Has hear called after changes.
 * @param {Hear} hear
 */
export const listen = (hear) => {
  hearers.push(hear);
};

/**
 * Makes next the record and tells everybody what differs.
 * @param {Pairs} next
 * @param {unknown} [source]
 * @param {boolean} [replaced]
 * @param {boolean} [known] the book has it already
 */
export function become(next, source, replaced, known) {
  const keys = new Set();
  for (const name of new Set([...state.pairs.keys(), ...next.keys()])) {
    if (String(next.get(name)) === String(state.pairs.get(name))) continue;
    keys.add(name.replace(/.* /, ""));
    if (!known && !state.alone) state.unsaved.set(name, next.get(name));
  }
  state.pairs = next;
  if (keys.size || replaced || known) for (const hear of hearers) hear(keys, source, replaced);
  if (keys.size) timer ??= setTimeout(save, written + pause - performance.now());
}

/** Whether something is on its way into the address or the book. */
export const waiting = () => timer !== undefined || state.unsaved.size > 0;

/**
 * Tells everybody of something beside the numbers.
 * @param {string} what
 */
export const told = (what) => hearers.forEach((hear) => hear(new Set([what]), undefined));

/** Writes the record into the address, and what is not in the book yet into the book. */
export function save() {
  clearTimeout(timer);
  timer = undefined;
  written = performance.now();
  const now = text();
  address(now);
  if (state.unsaved.size) commit(() => {});
  device.remember({ text: now, place: state.place, alone: state.alone });
}

/**
 * Changes the book as it is by now: what another tab wrote is read before, and only
 * what changed here is laid over it.
 * @param {(book: Book) => void} edit
 */
export function commit(edit) {
  const newest = state.keeping ? device.load() : undefined;
  if (newest?.kept && newest.book) state.book = newest.book;
  if (state.unsaved.size) state.place = books.lay(state.book, state.place, state.unsaved);
  state.unsaved.clear();
  edit(state.book);
  if (!device.save(state.book, state.keeping)) state.keeping = false;
}

/** The place of the reader's numbers, made where there is none. */
export function here() {
  const { rider, bike } = books.made(state.book, state.place);
  state.place = { rider: rider.id, bike: bike.id };
  return { rider, bike };
}

/**
 * Remembers everything as it is, so that what follows can be undone on this page.
 * @param {string} said
 */
export function remark(said) {
  if (state.unsaved.size && !state.alone) commit(() => {});
  state.before = { said, book: structuredClone(state.book), place: state.place, kept: state.keeping, pairs: new Map(state.pairs), alone: state.alone };
}
