// Keeps the built files, so the page opens without a network. The build fills in the list of files (vite.config.js).
const FILES = __FILES__;
const PREFIX = "swath-to-spoon-calculator-";
const NAME = PREFIX + __VERSION__;

self.addEventListener("install", (event) => {
  event.waitUntil(
    caches
      .open(NAME)
      .then((cache) => cache.addAll(FILES))
      .then(() => self.skipWaiting()),
  );
});

self.addEventListener("activate", (event) => {
  event.waitUntil(
    caches
      .keys()
      .then((names) => names.filter((name) => name.startsWith(PREFIX) && name !== NAME))
      .then((old) => Promise.all(old.map((name) => caches.delete(name))))
      .then(() => self.clients.claim()),
  );
});

// What a server says its files vary by is no matter: there is one of each. One cache per build. The next build's worker keeps its own files and deletes these.
self.addEventListener("fetch", (event) => {
  if (event.request.method !== "GET") return;
  event.respondWith(
    caches
      .match(event.request, { ignoreSearch: true, ignoreVary: true })
      .then((kept) => kept ?? fetch(event.request)),
  );
});
