// Lets the site open without a network, where the browser allows it: over HTTPS, or on the machine
// itself. Elsewhere the page still keeps what is noted while it stays open.
import { ownScript } from './own-script.js';

/** By then the page is there; what is kept for later does not hold it up. */
const WHEN_SHOWN_MS = 3000;

/** Starts the worker that keeps the site on this device. */
export function keepForOffline() {
  if ('serviceWorker' in navigator) {
    setTimeout(() => {
      navigator.serviceWorker.register(ownScript('/worker.js')).catch(() => {
        // A browser that refuses still shows the page while there is a network.
      });
    }, WHEN_SHOWN_MS);
  }
}
