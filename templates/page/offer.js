// Some numbers can be read off a photo; what that takes is loaded when it is wanted.
// The field's data-photo names the choice that says how the photo was taken.
import { make } from "./dom.js";
import { t } from "./text.js";

/**
 * Puts a button for the photo reader beside the field.
 * @param {HTMLInputElement} field
 */
export function offer(field) {
  const button = make("button", {
    type: "button", id: `${field.id}-photo`, className: "off-photo", textContent: t("Read it off a photo"),
  });
  button.onclick = () => import("./photo.js").then(({ open }) => open(field), () => {
    button.textContent = t("That did not load. Try again");
  });
  field.closest(".field")?.append(button);
}
