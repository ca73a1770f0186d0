/* Shows an open sheet when there is no network: the page as it was last, for a day at most, and what it is drawn with.
   Nothing else of the service is kept. A page that the service does not show any more is forgotten. */
const LOOK = 'lapwing-look';
const PAGE = 'lapwing-sheet:';
const KEPT_AT = 'X-Kept-At';
const LONGEST = 24 * 3600 * 1000;
const PATIENCE = 4000;

const sheet = () => new URL(self.registration.scope).pathname;

self.addEventListener('install', () => self.skipWaiting());
self.addEventListener('activate', (event) => event.waitUntil(self.clients.claim()));

self.addEventListener('fetch', (event) => {
  const url = new URL(event.request.url);
  if (event.request.method !== 'GET' || url.origin !== location.origin) return;
  if (event.request.mode === 'navigate' && url.pathname === sheet()) {
    event.respondWith(networkFirst(event, PAGE + sheet(), sheet()));
  } else if (url.pathname.startsWith('/look/') || url.pathname.startsWith('/webjars/')) {
    event.respondWith(networkFirst(event, LOOK, url.pathname));
  }
});

/* The page asks to be kept, with what it is drawn with. */
self.addEventListener('message', (event) => {
  event.waitUntil((async () => {
    await keep(PAGE + sheet(), sheet(), await fetch(sheet(), { headers: { Accept: 'text/html' }, redirect: 'manual' }));
    await Promise.all(event.data.look.map(async (path) => keep(LOOK, path, await fetch(path))));
    event.ports[0].postMessage('kept');
  })());
});

async function networkFirst(event, cacheName, path) {
  const fromNetwork = fetch(event.request).then(async (response) => {
    await keep(cacheName, path, response.clone());
    return response;
  });
  event.waitUntil(fromNetwork.catch(() => undefined));
  const slow = new Promise((resolve) => { setTimeout(resolve, PATIENCE); });
  try {
    const first = await Promise.race([fromNetwork, slow]);
    return first || (await kept(cacheName, path)) || (await fromNetwork);
  } catch (noNetwork) {
    return (await kept(cacheName, path)) || Response.error();
  }
}

async function keep(cacheName, path, response) {
  if (response.status >= 500) return;
  if (!response.ok || response.redirected) {
    await caches.delete(cacheName);
    return;
  }
  const headers = new Headers(response.headers);
  headers.set(KEPT_AT, String(Date.now()));
  const cache = await caches.open(cacheName);
  await cache.put(path, new Response(await response.blob(), { headers }));
}

async function kept(cacheName, path) {
  const cache = await caches.open(cacheName);
  const response = await cache.match(path);
  const fresh = response && Date.now() - Number(response.headers.get(KEPT_AT)) < LONGEST;
  return fresh ? response : undefined;
}
