// A word of the glossary, explained where it stands: its sentence and its picture, from
// the glossary's own page.

import { decoded, make } from "./dom.js";
import { t } from "./text.js";

/** @type {Map<string, Promise<Document>>} */
const pages = new Map();

/**
 * Fetches a page as a document, whose scripts do not run. The page's policy forbids to
 * make one of text, but not to ask for one.
 * @param {string} url
 * @returns {Promise<Document>}
 */
function fetched(url) {
  let page = pages.get(url);
  if (!page) {
    page = new Promise((resolve, reject) => {
      const request = new XMLHttpRequest();
      request.responseType = "document";
      request.onload = () => {
        if (request.status === 200 && request.responseXML) resolve(request.responseXML);
        else reject(new Error(`the glossary could not be read: ${request.status}`));
      };
      request.onerror = () => reject(new Error("the glossary could not be read"));
      request.open("GET", url);
      request.send();
    });
    pages.set(url, page);
    page.catch(() => pages.delete(url));
  }
  return page;
}

/**
 * The anchor of a link, which a reader's numbers may stand before.
 * @param {string} hash
 */
export const anchorOf = (hash) => {
  const parts = hash.replace(/^#/u, "").split("&");
  return decoded(parts.find((part) => part.startsWith("at="))?.slice(3) ?? parts.find((part) => !part.includes("=")) ?? "");
};

/** @type {HTMLElement | undefined} */
let box;

/**
 * Shows the entry that a link leads to, beside the link. Rejects where there is none.
 * @param {HTMLAnchorElement} link
 */
export async function explain(link) {
  const entry = (await fetched(link.href.split("#")[0])).getElementById(anchorOf(link.hash));
  const says = entry?.querySelector(".says")?.textContent;
  if (!entry || !says) throw new Error("the glossary lacks this word");
  box ??= document.body.appendChild(make("div", { id: "word", className: "explained", popover: "auto", tabIndex: -1 }));
  const picture = entry.querySelector(".picture svg");
  const close = make("button", { type: "button", onclick: () => box?.hidePopover() }, t("Close"));
  box.replaceChildren(make("p", {}, make("b", {}, `${entry.querySelector("dfn")?.textContent ?? ""}. `), says),
    ...picture ? [document.importNode(picture, true)] : [],
    make("p", { className: "ways" }, make("a", { href: link.href }, t("Glossary")), " ", close));
  box.setAttribute("aria-label", link.textContent ?? "");
  box.showPopover();
  const at = link.getBoundingClientRect(), size = box.getBoundingClientRect();
  const below = at.bottom + 8 + size.height < innerHeight;
  box.style.insetInlineStart = `${Math.max(8, Math.min(at.left, innerWidth - size.width - 8))}px`;
  box.style.insetBlockStart = `${Math.max(8, below ? at.bottom + 8 : at.top - 8 - size.height)}px`;
  box.focus();
}
