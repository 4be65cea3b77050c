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

  /**
   * @param {string} file
   * @param {RequestInit} [how]
   */
  const fetched = async (file, how) => {
    const reply = await fetch(`${dataset.engine}${file}`, how);
    if (!reply.ok) throw new Error(`${reply.url}: ${reply.status}`);
    return reply;
  };

  /** @type {Map<string, Promise<string>>} */
  const files = new Map();
  /**
   * What an engine says in the page's language, where that is not English: what all engines
   * say, and what it alone does. The whole one says everything.
   * @param {string} name
   */
  const texts = (name) => (dataset.texts?.split(" ") ?? []).filter((file) => ["shared", name].includes(file) || name === "whole").map((file) => {
    const begun = files.get(file) ?? fetched(`texts-${lang}-${file}.txt`).then((reply) => reply.text());
    files.set(file, begun);
    begun.catch(() => files.delete(file));
    return begun;
  });

  /** The page is read first: nothing of an engine is loaded before all of it was painted. */
  const painted = new Promise((done) => {
    const frame = () => requestAnimationFrame(() => requestAnimationFrame(done)); // the second begins when the first was painted
    if (document.readyState === "loading") document.addEventListener("readystatechange", frame, { once: true });
    else frame();
  });

  /** @param {string} name */
  const load = async (name) => {
    await painted;
    // The engine's own thread compiles it.
    const code = fetched(`${name}.wasm`, { priority: "low" }).then((reply) => reply.blob());
    const [engine, ...said] = await Promise.all([code, ...texts(name)]);
    return { engine, texts: said };
  };

  globalThis.engineParts = (name, anew = false) => {
    const begun = (!anew && engines.get(name)) || load(name);
    engines.set(name, begun);
    begun.catch(() => engines.delete(name));
    return begun;
  };
  const { near } = dataset;
  if (near && location.protocol !== "file:" && !navigator.connection?.saveData) globalThis.engineParts(near).catch(() => {});

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
