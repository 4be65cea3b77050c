// Hands a file over to the reader.
import { make } from "./dom.js";
import { say } from "./say.js";
import { t } from "./text.js";

/**
 * Saves a text, or what a canvas made, as a file.
 * @param {string} name
 * @param {string} type
 * @param {string | Blob} content
 */
export function file(name, type, content) {
  const url = URL.createObjectURL(new Blob([content], { type }));
  make("a", { href: url, download: name }).click();
  setTimeout(() => URL.revokeObjectURL(url), 10000);
  say(t("{0} is saved.", name));
}
