// Keeps the page on the phone, so that it opens without network. A newer page
// takes the place of the old one as soon as the phone reaches it.
"use strict";
const kept = "pocket-{{version}}";

self.addEventListener("install", (event) => {
  event.waitUntil(caches.open(kept).then((c) => c.add(new Request("./", { cache: "reload" }))).then(() => self.skipWaiting()));
});

self.addEventListener("activate", (event) => {
  event.waitUntil(caches.keys()
    .then((names) => Promise.all(names.filter((n) => n.startsWith("pocket-") && n !== kept).map((n) => caches.delete(n))))
    .then(() => self.clients.claim()));
});

self.addEventListener("fetch", (event) => {
  if (event.request.mode !== "navigate") return;
  event.respondWith(caches.match("./").then((page) => page || fetch(event.request)));
});
