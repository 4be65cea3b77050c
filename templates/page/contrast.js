// How well one colour can be read on another (WCAG 2.2, "contrast ratio").

const text = 4.5; // what text needs: success criterion 1.4.3, level AA

/**
 * The parts of a colour that a style sheet writes as # with three or six digits, or as
 * rgb(…) with three numbers; undefined for any other.
 * @param {string} colour
 */
export function parts(colour) {
  const hex = /^#([\da-f]{3}|[\da-f]{6})$/i.exec(colour)?.[1];
  if (hex) return (hex.length === 3 ? [...hex].map((x) => x + x) : hex.match(/../g) ?? []).map((x) => parseInt(x, 16));
  const said = /^rgb\(\s*(\d+)[\s,]+(\d+)[\s,]+(\d+)\s*\)$/i.exec(colour);
  return said?.slice(1).map(Number);
}

/** The relative luminance, from 0 for black to 1 for white. @param {number[]} rgb */
function luminance(rgb) {
  const [r, g, b] = rgb.map((x) => x / 255).map((x) => (x <= 0.04045 ? x / 12.92 : ((x + 0.055) / 1.055) ** 2.4));
  return 0.2126 * r + 0.7152 * g + 0.0722 * b;
}

/**
 * The contrast of two colours, from 1 to 21; 0 where one of them cannot be told.
 * @param {string} a
 * @param {string} b
 */
export function contrast(a, b) {
  const x = parts(a), y = parts(b);
  if (!x || !y) return 0;
  const [dark, light] = [luminance(x), luminance(y)].sort((p, q) => p - q);
  return (light + 0.05) / (dark + 0.05);
}

/**
 * Whether text in a colour can be read on a ground.
 * @param {string} colour
 * @param {string} ground
 */
export const readable = (colour, ground) => contrast(colour, ground) >= text;
