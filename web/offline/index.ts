// The page without a network, and its updates.
//
//   const offline = startOffline();
//   offline.state.value     // "off" | "getting" | "ready" : ready = the next start needs no network
//   offline.newer.value     // true: a newer version is here and waits; it comes with the next cold start, or by
//   offline.takeNewer()     // (store everything first: the page loads anew)
import type { ReadonlySignal } from "@preact/signals";

export interface Offline {
  readonly state: ReadonlySignal<"off" | "getting" | "ready">;
  readonly newer: ReadonlySignal<boolean>;
  takeNewer(): Promise<void>;
}

export declare function startOffline(): Offline;
