// The example's numbers to move about, and back to the reader's own.
import * as engine from "./engine.js";
import { say } from "./say.js";

export function play(bench, yes) {
  bench.playing = yes;
  bench.played = "";
  bench.own = false;
  bench.whole = bench.fresh = true;
  bench.touched.clear();
  bench.plays.forEach((line, i) => (line.hidden = !i === yes));
  bench.plays[+yes].querySelector("button").focus({ preventScroll: true });
  if (yes) say(bench.plays[1].firstChild.data);
  engine.ask(bench);
}
