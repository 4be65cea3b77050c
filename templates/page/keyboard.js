// Where a browser lays the keyboard over the page instead of making the page shorter,
// what stands at the bottom of the screen is told how much of it is covered.

const seen = globalThis.visualViewport;

/** Writes into --keyboard how high the keyboard stands over the page. */
export function lift() {
  if (!seen) return;
  // Somebody who has zoomed in sees a part of the page, which is no keyboard.
  const covered = seen.scale > 1.01 ? 0 : Math.max(0, Math.round(innerHeight - seen.height - seen.offsetTop));
  document.documentElement.style.setProperty("--keyboard", `${covered > 80 ? covered : 0}px`);
}

/** Follows the keyboard from now on. */
export function follow() {
  for (const event of ["resize", "scroll"]) seen?.addEventListener(event, lift);
}
