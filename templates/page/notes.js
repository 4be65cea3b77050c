// A fitter's notes as a file that the command reads beside the replies (YAML 1.2).
import { dump, EVENT_ID, getScalarValue, parseEvents, YAMLException } from "./js-yaml.js";
import { t } from "./text.js";
/** @import { Noted, Notes } from "./types.d.ts" */

/**
 * A node of a file: a text, or lines of “key: value”, with the line on which it stands.
 * @typedef {{ line: number, text?: string, pairs?: [key: Node, value: Node][] }} Node
 */

/**
 * The nodes of a text.
 * @param {string} text
 * @returns {Node}
 */
function parse(text) {
  const events = parseEvents(text, {});
  const lineOf = (/** @type {number} */ at) => text.slice(0, Math.max(0, at)).split("\n").length;
  let next = 0;
  /** @returns {Node | undefined} */
  function node() {
    const event = events[next];
    next += 1;
    if (!event || event.type === EVENT_ID.POP) return undefined;
    if (event.type === EVENT_ID.SCALAR) return { line: lineOf(event.valueStart), text: getScalarValue(text, event) };
    const line = lineOf(event.start ?? 0);
    if (event.type === EVENT_ID.ALIAS) return { line };
    /** @type {Node[]} */
    const inside = [];
    for (let one = node(); one; one = node()) inside.push(one);
    if (event.type === EVENT_ID.DOCUMENT) return inside[0] ?? { line, text: "" };
    return event.type === EVENT_ID.SEQUENCE ? { line } : { line, pairs: inside.flatMap((key, i) => (i % 2 ? [] : [/** @type {[Node, Node]} */ ([key, inside[i + 1]])])) };
  }
  return node() ?? { line: 1, text: "" };
}

/**
 * Reads a file of notes. What is wrong in it is said with its line and costs no other note.
 * @param {string} name
 * @param {string} text
 * @returns {Notes}
 */
export function readNotes(name, text) {
  /** @type {Notes} */
  const notes = { clients: [], problems: [] };
  const wrong = (/** @type {Node} */ { line }, /** @type {string} */ what) => notes.problems.push(`${name}:${line}: ${what}`);
  /** @type {(of: Node, allowed: string[] | undefined) => [key: string, value: Node, at: Node][]} */
  const each = (of, allowed) => {
    if (of.text === "") return [];
    if (!of.pairs) wrong(of, t("this has to be lines of “key: value”."));
    return (of.pairs ?? []).flatMap(([at, value]) => {
      const key = at.text ?? "";
      if (!allowed || allowed.includes(key)) return [/** @type {[string, Node, Node]} */ ([key, value, at])];
      wrong(at, t("the key “{0}” is not known here. The keys are {1}.", key, allowed.join(", ")));
      return [];
    });
  };
  const said = (/** @type {Node} */ of) => {
    if (of.text === undefined) wrong(of, t("this has to be one text; put it in quotes if it has a colon or a bracket in it."));
    return of.text?.trim() ?? "";
  };
  /** @type {(who: string, of: Node, place: string) => Noted} */
  const client = (who, of, place) => {
    const noted = { client: who, place, note: "", message: "", next: /** @type {Noted["next"]} */ ([]) };
    if (of.text) noted.note = of.text.trim(); // a note and nothing else
    for (const [what, is] of of.text ? [] : each(of, ["note", "message", "next"])) {
      if (what === "note" || what === "message") noted[what] = said(is);
      else noted.next = each(is, undefined).map(([key, typed, at]) => ({ key, typed: said(typed), place: `${name}:${at.line}` })).filter(({ typed }) => typed);
    }
    return noted;
  };
  let root;
  try {
    root = parse(text);
  } catch (error) {
    if (!(error instanceof YAMLException)) throw error;
    wrong({ line: (error.mark?.line ?? 0) + 1 }, t("this is not valid YAML: “{0}”. Mend the line or put the text in quotes.", error.reason));
    return notes;
  }
  for (const [key, value] of each(root, ["from", "guide", "clients"])) {
    if (key === "from") notes.from = said(value);
    else if (key === "guide") notes.guide = said(value);
    else notes.clients.push(...each(value, undefined).map(([who, of, at]) => client(who, of, `${name}:${at.line}`)));
  }
  return notes;
}

/**
 * Writes a file of notes.
 * @param {{ from: string, guide: string, clients: Noted[] }} notes
 */
export function writeNotes({ from, guide, clients }) {
  const list = clients.map(({ client, note, message, next }) => {
    const settings = Object.fromEntries(next.map(({ key, typed }) => [key, typed]));
    return [client, { ...note && { note }, ...message && { message }, ...next.length > 0 && { next: settings } }];
  });
  return dump({ ...from && { from }, guide, clients: Object.fromEntries(list) }, { lineWidth: -1 });
}
