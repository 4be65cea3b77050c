import assert from "node:assert/strict";
import test from "node:test";
import { visit } from "../../testdata/judges/dom.js";

visit('<form><p class="a">A</p><p class="a">B</p><input name="x" value="1"><select name="x"></select></form>');
const { all, hit, make, named, one } = await import("./dom.js");

test("one finds the first of its class, or names what the page lacks", () => {
  assert.equal(one(document, ".a").textContent, "A");
  assert.equal(one(document, "input", HTMLInputElement).value, "1");
  assert.throws(() => one(document, ".b"), /The page has no \.b/);
  assert.throws(() => one(document, ".a", HTMLInputElement), /The page has no \.a/, "it is another element");
});

test("all finds those of its class", () => {
  assert.deepEqual(all(document, ".a").map((found) => found.textContent), ["A", "B"]);
  assert.deepEqual(all(document, "[name]", HTMLInputElement).map(({ value }) => value), ["1"]);
});

test("named finds the fields of a form", () => {
  const form = one(document, "form", HTMLFormElement);
  assert.equal(named(form, "x").length, 2);
  assert.deepEqual(named(form, "y"), []);
});

test("make sets properties and puts things inside", () => {
  assert.equal(make("p", { id: "p", className: "c" }, "a ", make("b", {}, "b")).outerHTML, '<p id="p" class="c">a <b>b</b></p>');
});

test("hit finds the element around what was clicked", () => {
  /** @type {(string | undefined)[]} */
  const found = [];
  document.addEventListener("click", (event) => found.push(hit(event, "form")?.tagName, hit(event, ".none")?.tagName));
  one(document, ".a").click();
  assert.deepEqual(found, ["FORM", undefined]);
});
