// Lets the site open without a network, where the browser allows it: over HTTPS, or on the machine
// itself. Elsewhere the page still keeps what is noted while it stays open.

/** Starts the worker that keeps the site on this device. */
export function keepForOffline() {
  if (!('serviceWorker' in navigator)) {
    return;
  }
  addEventListener('load', () =>
    navigator.serviceWorker.register(ownWorker()).catch(() => {
      // A browser that refuses still shows the page while there is a network.
    }),
  );
}

/** The one script that may be started beside the page, as the content policy wants it said. */
function ownWorker() {
  const path = '/worker.js';
  return globalThis.trustedTypes
    ? trustedTypes.createPolicy('own-worker', { createScriptURL: () => path }).createScriptURL(path)
    : path;
}
