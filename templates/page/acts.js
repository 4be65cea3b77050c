// The list of acts under "Set it": its ticks stay with the bike they were made on, and
// a button walks through it one act a screen.
import { all, fieldOf, hit } from "./dom.js";
import * as record from "./record.js";

const boxes = all(document, ".acts > li [data-tick]", HTMLInputElement);

const show = () => {
  for (const box of boxes) box.checked = record.ticked(box.dataset.tick ?? "");
};
for (const line of all(document, ".garage")) line.hidden = false;
document.addEventListener("change", (event) => {
  const { checked, dataset: { tick } } = fieldOf(event);
  if (tick) record.tick(tick, checked);
});
document.addEventListener("click", (event) => {
  const button = event.target instanceof Element && hit(event, ".garage button");
  if (button) import("./garage.js").then(({ walk }) => walk(button), () => {});
});
record.listen(show);
show();
