// The page without a network, and its updates.
//
//   const offline = startOffline(first);    // once `first` has come: until then the network is for the page itself
//   offline.state.value     // "off" | "getting" | "ready" : ready = the next start needs no network
//   offline.newer.value     // true: a newer version is here and waits; it comes with the next cold start, or by
//   offline.takeNewer()     // (store everything first: the page loads anew)
import { type ReadonlySignal, type Signal, signal } from "@preact/signals";

export interface Offline {
  readonly state: ReadonlySignal<"off" | "getting" | "ready">;
  readonly newer: ReadonlySignal<boolean>;
  takeNewer(): Promise<void>;
}

type State = "off" | "getting" | "ready";

const kBetweenLooks = 3_600_000; // how often a page that stays open asks for a newer version, in milliseconds

/// Says when a worker of this registration waits behind the one that serves, and when the first one fails.
function watch(registration: ServiceWorkerRegistration, state: Signal<State>, newer: Signal<boolean>): void {
  const look = (): void => {
    if (registration.waiting !== null && registration.active !== null) newer.value = true;
  };
  const follow = (): void => {
    const worker = registration.installing;
    worker?.addEventListener("statechange", () => {
      look();
      if (worker.state === "redundant" && registration.active === null) state.value = "off";
    });
  };
  look();
  follow();
  registration.addEventListener("updatefound", follow);
}

/// Asks for a newer version when the page comes to the front, now and then.
function lookNowAndThen(registration: ServiceWorkerRegistration): void {
  let last = Date.now();
  document.addEventListener("visibilitychange", () => {
    if (document.visibilityState !== "visible" || Date.now() - last < kBetweenLooks) return;
    last = Date.now();
    void registration.update().catch(() => undefined); // no network: another time
  });
}

async function register(
  container: ServiceWorkerContainer,
  state: Signal<State>,
  newer: Signal<boolean>,
): Promise<void> {
  const registration = await container.register(new URL("sw.js", document.baseURI));
  watch(registration, state, newer);
  lookNowAndThen(registration);
  await container.ready;
  state.value = "ready";
}

/// The worker behind this page changes when it is asked to here, or in another tab; this tab then still runs the page of
/// the version before, and loading it anew brings the newer one. The first worker of all changes nothing.
function takenNewer(container: ServiceWorkerContainer, newer: Signal<boolean>): () => Promise<void> {
  let served = container.controller !== null;
  let asked = false;
  let taken = false;
  container.addEventListener("controllerchange", () => {
    if (asked) {
      asked = false;
      location.reload();
    } else if (served) {
      taken = true;
      newer.value = true;
    }
    served = true;
  });
  return async () => {
    const waiting = (await container.getRegistration())?.waiting;
    if (waiting) {
      asked = true;
      waiting.postMessage("take-over");
    } else if (taken) location.reload();
  };
}

/// So long the page itself may take, milliseconds; then its files are kept all the same.
const kPatience = 20_000;

export function startOffline(first: Promise<unknown>): Offline {
  const state = signal<State>("off");
  const newer = signal(false);
  const container = import.meta.env.PROD ? (navigator.serviceWorker as ServiceWorkerContainer | undefined) : undefined;
  if (container === undefined || location.protocol === "file:") {
    return { state, newer, takeNewer: async () => undefined };
  }
  state.value = "getting";
  const late = new Promise((resolve) => setTimeout(resolve, kPatience));
  const begin = (): Promise<void> => register(container, state, newer);
  void Promise.race([first, late])
    .then(begin, begin)
    .catch(() => {
      state.value = container.controller === null ? "off" : "ready";
    });
  return { state, newer, takeNewer: takenNewer(container, newer) };
}
