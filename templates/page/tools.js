// What stands in the header of every page: units and keeping.
import { make } from "./dom.js";
import * as record from "./record.js";
import { say } from "./say.js";
import { follow } from "./unit.js";

/**
 * Fills the place that the header keeps for them.
 * @param {Element} place
 */
export function fill(place) {
  const units = make("select", {}, ...["mm", "cm", "in"].map((unit) => make("option", { value: unit }, unit === "in" ? "inches" : unit)));
  const kept = make("input", { type: "checkbox" });
  const keeping = make("label", {}, kept, " Keep on this device");
  const show = () => {
    units.value = record.units();
    kept.checked = record.kept();
    keeping.hidden = record.apart();
  };
  units.onchange = () => follow(units.value);
  kept.onchange = () => {
    const wanted = kept.checked;
    kept.checked = record.keep(wanted);
    if (wanted && !kept.checked) say("This browser keeps nothing for this page.");
    else say(kept.checked ? "Your numbers stay in this browser until you forget them." : "Nothing is kept on this device. Your numbers stay in this tab until you close it.");
  };
  place.replaceChildren(make("label", {}, "Lengths in ", units), keeping);
  record.listen(show);
  show();
}
