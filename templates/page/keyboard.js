// Where a browser lays the keyboard over the page instead of making the page shorter,
// what stands at the bottom of the screen is told how much of it is covered.

const seen = globalThis.visualViewport;
let last = 0; // px that were covered when it was looked at last

/** Writes into --keyboard how high the keyboard stands over the page. */
export function lift() {
  if (!seen) return;
  // Somebody who has zoomed in sees a part of the page, which is no keyboard.
  const covered = seen.scale > 1.01 ? 0 : Math.max(0, Math.round(innerHeight - seen.height - seen.offsetTop));
  const lifted = covered > 80 ? covered : 0;
  if (lifted === last) return; // to write it again would have every element styled anew
  last = lifted;
  document.documentElement.style.setProperty("--keyboard", `${lifted}px`);
}

/** Follows the keyboard from now on. */
export function follow() {
  for (const event of ["resize", "scroll"]) seen?.addEventListener(event, lift);
}
