// Whose setup it is: riders and bikes to choose from, their names, and where the
// reader is on the way.
import { all, make, named, one } from "./dom.js";
import * as owner from "./owner.js";
import * as record from "./record.js";
import { say } from "./say.js";
import { counted, t } from "./text.js";
import { reached } from "./where.js";

/**
 * Choices of riders or bikes by their names, or by number where they have none.
 * @param {{ id: string, name: string }[]} items
 * @param {string} unnamed
 * @param {string | undefined} chosen
 */
const options = (items, unnamed, chosen) => items.map(({ id, name }, i) => make("option", { value: id, selected: id === chosen }, name || (items.length > 1 ? `${unnamed} ${i + 1}` : unnamed)));

/**
 * Fills the page's head and follows the record.
 * @param {Element} desk
 */
export function whose(desk) {
  const form = one(desk, ".whom", HTMLFormElement), standing = one(desk, ".standing"), line = one(standing, "p");
  const [rider, bike] = ["rider", "bike"].map((name) => one(form, `[name=${name}]`, HTMLSelectElement));
  const steps = all(standing, "ol a", HTMLAnchorElement);
  /** @type {[field: HTMLInputElement, key: string][]} */
  const fields = [["name", "name"], ["bike-name", "bike"], ["date", "date"], ["note", "note"]].map(([name, key]) => [named(form, name)[0], key]);

  /**
   * @param {number} bikes
   * @param {number} riding
   */
  function tell(bikes, riding) {
    const step = reached(steps), link = steps[Math.max(step, 1) - 1], on = record.at("bike");
    const many = riding > 1 || bikes > 1 ? `${counted(bikes, "{0} bike", "{0} bikes")}, ${counted(riding, "{0} rider", "{0} riders")}. ` : "";
    const where = !step ? t("{0} steps lead to a finished setup.", steps.length) : on ? t("Step {0} of {1} on {2}:", step, steps.length, on) : t("Step {0} of {1}:", step, steps.length);
    line.replaceChildren(many, ...link ? [where, " ", make("a", { href: link.href, className: "go" }, step ? t("go on with {0}", link.textContent ?? "") : t("Begin: {0}", link.textContent ?? ""))] : []);
  }

  function show() {
    const alone = owner.apart(), list = alone ? [] : owner.riders(), at = owner.chosen();
    const here = list.find(({ id }) => id === at?.rider), other = { id: "", name: record.at("name") ?? "" };
    rider.replaceChildren(...options(list.length ? list : [other], alone ? t("Somebody else") : t("Rider"), at?.rider));
    bike.replaceChildren(...options(here?.bikes.length ? here.bikes : [{ id: "", name: record.at("bike") ?? "" }], t("Bike"), at?.bike));
    for (const [field, key] of fields) if (document.activeElement !== field) field.value = record.at(key) ?? "";
    tell(here?.bikes.length || 1, Math.max(list.length, 1));
  }

  line.addEventListener("click", () => {
    const link = line.querySelector("a");
    if (link && record.text()) link.href = `${link.href.split("#")[0]}#${record.text()}`;
  });
  for (const [field, key] of fields) field.onchange = () => record.put([[key, field.value.trim()]]);
  rider.onchange = () => owner.choose({ rider: rider.value, bike: "" });
  bike.onchange = () => owner.choose({ rider: owner.chosen()?.rider ?? "", bike: bike.value });
  /** @param {string} what @param {(name: string) => void} add */
  const adding = (what, add) => {
    one(form, `[data-do=add-${what}]`).onclick = () => {
      add("");
      one(form, "details").setAttribute("open", "");
      named(form, what === "rider" ? "name" : "bike-name")[0].focus();
      say(what === "rider" ? t("A rider is added. Give them a name.") : t("A bike is added. Give it a name."));
    };
  };
  adding("rider", owner.addRider);
  adding("bike", owner.addBike);
  form.onsubmit = (event) => event.preventDefault();
  record.listen(show);
  show();
}
