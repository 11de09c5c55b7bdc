/*
 * Keeps the page for when there is no network: its files are laid up at the first visit, what few ask for once somebody has, and
 * served from there. The build writes before this which files there are, and a version that changes with any of them; a new
 * version takes over once no page of the old is open, so that no page is ever made of both. What is typed is not here.
 */

/* global files, whenAsked, version */
const mine = `bodkin ${self.registration.scope}`;
const cache = `${mine} ${version}`;

const layUp = async () => {
  const store = await caches.open(cache);
  await store.addAll(files.map((file) => new Request(file, { cache: 'no-cache' })));
};

const clearOut = async () => {
  const old = (await caches.keys()).filter((name) => name.startsWith(mine) && name !== cache);
  await Promise.all(old.map((name) => caches.delete(name)));
  await self.clients.claim();
};

const found = async (request) => {
  const store = await caches.open(cache);
  const kept = await store.match(request, { ignoreSearch: true });
  if (kept) return kept;
  const answer = await fetch(request);
  if (answer.ok && whenAsked.some((file) => request.url === self.registration.scope + file))
    await store.put(request, answer.clone());
  return answer;
};

self.addEventListener('install', (event) => event.waitUntil(layUp()));
self.addEventListener('activate', (event) => event.waitUntil(clearOut()));
self.addEventListener('fetch', (event) => {
  const { method, url } = event.request;
  if (method === 'GET' && url.startsWith(self.registration.scope)) event.respondWith(found(event.request));
});
