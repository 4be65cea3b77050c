// What a device keeps, as data: riders with their body and shoes, each with bikes,
// and beside each bike its log and ticks. Knows no page and no storage.
/** @import { Bike, Book, Change, Pair, Pairs, Place, Rider } from "./types.d.ts" */

const version = 2, kinds = ["rider", "bike"];
// The keys of what a rider takes along to another bike, as the guide's quantities say.
const carried = new Set((document.body.dataset.carried ?? "").split(" "));

/**
 * Pairs are merged by name. estimated=KEY and from=KEY.CALCULATOR have the key in it.
 * @param {Pair} pair
 */
export const named = ([key, value]) => (key === "estimated" || key === "from" ? `${key} ${value.split(".")[0]}` : key);
/**
 * @param {string} text
 * @returns {Pairs}
 */
export const read = (text) => new Map([...new URLSearchParams(text)].map((pair) => [named(pair), pair]));
/** @param {Pairs} map */
export const write = (map) => new URLSearchParams([...map.values()]).toString();

/**
 * Where the pair of that name is kept: "rider", "bike", with the units, or nowhere, as
 * what a fitter asks stays in the address.
 * @param {string} name
 */
export function home(name) {
  const key = name.replace(/^.* /, "").split(".")[0];
  if (key === "u") return "units";
  if (key === "ask" || key.startsWith("ask-")) return "";
  return key === "name" || carried.has(key) ? "rider" : "bike";
}

/** @returns {Book} */
export const empty = () => ({ version, count: 0, rider: "", riders: [] });

/**
 * A book as it was kept, in this form or the one before; undefined for anything else.
 * @param {string | null} json
 * @returns {Book | undefined}
 */
export function parse(json) {
  try {
    const it = JSON.parse(json ?? "null");
    if (it?.version === version && Array.isArray(it.riders)) return it;
    if (it?.version !== 1) return undefined;
    const book = empty(), pairs = read(it.record);
    if (pairs.size) lay(book, undefined, pairs);
    return book;
  } catch {
    return undefined;
  }
}

/**
 * Whether that text is a book of a later version, which is left alone.
 * @param {string | null} json
 */
export function later(json) {
  try {
    return JSON.parse(json ?? "null")?.version > version;
  } catch {
    return false;
  }
}

/**
 * The rider and the bike at that place, or those that were chosen last.
 * @param {Book} book
 * @param {Place} [place]
 * @returns {{ rider?: Rider, bike?: Bike }}
 */
export function find(book, place) {
  const { riders } = book, rider = riders.find(({ id }) => id === place?.rider) ?? riders.find(({ id }) => id === book.rider) ?? riders[0];
  const bikes = rider?.bikes ?? [];
  return { rider, bike: bikes.find(({ id }) => id === place?.bike) ?? bikes.find(({ id }) => id === rider?.bike) ?? bikes[0] };
}

/**
 * That place, where the book has it.
 * @param {Book} book
 * @param {Place} [place]
 * @returns {Place | undefined}
 */
export function placed(book, place) {
  const { rider, bike } = find(book, place);
  return rider && bike && { rider: rider.id, bike: bike.id };
}

/**
 * The record of one rider on one bike.
 * @param {Book} book
 * @param {Place} [place]
 * @returns {Pairs}
 */
export function join(book, place) {
  const { rider, bike } = find(book, place), units = book.units ? [["u", book.units]] : [];
  return new Map([...read(rider?.record ?? ""), ...read(bike?.record ?? ""), ...read(new URLSearchParams(units).toString())]);
}

/**
 * Adds a bike, of a new rider where none is given.
 * @param {Book} book
 * @param {Rider} [rider]
 * @returns {{ rider: Rider, bike: Bike }}
 */
export function add(book, rider) {
  const next = () => String(++book.count), bike = { id: next(), record: "", log: [], ticks: {} };
  const of = rider ?? { id: next(), record: "", bike: bike.id, bikes: [] };
  of.bikes.push(bike);
  if (!rider) book.riders.push(of);
  return { rider: of, bike };
}

/**
 * The rider and the bike at that place, which are added where they are missing.
 * @param {Book} book
 * @param {Place} [place]
 */
export function made(book, place) {
  const { rider, bike } = find(book, place);
  return rider && bike ? { rider, bike } : add(book, rider);
}

/**
 * Lays changed pairs over what the book has at that place; undefined takes a pair out.
 * Returns the place, and adds one for what needs one.
 * @param {Book} book
 * @param {Place | undefined} place
 * @param {Map<string, Pair | undefined>} changes
 */
export function lay(book, place, changes) {
  const units = changes.get("u");
  if (changes.has("u")) book.units = units?.[1];
  const own = [...changes].filter(([name]) => kinds.includes(home(name)));
  if (!own.length) return placed(book, place);
  const { rider, bike } = made(book, place);
  /** @type {Record<string, Pairs>} */
  const parts = { rider: read(rider.record), bike: read(bike.record) };
  for (const [name, pair] of own) {
    if (pair) parts[home(name)].set(name, pair);
    else parts[home(name)].delete(name);
  }
  rider.record = write(parts.rider);
  bike.record = write(parts.bike);
  return { rider: rider.id, bike: bike.id };
}

/**
 * A book of one rider on one bike.
 * @param {Pairs} pairs
 */
export function bookOf(pairs) {
  const book = empty();
  lay(book, undefined, pairs);
  return book;
}

/**
 * Copies a bike into a place.
 * @param {Bike} bike
 * @param {Bike} into
 */
const copy = ({ record, log = [], ticks = {}, drafts }, into) => Object.assign(into, structuredClone({ record, log, ticks, drafts }));

/**
 * Adds everybody of another book. A rider who is here already gets the bikes.
 * @param {Book} book
 * @param {Place | undefined} _place
 * @param {Book} them
 * @returns {Place | undefined} where the first of them stands now
 */
export function addAll(book, _place, them) {
  /** @type {Place | undefined} */
  let first;
  for (const their of them.riders) {
    const theirs = read(their.record), name = theirs.get("name")?.[1];
    let rider = book.riders.find(({ record }) => name && same(read(record), theirs));
    for (const bike of their.bikes) {
      const added = add(book, rider);
      if (!rider) added.rider.record = their.record;
      copy(bike, added.bike);
      ({ rider } = added);
      first ??= { rider: rider.id, bike: added.bike.id };
    }
  }
  return first;
}

/**
 * Puts another book in the place of this one; one rider on one bike just takes the
 * place of those at that place.
 * @param {Book} book
 * @param {Place | undefined} place
 * @param {Book} them
 */
export function replaceBy(book, place, them) {
  const [their] = them.riders;
  if (them.riders.length !== 1 || their.bikes.length !== 1) {
    book.riders = [];
    return addAll(book, undefined, them);
  }
  const { rider, bike } = made(book, place);
  rider.record = their.record;
  copy(their.bikes[0], bike);
  return { rider: rider.id, bike: bike.id };
}

/**
 * Whether the record has a number, a choice or a name and not just how it is shown.
 * @param {Pairs} pairs
 */
export const filled = (pairs) => [...pairs.keys()].some((name) => kinds.includes(home(name)));

/**
 * Whether everything that those pairs say stands in the record already, so that
 * they cannot be somebody else's.
 * @param {Pairs} own
 * @param {Pairs} given
 */
export const same = (own, given) => [...given].every(([name, pair]) => !kinds.includes(home(name)) || String(own.get(name)) === String(pair));

/**
 * The keys of the settings that a fitter chose.
 * @param {Pairs} pairs
 */
export const advised = (pairs) => [...pairs].flatMap(([name, [, value]]) => (name.startsWith("from ") && value.endsWith(".fitting") ? [name.slice(5)] : []));

/**
 * Where a book has the rider and the bike of those pairs: a rider of whom they say nothing
 * that the book does not say, and at least one number; their only bike, or the one of that
 * name.
 * @param {Book} book
 * @param {Pairs} given
 * @returns {Place | undefined}
 */
export function placeOf(book, given) {
  const body = new Map([...given].filter(([name]) => home(name) === "rider")), name = given.get("bike")?.[1];
  if (![...body.keys()].some((key) => key !== "name")) return undefined;
  for (const { id, record, bikes } of book.riders) {
    if (!same(read(record), body)) continue;
    const bike = bikes.length === 1 ? bikes[0] : bikes.find((one) => name && read(one.record).get("bike")?.[1] === name);
    if (bike) return { rider: id, bike: bike.id };
  }
  return undefined;
}

/**
 * What a fitter's settings change on a record: each becomes the next value, beside what the
 * bike has by now. No other number is taken.
 * @param {Pairs} own
 * @param {Pairs} given
 * @returns {Map<string, Pair | undefined>}
 */
export function planned(own, given) {
  /** @type {Map<string, Pair | undefined>} */
  const changes = new Map();
  for (const key of advised(given)) {
    const value = given.get(key)?.[1], was = present(own, key);
    if (!value || value === was) continue;
    for (const name of [`estimated ${key}`, `${key}.on`, `${key}.done`, `${key}.was`]) changes.set(name, undefined);
    changes.set(key, [key, value]);
    changes.set(`from ${key}`, ["from", `${key}.fitting`]);
    if (was) changes.set(`${key}.was`, [`${key}.was`, was]);
  }
  return changes;
}

/**
 * What the bike has by now of a key: the value before a change that is not yet made.
 * @param {Pairs} pairs
 * @param {string} key
 */
export function present(pairs, key) {
  const value = pairs.get(key)?.[1], was = pairs.get(`${key}.was`)?.[1];
  if (pairs.has(`${key}.done`)) return value;
  return was ?? (pairs.has(`from ${key}`) ? undefined : value);
}

/**
 * What was made on a bike of these keys between two states of its record, for the log.
 * @param {Pairs} before
 * @param {Pairs} after
 * @param {string[]} keys
 * @param {string} on the day, unless the record has its own
 * @returns {Change[]}
 */
export function logged(before, after, keys, on) {
  return keys.flatMap((key) => {
    const was = present(before, key), value = present(after, key), day = after.get(`${key}.done`)?.[1] ?? "";
    return value && value !== was ? [{ on: /^\d/.test(day) ? day : on, key, value, ...was ? { was } : {} }] : [];
  });
}
