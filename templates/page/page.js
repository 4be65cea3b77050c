// Starts what a page has: the record always, the engine only where there is a
// calculator: at once, or where data is to be saved when somebody reaches for one.
import { Bench } from "./bench.js";
import { all, hit, one } from "./dom.js";
import * as engine from "./engine.js";
import { follow } from "./keyboard.js";
import * as owner from "./owner.js";
import * as record from "./record.js";
import { t } from "./text.js";
import { fill } from "./tools.js";

owner.open();
fill(one(document, "[data-tools]"));
for (const line of all(document, ".offline")) line.textContent = t("Worked example. Your own numbers can be typed in a moment.");
if (document.querySelector("main[data-step]:not(:has(.sheet-desk))")) import("./where.js").then(({ arrive }) => arrive(), () => {});
const front = /** @type {HTMLElement | null} */ (document.querySelector("[data-welcome]"));
if (front) {
  import("./welcome.js").then(({ welcome }) => {
    welcome(front);
    record.listen(() => welcome(front));
  }, () => {});
}
const news = () => (owner.arrived() ?? owner.undoable()) && import("./news.js").then(({ show }) => show(), () => {});
record.listen(news);
news();

if (document.querySelector(".acts")) import("./acts.js");

if (document.querySelector(".language")) import("./language.js").then(({ languages }) => languages(), () => {});

const benches = all(document, ".bench").map((root) => new Bench(root));
if (benches.length) {
  follow();
  record.listen((keys, source, replaced) => {
    for (const bench of benches) if (bench !== source) bench.renew(keys, replaced);
  });
  engine.on.down = (loaded) => benches.forEach((bench) => bench.down(loaded));
  if (!navigator.connection?.saveData) engine.begin();
  for (const { root } of benches) for (const reach of ["pointerenter", "focusin"]) root.addEventListener(reach, engine.begin, { once: true });
}

if (document.body.matches(".kind-elsewhere, .kind-hosting")) import("./code.js").then(({ code }) => code(), () => {});

// The bikes of whoever publishes the guide are offered by name.
if (document.documentElement.dataset.bikes) import("./bikes.js").then(({ bikes }) => bikes(benches), () => {});

// A copy for when there is no signal, once nothing else is waited for.
const { worker, near } = document.documentElement.dataset;
if (worker && "serviceWorker" in navigator && !navigator.connection?.saveData) {
  const keep = () => import("./offline.js").then(({ offline }) => offline(worker)).catch(() => {});
  if (near) engine.answering(keep);
  else addEventListener("load", () => setTimeout(keep, 1000), { once: true });
}

// Below each picture is a menu to save it, which works where this script does. Its module
// comes when it is opened, so that a button finds it there.
document.documentElement.classList.add("scripted");
const saving = () => import("./save.js");
document.addEventListener("toggle", ({ target }) => {
  if (target instanceof Element && target.matches(".saves[open]")) saving().catch(() => {});
}, true);
document.addEventListener("click", (event) => {
  const button = event.target instanceof Element && hit(event, "[data-save]");
  if (button) saving().then(({ save }) => save(button)).catch(() => {});
});

// A field's fold has its picture drawn when it is opened; the event does not bubble.
document.addEventListener("toggle", ({ target }) => {
  const place = target instanceof HTMLDetailsElement && target.open && target.matches(".how") && target.querySelector(".sketch:not(:has(svg))");
  if (place instanceof HTMLElement) import("./sketch.js").then(({ sketch }) => sketch(place), () => {});
}, true);

// What a number does is seen best while it moves.
if (document.querySelector(".moves")) import("./move.js").then(({ moves }) => moves(), () => {});

// Where a length is explained it can be written down.
if (document.querySelector("[data-reading]")) import("./readings.js").then(({ readings }) => readings(), () => {});
if (document.querySelector("[data-pasted]")) import("./pasted.js").then(({ pasted }) => pasted(), () => {});

// What a chapter has to do in the garage fits on two pages.
const acts = [...document.querySelectorAll(".prose:has(h2.rest) .acts")].at(-1);
if (acts instanceof HTMLElement) import("./paper.js").then(({ offer }) => offer(acts), () => {});

// A word that the glossary has is explained in place; without script its link leads there.
document.addEventListener("click", (event) => {
  const link = event.target instanceof Element && !event.ctrlKey && !event.metaKey && !event.shiftKey ? event.target.closest("dfn.word a") : null;
  if (!(link instanceof HTMLAnchorElement) || !("showPopover" in link)) return;
  event.preventDefault();
  import("./word.js").then(({ explain }) => explain(link)).catch(() => {
    location.href = link.href;
  });
});

// Figures are drawn with the reader's numbers once there are any, and as they were
// when those are gone, after nobody has typed for a moment.
let numbers = false;
/** @type {ReturnType<typeof setTimeout> | undefined} */
let later;
const size = () => {
  numbers ||= record.text() !== "";
  clearTimeout(later);
  if (numbers) later = setTimeout(() => import("./plates.js").then(({ redraw }) => redraw(), () => {}), 400);
};
if (document.querySelector(".plate:not(.moves)")) {
  record.listen(size);
  size();
}
