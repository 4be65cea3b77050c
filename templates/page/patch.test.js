import assert from "node:assert/strict";
import test from "node:test";
import { visit } from "../../testdata/judges/dom.js";

visit("");
const { patch, written } = await import("./patch.js");

/** @param {string} html */
function built(html) {
  document.body.innerHTML = html;
  return /** @type {Element} */ (document.body.firstElementChild);
}

test("values and texts that differ are set in the nodes that are there", () => {
  const was = written('<dl class="a"><dt>Height</dt><dd data-value="735">735 mm</dd></dl>');
  const now = written('<dl class="b"><dt>Height</dt><dd data-value="740">740 mm</dd></dl>');
  const root = built(was.html), value = root.querySelector("dd"), name = root.querySelector("dt");
  assert.equal(patch(root, was, now), true);
  assert.equal(root.outerHTML, now.html);
  assert.equal(root.querySelector("dd"), value);
  assert.equal(root.querySelector("dt"), name);
  const third = written(now.html.replaceAll("740", "735"));
  assert.equal(patch(root, now, third), true, "and again, with the nodes as they were found");
  assert.equal(root.outerHTML, third.html);
});

test("other tags, other attributes and escaped letters must come whole", () => {
  const was = written("<p>one <b>two</b></p>");
  for (const html of ["<p>one <i>two</i></p>", "<p>one <b>two</b><b>three</b></p>", '<p>one <b class="x">two</b></p>',
    "<p>one <b></b></p>", "<p>one <b>two &amp; three</b></p>"]) {
    const root = built(was.html);
    assert.equal(patch(root, was, written(html)), false, html);
    assert.equal(root.outerHTML, was.html, "nothing is changed by half");
  }
});

test("a page that somebody else changed is not patched", () => {
  const was = written("<p>one <b>two</b></p>"), now = written("<p>one <b>three</b></p>");
  assert.equal(patch(built("<p>one <u>two</u></p>"), was, now), false);
  const root = built(was.html);
  assert.equal(patch(root, was, now), true);
  root.remove();
  assert.equal(patch(root, now, was), false, "it is not in the page any more");
});
