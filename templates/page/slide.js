// A slider beside a field moves the field's number and follows what is typed.
import { all, one } from "./dom.js";
import { fromText, sixteenths } from "./fraction.js";
import { written } from "./text.js";

/** @param {HTMLFormElement} form */
export function slide(form) {
  for (const bar of all(form, "[type=range]", HTMLInputElement)) {
    const field = one(/** @type {Element} */ (bar.parentElement), "input", HTMLInputElement);
    const follow = () => {
      const x = fromText(field.value);
      if (!Number.isNaN(x)) bar.value = String(x);
    };
    bar.oninput = (event) => {
      event.stopPropagation();
      field.value = field.dataset.unit === "in" ? sixteenths(Number(bar.value)) : written(bar.value);
      field.dispatchEvent(new Event("input", { bubbles: true }));
    };
    bar.onchange = (event) => event.stopPropagation();
    field.addEventListener("input", follow);
    follow();
  }
}
