// Starts what a page has: the record always, the engine only where there is a
// calculator, at an idle moment or when somebody reaches for one.
import { Bench } from "./bench.js";
import * as engine from "./engine.js";
import * as record from "./record.js";
import { fill } from "./tools.js";

record.open();
fill(document.querySelector("[data-tools]"));

const benches = [...document.querySelectorAll(".bench")].map((root) => new Bench(root));
if (benches.length) {
  record.listen((keys, source, all) => {
    for (const bench of benches) if (bench !== source) bench.renew(keys, all);
  });
  engine.on.down = () => benches.forEach((bench) => bench.down());
  const idle = globalThis.requestIdleCallback ?? setTimeout;
  const begin = () => idle(engine.begin);
  if (document.readyState === "complete") begin();
  else addEventListener("load", begin, { once: true });
  for (const { root } of benches) root.addEventListener("pointerenter", engine.begin, { once: true });
}

// Figures are drawn at the reader's size once there is one, and back again, when
// nobody has typed for a moment.
let sized, later;
const size = () => {
  sized ||= /(^|&)(stature|inseam|sex)=/.test(record.text());
  clearTimeout(later);
  if (sized) later = setTimeout(() => import("./plates.js").then(({ redraw }) => redraw(), () => {}), 400);
};
if (document.querySelector(".plate")) {
  record.listen(size);
  size();
}
