// The knee on a photo, from three points on it.
/** @import { Bend, Point } from "./types.d.ts" */

/**
 * Returns the degrees between the thigh's line carried on and the shank, so that a
 * straight leg is 0, and its ± as the three points' errors bring it about, to first
 * order. It is undefined where two neighbouring points lie on one spot.
 * @param {Point} hip
 * @param {Point} knee
 * @param {Point} ankle
 * @returns {Bend | undefined}
 */
export function bend(hip, knee, ankle) {
  const thigh = [knee.x - hip.x, knee.y - hip.y], shank = [ankle.x - knee.x, ankle.y - knee.y];
  const upper = Math.hypot(...thigh), lower = Math.hypot(...shank);
  if (!upper || !lower) return undefined;
  const cross = thigh[0] * shank[1] - thigh[1] * shank[0], dot = thigh[0] * shank[0] + thigh[1] * shank[1];
  // An error across the thigh turns it by error/length; the knee's turns both.
  const both = Math.hypot(ankle.x - hip.x, ankle.y - hip.y) / (upper * lower);
  const degrees = 180 / Math.PI;
  return {
    angle: degrees * Math.atan2(Math.abs(cross), dot),
    margin: degrees * Math.hypot(hip.by / upper, ankle.by / lower, knee.by * both),
    turn: Math.sign(cross),
  };
}
