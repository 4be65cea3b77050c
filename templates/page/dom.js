// Finding and making elements. A selector that finds nothing throws an error that
// names it, so a template that moved on without its module is seen at once.

/**
 * Returns the first element in place that fits the selector and is of that class.
 * Throws where there is none.
 * @template {Element} [T=HTMLElement]
 * @param {ParentNode} place
 * @param {string} selector
 * @param {new () => T} [kind]
 * @returns {T}
 */
export function one(place, selector, kind) {
  const [found] = all(place, selector, kind);
  if (found) return found;
  throw new Error(`The page has no ${selector}`);
}

/**
 * Returns all elements in place that fit the selector and are of that class.
 * @template {Element} [T=HTMLElement]
 * @param {ParentNode} place
 * @param {string} selector
 * @param {new () => T} [kind]
 * @returns {T[]}
 */
export const all = (place, selector, kind) =>
  /** @type {T[]} */ ([...place.querySelectorAll(selector)].filter((found) => found instanceof (kind ?? HTMLElement)));

/**
 * An anchor without its percent signs; where one of them stands for nothing, as it came.
 * The only place that decodes an address, because decoding throws.
 * @param {string} text
 */
export function decoded(text) {
  try {
    return decodeURIComponent(text);
  } catch {
    return text;
  }
}

/**
 * Returns the fields of that name. Those that are a select or a textarea have what
 * is used here of an input: name, value, type and the form.
 * @param {HTMLFormElement} form
 * @param {string} name
 */
export const named = (form, name) =>
  /** @type {HTMLInputElement[]} */ ([...form.elements]).filter((field) => field.name === name);

/**
 * Returns the field that an event of a form is about.
 * @param {Event} event
 */
export const fieldOf = ({ target }) => /** @type {HTMLInputElement} */ (target);

/**
 * Returns the element that was hit, or the nearest around it that fits the selector.
 * @param {Event} event
 * @param {string} selector
 * @returns {HTMLElement | null}
 */
export const hit = ({ target }, selector) => /** @type {Element} */ (target).closest(selector);

/**
 * Makes an element with these properties and this inside it.
 * @template {keyof HTMLElementTagNameMap} K
 * @param {K} tag
 * @param {Partial<HTMLElementTagNameMap[K]>} about
 * @param {...(Node | string)} inside
 * @returns {HTMLElementTagNameMap[K]}
 */
export function make(tag, about, ...inside) {
  const element = document.createElement(tag);
  Object.assign(/** @type {object} */ (element), about);
  element.append(...inside);
  return element;
}
