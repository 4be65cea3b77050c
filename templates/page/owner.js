// Whose numbers are on show: the riders and bikes of the book, what comes with a link or a
// file, what is kept on the device, and what can be undone. Two people are never mixed.
import { addressed, carry, collect } from "./address.js";
import * as books from "./book.js";
import * as device from "./device.js";
import { at, log } from "./record.js";
import { become, commit, here, remark, save, state, text, today, told, waiting } from "./state.js";
import { t } from "./text.js";
/** @import { Answer, Book, Pairs, Place } from "./types.d.ts" */

/** Whether the book is kept on this device. */
export const kept = () => state.keeping;
/** Whether the numbers on show are somebody else's and stay apart from the reader's own. */
export const apart = () => state.alone;
/** Whether the reader has numbers of their own here, whosever are on show. */
export const owns = () => (state.alone ? books.filled(books.join(state.book, state.place)) : books.filled(state.pairs));
/** Whose numbers these are, in the book. */
export const chosen = () => books.placed(state.book, state.place);
/** All riders and their bikes, with their names, as they are by now. */
export function riders() {
  if (state.unsaved.size) commit(() => {});
  /** @param {{ record: string }} of @param {string} key */
  const name = ({ record }, key) => books.read(record).get(key)?.[1] ?? "";
  return state.book.riders.map((rider) => ({
    id: rider.id, name: name(rider, "name"), bikes: rider.bikes.map((bike) => ({ id: bike.id, name: name(bike, "bike"), record: books.write(books.join(state.book, { rider: rider.id, bike: bike.id })) })),
  }));
}
/** The book as text: what the engine writes a file of. */
export function whole() {
  if (state.alone) {
    const one = books.empty();
    books.lay(one, undefined, state.pairs);
    return JSON.stringify(one);
  }
  // Reading writes nothing that another tab has not: it would write over what is on its way.
  if (state.unsaved.size) commit(() => {});
  const shown = structuredClone(state.book), { rider, bike } = books.made(shown, state.place);
  shown.rider = rider.id;
  rider.bike = bike.id;
  return JSON.stringify(shown);
}

/**
 * Shows another rider or another bike.
 * @param {Place} to
 */
export function choose(to) {
  state.alone = false;
  state.arrival = undefined;
  commit((now) => {
    state.place = books.placed(now, to);
    if (!state.place) return;
    now.rider = state.place.rider;
    const { rider } = books.find(now, state.place);
    if (rider) rider.bike = state.place.bike;
  });
  become(books.join(state.book, state.place), undefined, true, true);
  save();
}
/** Adds a bike of the rider here and shows it. @param {string} name */
export function addBike(name) {
  commit((now) => {
    const { rider } = here(), added = books.add(now, rider);
    state.place = { rider: added.rider.id, bike: added.bike.id };
    books.lay(now, state.place, books.read(new URLSearchParams(name ? { bike: name } : {}).toString()));
  });
  choose(/** @type {Place} */ (state.place));
}
/** Adds a rider with a bike and shows them. @param {string} name */
export function addRider(name) {
  commit((now) => {
    here();
    const added = books.add(now);
    state.place = { rider: added.rider.id, bike: added.bike.id };
    books.lay(now, state.place, books.read(new URLSearchParams(name ? { name } : {}).toString()));
  });
  choose(/** @type {Place} */ (state.place));
}

/** What can be undone, as it was said; undefined for nothing. */
export const undoable = () => state.before?.said;
/** Makes everything as it was before, which can be undone as well. */
export function undo() {
  const last = state.before;
  if (!last) return;
  remark(t("It is as it was before."));
  Object.assign(state, { book: last.book, place: last.place, alone: last.alone });
  const { pairs: had, kept: was } = last;
  state.arrival = state.alone ? books.bookOf(had) : undefined;
  if (was && !state.keeping) device.clear(false);
  state.keeping = was;
  if (!device.save(state.book, state.keeping)) state.keeping = false;
  state.unsaved.clear();
  become(had, undefined, true, true);
  save();
}

/**
 * Takes out everything, or this rider, or this bike, here and on the device. Somebody
 * else's numbers just go from the page.
 * @param {"all" | "rider" | "bike"} [what]
 */
export function forget(what = "all") {
  if (state.alone) {
    answer("cancel");
    return;
  }
  remark(what === "all" ? t("Your numbers are forgotten.") : what === "rider" ? t("The rider is forgotten.") : t("The bike is forgotten."));
  const last = at("u");
  state.unsaved.clear();
  commit((now) => {
    const { rider, bike } = here();
    if (what === "all") now.riders = [];
    else if (what === "rider") now.riders = now.riders.filter((one) => one !== rider);
    else rider.bikes = rider.bikes.filter((one) => one !== bike);
  });
  state.place = books.placed(state.book);
  const next = books.join(state.book, state.place);
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
  state.keeping = yes;
  if (yes) state.unsaved = new Map(state.pairs);
  commit(() => {});
  told("kept");
  return state.keeping;
}

/**
 * Takes somebody's numbers in, or asks first where there are others already. Returns
 * whether it has to be asked.
 * @param {Book} them
 */
export function receive(them) {
  state.arrival = them;
  if (!books.filled(state.pairs) && state.book.riders.length < 2 && !log().length) {
    answer("replace");
    return false;
  }
  told("arrival");
  return true;
}
/** What came and waits for an answer. */
export const arrived = () => state.arrival;
/** Whom settings are from that a fitter sent, undefined where the numbers are no such. */
export const adviser = () => (state.alone ? at("ask.from") : undefined);
/** Whether such settings can be planned on a bike of the reader's, because they are that rider's. */
export const plannable = () => adviser() !== undefined && books.placeOf(state.book, state.pairs) !== undefined;

/**
 * What becomes of the numbers that came, in a book.
 * @param {Book} book
 * @param {Answer} how
 * @param {Book} them
 * @returns {Place | undefined}
 */
function take(book, how, them) {
  if (how !== "plan") return books[how === "replace" ? "replaceBy" : "addAll"](book, state.place, them);
  const to = books.placeOf(book, state.pairs);
  return to && books.lay(book, to, books.planned(books.join(book, to), state.pairs)) && to;
}

/** @param {Answer} how */
function said(how) {
  if (how === "plan") return t("The settings are planned on your bike.");
  return how === "replace" ? t("Your numbers are replaced.") : t("Both are kept.");
}

/**
 * What to do with what came: it takes the place of this rider and bike (all of them if
 * several came), or stands beside them, or goes. Of a fitter's settings nothing but those
 * is planned on the bike that they are for.
 * @param {Answer} how
 */
export function answer(how) {
  const them = state.arrival, mine = state.alone, from = adviser(), word = at("ask.note");
  if (!them && !mine) return;
  if (mine) state.unsaved.clear();
  if (how !== "cancel") {
    remark(owns() || how === "plan" ? said(how) : t("The numbers are yours now."));
    state.alone = false;
    commit((now) => {
      state.place = take(now, how, mine || !them ? books.bookOf(state.pairs) : them);
      if (from !== undefined) books.find(now, state.place).bike?.log.push({ on: today(), note: [from ? t("Settings from {0}", from) : t("Settings from a fitter"), word].filter(Boolean).join(": ").slice(0, 500) });
    });
  }
  state.alone = false;
  state.arrival = undefined;
  state.passing = {};
  state.place = books.placed(state.book, state.place);
  if (mine || how !== "cancel") become(books.join(state.book, state.place), undefined, true, true);
  told("arrival");
  save();
}

/**
 * The record that a new address brings, beside what the reader has already. Two people
 * are never mixed: other numbers than the device's, and those of another name, stay apart
 * until the reader has said what is to become of them, and else take the place of what
 * this tab had.
 * @param {Pairs} given
 * @returns {Pairs}
 */
function arrive(given) {
  if (state.unsaved.size && !state.alone) commit(() => {});
  const own = books.join(state.book, state.place);
  state.alone = given.has("ask.back") || given.has("ask.from");
  state.arrival = state.alone ? books.bookOf(given) : undefined;
  if (state.alone) return given;
  if (books.same(own, given)) {
    if (given.has("u")) state.unsaved.set("u", given.get("u"));
    return new Map([...own, ...given]);
  }
  if (!books.filled(own)) {
    state.unsaved = new Map(given);
    return new Map([...own, ...given]);
  }
  state.arrival = books.bookOf(given);
  const [mine, theirs] = [own, given].map((pairs) => pairs.get("name")?.[1]);
  if (state.keeping || mine && theirs && mine !== theirs) {
    state.alone = true;
    return given;
  }
  state.pairs = own;
  remark(t("The link’s numbers took the place of those that were here."));
  state.place = books.replaceBy(state.book, state.place, state.arrival);
  device.save(state.book, false);
  state.arrival = undefined;
  return given;
}

/**
 * The record as this tab had it last, with what a fitter asks in this address.
 * @param {Pairs} [given]
 */
function again(given) {
  const { book: had, kept: was } = device.load(), tab = device.mine();
  state.book = had ?? books.empty();
  state.keeping = was;
  state.place = books.placed(state.book, tab.place);
  const ours = tab.text !== undefined && (!given || Boolean(history.state?.store) || books.write(given) === tab.text);
  state.alone = ours && Boolean(tab.alone && given);
  if (state.alone) {
    const them = books.read(tab.text ?? "");
    state.arrival = books.bookOf(them);
    return them;
  }
  state.arrival = undefined;
  if (given && !ours) return arrive(given);
  const asked = [...given ?? []].filter(([name]) => !books.home(name));
  return new Map([...books.join(state.book, state.place), ...asked]);
}

/** Reads the record from the address and the device, and follows both. */
export function open() {
  state.pairs = again(addressed());
  collect();
  if (state.pairs.size) save();
  addEventListener("hashchange", () => {
    const map = addressed();
    // Going back to an address of ours moves the page, not the numbers.
    if (map && !history.state) {
      const next = arrive(map);
      become(next, undefined, true, true);
      save();
    } else if (state.pairs.size) save();
  });
  // A page that the browser had put away shows what became of the numbers since. Where they
  // are others by now, what it could undo would take those away.
  addEventListener("pageshow", ({ persisted }) => {
    if (!persisted) return;
    const next = again(addressed());
    if (books.write(next) !== text()) state.before = undefined;
    become(next, undefined, true, true);
  });
  device.follow(others);
  addEventListener("click", () => carry(text()), true);
  addEventListener("pagehide", () => waiting() && save());
}

/**
 * Another tab wrote the book. Where it began to keep other numbers than these, these
 * stay apart.
 * @param {Book | undefined} was
 * @param {Book | undefined} now
 */
function others(was, now) {
  state.keeping = Boolean(now);
  if (!now) {
    if (!state.alone) device.save(state.book, false);
    told("kept");
    return;
  }
  const theirs = books.join(now, state.place), had = was ? books.join(was, state.place) : new Map();
  if (!state.alone && !was && books.filled(state.pairs) && !books.same(theirs, state.pairs)) {
    state.alone = true;
    state.arrival = books.bookOf(state.pairs);
    state.unsaved.clear();
  }
  state.book = now;
  if (state.alone) {
    told("arrival");
    return;
  }
  const gone = state.place && books.placed(now, state.place)?.bike !== state.place.bike;
  state.place = books.placed(now, state.place);
  const next = gone ? books.join(now, state.place) : new Map(state.pairs);
  if (!gone) {
    for (const [name, pair] of theirs) if (String(pair) !== String(had.get(name))) next.set(name, pair);
    for (const name of had.keys()) if (!theirs.has(name)) next.delete(name);
  }
  become(next, undefined, gone, true);
}
