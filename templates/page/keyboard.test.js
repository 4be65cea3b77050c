import assert from "node:assert/strict";
import test from "node:test";
import { visit } from "../../testdata/judges/dom.js";

visit("<p></p>");
const seen = { height: 844, offsetTop: 0, scale: 1, heard: /** @type {Record<string, () => void>} */ ({}),
  /** @param {string} name @param {() => void} call */
  addEventListener(name, call) {
    this.heard[name] = call;
  } };
Object.assign(globalThis, { visualViewport: seen, innerHeight: 844 });
const { follow } = await import("./keyboard.js");
const lifted = () => document.documentElement.style.getPropertyValue("--keyboard");

test("a keyboard over the page lifts what stands at the bottom by its height", () => {
  follow();
  seen.height = 500;
  seen.heard.resize();
  assert.equal(lifted(), "344px");
  seen.offsetTop = 100; // the browser has moved what is seen
  seen.heard.scroll();
  assert.equal(lifted(), "244px");
});

test("a browser's own bar, or a page that is zoomed into, lifts nothing", () => {
  Object.assign(seen, { height: 788, offsetTop: 0 });
  seen.heard.resize();
  assert.equal(lifted(), "0px");
  Object.assign(seen, { height: 422, scale: 2 });
  seen.heard.resize();
  assert.equal(lifted(), "0px");
});
