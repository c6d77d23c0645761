// The service worker, run as a browser runs it: a build's files are fetched once and then come without a network.
import { mkdir, mkdtemp, rm, writeFile } from "node:fs/promises";
import { tmpdir } from "node:os";
import { dirname, join } from "node:path";
import { runInNewContext } from "node:vm";
import { afterEach, beforeEach, expect, test } from "vitest";
import { workerText } from "../../offline/precache_plugin";

const kScope = "https://host.example/folder/";
type Asked = { readonly url: string; readonly mode?: string; readonly method?: string };

function addressOf(asked: Asked | string): string {
  return typeof asked === "string" ? asked : asked.url;
}

/// Caches as the Service Worker standard has them; an answer with Vary only matches when that is ignored.
class PlayedCaches {
  readonly all = new Map<string, Map<string, Response>>();

  async open(name: string) {
    const cache = this.all.get(name) ?? new Map<string, Response>();
    this.all.set(name, cache);
    return {
      match: async (asked: Asked | string, how: CacheQueryOptions) => found(cache, asked, how),
      put: async (asked: Asked | string, response: Response) => void cache.set(addressOf(asked), response),
    };
  }

  async match(asked: Asked | string, how: CacheQueryOptions): Promise<Response | undefined> {
    for (const cache of this.all.values()) {
      const response = found(cache, asked, how);
      if (response !== undefined) return response;
    }
    return undefined;
  }

  async keys(): Promise<string[]> {
    return [...this.all.keys()];
  }

  async delete(name: string): Promise<boolean> {
    return this.all.delete(name);
  }
}

function found(cache: Map<string, Response>, asked: Asked | string, how: CacheQueryOptions): Response | undefined {
  const address = addressOf(asked);
  const response = cache.get(how.ignoreSearch === true ? (address.split("?")[0] ?? "") : address);
  if (response === undefined || (response.headers.has("vary") && how.ignoreVary !== true)) return undefined;
  return Object.defineProperty(response.clone(), "redirected", { value: response.redirected });
}

/// A static host: what is under each address, and what was asked of it. `down`: no network.
class Host {
  readonly files = new Map<string, string>();
  readonly asked: string[] = [];
  down = false;
  led = "";

  fetch = async (asked: Asked): Promise<Response> => {
    if (this.down) throw new TypeError("no network");
    this.asked.push(asked.url.slice(kScope.length));
    const text = this.files.get(asked.url.slice(kScope.length));
    const response = new Response(text ?? "", { status: text === undefined ? 404 : 200, headers: { Vary: "Origin" } });
    if (asked.url.endsWith(this.led) && this.led !== "") Object.defineProperty(response, "redirected", { value: true });
    return response;
  };
}

type Happening = { waitUntil(done: Promise<unknown>): void; respondWith(answer: Promise<Response>): void };

class Worker {
  skipped = 0;
  claimed = 0;
  private readonly hears = new Map<string, (event: object) => void>();

  constructor(text: string, caches: PlayedCaches, host: Host, scope: string) {
    const self = {
      registration: { scope },
      clients: { claim: async () => void ++this.claimed },
      skipWaiting: async () => void ++this.skipped,
      addEventListener: (name: string, hear: (event: object) => void) => void this.hears.set(name, hear),
    };
    class Request {
      readonly url: string;
      constructor(url: string) {
        this.url = url;
      }
    }
    runInNewContext(text, { self, caches, fetch: host.fetch, Request, Response, URL });
  }

  async happen(name: string, given: object = {}): Promise<Response | undefined> {
    const done: Promise<unknown>[] = [];
    let answer: Promise<Response> | undefined;
    const happening: Happening = {
      waitUntil: (promise) => void done.push(promise),
      respondWith: (promise) => {
        answer = promise;
      },
    };
    this.hears.get(name)?.({ ...given, ...happening });
    await Promise.all(done);
    return answer;
  }

  async start(): Promise<this> {
    await this.happen("install");
    await this.happen("activate");
    return this;
  }

  /// The text that comes for an address; undefined: the worker leaves the request alone.
  async get(url: string, mode = "no-cors", method = "GET"): Promise<string | undefined> {
    return (await this.happen("fetch", { request: { url, mode, method } }))?.text();
  }
}

let folder: string;
let caches: PlayedCaches;
let host: Host;
beforeEach(async () => {
  folder = await mkdtemp(join(tmpdir(), "offline-"));
  caches = new PlayedCaches();
  host = new Host();
});
afterEach(() => rm(folder, { recursive: true }));

const kBuild = {
  "index.html": "page",
  "assets/index-1.js": "code",
  "assets/engine-1.wasm": "engine",
  "icon.svg": "icon",
};

/// A build in the folder, handed out by the host, and its worker.
async function built(files: Readonly<Record<string, string>>, scope = kScope): Promise<Worker> {
  await rm(folder, { recursive: true });
  host.files.clear();
  for (const [name, text] of Object.entries(files)) {
    await mkdir(dirname(join(folder, name)), { recursive: true });
    await writeFile(join(folder, name), text);
    host.files.set(name, text);
  }
  return new Worker(await workerText(folder), caches, host, scope);
}

test("all files of a build are fetched at the install, the worker's own not", async () => {
  await (await built({ ...kBuild, "sw.js": "worker" })).happen("install");
  expect(host.asked.sort()).toEqual(Object.keys(kBuild).sort());
});

test("without a network the page and each of its files come, whatever stands behind the question mark", async () => {
  const worker = await (await built(kBuild)).start();
  host.down = true;
  for (const [name, text] of Object.entries(kBuild)) expect(await worker.get(kScope + name)).toBe(text);
  expect(await worker.get(`${kScope}?from=home`, "navigate")).toBe("page");
  expect(await worker.get(`${kScope}index.html?x`, "navigate")).toBe("page");
  expect(await worker.get(`${kScope}somewhere`, "navigate")).toBe("page");
  await expect(worker.get(`${kScope}other.js`)).rejects.toThrow("no network");
});

test("requests to other places, and those that send something, are left alone", async () => {
  const worker = await (await built(kBuild)).start();
  expect(await worker.get("https://elsewhere.example/folder/index.html")).toBeUndefined();
  expect(await worker.get("https://host.example/index.html")).toBeUndefined();
  expect(await worker.get(kScope, "cors", "POST")).toBeUndefined();
});

test("a page that its host leads on to another address is kept as an answer that was not led on", async () => {
  host.led = "index.html";
  const worker = await (await built(kBuild)).start();
  const response = await worker.happen("fetch", { request: { url: kScope, mode: "navigate", method: "GET" } });
  expect(response?.redirected).toBe(false);
  expect(await response?.text()).toBe("page");
});

test("a newer version waits until it is asked, fetches only what is new, and keeps one version before it", async () => {
  const first = await (await built(kBuild)).start();
  host.asked.length = 0;
  const second = await built({ ...kBuild, "index.html": "page 2", "assets/index-2.js": "code 2" });
  await second.happen("install");
  expect(host.asked.sort()).toEqual(["assets/index-2.js", "icon.svg", "index.html"]);
  expect(await first.get(kScope, "navigate")).toBe("page");
  expect(second.skipped).toBe(0);
  await second.happen("message", { data: "take-over" });
  expect(second.skipped).toBe(1);

  await second.happen("activate");
  expect(second.claimed).toBe(1);
  expect(caches.all.size).toBe(2);
  const third = await built({ ...kBuild, "index.html": "page 3" });
  await third.start();
  expect(await third.get(kScope, "navigate")).toBe("page 3");
  expect(caches.all.size).toBe(2);
});

test("a version that does not come whole leaves nothing behind, and the one before goes on", async () => {
  const first = await (await built(kBuild)).start();
  const second = await built({ ...kBuild, "index.html": "page 2", "assets/index-2.js": "code 2" });
  host.files.delete("assets/index-2.js");
  await expect(second.happen("install")).rejects.toThrow("assets/index-2.js: 404");
  expect(caches.all.size).toBe(1);
  host.down = true;
  expect(await first.get(kScope, "navigate")).toBe("page");
});

test("versions in another folder of the same host end no cache of this one", async () => {
  const worker = await (await built(kBuild)).start();
  for (const page of ["1", "2", "3"]) {
    const other = await built({ "index.html": page }, `${kScope}inner/`);
    host.files.set("inner/index.html", page);
    await other.start();
  }
  host.down = true;
  expect(await worker.get(kScope, "navigate")).toBe("page");
});

test("any changed byte makes another version, equal builds the same", async () => {
  await built(kBuild);
  const text = await workerText(folder);
  await built(kBuild);
  expect(await workerText(folder)).toBe(text);
  await built({ ...kBuild, "icon.svg": "icoN" });
  expect(await workerText(folder)).not.toBe(text);
});
