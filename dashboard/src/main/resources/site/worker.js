// Keeps the site on the phone, so that it opens in a barn without a network: what a walk from lot to lot
// needs, and every other file that was fetched once. What the shed answers is none of its business:
// pages keep that themselves, and say how old it is.
const SITE = 'site-1';
const PATIENCE_MS = 4000;
const BARN = [
  '/',
  '/early.js',
  '/app.js',
  '/styles/site.css',
  '/lots/lots.js',
  '/lots/lot.js',
  '/lots/sheets.js',
  '/lots/air.js',
];

self.addEventListener('install', (event) => {
  event.waitUntil(caches.open(SITE).then((site) => site.addAll(BARN)));
  self.skipWaiting();
});

self.addEventListener('activate', (event) => event.waitUntil(self.clients.claim()));

self.addEventListener('fetch', (event) => {
  const { request } = event;
  const { origin, pathname } = new URL(request.url);
  if (request.method !== 'GET' || origin !== self.location.origin) {
    return;
  }
  if (!/^\/(api|metrics)\b/.test(pathname)) {
    event.respondWith(shedFirst(request, request.mode === 'navigate' ? '/' : request));
  }
});

/** The shed's file, kept for later; what was kept before where it gives none. */
async function shedFirst(request, key) {
  const store = await caches.open(SITE);
  const known = await store.match(key);
  try {
    const answer = await (known ? inTime(fetch(request)) : fetch(request));
    if (answer.status === 200) {
      await store.put(key, answer.clone());
    }
    return answer;
  } catch (failure) {
    if (known) {
      return known;
    }
    throw failure;
  }
}

const inTime = (answer) =>
  Promise.race([
    answer,
    new Promise((_, reject) => setTimeout(() => reject(new Error('late')), PATIENCE_MS)),
  ]);
