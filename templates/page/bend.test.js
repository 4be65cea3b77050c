import assert from "node:assert/strict";
import test from "node:test";
import { bend } from "./bend.js";

/**
 * @param {number} x
 * @param {number} y
 * @param {number} [by]
 */
const at = (x, y, by = 0) => ({ x, y, by });

test("a straight leg is 0, a square one 90, a folded one 180", () => {
  assert.equal(bend(at(0, 0), at(0, 100), at(0, 250))?.angle, 0);
  assert.equal(bend(at(0, 0), at(0, 100), at(70, 100))?.angle, 90);
  assert.equal(bend(at(0, 0), at(0, 100), at(0, 30))?.angle, 180);
});

test("turn tells the side on which the shank lies", () => {
  assert.equal(bend(at(0, 0), at(0, 100), at(-70, 100))?.turn, 1);
  assert.equal(bend(at(0, 0), at(0, 100), at(70, 100))?.turn, -1);
});

test("two points on one spot have no bend", () => {
  assert.equal(bend(at(5, 5), at(5, 5), at(9, 9)), undefined);
  assert.equal(bend(at(1, 1), at(5, 5), at(5, 5)), undefined);
});

// The largest change of the angle for a small step of one point in any direction, tried
// out all around: what the margin should be for an error of that size, to first order.
test("the margin is what a misplaced point does to the angle", () => {
  const points = [at(310, 120), at(420, 400), at(360, 690)], by = [2, 3, 5], step = 1e-4;
  const angle = () => bend(points[0], points[1], points[2])?.angle ?? NaN;
  const still = angle();
  const worst = points.map((point, i) => {
    const { x, y } = point;
    const changes = Array.from({ length: 3600 }, (_, k) => {
      Object.assign(point, { x: x + step * Math.cos(k * Math.PI / 1800), y: y + step * Math.sin(k * Math.PI / 1800) });
      return Math.abs(angle() - still);
    });
    Object.assign(point, { x, y });
    return by[i] * Math.max(...changes) / step;
  });
  points.forEach((point, i) => Object.assign(point, { by: by[i] }));
  const { margin = NaN } = bend(points[0], points[1], points[2]) ?? {};
  assert.ok(Math.abs(margin - Math.hypot(...worst)) < 1e-4, `${margin}, and by trying ${Math.hypot(...worst)}`);
});
