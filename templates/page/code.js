// Lines that are to be copied have a button above them.
import { all, make } from "./dom.js";
import { say } from "./say.js";
import { t } from "./text.js";

/** Puts a button above each. */
export function code() {
  for (const lines of all(document, "pre.code")) {
    const button = make("button", { type: "button" }, t("Copy"));
    button.onclick = () => copy(lines);
    lines.before(make("p", { className: "copies" }, button));
  }
}

/**
 * Copies lines; where the browser does not, they are marked to be copied by hand.
 * @param {HTMLElement} lines
 */
async function copy(lines) {
  try {
    await navigator.clipboard.writeText(lines.textContent ?? "");
    say(t("Copied."));
  } catch {
    getSelection()?.selectAllChildren(lines);
    say(t("The lines are marked. Copy them."));
  }
}
