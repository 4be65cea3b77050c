// The front page knows a reader who was here before: at which step they are.
import { all, make } from "./dom.js";
import * as owner from "./owner.js";
import * as record from "./record.js";
import { t } from "./text.js";
import { reached } from "./where.js";

/**
 * Fills the place with where the reader is, or hides it.
 * @param {HTMLElement} place
 */
export function welcome(place) {
  const steps = all(document, ".path ol a", HTMLAnchorElement), step = reached(steps);
  place.hidden = !owner.owns() && !step;
  if (place.hidden) {
    document.documentElement.classList.remove("has-numbers", "has-steps"); // nor is room kept for it
    return;
  }
  const name = record.at("name"), link = steps[Math.max(step, 1) - 1];
  const setup = make("a", { className: "button", href: place.dataset.welcome ?? "" }, t("Your setup"));
  const on = make("a", { className: "button main", href: link?.href.split("#")[0] ?? "" }, step ? t("Go on") : t("Begin with step 1"));
  for (const way of [setup, on]) {
    way.addEventListener("click", () => {
      way.href = `${way.href.split("#")[0]}${record.text() ? `#${record.text()}` : ""}`;
    });
  }
  place.replaceChildren(make("p", {}, make("b", {}, [name ? t("Welcome back, {0}", name) : t("Welcome back"), ...step ? [t("step {0} of {1}", step, steps.length)] : []].join(": ")), step ? ` ${link.textContent}` : ""),
    make("p", { className: "line" }, ...link && (step || !place.dataset.welcome) ? [on] : [], ...place.dataset.welcome ? [setup] : []));
}
