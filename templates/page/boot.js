// The one script that is no module: it runs where modules do not, in a page that was
// opened as a file, and needs nothing else. It begins to load the page's engine as
// soon as there is something to read, and says so where the other scripts do not come.
{
  const { classList, dataset, lang } = document.documentElement;

  // Whether the reader was here before is known before anything is painted, so that what
  // modules show them later has its room from the start and nothing moves.
  const known = [location.hash.includes("=") ? '"record":"x' : ""];
  try {
    known.push(...[localStorage, sessionStorage].map((store) => store.getItem("plumbline") ?? ""));
  } catch { /* nothing is kept here */ }
  classList.toggle("has-numbers", known.some((book) => /"record":"[^"]/.test(book)));
  classList.toggle("has-steps", known.some((book) => book.includes('"step ')));

  /** @type {Map<string, ReturnType<typeof engineParts>>} */
  const engines = new Map();

  /** @param {string} name */
  const compile = async (name) => {
    const url = `${dataset.engine}${name}.wasm`;
    /** @type {RequestInit} */
    const low = { priority: "low" }; // what makes the page readable goes first
    try {
      return await WebAssembly.compileStreaming(fetch(url, low));
    } catch { // a host that sends another type than application/wasm
      const file = await fetch(url, low);
      if (!file.ok) throw new Error(`${url}: ${file.status}`);
      return WebAssembly.compile(await file.arrayBuffer());
    }
  };

  /** @type {Map<string, Promise<string>>} */
  const files = new Map();
  /** @param {string} file */
  const fetched = async (file) => {
    const reply = await fetch(`${dataset.engine}texts-${lang}-${file}.txt`);
    if (!reply.ok) throw new Error(`${reply.url}: ${reply.status}`);
    return reply.text();
  };
  /**
   * What an engine says in the page's language, where that is not English: what all engines
   * say, and what it alone does. The whole one says everything.
   * @param {string} name
   */
  const texts = (name) => (dataset.texts?.split(" ") ?? []).filter((file) => ["shared", name].includes(file) || name === "whole").map((file) => {
    const begun = files.get(file) ?? fetched(file);
    files.set(file, begun);
    begun.catch(() => files.delete(file));
    return begun;
  });

  /** @param {string} name */
  const load = async (name) => {
    const [module, ...said] = await Promise.all([compile(name), ...texts(name)]);
    return { module, texts: said };
  };

  globalThis.engineParts = (name) => {
    const begun = engines.get(name) ?? load(name);
    engines.set(name, begun);
    begun.catch(() => engines.delete(name));
    return begun;
  };
  const { near } = dataset;
  if (near && location.protocol !== "file:" && !navigator.connection?.saveData) {
    // The page is read first: its first frame waits for nothing of the engine.
    requestAnimationFrame(() => setTimeout(() => globalThis.engineParts(near).catch(() => {})));
  }

  /** @param {(line: Element) => void} change */
  const lines = (change) => document.querySelectorAll(".offline").forEach(change);
  const again = () => {
    const button = document.createElement("button");
    button.type = "button";
    button.textContent = dataset.again ?? "Try again";
    button.onclick = () => location.reload();
    return button;
  };
  const told = () => {
    if (location.protocol === "file:") {
      lines((line) => {
        line.classList.add("stays");
        line.append(" ", dataset.opened ?? "Open it through a web server: a page that was opened as a file cannot run it.");
      });
    } else if (!classList.contains("scripted")) {
      lines((line) => {
        line.classList.add("stays");
        line.replaceChildren(dataset.failed ?? "The part of this page that computes could not be loaded.", " ", again());
      });
    }
  };
  // By the load event every module has run or failed.
  if (document.readyState === "complete") told();
  else addEventListener("load", told, { once: true });
}
