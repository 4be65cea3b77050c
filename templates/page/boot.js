// The one script that is no module: it runs where modules do not, in a page that was
// opened as a file, and needs nothing else. It begins to load the page's engine before
// all other scripts, and says so where those do not come.
{
  const { dataset } = document.documentElement;
  /** @type {Map<string, Promise<WebAssembly.Module>>} */
  const modules = new Map();

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

  globalThis.engineModule = (name) => {
    const begun = modules.get(name) ?? compile(name);
    modules.set(name, begun);
    begun.catch(() => modules.delete(name));
    return begun;
  };
  const { near } = dataset;
  if (near && location.protocol !== "file:" && !navigator.connection?.saveData) globalThis.engineModule(near).catch(() => {});

  /** @param {(line: Element) => void} change */
  const lines = (change) => document.querySelectorAll(".offline").forEach(change);
  const again = () => {
    const button = document.createElement("button");
    button.type = "button";
    button.textContent = "Try again";
    button.onclick = () => location.reload();
    return button;
  };
  const told = () => {
    if (location.protocol === "file:") {
      lines((line) => {
        line.append(" Open it through a web server: a page that was opened as a file cannot run it.");
      });
    } else if (!document.documentElement.classList.contains("scripted")) {
      lines((line) => line.replaceChildren("The part of this page that computes could not be loaded. ", again()));
    }
  };
  // By the load event every module has run or failed.
  if (document.readyState === "complete") told();
  else addEventListener("load", told, { once: true });
}
