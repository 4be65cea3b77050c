// A form that is typed into before the engine has come.
import { all, one } from "./dom.js";
import * as record from "./record.js";
import { t } from "./text.js";

/**
 * Lets somebody type into the published form, which is empty; what is typed is answered
 * when the engine comes. A form for which there are numbers already, or other units, waits
 * for the engine to write it. Tells whether it is ready.
 * @param {HTMLFormElement} form
 */
export function ready(form) {
  const own = new URLSearchParams(record.text());
  const fields = /** @type {HTMLInputElement[]} */ ([...form.querySelectorAll("[name]")]);
  if (record.units() !== document.documentElement.dataset.units || fields.some(({ name }) => own.has(name) || own.has(`${name}.unit`))) return false;
  form.reset(); // of what the browser put back by itself
  for (const slide of all(form, "[type=range]", HTMLInputElement)) slide.disabled = true; // it moves with the engine
  one(form, "fieldset", HTMLFieldSetElement).disabled = false;
  for (const line of all(form, ".offline")) line.textContent = t("You can type already. The answer to your own numbers comes in a moment.");
  return true;
}
