// The example's numbers to move about, and back to the reader's own.
import * as engine from "./engine.js";
import { one } from "./dom.js";
import { say } from "./say.js";

/** @import { Bench } from "./bench.js" */

/**
 * Lets a bench play with the example's numbers, or ends that.
 * @param {Bench} bench
 * @param {boolean} yes
 */
export function play(bench, yes) {
  bench.playing = yes;
  bench.played = "";
  bench.own = false;
  bench.whole = bench.fresh = true;
  bench.touched.clear();
  const [offer, end] = bench.plays;
  offer.hidden = yes;
  end.hidden = !yes;
  one(yes ? end : offer, "button").focus({ preventScroll: true });
  if (yes) say(end.firstChild?.textContent);
  engine.ask(bench);
}
