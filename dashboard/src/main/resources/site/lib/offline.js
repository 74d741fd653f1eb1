// Lets the site open without a network, where the browser allows it: over HTTPS, or on the machine
// itself. Elsewhere the page still keeps what is noted while it stays open.
import { ownScript } from './own-script.js';

/** Starts the worker that keeps the site on this device. */
export function keepForOffline() {
  if (!('serviceWorker' in navigator)) {
    return;
  }
  addEventListener('load', () =>
    navigator.serviceWorker.register(ownScript('/worker.js')).catch(() => {
      // A browser that refuses still shows the page while there is a network.
    }),
  );
}
