// Keeps the built files, so that the page opens without a network. The build puts in what the files are (vite.config.js).
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

// What is kept is of one build; another build has another worker, which keeps its own files and drops these.
self.addEventListener("fetch", (event) => {
  if (event.request.method !== "GET") return;
  event.respondWith(
    caches.match(event.request, { ignoreSearch: true }).then((kept) => kept ?? fetch(event.request)),
  );
});
