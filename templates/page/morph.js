const text = 3; // the nodeType of plain text

// Makes one piece of a page into another by changing what differs: a number in a
// sentence, a line of a drawing. What stays need not be laid out again, keeps the
// focus, and a button that is on its way down is not lost.
export function morph(was, now) {
  if (was.isEqualNode(now)) return;
  if (was.nodeType === text && now.nodeType === text) {
    was.data = now.data;
    return;
  }
  // Other attributes make another thing: it comes whole.
  if (was.nodeName !== now.nodeName || String(was.getAttributeNames()) !== String(now.getAttributeNames())) {
    was.replaceWith(now);
    return;
  }
  for (const name of now.getAttributeNames()) {
    const value = now.getAttribute(name);
    if (was.getAttribute(name) !== value) was.setAttribute(name, value);
  }
  const before = [...was.childNodes], after = [...now.childNodes];
  before.slice(after.length).forEach((node) => node.remove());
  after.forEach((node, i) => (before[i] ? morph(before[i], node) : was.append(node)));
}
