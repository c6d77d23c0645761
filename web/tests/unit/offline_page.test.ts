// The page's side of updates: what it says of its worker, and when it loads anew.
import { afterEach, beforeEach, expect, test, vi } from "vitest";
import { startOffline } from "../../offline";

class PlayedWorker extends EventTarget {
  readonly postMessage = vi.fn();
  state = "installing";
}

class PlayedRegistration extends EventTarget {
  installing: PlayedWorker | null = null;
  waiting: PlayedWorker | null = null;
  active: PlayedWorker | null = null;
  readonly update = vi.fn(async () => undefined);

  /// A worker begins to install, then goes on to `to`; "redundant": its install failed.
  install(to: "waiting" | "active" | "redundant"): PlayedWorker {
    const worker = new PlayedWorker();
    this.installing = worker;
    this.dispatchEvent(new Event("updatefound"));
    this.installing = null;
    worker.state = to;
    if (to !== "redundant") this[to] = worker;
    worker.dispatchEvent(new Event("statechange"));
    return worker;
  }
}

class PlayedContainer extends EventTarget {
  controller: PlayedWorker | null = null;
  readonly registration = new PlayedRegistration();
  becomeReady: () => void = () => undefined;
  readonly ready = new Promise<void>((resolve) => {
    this.becomeReady = resolve;
  });
  readonly register = vi.fn(async (_url: URL) => this.registration);
  readonly getRegistration = async () => this.registration;

  change(): void {
    this.controller = new PlayedWorker();
    this.dispatchEvent(new Event("controllerchange"));
  }
}

let container: PlayedContainer;
const reload = vi.fn();
beforeEach(() => {
  container = new PlayedContainer();
  reload.mockReset();
  vi.stubEnv("PROD", true);
  vi.stubGlobal("navigator", { serviceWorker: container });
  vi.stubGlobal("location", { protocol: "https:", reload });
  const visible = { baseURI: "https://host.example/folder/?x", visibilityState: "visible" };
  vi.stubGlobal("document", Object.assign(new EventTarget(), visible));
});
afterEach(() => {
  vi.unstubAllGlobals();
  vi.unstubAllEnvs();
  vi.useRealTimers();
});

/// The page after its worker was registered.
async function started(served: "served" | "first visit") {
  if (served === "served") {
    container.controller = new PlayedWorker();
    container.registration.active = container.controller;
  }
  const offline = startOffline(Promise.resolve());
  await vi.waitFor(() => expect(container.register).toHaveBeenCalled());
  if (served === "served") {
    container.becomeReady();
    await vi.waitFor(() => expect(offline.state.value).toBe("ready"));
  }
  await new Promise((done) => setTimeout(done));
  return offline;
}

test("the worker is registered beside the page, in whatever folder that is", async () => {
  await started("first visit");
  expect(container.register.mock.calls[0]?.[0].href).toBe("https://host.example/folder/sw.js");
});

test("a page from a file, or in a browser without workers, is off", () => {
  vi.stubGlobal("location", { protocol: "file:", reload });
  expect(startOffline(Promise.resolve()).state.value).toBe("off");
  expect(container.register).not.toHaveBeenCalled();
  vi.stubGlobal("location", { protocol: "https:", reload });
  vi.stubGlobal("navigator", {});
  expect(startOffline(Promise.resolve()).state.value).toBe("off");
});

test("a first visit gets its files, is then ready, and does not load anew", async () => {
  const offline = await started("first visit");
  expect(offline.state.value).toBe("getting");
  container.registration.install("active");
  container.change();
  container.becomeReady();
  await vi.waitFor(() => expect(offline.state.value).toBe("ready"));
  expect(offline.newer.value).toBe(false);
  expect(reload).not.toHaveBeenCalled();
});

test("a first visit whose files do not all come is off", async () => {
  const offline = await started("first visit");
  container.registration.install("redundant");
  expect(offline.state.value).toBe("off");
});

test("a host that has no worker: off on a first visit, ready where an earlier one serves", async () => {
  container.register.mockRejectedValue(new TypeError("404"));
  const first = startOffline(Promise.resolve());
  await vi.waitFor(() => expect(first.state.value).toBe("off"));
  container.controller = new PlayedWorker();
  const later = startOffline(Promise.resolve());
  await vi.waitFor(() => expect(later.state.value).toBe("ready"));
});

test("a newer version is told, taken when asked, and loaded once", async () => {
  const offline = await started("served");
  expect(offline.newer.value).toBe(false);
  const waiting = container.registration.install("waiting");
  expect(offline.newer.value).toBe(true);
  expect(waiting.postMessage).not.toHaveBeenCalled();
  await offline.takeNewer();
  expect(waiting.postMessage.mock.calls).toEqual([["take-over"]]);
  expect(reload).not.toHaveBeenCalled();
  container.change();
  container.change();
  expect(reload).toHaveBeenCalledOnce();
});

test("a newer version that waits since an earlier visit is told at once", async () => {
  container.registration.waiting = new PlayedWorker();
  expect((await started("served")).newer.value).toBe(true);
});

test("a newer version taken in another tab is told here, and loads only when asked", async () => {
  const offline = await started("served");
  container.change();
  expect(offline.newer.value).toBe(true);
  expect(reload).not.toHaveBeenCalled();
  await offline.takeNewer();
  expect(reload).toHaveBeenCalledOnce();
});

test("a page that comes to the front asks for a newer version, once an hour at most", async () => {
  vi.useFakeTimers({ toFake: ["Date"] });
  await started("served");
  const front = (): boolean => document.dispatchEvent(new Event("visibilitychange"));
  front();
  expect(container.registration.update).not.toHaveBeenCalled();
  vi.setSystemTime(Date.now() + 3_600_000);
  front();
  front();
  expect(container.registration.update).toHaveBeenCalledOnce();
});
