// What the pages share that work on the whole record: questions to the engine,
// files, links, codes. Nothing here sends anything by itself.
import { hit, make } from "./dom.js";
import * as engine from "./engine.js";
import { mend } from "./mend.js";
import * as record from "./record.js";
import { across, follow } from "./room.js";
import { say } from "./say.js";
import { t } from "./text.js";
/** @import { Pair, Problem, Question, Reply } from "./types.d.ts" */

const { root } = document.documentElement.dataset;
/** The address of this page without the record. */
export const page = () => location.href.split("#")[0];

/**
 * The question by that name, about the record as it is now.
 * @param {HTMLElement} place
 * @param {string} desk
 * @param {number} wide
 * @returns {Question}
 */
const questionOf = (place, desk, wide) => ({ desk, place: place.dataset.place, ways: place.dataset.ways, width: wide, root, record: record.text(), units: record.units() });

/**
 * How wide its drawings stand.
 * @param {HTMLElement} place
 */
const width = (place) => across(place.querySelectorAll(".drawing"));

/**
 * Asks the engine once; a question that a dead engine took with it is asked again.
 * @param {HTMLElement} place
 * @param {string} desk
 * @param {object} [more]
 * @returns {Promise<Reply>}
 */
export const ask = (place, desk, more) => new Promise((resolve) => {
  engine.ask({ question: () => ({ ...questionOf(place, desk, width(place)), bare: record.units(), ...more }), take: resolve });
});

/**
 * Draws what the newest question brings: the function that is returned is called
 * again and again, and only one answer is under way.
 * @param {HTMLElement} place
 * @param {string} desk
 * @param {(reply: Reply) => void} put
 * @param {() => object} [more]
 */
export const drawer = (place, desk, put, more = () => ({})) => {
  const seen = follow(place, () => width(place), () => engine.ask(bench));
  const bench = { question: () => ({ ...questionOf(place, desk, seen()), ...more() }), take: put };
  return () => engine.ask(bench);
};

/**
 * Puts what the engine wrote in place; an empty text is none of its own.
 * @param {Element} place
 * @param {string} [html]
 */
export function fill(place, html) {
  if (html) place.innerHTML = html;
  else place.replaceChildren();
}

/**
 * Starts the engine.
 * @param {HTMLElement} place
 */
export function begin(place) {
  engine.on.down = (loaded) => {
    const note = place.querySelector(".offline") ?? place.insertBefore(make("p", {}), place.firstChild);
    note.className = "offline stays problem";
    const again = make("button", { type: "button", textContent: t("Try again") });
    again.onclick = () => {
      note.remove();
      engine.again();
    };
    note.replaceChildren(loaded ? t("What computes stopped three times within a minute. Your numbers are kept.") : t("What computes on this page could not be loaded. Your numbers are kept."), " ", again);
  };
  engine.begin();
  place.addEventListener("pointerenter", engine.begin, { once: true });
  // Links that the engine wrote carry the numbers along, as all others do.
  place.addEventListener("click", (event) => {
    const link = hit(event, ":is(.paper, .worth) a[href]:not([data-do])");
    if (!link) return;
    const [path, at] = (link.getAttribute("href") ?? "").split("#"), now = record.text();
    if (path && now) link.setAttribute("href", `${path}#${now}${at && !at.includes("=") ? `&at=${at}` : ""}`);
  }, true);
}

/**
 * Whether a key says something of another pair.
 * @param {string} key
 */
export const isMark = (key) => key === "from" || key === "estimated" || /.\.(unit|on|was|done)$/.test(key);

/**
 * Puts the pairs of a reply, or of a file, into the record.
 * @param {Pair[]} pairs
 */
export function lay(pairs) {
  record.put(pairs.filter(([key]) => !isMark(key)), undefined, pairs.filter(([key]) => isMark(key)));
}

export const { today } = record;

/**
 * Copies a text; what cannot be copied is shown, marked, to be copied by hand.
 * @param {string} text
 * @param {Element} place
 */
export async function copy(text, place) {
  try {
    await navigator.clipboard.writeText(text);
    place.querySelector(".by-hand")?.remove();
    say(t("The link is copied."));
    return true;
  } catch {
    const old = /** @type {HTMLTextAreaElement | null} */ (place.querySelector(".by-hand"));
    const box = old ?? make("textarea", { className: "by-hand", readOnly: true, rows: 3, ariaLabel: t("The link, to be copied") });
    box.value = text;
    place.append(box);
    box.select();
    say(t("The link is marked. Copy it."));
    return false;
  }
}

/**
 * Shows a text as a code (ISO/IEC 18004) that a phone's camera reads, or takes away
 * the code of the same text.
 * @param {string} text
 * @param {Element} place
 */
export async function code(text, place) {
  const old = /** @type {HTMLElement | null} */ (place.querySelector(".code-sheet"));
  old?.remove();
  if (old?.dataset.text === text) return;
  const { generate, correction } = await import("./qr.js");
  const figure = make("figure", { className: "code-sheet" }), caption = make("figcaption", {});
  figure.dataset.text = text;
  let bits;
  try {
    bits = generate(text, { minCorrectionLevel: text.length > 700 ? correction.L : correction.M });
  } catch {
    caption.textContent = t("That is too much for a code. Send the link or the file.");
  }
  if (bits) {
    const svg = document.createElementNS("http://www.w3.org/2000/svg", "svg"), path = document.createElementNS(svg.namespaceURI, "path");
    let d = "";
    for (let y = 0; y < bits.size; y += 1) {
      for (let x = 0; x < bits.size; x += 1) if (bits.get(x, y)) d += `M${x + 4} ${y + 4}h1v1h-1z`;
    }
    svg.setAttribute("viewBox", `0 0 ${bits.size + 8} ${bits.size + 8}`);
    svg.setAttribute("role", "img");
    svg.setAttribute("aria-label", t("Code with the link"));
    svg.setAttribute("shape-rendering", "crispEdges");
    path.setAttribute("d", d);
    svg.append(path);
    figure.append(svg);
    caption.textContent = t("Point another phone’s camera at it. The link in it holds everything that is shown above.");
  }
  figure.append(caption);
  place.append(figure);
  figure.scrollIntoView({ block: "nearest" });
  say(caption.textContent);
}

/**
 * Offers a link to the device's own ways of sending.
 * @param {string} title
 * @param {string} url
 */
export async function share(title, url) {
  try {
    await navigator.share({ title, url });
  } catch { /* the reader changed their mind, and nothing was sent */ }
}

/** Whether this device has such ways. */
export const canShare = () => "share" in navigator;

/**
 * Writes the messages of problems beside a form, with a button for what was likely meant,
 * and hides the line without any.
 * @param {HTMLElement} line
 * @param {Problem[]} [problems]
 * @param {(text: string, problem: Problem) => void} [take]
 */
export function tell(line, problems = [], take) {
  line.textContent = problems.map(({ message }) => message).join(" ");
  if (take) for (const problem of problems) mend(line, problem, (text) => take(text, problem));
  line.hidden = !problems.length;
}
