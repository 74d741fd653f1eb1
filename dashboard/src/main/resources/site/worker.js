// Keeps the site on the phone, so that it opens in a barn without a network: what a walk from lot to lot
// needs, and every other file that was fetched once. The files of a build have a store of their own; only when
// a store holds all that the barn needs does it take the place of the one before. What the shed answers is none of
// its business: pages keep that themselves, and say how old it is.
// The server writes a line before this one: `const BUILD = { name, kept }`, this build's name and the files to keep.
const OURS = 'site-';
const STORE = OURS + BUILD.name;
const INDEX = `/index.html?${BUILD.name}`;
const PATIENCE_MS = 4000;

self.addEventListener('install', (event) => {
  event.waitUntil(fill());
  self.skipWaiting();
});

self.addEventListener('activate', (event) => event.waitUntil(takeOver()));

self.addEventListener('fetch', (event) => {
  const { request } = event;
  const { origin, pathname } = new URL(request.url);
  if (request.method !== 'GET' || origin !== self.location.origin) {
    return;
  }
  if (!/^\/(api|metrics)\b/.test(pathname)) {
    event.respondWith(request.mode === 'navigate' ? page(request) : file(request));
  }
});

/** Fetches all that the barn needs, or fails; and what other stores had besides, where it can. */
async function fill() {
  const store = await caches.open(STORE);
  await Promise.all(BUILD.kept.map((address) => fetched(store, address)));
  await Promise.allSettled((await seenBefore()).map((address) => fetched(store, address)));
}

async function fetched(store, address) {
  const answer = await fetch(address);
  if (!mayBeKept(answer)) {
    throw new Error(`${address} is not of this build`);
  }
  await store.put(address, answer);
}

/** What earlier builds had kept, at this build's addresses. */
async function seenBefore() {
  const stores = await Promise.all((await others()).map((name) => caches.open(name)));
  const requests = (await Promise.all(stores.map((store) => store.keys()))).flat();
  return requests
    .map(({ url }) => new URL(url))
    .filter((url) => url.search !== '' || isLibrary(url))
    .map(({ pathname, search }) => (search === '' ? pathname : `${pathname}?${BUILD.name}`));
}

async function takeOver() {
  await Promise.all((await others()).map((name) => caches.delete(name)));
  await self.clients.claim();
}

const others = async () =>
  (await caches.keys()).filter((name) => name.startsWith(OURS) && name !== STORE);

/** The shed's page; the one that was kept where it gives none in time. */
async function page(request) {
  const known = await (await caches.open(STORE)).match(INDEX);
  try {
    return await (known ? inTime(fetch(request)) : fetch(request));
  } catch (failure) {
    if (known) {
      return known;
    }
    throw failure;
  }
}

/** The file that was kept, for it never changes; otherwise the shed's, kept if it is of this build. */
async function file(request) {
  const store = await caches.open(STORE);
  const known = await store.match(request);
  if (known) {
    return known;
  }
  const url = new URL(request.url);
  const isOfThisBuild = url.search === `?${BUILD.name}`;
  try {
    const answer = await fetch(request);
    if ((isOfThisBuild || isLibrary(url)) && mayBeKept(answer)) {
      await store.put(request, answer.clone());
    }
    return answer;
  } catch (failure) {
    // A page of a build that is kept no longer begins anew, with what is kept.
    if (request.destination === 'script' && url.search !== '' && !isOfThisBuild) {
      return new Response('location.reload();\n', { headers: { 'Content-Type': 'text/javascript' } });
    }
    throw failure;
  }
}

/** A library carries its version in its path. */
const isLibrary = ({ pathname }) => /^\/lib\/.*\d+\.\d+\.\d+\//.test(pathname);

/** What the server gives a page of another build is not to be kept. */
const mayBeKept = (answer) =>
  answer.status === 200 && answer.headers.get('Cache-Control') !== 'no-store';

const inTime = (answer) =>
  Promise.race([
    answer,
    new Promise((_, reject) => setTimeout(() => reject(new Error('late')), PATIENCE_MS)),
  ]);
