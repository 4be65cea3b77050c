// Keeps one whole version of this guide on the device and answers from it, so that the
// guide works without a signal. What it keeps is listed in guide, which the publication
// writes above this line: addresses in the guide's folder, and the hash of each file.
{
  const worker = /** @type {ServiceWorkerGlobalScope} */ (/** @type {unknown} */ (globalThis));
  const { scope } = worker.registration;
  const prefix = `plumbline ${scope} `; // no other guide of this host has it
  const mine = prefix + guide.version;

  /** @param {string} path */
  const at = (path) => new URL(path, scope).href;

  /**
   * Fetches a file as it was published with this list, or fails: so no two versions mix.
   * @param {string} path
   */
  const fetched = async (path) => {
    const answer = await fetch(at(path), {
      cache: path.startsWith("assets/") ? "default" : "no-cache",
      integrity: `sha256-${guide.files[path]}`,
    });
    if (!answer.ok) throw new Error(`${path}: ${answer.status}`);
    // A page that was led elsewhere on its way may not answer a navigation.
    return answer.redirected ? new Response(await answer.blob(), { headers: answer.headers }) : answer;
  };

  // One file after the other, so that whoever reads meanwhile does not wait; what an
  // earlier visit has fetched is there already.
  const install = async () => {
    const cache = await caches.open(mine);
    for (const path of Object.keys(guide.files)) {
      if (await cache.match(at(path))) continue;
      // Names in assets/ say what is in them, so another version's file is the same.
      await cache.put(at(path), path.startsWith("assets/") && await caches.match(at(path)) || await fetched(path));
    }
    await worker.skipWaiting();
  };

  const kept = async () => (await caches.keys()).filter((name) => name.startsWith(prefix));

  // The version before stays until the next, for pages that are still open: what they
  // load later comes from their own version's folder in assets/.
  const activate = async () => {
    const others = (await kept()).filter((name) => name !== mine);
    for (const name of others.slice(0, -1)) await caches.delete(name);
    await worker.clients.claim();
  };

  // Where the guide was taken off its host, nothing of it stays here.
  const leave = async () => {
    const { status } = await fetch(worker.location.href, { cache: "no-store" });
    if (status !== 404 && status !== 410) return;
    await worker.registration.unregister();
    for (const name of await kept()) await caches.delete(name);
  };

  /**
   * @param {string} url
   * @param {Request} request
   */
  const answer = async (url, request) => {
    const path = url.slice(scope.length), engine = /^assets\/engine-[^/]+\//.exec(path)?.[0];
    const names = path.startsWith("assets/") ? await kept() : [mine];
    // The whole engine answers what a section's does.
    for (const wanted of engine && path.endsWith(".wasm") ? [url, at(`${engine}whole.wasm`)] : [url]) {
      for (const name of names) {
        const found = await caches.match(wanted, { cacheName: name }); // opening it would make it anew
        if (found) return found;
      }
    }
    return fetch(request);
  };

  worker.oninstall = (event) => event.waitUntil(install());
  worker.onactivate = (event) => event.waitUntil(activate());
  worker.onfetch = (event) => {
    const { request } = event, url = new URL(request.url);
    url.hash = url.search = "";
    if (url.pathname.endsWith("/")) url.pathname += "index.html";
    if (request.method !== "GET" || !url.href.startsWith(scope)) return;
    if (request.mode === "navigate") event.waitUntil(leave().catch(() => {}));
    const path = url.href.slice(scope.length);
    if (path in guide.files || path.startsWith("assets/")) event.respondWith(answer(url.href, request));
  };
}
