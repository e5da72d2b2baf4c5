// Keeps the app's own files, so that it works without a network. FILES and VERSION are put here by the build.
const FILES = self.__FILES__;
const CACHE = `legwright ${self.__VERSION__}`;

self.addEventListener('install', (event) => {
  // Past the browser's own cache, so that files of one build are never mixed with those of another.
  const requests = FILES.map((file) => new Request(file, { cache: 'reload' }));
  event.waitUntil(caches.open(CACHE).then((cache) => cache.addAll(requests)));
});

self.addEventListener('activate', (event) => {
  event.waitUntil(
    caches
      .keys()
      .then((names) =>
        Promise.all(
          names
            .filter((name) => name.startsWith('legwright ') && name !== CACHE)
            .map((name) => caches.delete(name)),
        ),
      )
      .then(() => self.clients.claim()),
  );
});

self.addEventListener('message', (event) => {
  if (event.data === 'take over') self.skipWaiting();
});

self.addEventListener('fetch', (event) => {
  const { request } = event;
  if (request.method !== 'GET' || new URL(request.url).origin !== self.location.origin) return;
  const wanted = request.mode === 'navigate' ? new URL('./', self.registration.scope).href : request;
  event.respondWith(
    caches
      .open(CACHE)
      .then((cache) => cache.match(wanted, { ignoreVary: true, ignoreSearch: request.mode === 'navigate' }))
      .then((kept) => kept ?? fetch(request)),
  );
});
