// Where a book is kept: on the device if the reader says so, else in this tab until
// it is closed. A browser that keeps nothing is no error.
import { later, parse } from "./book.js";
/** @import { Book, Tab } from "./types.d.ts" */

const store = "plumbline", tab = "plumbline-tab";
/** @param {boolean} kept */
const storage = (kept) => (kept ? localStorage : sessionStorage);

/**
 * @param {boolean} kept
 * @param {string} name
 */
function text(kept, name) {
  try {
    return storage(kept).getItem(name);
  } catch {
    return null;
  }
}

/**
 * Keeps a text, and tells whether it could; undefined takes it out.
 * @param {boolean} kept
 * @param {string} name
 * @param {string} [is]
 */
function put(kept, name, is) {
  try {
    if (is === undefined) storage(kept).removeItem(name);
    else storage(kept).setItem(name, is);
    return true;
  } catch {
    return false;
  }
}

/** Whether a later version of the guide keeps something here, which is left alone. */
export const foreign = () => later(text(true, store));

/** The book, and whether it is on the device and not just in this tab. */
export function load() {
  const kept = parse(text(true, store));
  return { book: kept ?? parse(text(false, store)), kept: Boolean(kept) };
}

/**
 * Keeps the book, and tells whether it could.
 * @param {Book} book
 * @param {boolean} kept
 */
export const save = (book, kept) => put(kept, store, JSON.stringify(book));

/**
 * Takes the book away, from the device or from this tab.
 * @param {boolean} kept
 */
export const clear = (kept) => put(kept, store);

/** Takes away what pages keep in this tab beside the book: answers, a fitter's request. */
export function clearTab() {
  try {
    for (const name of Object.keys(sessionStorage)) if (name.startsWith(`${store}-`)) sessionStorage.removeItem(name);
  } catch { /* nothing is kept here */ }
}

const typing = "plumbline-drafts";
/** What was typed in this tab and not taken yet, by name. @returns {Record<string, string>} */
export function drafts() {
  try {
    return JSON.parse(text(false, typing) ?? "{}");
  } catch {
    return {};
  }
}
/**
 * Keeps what was typed. Each tab has its own: with every stroke in a book that tabs share,
 * one would write over what another has on its way.
 * @param {Record<string, string>} list
 */
export const keepDrafts = (list) => put(false, typing, JSON.stringify(list));

/** What this tab shows, so that its own addresses are known again. @returns {Tab} */
export function mine() {
  try {
    return JSON.parse(text(false, tab) ?? "{}");
  } catch {
    return {};
  }
}
/** @param {Tab} now */
export const remember = (now) => put(false, tab, JSON.stringify(now));

/**
 * Whether that is the storage of the device and not the tab's own.
 * @param {Storage | null} area
 */
function ofDevice(area) {
  try {
    return area === storage(true);
  } catch {
    return false; // nothing may be kept here
  }
}

/**
 * Calls back with the book as another tab has left it, and as it was; undefined where
 * there was none, or is none. What a page of this tab wrote while this one was put away
 * is heard too, and is nobody's wish to keep it on the device.
 * @param {(was: Book | undefined, now: Book | undefined) => void} hear
 */
export function follow(hear) {
  addEventListener("storage", ({ key, oldValue, newValue, storageArea }) => {
    if (key === store && ofDevice(storageArea)) hear(parse(oldValue), parse(newValue));
  });
}
