import assert from "node:assert/strict";
import test from "node:test";
import { visit } from "../../testdata/judges/dom.js";

const window = visit(`<b class="name"><a class="home">Guide</a></b><div class="stand"><svg xmlns="http://www.w3.org/2000/svg" class="figure narrow choice" viewBox="0 0 300 200">
<title>A knee</title><desc>It bends 37 degrees.</desc><defs><clipPath id="f-c1"><circle cx="9" cy="8" r="7"></circle></clipPath></defs>
<path class="ink thin" d="M0 0L9 9"></path><a href="x.html"><circle r="3"></circle></a><g clip-path="url(#f-c1)"><circle class="hot" cx="1" cy="2" r="3"></circle></g>
<text class="hot end" transform="translate(30 40)rotate(90)" x="0" y="0">37°</text></svg></div>`);
Object.assign(globalThis, { CSSStyleRule: class {} });
const { lines, paint, sheet } = await import("./save.js");
const svg = /** @type {SVGSVGElement} */ (document.querySelector("svg"));
const of = sheet(svg, { name: "Guide", address: "https://guide.example/saddle/height.html", whose: "Example" }, (text) => 7 * text.length);

test("a text is broken where it is too long, and a word never", () => {
  assert.deepEqual(lines("a bb ccc dddddddd e", 5, (text) => text.length), ["a bb", "ccc", "dddddddd", "e"]);
});

test("a sheet has the title above, the numbers below, and where it comes from", () => {
  const said = [...of.querySelectorAll("text")].map(({ textContent }) => textContent);
  assert.deepEqual(said, ["Example: A knee", "37°", "It bends 37 degrees.", "Guide", "https://guide.example/saddle/height.html"]);
  assert.equal(of.querySelectorAll("title").length, 1);
  assert.equal(of.querySelectorAll("a, [class], [style]").length, 0);
  const [, , width, height] = (of.getAttribute("viewBox") ?? "").split(" ").map(Number);
  assert.equal(width, 332);
  assert.ok(height > 200 + 4 * 18 && height < 340, `it is ${height} high`);
  assert.equal(svg.getAttribute("class"), "figure narrow choice", "the page's own picture is left alone");
});

test("a canvas is given every piece where it stands", () => {
  /** @type {unknown[][]} */
  const done = [];
  Object.assign(globalThis, {
    Path2D: class {
      /** @param {string} d */
      constructor(d) {
        this.d = d;
      }

      /** @param {...number} is */
      arc(...is) {
        this.d = `circle ${is.slice(0, 3)}`;
      }

      rect() {
        this.d = "rect";
      }
    },
  });
  const to = new Proxy({}, {
    get: (_, name) => (/** @type {any[]} */ ...is) => done.push([name, ...is.map((one) => one?.d ?? one)]),
    set: () => true,
  });
  for (const shape of of.querySelectorAll("path, circle")) {
    shape.setAttribute("stroke", "#123");
    shape.setAttribute("fill", "none");
  }
  paint(/** @type {CanvasRenderingContext2D} */ (to), of, of, 2);
  const acts = done.filter(([name]) => !["save", "restore", "setLineDash"].includes(String(name)));
  const has = (/** @type {unknown[]} */ ...act) => assert.ok(acts.some((one) => JSON.stringify(one) === JSON.stringify(act)), `no ${JSON.stringify(act)} in ${JSON.stringify(acts)}`);
  has("fill", "rect");
  has("stroke", "M0 0L9 9");
  has("clip", "circle 9,8,7");
  has("stroke", "circle 1,2,3");
  has("translate", 30, 40);
  has("rotate", Math.PI / 2);
  has("fillText", "37°", 0, 0);
  assert.equal(done.filter(([name]) => name === "save").length, done.filter(([name]) => name === "restore").length);
  assert.ok(window);
});
