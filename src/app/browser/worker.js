// Keeps a whole release of the page on the device, so that it opens without a network. The build
// (.tools/release.mjs) puts one line before this file: RELEASE, with the release's generation and
// its files, each address relative to the scope, with its SHA-384.
//
// A release is taken whole or not at all: every file is fetched and held to its hash before any is
// stored, and only a full store lets the worker be installed. It then waits until the person asks for it or
// every tab of the old release is closed; until then the old worker serves the old files.

const scope = self.registration.scope;
// The browser keeps one set of stores for a whole host; the scope tells ours from those of the
// site's neighbours, another copy of this page included.
const ours = `slackwater ${scope} `;
const store = ours + RELEASE.generation;
const files = new Map(
  Object.entries(RELEASE.files).map(([name, integrity]) => [new URL(name, scope).href, integrity]),
);

async function fill() {
  const taken = await Promise.all(
    [...files].map(async ([address, integrity]) => {
      // Asked of the host anew: a copy in the browser's own cache may be an old one.
      const response = await fetch(address, { cache: "no-cache", integrity });
      // A redirected answer may not open a page.
      if (!response.ok || response.redirected) throw new Error(`${address}: ${response.status}`);
      return [address, response];
    }),
  );
  // A release that comes back after a withdrawn one finds its store in use: that one must stay.
  const had = await caches.has(store);
  try {
    const cache = await caches.open(store);
    for (const [address, response] of taken) await cache.put(address, response);
  } catch (error) {
    if (!had) await caches.delete(store);
    throw error;
  }
}

async function tidy() {
  const names = await caches.keys();
  await Promise.all(names.filter((name) => name.startsWith(ours) && name !== store).map((name) => caches.delete(name)));
}

async function answer(address, request) {
  const cache = await caches.open(store);
  // The browser may have thrown the store away.
  return (await cache.match(address)) ?? fetch(request);
}

self.addEventListener("install", (event) => event.waitUntil(fill()));
self.addEventListener("activate", (event) => event.waitUntil(tidy()));
self.addEventListener("message", (event) => {
  if (event.data === "take over") self.skipWaiting();
});
self.addEventListener("fetch", (event) => {
  const { request } = event;
  const address = new URL(request.url);
  address.search = "";
  address.hash = "";
  if (address.href === `${scope}index.html`) address.href = scope;
  // What is no file of the release goes its usual way.
  if (request.method === "GET" && files.has(address.href)) event.respondWith(answer(address.href, request));
});
