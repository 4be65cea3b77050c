// What the page uses of qr.js, which is somebody else's and is not checked itself.

/** The levels of error correction (ISO/IEC 18004, 7.5.1). */
export const correction: { readonly L: number; readonly M: number };

/** The modules of a code; throws where the text has no room in the largest one. */
export function generate(text: string, options: { minCorrectionLevel: number }): {
  readonly size: number;
  get(x: number, y: number): boolean;
};
