import assert from "node:assert/strict";
import test from "node:test";
import { anchorOf } from "./word.js";

test("the anchor is found among the reader's numbers", () => {
  assert.equal(anchorOf("#inside-leg"), "inside-leg");
  assert.equal(anchorOf("#inseam=830&u=in&at=inside-leg"), "inside-leg");
  assert.equal(anchorOf("#inseam=830&inside-leg"), "inside-leg");
  assert.equal(anchorOf(""), "");
  assert.equal(anchorOf("#50%"), "50%", "a stray percent sign throws nothing");
  assert.equal(anchorOf("#inseam=830&at=50%"), "50%");
});
