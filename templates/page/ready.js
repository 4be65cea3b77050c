// A form that is typed into before the engine has come.
import { all, one } from "./dom.js";
import * as record from "./record.js";
import { t } from "./text.js";

/**
 * Makes the published form, which shows the worked example, one to type into: empty, with
 * the example as a hint. What is typed is answered when the engine comes. A form for which
 * there are numbers already, or other units, waits for the engine to write it. Tells
 * whether it is ready.
 * @param {HTMLFormElement} form
 */
export function ready(form) {
  const own = new URLSearchParams(record.text());
  const fields = /** @type {HTMLInputElement[]} */ ([...form.querySelectorAll("[name]")]);
  if (record.units() !== document.documentElement.dataset.units || fields.some(({ name }) => own.has(name) || own.has(`${name}.unit`))) return false;
  for (const field of fields) {
    if (field.type === "radio") field.checked = field.value === "";
    else {
      if (field.value && "placeholder" in field) field.placeholder = t("like {0}", field.value);
      field.value = "";
    }
  }
  for (const slide of all(form, "[type=range]", HTMLInputElement)) slide.disabled = true; // it moves with the engine
  one(form, "legend").textContent = t("Your numbers");
  one(form, "fieldset", HTMLFieldSetElement).disabled = false;
  for (const line of all(form, ".offline")) line.textContent = t("You can type already. The answer to your own numbers comes in a moment.");
  return true;
}
