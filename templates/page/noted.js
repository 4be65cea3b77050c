// Finds the replies that a fitter's notes are about, as the command does.
import { t } from "./text.js";
/** @import { Listed, Noted, Wrote } from "./types.d.ts" */

/** A name as it is compared: letters' size and blanks do not count. @param {string} name */
const plain = (name) => name.split(/\s+/u).filter(Boolean).join(" ").toLowerCase();

/**
 * Where the notes of one client belong: by name, by name and bike, or by file. None where
 * nobody of that name is here, or several are who must not share them; told is given why.
 * @param {Noted} noted
 * @param {Listed[]} list
 * @param {string[]} [told]
 */
export function slotsOf({ client, place = "", next, tried }, list, told) {
  const is = plain(client);
  const found = list.filter(({ name, bike, from }) => client === from || is === plain(name) || bike && is === plain(`${name}, ${bike}`));
  const slots = [...new Set(found.map(({ slot }) => slot))], other = found.find(({ rider }) => rider !== found[0].rider);
  if (other) told?.push(t("{0}: two people are called “{1}”: {2} and {3}. Name the file instead.", place, client, found[0].from, other.from));
  else if (slots.length > 1 && next.length) told?.push(t("{0}: “{1}” has several bikes here. Write for which the settings are, as in “{2}”.", place, client, found[0].client));
  return other || next.length && (tried || slots.length > 1) ? [] : slots;
}

/**
 * Puts note and message of a file below what was written on the page.
 * @param {Wrote} mark
 * @param {Noted} noted
 */
export function join(mark, noted) {
  for (const what of /** @type {const} */ (["note", "message"])) {
    if (!mark[what].includes(noted[what])) mark[what] = [mark[what], noted[what]].filter(Boolean).join("\n");
  }
}
