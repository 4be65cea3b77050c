// The symptoms that are ticked are laid over one another by the engine, with what the
// sheet knows of the bike; their first change goes on the sheet with one tap.
import { ask, begin, fill } from "./desk.js";
import { all, fieldOf, hit, one } from "./dom.js";
import * as record from "./record.js";
import { say } from "./say.js";
import { t } from "./text.js";

const place = one(document, ".symptoms"), together = one(place, ".together");
const bar = one(place, ".ticked"), link = one(bar, "a");
const boxes = all(place, "[data-symptom]", HTMLInputElement);

/** @param {HTMLInputElement} box */
const name = ({ dataset }) => `symptom ${dataset.symptom}`;
let turn = 0, near = false;

const hide = () => {
  bar.hidden = near || !boxes.some(({ checked }) => checked);
};
// The way to the answer is of no use beside the answer.
new IntersectionObserver(([{ isIntersecting }]) => {
  near = isIntersecting;
  hide();
}).observe(together);

/** Shows what the ticked symptoms come to on the bike as it is now. */
async function show() {
  for (const box of boxes) box.checked = record.ticked(name(box));
  const felt = boxes.filter(({ checked }) => checked), mine = ++turn;
  hide();
  link.textContent = t("{0} ticked: what to try first", felt.length);
  if (!felt.length) {
    together.hidden = true;
    return;
  }
  const { html = "" } = await ask(place, "felt", { key: felt.map(({ dataset }) => dataset.symptom).join(" "), text: place.dataset.own });
  if (mine !== turn) return;
  fill(together, html);
  together.hidden = false;
}

place.addEventListener("change", (event) => {
  const box = boxes.find((known) => known === fieldOf(event));
  if (box) record.tick(name(box), box.checked);
});
together.addEventListener("click", (event) => {
  const button = hit(event, "[data-use]");
  if (!button) return;
  const { use = "", value = "" } = button.dataset;
  record.use(use, value, []);
  say(t("It stands on your sheet as Next. The bike’s own value is kept beside it."));
});
// A place on the drawing opens the first thing that is felt there, or the one that its
// spot is for.
place.addEventListener("click", (event) => {
  const spot = hit(event, ".spot");
  const aim = spot && document.getElementById((spot.getAttribute("href") ?? "").slice(1));
  const found = aim?.closest("details") ?? aim?.querySelector("details");
  if (found) found.open = true;
});
record.listen(show);
begin(place);
show();
