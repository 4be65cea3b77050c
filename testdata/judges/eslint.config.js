import js from "@eslint/js";

const names = [
  "document", "location", "history", "localStorage", "performance", "setTimeout", "clearTimeout", "addEventListener",
  "URL", "URLSearchParams", "Worker", "WebAssembly", "fetch", "postMessage", "FormData", "CSS", "HTMLElement", "console",
  "Blob", "Event", "navigator", "sessionStorage",
];

export default [
  js.configs.recommended,
  {
    languageOptions: {
      ecmaVersion: 2024,
      sourceType: "module",
      globals: Object.fromEntries(names.map((name) => [name, "readonly"]).concat([["onmessage", "writable"]])),
    },
    rules: { eqeqeq: ["error", "always", { null: "ignore" }], "no-var": "error", "prefer-const": "error" },
  },
];
