// What was likely meant, as a button beside the sentence that asks for it.
import { make } from "./dom.js";
import { t } from "./text.js";
/** @import { Problem } from "./types.d.ts" */

/**
 * Puts the button behind the sentence, where the problem has a suggestion.
 * @param {HTMLElement} line
 * @param {Problem} problem
 * @param {(text: string) => void} take
 */
export function mend(line, { suggest }, take) {
  if (!suggest) return;
  const button = make("button", { type: "button", className: "mend" }, t("on a button\u0004Use {0}", suggest));
  // The field keeps the focus, or leaving it would write this line anew under the finger.
  button.onpointerdown = (event) => event.preventDefault();
  button.onclick = () => take(suggest);
  line.append(" ", button);
}

/**
 * Types a text into a field as its reader would.
 * @param {HTMLInputElement | undefined} field
 * @param {string} text
 */
export function retype(field, text) {
  if (!field) return;
  field.value = text;
  field.dispatchEvent(new Event("input", { bubbles: true }));
  field.dispatchEvent(new Event("change", { bubbles: true }));
  field.focus({ preventScroll: true });
}
