// Trusted Types: script addresses come from our own origin or not at all.

/**
 * Makes a policy where the browser knows them; elsewhere the rules work by themselves.
 * @template T
 * @param {string} name
 * @param {T} rules
 * @returns {T}
 */
export const policy = (name, rules) => globalThis.trustedTypes?.createPolicy(name, rules) ?? rules;

const script = policy("plumbline-script", {
  /** @param {string} url */
  createScriptURL(url) {
    if (new URL(url, document.baseURI).origin === location.origin) return url;
    throw new TypeError("A script from another origin is refused.");
  },
});

/**
 * Returns the address as one that a worker may be started from. Throws a TypeError
 * where it is of another origin.
 * @param {string} url
 */
export const sameOrigin = (url) => script.createScriptURL(url);
