// Saves or copies a picture, with its numbers and where it comes from: as an SVG that
// needs no style sheet, or as a PNG. The pages may not load a picture from data: or
// blob:, so a canvas can be given no SVG: what an SVG of ours is made of (paths,
// circles, letters, one hatching) is painted on the canvas piece by piece.
import { all, make, one } from "./dom.js";
import { file } from "./file.js";
import { say } from "./say.js";
import { t } from "./text.js";

const space = "http://www.w3.org/2000/svg";
const looks = ["fill", "stroke", "stroke-width", "stroke-dasharray", "stroke-linejoin", "stroke-opacity"];
const letters = [...looks, "font-family", "font-size", "font-weight", "text-anchor", "dominant-baseline", "paint-order"];
const edge = 16, line = 18; // round the sheet, and from one line of words to the next

/** @typedef {{ name: string, address: string, whose?: string }} Source where a picture comes from, and "Example" where it is one */
/** @typedef {(text: string, bold: boolean) => number} Measure how wide a text runs, in units */

/**
 * Makes an element of a drawing.
 * @param {string} tag
 * @param {Record<string, string | number>} about
 * @param {...(Node | string)} inside
 */
function piece(tag, about, ...inside) {
  const element = document.createElementNS(space, tag);
  for (const [name, value] of Object.entries(about)) element.setAttribute(name, String(value));
  element.append(...inside);
  return element;
}

/**
 * The colours of the guide on light ground, whatever the reader looks at: what is saved
 * goes to paper, or to somebody else.
 */
const light = () => [...document.styleSheets].flatMap((style) => [...style.cssRules]).flatMap((rule) =>
  rule instanceof CSSStyleRule && rule.selectorText === ":root" ? [...rule.style].filter((name) => name.startsWith("--")).map((name) => [name, rule.style.getPropertyValue(name)]) : []);

/**
 * Copies a drawing, with all that the style sheet says of its pieces written into them.
 * @param {SVGSVGElement} svg
 */
function styled(svg) {
  const copy = /** @type {SVGSVGElement} */ (svg.cloneNode(true)), box = make("div", { hidden: true }, copy);
  copy.classList.remove("choice", "still"); // letters as they were meant, wherever it stands
  for (const [name, value] of light()) copy.style.setProperty(name, value);
  for (const link of copy.querySelectorAll("a")) link.remove();
  document.body.append(box);
  for (const element of copy.querySelectorAll("path, circle, text")) {
    const style = getComputedStyle(element);
    for (const name of element.localName === "text" ? letters : looks) {
      const value = style.getPropertyValue(name);
      if (value) element.setAttribute(name, value.replaceAll('"', "'"));
    }
    element.removeAttribute("class");
  }
  box.remove();
  return copy;
}

/**
 * Breaks a text into lines.
 * @param {string} text
 * @param {number} most how wide a line may be
 * @param {(text: string) => number} wide
 */
export function lines(text, most, wide) {
  /** @type {string[]} */
  const out = [];
  for (const word of text.split(" ")) {
    const longer = out.length ? `${out.at(-1)} ${word}` : word;
    if (out.length && wide(longer) <= most) out[out.length - 1] = longer;
    else out.push(word);
  }
  return out;
}

/**
 * Lays a drawing on a sheet of its own: its title above, its description, which states
 * the numbers, below, and at the foot where it comes from.
 * @param {SVGSVGElement} svg
 * @param {Source} source
 * @param {Measure} measure
 */
export function sheet(svg, { name, address, whose }, measure) {
  const copy = styled(svg), title = copy.querySelector("title")?.textContent ?? "", says = copy.querySelector("desc")?.textContent ?? "";
  const box = (copy.getAttribute("viewBox") ?? "").split(" ").map(Number), across = box[2], high = box[3];
  const width = across + 2 * edge;
  const out = piece("svg", { role: "img", "aria-label": title });
  const words = { "font-family": "system-ui, 'Segoe UI', Roboto, Arial, sans-serif", "font-size": 13, fill: "#000" };
  let y = edge;
  /**
   * @param {string} text
   * @param {boolean} bold
   */
  const tell = (text, bold) => {
    for (const row of lines(text, across, (said) => measure(said, bold))) {
      y += line;
      out.append(piece("text", { ...words, "font-weight": bold ? 700 : 400, x: edge, y: y - 4 }, row));
    }
  };
  const ground = piece("rect", { width, fill: "#fff" });
  out.append(piece("title", {}, title), piece("desc", {}, says), ground);
  tell(whose ? `${whose}: ${title}` : title, true);
  y += 8;
  copy.querySelector("title")?.remove();
  copy.querySelector("desc")?.remove();
  out.append(piece("g", { transform: `translate(${edge} ${y})` }, ...copy.childNodes));
  y += high + 8;
  tell(says, false);
  y += 10;
  out.append(piece("path", { d: `M${edge} ${y}H${width - edge}`, stroke: "#000", "stroke-width": 0.75, fill: "none" }));
  tell(name, true);
  if (address) tell(address, false);
  y += edge;
  for (const [key, value] of [["width", width], ["height", y], ["viewBox", `0 0 ${width} ${y}`]]) out.setAttribute(String(key), String(value));
  ground.setAttribute("height", String(y));
  return out;
}

/**
 * Moves and turns what is painted next, as an element says.
 * @param {CanvasRenderingContext2D} to
 * @param {Element} element
 */
function turn(to, element) {
  for (const [, how, given] of (element.getAttribute("transform") ?? "").matchAll(/(\w+)\(([^)]*)\)/g)) {
    const [a, b = 0] = given.split(/[ ,]+/).map(Number);
    if (how === "translate") to.translate(a, b);
    else to.rotate((a * Math.PI) / 180);
  }
}

/**
 * The outline of a path, circle or rectangle.
 * @param {Element} element
 */
function outline(element) {
  const at = (/** @type {string} */ name) => Number(element.getAttribute(name));
  const path = new Path2D(element.getAttribute("d") ?? "");
  if (element.localName === "circle") path.arc(at("cx"), at("cy"), at("r"), 0, 2 * Math.PI);
  else if (element.localName === "rect") path.rect(0, 0, at("width"), at("height"));
  return path;
}

/**
 * The element that url(#id) means, or none.
 * @param {Element} root
 * @param {string | null} value
 */
const meant = (root, value) => root.querySelector(`#${CSS.escape(/#([^"')]+)/.exec(value ?? "")?.[1] ?? "-")}`);

/**
 * A hatching as a canvas takes it.
 * @param {CanvasRenderingContext2D} to
 * @param {Element} pattern
 * @param {number} sharp how many pixels a unit has
 */
function hatching(to, pattern, sharp) {
  const side = Number(pattern.getAttribute("width")), tile = make("canvas", { width: side * sharp, height: side * sharp });
  const inside = /** @type {CanvasRenderingContext2D} */ (tile.getContext("2d"));
  inside.scale(sharp, sharp);
  for (const child of pattern.children) paint(inside, child, pattern, sharp);
  const [, angle = "0"] = /rotate\(([^)]*)\)/.exec(pattern.getAttribute("patternTransform") ?? "") ?? [];
  const out = /** @type {CanvasPattern} */ (to.createPattern(tile, "repeat"));
  out.setTransform(new DOMMatrix().rotate(Number(angle)).scale(1 / sharp));
  return out;
}

/**
 * Writes a label; what is drawn round its letters keeps lines behind them away.
 * @param {CanvasRenderingContext2D} to
 * @param {Element} label
 * @param {boolean} drawn
 */
function write(to, label, drawn) {
  const has = (/** @type {string} */ name) => label.getAttribute(name) ?? "";
  const text = label.textContent ?? "", x = Number(has("x")), y = Number(has("y")), anchor = has("text-anchor");
  to.font = `${has("font-weight")} ${parseFloat(has("font-size"))}px ${has("font-family")}`;
  to.textAlign = anchor === "middle" ? "center" : anchor === "end" ? "end" : "start";
  to.textBaseline = has("dominant-baseline") === "central" ? "middle" : "alphabetic";
  if (drawn) to.strokeText(text, x, y);
  to.fillText(text, x, y);
}

/**
 * Paints a path, a circle, a rectangle or a label.
 * @param {CanvasRenderingContext2D} to
 * @param {Element} shape
 * @param {Element} root where what it refers to is
 * @param {number} sharp how many pixels a unit has
 */
function mark(to, shape, root, sharp) {
  const has = (/** @type {string} */ name) => shape.getAttribute(name) ?? "none";
  const hatch = has("fill").startsWith("url") && meant(root, has("fill")), drawn = has("stroke") !== "none";
  to.fillStyle = hatch ? hatching(to, hatch, sharp) : has("fill");
  to.strokeStyle = has("stroke");
  to.lineWidth = parseFloat(has("stroke-width")) || 1;
  to.lineJoin = "round";
  to.setLineDash((has("stroke-dasharray").match(/[\d.]+/g) ?? []).map(Number));
  if (shape.localName === "text") {
    write(to, shape, drawn);
    return;
  }
  const path = outline(shape);
  if (has("fill") !== "none") to.fill(path);
  const opacity = parseFloat(has("stroke-opacity"));
  to.globalAlpha = Number.isNaN(opacity) ? 1 : opacity;
  if (drawn) to.stroke(path);
}

/**
 * Paints an element of a sheet and what is inside it.
 * @param {CanvasRenderingContext2D} to
 * @param {Element} element
 * @param {Element} root where what it refers to is
 * @param {number} sharp how many pixels a unit has
 */
export function paint(to, element, root, sharp) {
  if (["title", "desc", "defs"].includes(element.localName)) return;
  to.save();
  turn(to, element);
  if (["g", "svg"].includes(element.localName)) {
    const round = meant(root, element.getAttribute("clip-path"))?.firstElementChild;
    if (round) to.clip(outline(round));
    for (const child of element.children) paint(to, child, root, sharp);
  } else mark(to, element, root, sharp);
  to.restore();
}

/**
 * Paints a sheet as a PNG, large enough to be printed.
 * @param {Element} of
 * @returns {Promise<Blob>}
 */
function png(of) {
  const width = Number(of.getAttribute("width")), height = Number(of.getAttribute("height"));
  const sharp = Math.max(2, Math.min(4, Math.ceil(1600 / width)));
  const canvas = make("canvas", { width: width * sharp, height: height * sharp });
  const to = /** @type {CanvasRenderingContext2D} */ (canvas.getContext("2d"));
  to.scale(sharp, sharp);
  paint(to, of, of, sharp);
  return new Promise((done, failed) => {
    canvas.toBlob((blob) => {
      if (blob) done(blob);
      else failed(new Error("the picture is too large"));
    }, "image/png");
  });
}

/**
 * Where the pictures of this page come from. The reader's numbers, which stand behind
 * the # of the address, are left out.
 * @returns {Source}
 */
function source() {
  const name = document.querySelector(".home")?.textContent ?? "";
  const canonical = document.querySelector("link[rel=canonical]")?.getAttribute("href");
  return { name, address: canonical ?? (location.protocol.startsWith("http") ? location.origin + location.pathname : "") };
}

/** @type {Measure} */
const onCanvas = (text, bold) => {
  const to = /** @type {CanvasRenderingContext2D} */ (make("canvas", {}).getContext("2d"));
  to.font = `${bold ? 700 : 400} 13px system-ui, 'Segoe UI', Roboto, Arial, sans-serif`;
  return to.measureText(text).width;
};

/**
 * Does what a button below a picture says: svg, png or copy.
 * @param {HTMLElement} button
 */
export async function save(button) {
  const place = button.closest(".stand, .plate, .drawing");
  const svg = place && all(place, "svg.figure", SVGSVGElement).find((found) => found.getClientRects().length);
  if (!svg) return;
  const of = sheet(svg, { ...source(), whose: place.querySelector(".mark")?.textContent ?? "" }, onCanvas), title = svg.querySelector("title")?.textContent ?? "picture";
  const name = title.toLowerCase().replace(/[^a-z0-9]+/g, "-").replace(/^-|-$/g, "").slice(0, 60);
  const how = button.dataset.save, told = one(/** @type {HTMLElement} */ (button.closest(".saves")), ".told");
  /** @param {string} sentence */
  const tell = (sentence) => {
    told.textContent = sentence;
    told.hidden = false;
    say(sentence);
  };
  told.hidden = true;
  if (how === "svg") file(`${name}.svg`, "image/svg+xml", new XMLSerializer().serializeToString(of));
  else if (how === "png") file(`${name}.png`, "image/png", await png(of));
  else {
    try {
      await navigator.clipboard.write([new ClipboardItem({ "image/png": png(of) })]);
      tell(t("The picture is copied."));
    } catch {
      tell(t("This browser does not let a page copy a picture. Save it instead."));
    }
  }
}
