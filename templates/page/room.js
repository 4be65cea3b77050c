// How wide a drawing stands in the page: the engine draws for that width.

// Where less than page is free, and not much less than phone, a drawing is the published one
// for a phone, a little larger or smaller: to draw it anew would move what stands below it.
export const phone = 320; // px, as in calculators/drawing/room.go
const small = 280, page = 400; // px

/**
 * The width that is free for a drawing in the first of the places that is on show, in
 * steps of ten pixels, so that not every pixel of a moving window asks for another
 * drawing. 0, for drawings of all widths, where nothing is on show.
 * @param {Iterable<Element>} places
 */
export function across(places) {
  for (const place of places) {
    const { paddingInlineStart: from, paddingInlineEnd: to } = getComputedStyle(place);
    const free = place.clientWidth - (parseFloat(from) || 0) - (parseFloat(to) || 0);
    if (free > small && free < page) return phone;
    if (free > 0) return Math.floor(free / 10) * 10;
  }
  return 0;
}

/**
 * Calls again when that width is another one. What is returned tells the width as it was
 * last seen: to measure it anew for each question would make the browser lay out a page
 * that is about to change.
 * @param {Element} around
 * @param {() => number} width
 * @param {() => void} again
 */
export function follow(around, width, again) {
  /** @type {number | undefined} */
  let seen;
  if (!("ResizeObserver" in globalThis)) return width;
  new ResizeObserver(() => {
    const before = seen, now = width();
    seen = now || before;
    if (before !== undefined && seen !== before) again();
  }).observe(around);
  return () => (seen ??= width());
}

/**
 * Tells the style sheet how high the drawing's place in a bench is: on a wide page the answer
 * stays in view below it.
 * @param {HTMLElement} bench
 */
export function hold(bench) {
  const stand = bench.querySelector(".stand");
  if (!stand || !("ResizeObserver" in globalThis)) return;
  new ResizeObserver(() => {
    const { height } = stand.getBoundingClientRect();
    if (height) bench.style.setProperty("--stand", `${height}px`); // on a phone it is no box, and to write has all of the bench styled anew
  }).observe(stand);
}
