// The reader's numbers: pairs of quantity keys in base units, of one rider on one
// bike. They live in the address behind #; beside them this tab, or the device if the
// reader says so, has the book of all riders and bikes. They go nowhere. What is ticked,
// typed and logged beside them is here too; owner.js says whose they are.
import * as books from "./book.js";
import * as device from "./device.js";
import { become, commit, here, remark, state, today, told } from "./state.js";
import { t } from "./text.js";
/** @import { Change, Pair, Pairs, Place } from "./types.d.ts" */

export { listen, text, today } from "./state.js";

/**
 * The value of a pair, undefined where there is none.
 * @param {string} name
 */
export const at = (name) => state.pairs.get(name)?.[1];
/** The unit that the reader takes lengths in: mm, cm or in. */
export const units = () => ["mm", "cm", "in"].find((u) => u === at("u")) ?? document.documentElement.dataset.units ?? "mm";
/**
 * Changes pairs; "" takes one out. What is said of the old value goes.
 * @param {Pair[]} changes
 * @param {unknown} [source] who made them, and need not be told
 * @param {Pair[]} [marks]
 */
export function put(changes, source, marks = []) {
  const next = new Map(state.pairs);
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
  const was = `${key}.was`, had = at(`${key}.done`) || !at(was) && !state.pairs.has(`from ${key}`) ? at(key) : at(was);
  put([[key, value]], undefined, had && had !== value ? [[was, had], ...marks] : marks);
}

/**
 * Puts the value back that the bike had before a change.
 * @param {string} key
 */
export function back(key) {
  const next = new Map(state.pairs), was = at(`${key}.was`);
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
  const entries = state.alone ? [] : books.logged(state.pairs, next, keys, today());
  become(next, source);
  if (entries.length) note(...entries);
}

// Ticks are the reader's own: somebody else's numbers come without any, and leave none.
/** @returns {Record<string, string>} */
const ticks = () => (state.alone ? state.passing : books.find(state.book, state.place).bike?.ticks ?? {});
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
  if (state.alone) set(state.passing);
  else commit(() => set(here().bike.ticks));
  told(`tick ${name}`);
}

const shown = () => books.placed(state.book, state.place);

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
  if (state.alone) return "";
  const list = device.drafts();
  return list[draftName(name, shown())] ?? list[draftName(name)] ?? books.find(state.book, state.place).bike?.drafts?.[name] ?? "";
}
/**
 * Keeps what was typed into a field of that name; "" takes it out.
 * @param {string} name
 * @param {string} typed
 */
export function draft(name, typed) {
  if (state.alone || typed === drafted(name)) return;
  const list = device.drafts();
  delete list[draftName(name)];
  list[draftName(name, shown())] = typed;
  device.keepDrafts(list);
}

/** What was changed on this bike, and noted. @returns {Change[]} */
export const log = () => (state.alone ? [] : books.find(state.book, state.place).bike?.log ?? []);
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
