// What a file is that somebody dropped on a page: text, in whatever letters, or none.
import { t } from "./text.js";

/**
 * Whether the first bytes of a file are these.
 * @param {Uint8Array} bytes
 * @param {number} at
 * @param {...number} these
 */
const has = (bytes, at, ...these) => these.every((byte, i) => bytes[at + i] === byte);

/**
 * In which letters a text is written, by its mark or, where a program left that out, by the
 * zeros in it.
 * @param {Uint8Array} bytes
 */
function letters(bytes) {
  if (has(bytes, 0, 0xff, 0xfe)) return "utf-16le";
  if (has(bytes, 0, 0xfe, 0xff)) return "utf-16be";
  const head = [...bytes.subarray(0, 16)], zero = [0, 1].map((odd) => head.every((byte, i) => (i % 2 === odd) === !byte));
  return head.length < 16 || zero[0] === zero[1] ? "utf-8" : zero[1] ? "utf-16le" : "utf-16be";
}

/**
 * The text of a file.
 * @param {Uint8Array} bytes
 */
export const textOf = (bytes) => new TextDecoder(letters(bytes)).decode(bytes);

/**
 * The same file in letters of which ASCII is a part, as mail has to be.
 * @param {Uint8Array} bytes
 */
export const plainly = (bytes) => (letters(bytes) === "utf-8" ? bytes : new TextEncoder().encode(textOf(bytes)));

/**
 * What a file is that is no text, by the bytes that its kind begins with; "" for text.
 * @param {Uint8Array} bytes
 */
export function kindOf(bytes) {
  const named = (/** @type {string} */ name, at = 0) => has(bytes, at, ...new TextEncoder().encode(name));
  if (has(bytes, 0, 0xff, 0xd8, 0xff) || has(bytes, 0, 0x89, 0x50, 0x4e, 0x47) || named("GIF8") || named("WEBP", 8)
    || ["heic", "heix", "mif1", "avif"].some((brand) => named(`ftyp${brand}`, 4))) return t("a photo or drawing");
  if (named("ftyp", 4) || named("RIFF") || named("ID3") || named("OggS")) return t("a recording");
  if (named("%PDF-")) return t("a PDF");
  if (named("PK") && has(bytes, 2, 3, 4) || has(bytes, 0, 0x1f, 0x8b)) return t("an archive or an office document");
  return letters(bytes) === "utf-8" && bytes.subarray(0, 512).includes(0) ? t("a file of bytes") : "";
}
