// The page without a network, and its updates.
//
//   const offline = startOffline();
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

/// Says when a worker of this registration waits behind the one that serves this page.
function watch(registration: ServiceWorkerRegistration, newer: Signal<boolean>): void {
  const look = (): void => {
    newer.value = registration.waiting !== null && navigator.serviceWorker.controller !== null;
  };
  const follow = (): void => registration.installing?.addEventListener("statechange", look);
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
  watch(registration, newer);
  lookNowAndThen(registration);
  await container.ready;
  state.value = "ready";
}

export function startOffline(): Offline {
  const state = signal<State>("off");
  const newer = signal(false);
  const container = import.meta.env.PROD ? (navigator.serviceWorker as ServiceWorkerContainer | undefined) : undefined;
  if (container === undefined) return { state, newer, takeNewer: async () => undefined };
  state.value = "getting";
  void register(container, state, newer).catch(() => {
    state.value = container.controller === null ? "off" : "ready";
  });
  const takeNewer = async (): Promise<void> => {
    const registration = await container.getRegistration();
    if (!registration?.waiting) return;
    container.addEventListener("controllerchange", () => location.reload(), { once: true });
    registration.waiting.postMessage("take-over");
  };
  return { state, newer, takeNewer };
}
