// Trusted Types: script addresses come from our own origin or not at all.
export const policy = (name, rules) => globalThis.trustedTypes?.createPolicy(name, rules) ?? rules;

const script = policy("plumbline-script", {
  createScriptURL(url) {
    if (new URL(url, document.baseURI).origin === location.origin) return url;
    throw new TypeError("A script from another origin is refused.");
  },
});

export const sameOrigin = url => script.createScriptURL(url);
