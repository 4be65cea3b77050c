// What stands in the header of every page: units, keeping, and whose numbers are on show.
import { one } from "./dom.js";
import * as owner from "./owner.js";
import * as record from "./record.js";
import { say } from "./say.js";
import { t } from "./text.js";
import { follow } from "./unit.js";

/**
 * Lets the tools of the header work, which show from then on.
 * @param {HTMLElement} place
 */
export function fill(place) {
  const units = one(place, "select", HTMLSelectElement), keeping = one(place, ".keeping"), whose = one(place, ".whose", HTMLAnchorElement);
  const kept = one(keeping, "input", HTMLInputElement);
  whose.onclick = () => {
    whose.href = `${place.dataset.setup}${record.text() ? `#${record.text()}` : ""}`;
  };
  const show = () => {
    const names = [record.at("bike"), record.at("name")].filter(Boolean);
    whose.hidden = !place.dataset.setup || !names.length;
    whose.textContent = names.join(", ");
    whose.href = place.dataset.setup ?? "";
    units.value = record.units();
    kept.checked = owner.kept();
    keeping.hidden = owner.apart();
  };
  units.onchange = () => follow(units.value);
  kept.onchange = () => {
    const wanted = kept.checked;
    kept.checked = owner.keep(wanted);
    if (wanted && !kept.checked) say(t("This browser keeps nothing for this page."));
    else say(kept.checked ? t("Your numbers stay in this browser until you forget them.") : t("Nothing is kept on this device. Your numbers stay in this tab until you close it."));
  };
  // On a phone the line has room only where there are several to be mistaken for one another.
  const count = () => whose.classList.toggle("several", owner.riders().flatMap(({ bikes }) => bikes).length > 1);
  record.listen((_keys, _source, replaced) => {
    show();
    if (replaced) count();
  });
  show();
  count();
  place.classList.add("there");
}
