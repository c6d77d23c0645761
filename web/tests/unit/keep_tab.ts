// A browser for the keep's tests: storage in memory, locks as the Web Locks API has them, and tabs that share both.
import { IDBFactory } from "fake-indexeddb";
import "fake-indexeddb/auto";
import type { Environment } from "../../keep/environment";
import { openKeep } from "../../keep/keep";
import { Store } from "../../keep/store";
import type { Keep, Kept } from "../../keep/types";
import type { Locks } from "../../keep/writer";

type Waiting = () => void;

/// Locks after https://www.w3.org/TR/web-locks/: exclusive ones, in the order of asking, with `ifAvailable` and `signal`.
export class FakeLocks implements Locks {
  private readonly lines = new Map<string, Waiting[]>();

  async request<T>(
    name: string,
    options: { readonly ifAvailable?: boolean; readonly signal?: AbortSignal },
    act: (lock: object | null) => Promise<T>,
  ): Promise<T> {
    const line = this.lines.get(name);
    if (line !== undefined && options.ifAvailable === true) return act(null);
    if (line === undefined) this.lines.set(name, []);
    else await this.turn(line, options.signal);
    try {
      return await act({ name });
    } finally {
      this.next(name);
    }
  }

  private turn(line: Waiting[], signal: AbortSignal | undefined): Promise<void> {
    return new Promise((resolve, reject) => {
      line.push(resolve);
      signal?.addEventListener("abort", () => {
        line.splice(line.indexOf(resolve), 1);
        reject(new DOMException("no longer wanted", "AbortError"));
      });
    });
  }

  private next(name: string): void {
    const waiting = this.lines.get(name)?.shift();
    if (waiting === undefined) this.lines.delete(name);
    else waiting();
  }
}

/// One browser with an empty storage. Each keep is a tab of it; each store it opened is there to be broken.
export class Browser {
  readonly stores: Store[] = [];
  readonly locks: Locks | undefined;
  time = 1_000;
  private readonly tabs: Keep[] = [];
  private count = 0;

  constructor(locks: Locks | undefined = new FakeLocks()) {
    globalThis.indexedDB = new IDBFactory();
    Object.defineProperty(globalThis, "navigator", { value: {}, configurable: true });
    this.locks = locks;
  }

  async tab(given: Partial<Environment> = {}): Promise<Keep> {
    const keep = await openKeep({
      openStore: async () => {
        const store = await Store.open();
        this.stores.push(store);
        return store;
      },
      locks: this.locks,
      storage: undefined,
      now: () => this.time,
      newId: () => `job-${++this.count}`,
      ...given,
    });
    this.tabs.push(keep);
    return keep;
  }

  close(): void {
    for (const tab of this.tabs) tab.close();
  }
}

/// A job document of this name; `more` tells texts apart.
export function jobOf(name: string, more = ""): string {
  return `${JSON.stringify({ stringcourse: 1, name, notes: more }, null, 2)}\n`;
}

export function worthOf<T>(kept: Kept<T>): T {
  if (!kept.ok) throw new Error(`${kept.trouble.kind}: ${kept.trouble.detail}`);
  return kept.value;
}

export function troubleOf<T>(kept: Kept<T>): { readonly kind: string; readonly text: string } {
  if (kept.ok) throw new Error("there is no trouble");
  return { kind: kept.trouble.kind, text: kept.trouble.text };
}
