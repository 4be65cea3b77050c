// What the page's modules say, in the language of the page. The English stands where it is
// said; the translations come in one module a language, written by the publication
// (site/textmodule.go), which a page in English does without.

/** @type {Record<string, string | string[]>} */
let texts = {};
let forms = "";
const language = globalThis.document?.documentElement.dataset.said;
if (language) ({ texts, forms } = await import(`./texts-${language}.js`).catch(() => ({ texts, forms })));

/**
 * @param {string} text
 * @param {(string | number)[]} holes
 */
const filled = (text, holes) => text.replace(/\{(\d)\}/gu, (_, n) => String(holes[Number(n)] ?? ""));

/**
 * A text in English without its context, which stands before a \u0004 where English has one
 * word for two things.
 * @param {string} english
 */
const bare = (english) => english.slice(english.indexOf("\u0004") + 1);

/**
 * Says a text; {0} to {9} in it are filled in any order.
 * @param {string} english
 * @param {...(string | number)} holes
 */
export const t = (english, ...holes) => filled(String(texts[english] ?? bare(english)), holes);

/**
 * Says a text for a number of things, which fills {0}.
 * @param {number} n
 * @param {string} one
 * @param {string} many
 * @param {...(string | number)} holes from {1}
 */
export function counted(n, one, many, ...holes) {
  const said = texts[one], form = Number(forms[n < 200 ? n : 100 + n % 100] ?? 0);
  return filled(Array.isArray(said) ? said[form] : n === 1 ? one : many, [n, ...holes]);
}

/**
 * The pieces of a text with elements in its holes.
 * @param {string} english
 * @param {...(string | Node)} holes
 */
export const pieces = (english, ...holes) => String(texts[english] ?? english).split(/\{(\d)\}/u)
  .map((piece, i) => (i % 2 ? holes[Number(piece)] : piece)).filter((piece) => piece !== "");

/**
 * A number that is written with a point, with the language's decimal sign.
 * @param {string} number
 */
export const written = (number) => number.replace(".", String(texts["."] ?? "."));

/**
 * A number with its decimals as the language writes it.
 * @param {number} value
 * @param {number} decimals
 */
export const decimal = (value, decimals) => written(value.toFixed(decimals));
