// Numbers as a field in inches has them: sixteenths, "32 3/4".

/**
 * Reads a number, with or without a fraction; NaN for anything else.
 * @param {string} text
 */
export function fromText(text) {
  const [, sign, whole = "0", top, bottom] = /^\s*(-?)(?:(\d+)\s+)?(\d+)\/(\d+)/.exec(text) ?? [];
  if (bottom) return (sign ? -1 : 1) * (Number(whole) + Number(top) / Number(bottom));
  return parseFloat(text.replace(",", "."));
}

/**
 * Writes a number in sixteenths.
 * @param {number} x
 */
export function sixteenths(x) {
  const n = Math.abs(Math.round(x * 16)), whole = Math.floor(n / 16);
  let top = n % 16, bottom = 16;
  for (; top && top % 2 === 0; top /= 2) bottom /= 2;
  const part = top ? `${top}/${bottom}` : "";
  return `${x < 0 && n ? "-" : ""}${[whole || !part ? whole : "", part].join(" ").trim()}`;
}
