// The reader's numbers: pairs of quantity keys in base units, of one rider on one
// bike. They live in the address behind #; beside them this tab, or the device if the
// reader says so, has the book of all riders and bikes. They go nowhere.
import * as books from "./book.js";
import * as device from "./device.js";
import { all, decoded } from "./dom.js";
import { t } from "./text.js";
/** @import { Answer, Book, Change, Hear, Pair, Pairs, Place } from "./types.d.ts" */

const pause = 500; // ms between addresses
/** @type {Hear[]} */
const hearers = [];
/** @type {Map<Element, string>} the guide's own links and their addresses without a record */
const links = new Map();
/** @type {Pairs} */
let pairs = new Map();
/** @type {Map<string, Pair | undefined>} what changed here since the book was written to */
let unsaved = new Map();
let book = books.empty();
/** @type {Place | undefined} whose numbers these are, in the book */
let place;
/** @type {Book | undefined} somebody's numbers that came and are in nobody's place yet */
let arrival;
/** @type {{ said: string, book: Book, place?: Place, kept: boolean, pairs: Pairs, alone: boolean } | undefined} */
let before;
/** @type {ReturnType<typeof setTimeout> | undefined} */
let timer;
let anchor = "", keeping = false, alone = false, written = -pause;

/** The whole record as a query. */
export const text = () => books.write(pairs);
/**
 * The value of a pair, undefined where there is none.
 * @param {string} name
 */
export const at = (name) => pairs.get(name)?.[1];
/** The unit that the reader takes lengths in: mm, cm or in. */
export const units = () => ["mm", "cm", "in"].find((u) => u === at("u")) ?? document.documentElement.dataset.units ?? "mm";
/** Whether the book is kept on this device. */
export const kept = () => keeping;
/** Whether the numbers on show are somebody else's and stay apart from the reader's own. */
export const apart = () => alone;
/** Whether the reader has numbers of their own here, whosever are on show. */
export const owns = () => (alone ? books.filled(books.join(book, place)) : books.filled(pairs));
/**
 * Has hear called after changes.
 * @param {Hear} hear
 */
export const listen = (hear) => {
  hearers.push(hear);
};
/** The date where the reader is, as ISO 8601 writes it. */
export const today = () => {
  const d = new Date();
  return [d.getFullYear(), d.getMonth() + 1, d.getDate()].map((n) => String(n).padStart(2, "0")).join("-");
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
  for (const mark of marks) next.set(books.named(mark), mark);
  const done = marks.flatMap(([name]) => (name.endsWith(".done") ? [name.slice(0, -5)] : []));
  changed(next, done, source);
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

/**
 * Puts the value back that the bike had before a change.
 * @param {string} key
 */
export function back(key) {
  const next = new Map(pairs), was = at(`${key}.was`);
  for (const name of [key, `estimated ${key}`, `from ${key}`, ...[".unit", ".on", ".was", ".done"].map((mark) => key + mark)]) next.delete(name);
  if (was) next.set(key, [key, was]);
  changed(next, [key], undefined);
}

/**
 * Makes next the record, and logs what was made on the bike of these keys.
 * @param {Pairs} next
 * @param {string[]} keys
 * @param {unknown} source
 */
function changed(next, keys, source) {
  const entries = alone ? [] : books.logged(pairs, next, keys, today());
  become(next, source);
  if (entries.length) note(...entries);
}

/**
 * Makes next the record and tells everybody what differs.
 * @param {Pairs} next
 * @param {unknown} [source]
 * @param {boolean} [replaced]
 * @param {boolean} [known] the book has it already
 */
function become(next, source, replaced, known) {
  const keys = new Set();
  for (const name of new Set([...pairs.keys(), ...next.keys()])) {
    if (String(next.get(name)) === String(pairs.get(name))) continue;
    keys.add(name.replace(/.* /, ""));
    if (!known && !alone) unsaved.set(name, next.get(name));
  }
  pairs = next;
  if (keys.size || replaced || known) for (const hear of hearers) hear(keys, source, replaced);
  if (keys.size) timer ??= setTimeout(save, written + pause - performance.now());
}

/**
 * Tells everybody of something beside the numbers.
 * @param {string} what
 */
const told = (what) => hearers.forEach((hear) => hear(new Set([what]), undefined));

function save() {
  clearTimeout(timer);
  timer = undefined;
  written = performance.now();
  const now = text(), hash = now && anchor ? `${now}&at=${encodeURIComponent(anchor)}` : now || anchor;
  history.replaceState({ store: true }, "", hash ? `#${hash}` : location.pathname + location.search);
  carry();
  if (unsaved.size) commit(() => {});
  device.remember({ text: now, place, alone });
}

/**
 * Changes the book as it is by now: what another tab wrote is read before, and only
 * what changed here is laid over it.
 * @param {(book: Book) => void} edit
 */
function commit(edit) {
  const newest = keeping ? device.load() : undefined;
  if (newest?.kept && newest.book) ({ book } = newest);
  if (unsaved.size) place = books.lay(book, place, unsaved);
  unsaved.clear();
  edit(book);
  if (!device.save(book, keeping)) keeping = false;
}

/** The place of the reader's numbers, made where there is none. */
function here() {
  const { rider, bike } = books.made(book, place);
  place = { rider: rider.id, bike: bike.id };
  return { rider, bike };
}

// Ticks are the reader's own: somebody else's numbers come without any, and leave none.
/** @type {Record<string, string>} */
let passing = {};
/** @returns {Record<string, string>} */
const ticks = () => (alone ? passing : books.find(book, place).bike?.ticks ?? {});
/**
 * Whether the act of that name is ticked off on this bike.
 * @param {string} name
 */
export const ticked = (name) => Boolean(ticks()[name]);
/**
 * Ticks an act of that name off on this bike, or not.
 * @param {string} name
 * @param {boolean} yes
 */
export function tick(name, yes) {
  /** @param {Record<string, string>} list */
  const set = (list) => {
    if (yes) list[name] = today();
    else delete list[name];
  };
  if (alone) set(passing);
  else commit(() => set(here().bike.ticks));
  told(`tick ${name}`);
}

/**
 * The name of a draft on this bike; on none while the book has no bike.
 * @param {string} name
 * @param {Place | undefined} [of]
 */
const draftName = (name, of) => `${of?.rider ?? ""} ${of?.bike ?? ""} ${name}`;

/**
 * What was typed into a field of that name in this tab and not yet taken, or "". What a
 * book of an earlier version kept of it counts as well.
 * @param {string} name
 */
export function drafted(name) {
  if (alone) return "";
  const list = device.drafts();
  return list[draftName(name, chosen())] ?? list[draftName(name)] ?? books.find(book, place).bike?.drafts[name] ?? "";
}
/**
 * Keeps what was typed into a field of that name; "" takes it out.
 * @param {string} name
 * @param {string} typed
 */
export function draft(name, typed) {
  if (alone || typed === drafted(name)) return;
  const list = device.drafts();
  delete list[draftName(name)];
  list[draftName(name, chosen())] = typed;
  device.keepDrafts(list);
}

/** What was changed on this bike, and noted. @returns {Change[]} */
export const log = () => (alone ? [] : books.find(book, place).bike?.log ?? []);
/**
 * Writes lines into the log of this bike.
 * @param {...Change} entries
 */
export function note(...entries) {
  commit(() => {
    here().bike.log.push(...entries);
  });
  told("log");
}
/**
 * Takes a line out of the log.
 * @param {number} i
 */
export function unnote(i) {
  remark(t("The line is taken out."));
  commit(() => {
    here().bike.log.splice(i, 1);
  });
  told("log");
}

/** Whose numbers these are, in the book. */
export const chosen = () => books.placed(book, place);
/** All riders and their bikes, with their names, as they are by now. */
export function riders() {
  if (unsaved.size) commit(() => {});
  /** @param {{ record: string }} of @param {string} key */
  const name = ({ record }, key) => books.read(record).get(key)?.[1] ?? "";
  return book.riders.map((rider) => ({
    id: rider.id, name: name(rider, "name"), bikes: rider.bikes.map((bike) => ({ id: bike.id, name: name(bike, "bike"), record: books.write(books.join(book, { rider: rider.id, bike: bike.id })) })),
  }));
}
/** The book as text: what the engine writes a file of. */
export function whole() {
  if (alone) {
    const one = books.empty();
    books.lay(one, undefined, pairs);
    return JSON.stringify(one);
  }
  // Reading writes nothing that another tab has not: it would write over what is on its way.
  if (unsaved.size) commit(() => {});
  const shown = structuredClone(book), { rider, bike } = books.made(shown, place);
  shown.rider = rider.id;
  rider.bike = bike.id;
  return JSON.stringify(shown);
}

/**
 * Shows another rider or another bike.
 * @param {Place} to
 */
export function choose(to) {
  alone = false;
  arrival = undefined;
  commit((now) => {
    place = books.placed(now, to);
    if (!place) return;
    now.rider = place.rider;
    const { rider } = books.find(now, place);
    if (rider) rider.bike = place.bike;
  });
  become(books.join(book, place), undefined, true, true);
  save();
}
/** Adds a bike of the rider here and shows it. @param {string} name */
export function addBike(name) {
  commit((now) => {
    const { rider } = here(), added = books.add(now, rider);
    place = { rider: added.rider.id, bike: added.bike.id };
    books.lay(now, place, books.read(new URLSearchParams(name ? { bike: name } : {}).toString()));
  });
  choose(/** @type {Place} */ (place));
}
/** Adds a rider with a bike and shows them. @param {string} name */
export function addRider(name) {
  commit((now) => {
    here();
    const added = books.add(now);
    place = { rider: added.rider.id, bike: added.bike.id };
    books.lay(now, place, books.read(new URLSearchParams(name ? { name } : {}).toString()));
  });
  choose(/** @type {Place} */ (place));
}

/**
 * Remembers everything as it is, so that what follows can be undone on this page.
 * @param {string} said
 */
function remark(said) {
  if (unsaved.size && !alone) commit(() => {});
  before = { said, book: structuredClone(book), place, kept: keeping, pairs: new Map(pairs), alone };
}
/** What can be undone, as it was said; undefined for nothing. */
export const undoable = () => before?.said;
/** Makes everything as it was before, which can be undone as well. */
export function undo() {
  const last = before;
  if (!last) return;
  remark(t("It is as it was before."));
  ({ book, place, alone } = last);
  const { pairs: had, kept: was } = last;
  arrival = alone ? books.bookOf(had) : undefined;
  if (was && !keeping) device.clear(false);
  keeping = was;
  if (!device.save(book, keeping)) keeping = false;
  unsaved.clear();
  become(had, undefined, true, true);
  save();
}

/**
 * Takes out everything, or this rider, or this bike, here and on the device. Somebody
 * else's numbers just go from the page.
 * @param {"all" | "rider" | "bike"} [what]
 */
export function forget(what = "all") {
  if (alone) {
    answer("cancel");
    return;
  }
  remark(what === "all" ? t("Your numbers are forgotten.") : what === "rider" ? t("The rider is forgotten.") : t("The bike is forgotten."));
  const last = at("u");
  unsaved.clear();
  commit((now) => {
    const { rider, bike } = here();
    if (what === "all") now.riders = [];
    else if (what === "rider") now.riders = now.riders.filter((one) => one !== rider);
    else rider.bikes = rider.bikes.filter((one) => one !== bike);
  });
  place = books.placed(book);
  const next = books.join(book, place);
  if (last) next.set("u", ["u", last]);
  become(next, undefined, true, true);
  if (what === "all") {
    keep(false);
    device.clearTab();
  }
  save();
}

/**
 * Begins or ends keeping on this device. Returns whether it is kept now.
 * @param {boolean} yes
 */
export function keep(yes) {
  if (yes && device.foreign()) return false;
  device.clear(!yes);
  keeping = yes;
  if (yes) unsaved = new Map(pairs);
  commit(() => {});
  told("kept");
  return keeping;
}

/**
 * Takes somebody's numbers in, or asks first where there are others already. Returns
 * whether it has to be asked.
 * @param {Book} them
 */
export function receive(them) {
  arrival = them;
  if (!books.filled(pairs) && book.riders.length < 2 && !log().length) {
    answer("replace");
    return false;
  }
  told("arrival");
  return true;
}
/** What came and waits for an answer. */
export const arrived = () => arrival;
/**
 * What to do with what came: it takes the place of this rider and bike (all of them if
 * several came), or stands beside them, or goes.
 * @param {Answer} how
 */
export function answer(how) {
  const them = arrival, mine = alone;
  if (!them && !mine) return;
  if (mine) unsaved.clear();
  if (how !== "cancel") {
    remark(how === "replace" ? t("Your numbers are replaced.") : t("Both are kept."));
    alone = false;
    commit((now) => {
      place = books[how === "replace" ? "replaceBy" : "addAll"](now, place, mine || !them ? books.bookOf(pairs) : them);
    });
  }
  alone = false;
  arrival = undefined;
  passing = {};
  place = books.placed(book, place);
  if (mine || how !== "cancel") become(books.join(book, place), undefined, true, true);
  told("arrival");
  save();
}

// In-guide links carry the record along.
function carry() {
  const now = text();
  for (const [link, href] of links) {
    const [path, to] = href.split("#");
    link.setAttribute("href", now ? `${path}#${now}${to ? `&at=${to}` : ""}` : href);
  }
}

// Without = the address is an anchor, which the browser has gone to by itself.
function address() {
  const hash = location.hash.slice(1), map = hash.includes("=") ? books.read(hash) : undefined;
  anchor = map ? map.get("at")?.[1] ?? "" : decoded(hash);
  map?.delete("at");
  if (map) document.getElementById(anchor)?.scrollIntoView();
  return map;
}

/**
 * The record that a new address brings, beside what the reader has already. Two people
 * are never mixed: other numbers than the device's stay apart until the reader has
 * said what is to become of them, and else take the place of what this tab had.
 * @param {Pairs} given
 * @returns {Pairs}
 */
function arrive(given) {
  if (unsaved.size && !alone) commit(() => {});
  const own = books.join(book, place);
  alone = given.has("ask.back");
  arrival = alone ? books.bookOf(given) : undefined;
  if (alone) return given;
  if (books.same(own, given)) {
    if (given.has("u")) unsaved.set("u", given.get("u"));
    return new Map([...own, ...given]);
  }
  if (!books.filled(own)) {
    unsaved = new Map(given);
    return new Map([...own, ...given]);
  }
  arrival = books.bookOf(given);
  if (keeping) {
    alone = true;
    return given;
  }
  pairs = own;
  remark(t("The link’s numbers took the place of those that were here."));
  place = books.replaceBy(book, place, arrival);
  device.save(book, false);
  arrival = undefined;
  return given;
}

/**
 * The record as this tab had it last, with what a fitter asks in this address.
 * @param {Pairs} [given]
 */
function again(given) {
  const { book: had, kept: was } = device.load(), tab = device.mine();
  book = had ?? books.empty();
  keeping = was;
  place = books.placed(book, tab.place);
  const ours = tab.text !== undefined && (!given || Boolean(history.state?.store) || books.write(given) === tab.text);
  alone = ours && Boolean(tab.alone && given);
  if (alone) {
    const them = books.read(tab.text ?? "");
    arrival = books.bookOf(them);
    return them;
  }
  arrival = undefined;
  if (given && !ours) return arrive(given);
  const asked = [...given ?? []].filter(([name]) => !books.home(name));
  return new Map([...books.join(book, place), ...asked]);
}

/** Reads the record from the address and the device, and follows both. */
export function open() {
  pairs = again(address());
  for (const link of all(document, "a[href]")) {
    const href = link.getAttribute("href") ?? "";
    if (!/^([a-z][a-z+.-]*:|\/\/|#)/i.test(href)) links.set(link, href);
  }
  if (pairs.size) save();
  addEventListener("hashchange", () => {
    const map = address();
    // Going back to an address of ours moves the page, not the numbers.
    if (map && !history.state) {
      const next = arrive(map);
      become(next, undefined, true, true);
      save();
    } else if (pairs.size) save();
  });
  // A page that the browser had put away shows what became of the numbers since.
  addEventListener("pageshow", ({ persisted }) => {
    if (!persisted) return;
    become(again(address()), undefined, true, true);
  });
  device.follow(others);
  addEventListener("click", carry, true);
  addEventListener("pagehide", () => (timer || unsaved.size) && save());
}

/**
 * Another tab wrote the book. Where it began to keep other numbers than these, these
 * stay apart.
 * @param {Book | undefined} was
 * @param {Book | undefined} now
 */
function others(was, now) {
  keeping = Boolean(now);
  if (!now) {
    if (!alone) device.save(book, false);
    told("kept");
    return;
  }
  const theirs = books.join(now, place), had = was ? books.join(was, place) : new Map();
  if (!alone && !was && books.filled(pairs) && !books.same(theirs, pairs)) {
    alone = true;
    arrival = books.bookOf(pairs);
    unsaved.clear();
  }
  book = now;
  if (alone) {
    told("arrival");
    return;
  }
  const gone = place && books.placed(now, place)?.bike !== place.bike;
  place = books.placed(now, place);
  const next = gone ? books.join(now, place) : new Map(pairs);
  if (!gone) {
    for (const [name, pair] of theirs) if (String(pair) !== String(had.get(name))) next.set(name, pair);
    for (const name of had.keys()) if (!theirs.has(name)) next.delete(name);
  }
  become(next, undefined, gone, true);
}
