// What stands between two "<": a tag, and the text behind it.
export const tokens = (html) => String(html).split("<");

// A token without the values of its attributes and the letters of its text.
const shape = (token) => token.replace(/="[^"]*"|>[^]+/g, (all) => all[0] + "_");

// Turns an element written as was into now by setting only the values and texts that
// differ. Nothing is parsed, what stays need not be laid out again, and a button that
// is on its way down is not lost. False: the page has other tags than was or now, so
// now must come whole.
export function patch(element, was, now) {
  const differs = (token, i) => token !== was[i];
  const other = (token, i) => differs(token, i) && (token.includes("&") || shape(token) !== shape(was[i]));
  if (was.length !== now.length || now.some(other)) return false;
  const walk = document.createTreeWalker(element, 5); // elements and text
  for (let i = 1, last = now.findLastIndex(differs); i <= last; i++) {
    const token = now[i], end = token.lastIndexOf(">") + 1, text = token.slice(end), opens = token[0] !== "/";
    if (opens && !token.startsWith((i > 1 ? walk.nextNode() : element)?.localName)) return false;
    const tag = walk.currentNode;
    if (text && walk.nextNode()?.nodeType !== element.TEXT_NODE) return false;
    if (!differs(token, i)) continue;
    if (opens) for (const [, name, value] of token.slice(0, end).matchAll(/([\w-]+)="([^"]*)"/g)) if (tag.getAttribute(name) !== value) tag.setAttribute(name, value);
    if (text) walk.currentNode.data = text;
  }
  return true;
}
