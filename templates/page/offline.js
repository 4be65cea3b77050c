// Keeps the guide on this device for when there is no signal, or removes it again.
import { one } from "./dom.js";
import { sameOrigin } from "./policy.js";
import { say } from "./say.js";
import { t } from "./text.js";

/**
 * Under which a tab knows that the copy is not wanted, for as long as it is open.
 * @param {string} scope
 */
const removed = (scope) => `plumbline-offline-removed ${scope}`;

/** @param {string} scope */
const drop = async (scope) => {
  for (const name of await caches.keys()) if (name.startsWith(`plumbline ${scope} `)) await caches.delete(name);
};

/**
 * Lets the button that a page keeps for it remove the copy.
 * @param {HTMLElement} place
 * @param {ServiceWorkerRegistration} worker
 */
const offer = (place, worker) => {
  const button = one(place, "button");
  button.onclick = async () => {
    try {
      sessionStorage.setItem(removed(worker.scope), "1");
    } catch { /* it comes back with the next page */ }
    await worker.unregister();
    await drop(worker.scope);
    place.textContent = t("The offline copy is removed. It comes back at your next visit.");
    say(place.textContent);
  };
  place.hidden = false;
};

/**
 * Registers the service worker at that address.
 * @param {string} address
 */
export async function offline(address) {
  const url = new URL(address, document.baseURI).href;
  if (sessionStorage.getItem(removed(new URL("./", url).href))) return;
  offer(one(document, "[data-offline]"), await navigator.serviceWorker.register(sameOrigin(url), { updateViaCache: "none" }));
}
