// What the pages share that work on the whole record: questions to the engine,
// files, links, codes. Nothing here sends anything by itself.
import * as engine from "./engine.js";
import * as record from "./record.js";
import { say } from "./say.js";

const { root } = document.documentElement.dataset;
export const page = () => location.href.split("#")[0];

// Asks the engine once; a question that a dead engine took with it is asked again.
export const ask = (place, desk, more) => new Promise((resolve) => {
  const { place: id, ways } = place.dataset;
  engine.ask({ question: () => ({ desk, place: id, ways, root, record: record.text(), units: record.units(), bare: record.units(), ...more }), take: resolve });
});

// Draws what the newest question brings: draw() is called again and again, and only
// one answer is under way.
export const drawer = (place, desk, put, more = () => ({})) => {
  const bench = { question: () => ({ desk, place: place.dataset.place, ways: place.dataset.ways, root, record: record.text(), units: record.units(), ...more() }), take: put };
  return () => engine.ask(bench);
};

export function begin(place) {
  engine.on.down = () => {
    const note = place.querySelector(".offline") ?? place.insertBefore(document.createElement("p"), place.firstChild);
    note.className = "offline problem";
    note.textContent = "The engine could not be started here, or stopped three times. Your numbers are kept; load the page again.";
  };
  const idle = globalThis.requestIdleCallback ?? setTimeout;
  const start = () => idle(engine.begin);
  if (document.readyState === "complete") start();
  else addEventListener("load", start, { once: true });
  place.addEventListener("pointerenter", engine.begin, { once: true });
  // Links that the engine wrote carry the numbers along, as all others do.
  place.addEventListener("click", ({ target }) => {
    const link = target.closest(".paper a[href]:not([data-do])");
    if (!link) return;
    const [path, at] = link.getAttribute("href").split("#"), now = record.text();
    if (path && now) link.setAttribute("href", `${path}#${now}${at && !at.includes("=") ? "&at=" + at : ""}`);
  }, true);
}

// Puts the pairs of a reply, or of a file, into the record.
export const isMark = (key) => key === "from" || key === "estimated" || /.\.(unit|on|was|done)$/.test(key);
export function lay(pairs) {
  record.put(pairs.filter(([key]) => !isMark(key)), undefined, pairs.filter(([key]) => isMark(key)));
}

export const today = () => {
  const d = new Date(), two = (n) => String(n).padStart(2, "0");
  return `${d.getFullYear()}-${two(d.getMonth() + 1)}-${two(d.getDate())}`;
};

export function file(name, type, text) {
  const url = URL.createObjectURL(new Blob([text], { type }));
  const link = Object.assign(document.createElement("a"), { href: url, download: name });
  link.click();
  setTimeout(() => URL.revokeObjectURL(url), 10000);
  say(`${name} is saved.`);
}

// What cannot be copied is shown, marked, to be copied by hand.
export async function copy(text, place) {
  try {
    await navigator.clipboard.writeText(text);
    place.querySelector(".by-hand")?.remove();
    say("The link is copied.");
    return true;
  } catch {
    const box = place.querySelector(".by-hand") ?? Object.assign(document.createElement("textarea"), { className: "by-hand", readOnly: true, rows: 3, ariaLabel: "The link, to be copied" });
    box.value = text;
    place.append(box);
    box.select();
    say("The link is marked. Copy it.");
    return false;
  }
}

// Shows a text as a code (ISO/IEC 18004) that a phone's camera reads.
export async function code(text, place) {
  const old = place.querySelector(".code-sheet");
  old?.remove();
  if (old?.dataset.text === text) return;
  const { generate, correction } = await import("./qr.js");
  const figure = Object.assign(document.createElement("figure"), { className: "code-sheet" });
  figure.dataset.text = text;
  const caption = document.createElement("figcaption");
  let bits;
  try {
    bits = generate(text, { minCorrectionLevel: text.length > 700 ? correction.L : correction.M });
  } catch {
    caption.textContent = "That is too much for a code. Send the link or the file.";
  }
  if (bits) {
    const svg = document.createElementNS("http://www.w3.org/2000/svg", "svg"), path = document.createElementNS(svg.namespaceURI, "path");
    let d = "";
    for (let y = 0; y < bits.size; y += 1) {
      for (let x = 0; x < bits.size; x += 1) if (bits.get(x, y)) d += `M${x + 4} ${y + 4}h1v1h-1z`;
    }
    svg.setAttribute("viewBox", `0 0 ${bits.size + 8} ${bits.size + 8}`);
    svg.setAttribute("role", "img");
    svg.setAttribute("aria-label", "Code with the link");
    svg.setAttribute("shape-rendering", "crispEdges");
    path.setAttribute("d", d);
    svg.append(path);
    figure.append(svg);
    caption.textContent = "Point another phone’s camera at it. The link in it holds everything that is shown above.";
  }
  figure.append(caption);
  place.append(figure);
  figure.scrollIntoView({ block: "nearest" });
  say(caption.textContent);
}

export async function share(title, url) {
  try {
    await navigator.share({ title, url });
  } catch { /* the reader changed their mind, and nothing was sent */ }
}

export const canShare = () => !!navigator.share;

// Messages beside a form: the hard ones as problems, what was taken all the same as
// doubts.
export function tell(line, problems) {
  line.textContent = problems.map(({ message }) => message).join(" ");
  line.hidden = !problems.length;
}
