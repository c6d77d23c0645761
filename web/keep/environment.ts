// What a keep needs of the browser, so that a test can give it something else.
import { Store } from "./store";
import type { Locks } from "./writer";

export interface Environment {
  openStore(): Promise<Store>;
  readonly locks: Locks | undefined;
  /// Where a browser promises to keep everything, if it does.
  readonly storage: Pick<StorageManager, "persist" | "persisted" | "estimate"> | undefined;
  now(): number;
  newId(): string;
}

function newId(): string {
  const bytes = crypto.getRandomValues(new Uint8Array(12));
  return Array.from(bytes, (byte) => byte.toString(16).padStart(2, "0")).join("");
}

export function browserEnvironment(): Environment {
  return {
    openStore: () => Store.open(),
    locks: navigator.locks as unknown as Locks | undefined,
    storage: navigator.storage as StorageManager | undefined,
    now: () => Date.now(),
    newId,
  };
}
