import assert from "node:assert/strict";
import test from "node:test";
import { Engine, visit } from "../../testdata/judges/dom.js";

visit('<details class="how"><div class="sketch" id="saddle-height-1-inseam-f" data-figure="measure-inseam"><p><a href="#measure-inseam">See the picture</a></p></div></details>');
const engine = await import("./engine.js");
const { one } = await import("./dom.js");
const { sketch } = await import("./sketch.js");
const place = one(document, ".sketch");

test("the picture takes the link's place, with ids of its own", () => {
  engine.begin();
  const worker = Engine.ready();
  sketch(place);
  assert.deepEqual([worker.question.figure, worker.question.place], ["measure-inseam", "saddle-height-1-inseam-f-p"]);
  worker.answer({ html: '<figure class="plate" id="saddle-height-1-inseam-f-p"></figure>' });
  assert.equal(place.innerHTML, '<figure class="plate" id="saddle-height-1-inseam-f-p"></figure>');
});

test("a picture that the engine has not leaves the link", () => {
  place.innerHTML = "<p>link</p>";
  sketch(place);
  Engine.ready().answer({ html: "" });
  assert.equal(place.innerHTML, "<p>link</p>");
});
