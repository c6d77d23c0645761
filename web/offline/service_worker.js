// The page without a network. Built by precache_plugin.ts, which puts before this text:
//   kVersion  the hash of everything in the build     kFiles  every file of the build, relative to this one
// A version waits until it is asked to take over, or until no page of the version before is open (the browser's own rule).
// The version before keeps its files one generation longer: another tab may still need them.
// The name has the folder in it: other copies of the page on the same host have caches of their own.
const kPrefix = `stringcourse ${self.registration.scope} `;
const kLoose = { ignoreSearch: true, ignoreVary: true };

const cacheName = kPrefix + kVersion;
const ours = async () => (await caches.keys()).filter((name) => name.startsWith(kPrefix));
const addressOf = (file) => new URL(file, self.registration.scope).href;
// The name of such a file changes with its bytes: a copy that is here already will do.
const isHashed = (file) => file.startsWith("assets/");

// A host may lead "index.html" on to "./". Browsers take no answer that was led on for a page that is being opened.
async function plain(response) {
  if (!response.redirected) return response;
  return new Response(await response.blob(), { status: response.status, headers: response.headers });
}

async function get(cache, file) {
  const address = addressOf(file);
  const known = isHashed(file) ? await caches.match(address, kLoose) : undefined;
  // What this visit has fetched already is not fetched again: of a hashed name the browser's copy is right however old.
  const response = known ?? (await fetch(new Request(address, { cache: isHashed(file) ? "force-cache" : "no-cache" })));
  if (!response.ok) throw new Error(`${file}: ${response.status}`);
  await cache.put(address, await plain(response));
}

async function install() {
  const cache = await caches.open(cacheName);
  try {
    await Promise.all(kFiles.map((file) => get(cache, file)));
  } catch (error) {
    await caches.delete(cacheName); // no half versions: the version before stays whole and goes on
    throw error;
  }
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
  const known = (await cache.match(wanted, kLoose)) ?? (await caches.match(wanted, kLoose));
  if (known !== undefined) return known;
  if (request.mode !== "navigate") return fetch(request);
  return fetch(request).catch(() => cache.match(addressOf("index.html"), kLoose));
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
