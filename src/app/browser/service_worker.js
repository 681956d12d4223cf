//! Keeps the whole page on the device, one version at a time.
// xtask writes the version and the list: every file with the sum of its bytes, so that a half-changed host is never kept.
const VERSION = '{{version}}';
const FILES = [
  {{files}}
];
const SCOPE = self.registration.scope;
const OURS = `softcrumb ${SCOPE} `;
const CACHE = OURS + VERSION;
const PAGE = new URL('./', SCOPE).href;

// All files or none. A name that carries its content may come from the browser's own store; the page itself is asked for again.
async function keep() {
  const requests = FILES.map(([address, integrity]) =>
    new Request(new URL(address, SCOPE), { integrity, cache: address === './' ? 'no-cache' : 'default' }));
  const cache = await caches.open(CACHE);
  try {
    await cache.addAll(requests);
  } catch (trouble) {
    await caches.delete(CACHE);
    throw trouble;
  }
}

async function dropOlder() {
  const names = await caches.keys();
  await Promise.all(names.filter((name) => name.startsWith(OURS) && name !== CACHE).map((name) => caches.delete(name)));
  await self.clients.claim();
}

// The page answers at its own address, with or without a file name, whatever stands behind ? or #.
function isPage(address) {
  const path = address.origin + address.pathname;
  return path === PAGE || path === `${PAGE}index.html`;
}

async function answer(request) {
  const cache = await caches.open(CACHE);
  const kept = isPage(new URL(request.url)) ? await cache.match(PAGE) : await cache.match(request);
  return kept ?? fetch(request);
}

self.addEventListener('install', (event) => event.waitUntil(keep()));
self.addEventListener('activate', (event) => event.waitUntil(dropOlder()));
// A new version waits until the user says so on the page.
self.addEventListener('message', (event) => {
  if (event.data?.softcrumb === 'take over') self.skipWaiting();
  if (event.data?.softcrumb === 'serve this page') event.waitUntil(self.clients.claim());
});
self.addEventListener('fetch', (event) => {
  const { request } = event;
  if (request.method === 'GET' && request.url.startsWith(SCOPE)) event.respondWith(answer(request));
});
