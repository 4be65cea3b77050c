// A preview shows the guide as it is now: a service worker that a published guide has
// left at this address gives its place to this one, which removes both.
{
  const worker = /** @type {ServiceWorkerGlobalScope} */ (/** @type {unknown} */ (globalThis));
  const leave = async () => {
    const { scope } = worker.registration;
    for (const name of await caches.keys()) if (name.startsWith(`plumbline ${scope} `)) await caches.delete(name);
    await worker.registration.unregister();
    for (const client of await worker.clients.matchAll({ type: "window" })) await client.navigate(client.url);
  };
  worker.oninstall = () => worker.skipWaiting();
  worker.onactivate = (event) => event.waitUntil(leave());
}
