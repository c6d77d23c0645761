// The page without a network. Built by precache_plugin.ts, which puts before this text:
//   kVersion  the hash of everything in the build     kFiles  every file of the build, relative to this one
// A version waits until it is asked to take over, or until no page of the version before is open (the browser's own rule).
// The version before keeps its files one generation longer: another tab may still need them.
const kPrefix = "stringcourse-";
const kLoose = { ignoreSearch: true, ignoreVary: true };

const cacheName = kPrefix + kVersion;
const ours = async () => (await caches.keys()).filter((name) => name.startsWith(kPrefix));
const addressOf = (file) => new URL(file, self.registration.scope).href;
// The name of such a file changes with its bytes: a copy that is here already will do.
const isHashed = (file) => file.startsWith("assets/");

async function get(cache, file) {
  const address = addressOf(file);
  const known = isHashed(file) ? await caches.match(address, kLoose) : undefined;
  const response = known ?? (await fetch(new Request(address, { cache: "no-cache" })));
  if (!response.ok) throw new Error(`${file}: ${response.status}`);
  await cache.put(address, response);
}

async function install() {
  const cache = await caches.open(cacheName);
  await Promise.all(kFiles.map((file) => get(cache, file)));
}

async function activate() {
  const older = (await ours()).filter((name) => name !== cacheName);
  await Promise.all(older.slice(0, -1).map((name) => caches.delete(name)));
  await self.clients.claim();
}

async function answer(request) {
  const url = new URL(request.url);
  const isPage = request.mode === "navigate" && url.pathname === new URL(self.registration.scope).pathname;
  const wanted = isPage ? addressOf("index.html") : request;
  const cache = await caches.open(cacheName);
  return (await cache.match(wanted, kLoose)) ?? (await caches.match(wanted, kLoose)) ?? fetch(request);
}

self.addEventListener("install", (event) => event.waitUntil(install()));
self.addEventListener("activate", (event) => event.waitUntil(activate()));
self.addEventListener("message", (event) => {
  if (event.data === "take-over") event.waitUntil(self.skipWaiting());
});
self.addEventListener("fetch", (event) => {
  const { request } = event;
  if (request.method === "GET" && request.url.startsWith(self.registration.scope)) event.respondWith(answer(request));
});
