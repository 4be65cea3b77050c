// Changes a part of an answer where it differs from the one before it.
/** @import { Written } from "./types.d.ts" */

/** @typedef {[place: number, name: string, value: string]} Change what to set: an attribute by its name, or the text */

/**
 * A part of an answer as it was written; a token is what stands between two "<", a
 * tag and the text behind it.
 * @param {string} html
 * @returns {Written}
 */
export const written = (html) => ({ html, tokens: html.split("<") });

/**
 * Notes what tells two tokens apart: values of attributes, and the text. False: more.
 * @param {string} was
 * @param {string} now
 * @param {number} place
 * @param {Change[]} changes
 */
function compare(was, now, place, changes) {
  const end = now.lastIndexOf(">") + 1, ended = was.lastIndexOf(">") + 1, tag = now.slice(0, end), old = was.slice(0, ended);
  if (now.includes("&") || (end < now.length) !== (ended < was.length)) return false;
  if (tag !== old) {
    const pieces = tag.split('"'), before = old.split('"'); // a name, its value, another name
    if (pieces.length !== before.length) return false;
    for (let i = 0; i < pieces.length; i++) {
      if (pieces[i] === before[i]) continue;
      if (i % 2 === 0) return false;
      changes.push([2 * place, pieces[i - 1].slice(pieces[i - 1].lastIndexOf(" ") + 1, -1), pieces[i]]);
    }
  }
  if (now.slice(end) !== was.slice(ended)) changes.push([2 * place + 1, "", now.slice(end)]);
  return true;
}

/**
 * Returns the tag and the text of each token, nothing if the element is not built
 * like that.
 * @param {Element} element
 * @param {string[]} tokens
 * @returns {Written["nodes"]}
 */
function nodesOf(element, tokens) {
  const walk = document.createTreeWalker(element, 5), nodes = []; // elements and text
  for (let i = 1; i < tokens.length; i++) {
    const token = tokens[i];
    if (token[0] !== "/") {
      const tag = i > 1 ? walk.nextNode() : element;
      if (!(tag instanceof Element) || !token.startsWith(tag.localName)) return undefined;
      nodes[2 * i] = tag;
    }
    if (token.at(-1) !== ">") {
      const text = walk.nextNode();
      if (!(text instanceof Text)) return undefined;
      nodes[2 * i + 1] = text;
    }
  }
  return nodes;
}

/**
 * Turns an element written as was into now by setting only the values and texts that
 * differ. Nothing is parsed, what stays need not be laid out again, and a button that
 * is on its way down is not lost. False: the page has other tags than was or now, so
 * now must come whole.
 * @param {Element} element
 * @param {Written} was
 * @param {Written} now
 */
export function patch(element, was, now) {
  /** @type {Change[]} */
  const changes = [];
  if (was.tokens.length !== now.tokens.length) return false;
  if (!now.tokens.every((token, i) => token === was.tokens[i] || compare(was.tokens[i], token, i, changes))) return false;
  const nodes = was.nodes ?? nodesOf(element, was.tokens);
  if (!nodes || changes.some(([place]) => !nodes[place]?.isConnected)) return false;
  now.nodes = nodes;
  for (const [place, name, value] of changes) {
    const node = nodes[place];
    if (node instanceof Element) node.setAttribute(name, value);
    else if (node) node.data = value;
  }
  return true;
}
