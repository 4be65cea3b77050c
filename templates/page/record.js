// The reader's numbers: pairs of quantity keys in base units. They live in the
// address behind #, on the device only if the reader says so, and go nowhere.
import { all } from "./dom.js";
/** @import { Hear, Pair } from "./types.d.ts" */

/** @typedef {Map<string, Pair>} Pairs pairs by name */

const store = "plumbline", version = 1, pause = 500; // ms between addresses
/** @type {Hear[]} */
const hearers = [];
/** @type {Map<Element, string>} the guide's own links and their addresses without a record */
const links = new Map();
/** @type {Pairs} */
let pairs = new Map();
/** @type {Map<string, Pair | undefined>} what changed here since the device was written to */
let unsaved = new Map();
/** @type {ReturnType<typeof setTimeout> | undefined} */
let timer;
let anchor = "", keeping = false, written = -pause;

/**
 * Pairs are merged by name. estimated=KEY and from=KEY.CALCULATOR have the key in it.
 * @param {Pair} pair
 */
const named = ([key, value]) => (key === "estimated" || key === "from" ? `${key} ${value.split(".")[0]}` : key);
/**
 * @param {string} text
 * @returns {Pairs}
 */
const read = (text) => new Map([...new URLSearchParams(text)].map((pair) => [named(pair), pair]));
/** @param {Pairs} map */
const write = (map) => new URLSearchParams([...map.values()]).toString();
/**
 * @param {Pair | undefined} a
 * @param {Pair | undefined} b
 */
const differ = (a, b) => String(a) !== String(b);

/** The whole record as a query. */
export const text = () => write(pairs);
/**
 * The value of a pair, undefined where there is none.
 * @param {string} name
 */
export const at = (name) => pairs.get(name)?.[1];
/** The unit that the reader takes lengths in: mm, cm or in. */
export const units = () => ["mm", "cm", "in"].find((u) => u === at("u")) ?? document.documentElement.dataset.units ?? "mm";
/** Whether the record is kept on this device. */
export const kept = () => keeping;
/** What a client sent stays apart from the numbers of whoever opens it. */
export const apart = () => pairs.has("ask.back");
/**
 * Has hear called after changes.
 * @param {Hear} hear
 */
export const listen = (hear) => {
  hearers.push(hear);
};

/**
 * Changes pairs; "" takes one out. What is said of the old value goes.
 * @param {Pair[]} changes
 * @param {unknown} [source] who made them, and need not be told
 * @param {Pair[]} [marks]
 */
export function put(changes, source, marks = []) {
  const next = new Map(pairs);
  for (const [key, value] of changes) {
    const gone = value === at(key) ? [] : [".on", ".done"];
    if (!value || gone[0] && at(`${key}.done`)) gone.push(".was");
    for (const name of [`estimated ${key}`, `from ${key}`, ...gone.map((mark) => key + mark)]) next.delete(name);
    if (value) next.set(key, [key, value]);
    else next.delete(key);
  }
  for (const mark of marks) next.set(named(mark), mark);
  become(next, source);
}

/**
 * Takes a computed value over and keeps what the bike has beside it.
 * @param {string} key
 * @param {string} value
 * @param {Pair[]} marks
 */
export function use(key, value, marks) {
  const was = `${key}.was`, had = at(`${key}.done`) || !at(was) && !pairs.has(`from ${key}`) ? at(key) : at(was);
  put([[key, value]], undefined, had && had !== value ? [[was, had], ...marks] : marks);
}

/** Takes everything out but the units, here and on the device. */
export function forget() {
  const own = !apart();
  become(new Map([...pairs].filter(([name]) => name === "u")), undefined, true);
  save();
  if (own) keep(false);
  try {
    sessionStorage.removeItem(tickStore);
    localStorage.removeItem(tickStore);
  } catch { /* then there are none */ }
}

/**
 * Makes next the record and tells everybody what differs.
 * @param {Pairs} next
 * @param {unknown} [source]
 * @param {boolean} [replaced]
 * @param {boolean} [others] another tab made the change, and keeps it
 */
function become(next, source, replaced, others) {
  const keys = new Set();
  for (const name of new Set([...pairs.keys(), ...next.keys()])) {
    if (!differ(next.get(name), pairs.get(name))) continue;
    keys.add(name.replace(/.* /, ""));
    if (!others) unsaved.set(name, next.get(name));
  }
  pairs = next;
  if (keys.size || replaced || others) for (const hear of hearers) hear(keys, source, replaced);
  if (keys.size) timer ??= setTimeout(save, written + pause - performance.now());
}

function save() {
  clearTimeout(timer);
  timer = undefined;
  written = performance.now();
  const now = text(), hash = now && anchor ? `${now}&at=${encodeURIComponent(anchor)}` : now || anchor;
  history.replaceState({ store }, "", hash ? `#${hash}` : location.pathname + location.search);
  carry();
  if (keeping && unsaved.size) remember();
}

// Only what changed here is laid over what the device has: two tabs merge.
function remember() {
  const device = stored() ?? new Map();
  for (const [name, pair] of unsaved) {
    if (pair) device.set(name, pair);
    else device.delete(name);
  }
  unsaved.clear();
  try {
    localStorage.setItem(store, JSON.stringify({ version, record: write(device) }));
  } catch {
    keeping = false;
  }
}

/**
 * Reads what a device keeps, this one or the text it has; undefined if there is nothing.
 * @param {string | null} [json]
 * @returns {Pairs | undefined}
 */
function stored(json) {
  try {
    const it = JSON.parse((json === undefined ? localStorage.getItem(store) : json) ?? "null");
    return it.version === version ? read(it.record) : undefined;
  } catch {
    return undefined;
  }
}

/**
 * Begins or ends keeping on this device. Returns whether it is kept now.
 * @param {boolean} yes
 */
export function keep(yes) {
  keeping = yes;
  unsaved = new Map(pairs);
  if (yes) remember();
  else {
    try {
      localStorage.removeItem(store);
    } catch { /* then there is nothing */ }
  }
  return keeping;
}

// In-guide links carry the record along.
function carry() {
  const now = text();
  for (const [link, href] of links) {
    const [path, place] = href.split("#");
    link.setAttribute("href", now ? `${path}#${now}${place ? `&at=${place}` : ""}` : href);
  }
}

// Without = the address is an anchor, which the browser has gone to by itself.
function address() {
  const hash = location.hash.slice(1), map = hash.includes("=") ? read(hash) : undefined;
  anchor = map ? map.get("at")?.[1] ?? "" : decodeURIComponent(hash);
  map?.delete("at");
  if (map) document.getElementById(anchor)?.scrollIntoView();
  return map;
}

/** Reads the record from the address and the device, and follows both. */
export function open() {
  const given = address() ?? new Map();
  const here = given.has("ask.back") ? undefined : stored();
  keeping = Boolean(here);
  pairs = new Map([...here ?? [], ...given]);
  for (const link of all(document, "a[href]")) {
    const href = link.getAttribute("href") ?? "";
    if (!/^([a-z][a-z+.-]*:|\/\/|#)/i.test(href)) links.set(link, href);
  }
  if (pairs.size) save();
  addEventListener("hashchange", () => {
    const map = address();
    // Going back to an address of ours moves the page, not the numbers.
    if (map && !history.state) become(map);
    else if (pairs.size) save();
  });
  addEventListener("storage", ({ key, oldValue, newValue }) => {
    if (key !== store || apart()) return;
    keeping = newValue !== null;
    const was = stored(oldValue) ?? new Map(), now = stored(newValue), next = new Map(pairs);
    for (const [name, pair] of now ?? []) if (differ(pair, was.get(name))) next.set(name, pair);
    if (now) for (const name of was.keys()) if (!now.has(name)) next.delete(name);
    become(next, undefined, now && !now.size, true);
  });
  addEventListener("click", carry, true);
  addEventListener("pagehide", () => timer && save());
}

// Ticks say what was done on the bike, and are no part of the record that links carry.
const tickStore = "plumbline-ticks";
const shelf = () => (keeping ? localStorage : sessionStorage);
/** @returns {Record<string, string>} */
function ticks() {
  try {
    return JSON.parse(shelf().getItem(tickStore) ?? "{}");
  } catch {
    return {};
  }
}
/**
 * Whether the act of that name is ticked off.
 * @param {string} name
 */
export const ticked = (name) => Boolean(ticks()[name]);
/**
 * Ticks an act of that name off, or not.
 * @param {string} name
 * @param {boolean} yes
 */
export function tick(name, yes) {
  const list = ticks();
  if (yes) list[name] = "yes";
  else delete list[name];
  try {
    shelf().setItem(tickStore, JSON.stringify(list));
  } catch { /* the tick stays as long as the page */ }
  for (const hear of hearers) hear(new Set([`tick ${name}`]), undefined);
}
