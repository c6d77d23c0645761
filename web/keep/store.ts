// Jobs in IndexedDB. A job's text stands in two slots that take turns; its index entry says what a list shows. The text
// is written first, the entry after it, so that whatever is interrupted leaves a whole text behind.
import { type DBSchema, deleteDB, type IDBPDatabase, type IDBPTransaction, openDB } from "idb";
import { fingerprint } from "./hash";

/// One copy of a job's text. `hash` is that of the text; a copy whose hash is another is torn.
export interface Slot {
  readonly id: string;
  readonly slot: 0 | 1;
  readonly counter: number;
  readonly hash: string;
  readonly text: string;
}

/// What the index says of a job.
export interface Entry {
  readonly id: string;
  readonly name: string;
  readonly createdAt: number;
  readonly changedAt: number;
  /// Counts the changes; the slot with this counter is the newest.
  readonly counter: number;
  readonly hash: string;
  readonly filedCounter: number;
  readonly filedHash: string;
  readonly filedAt: number | undefined;
  readonly newer: boolean;
  readonly trashedAt: number | undefined;
  /// How long it has lain in the trash, in milliseconds that were lived through: see tidy() in shelf.ts.
  readonly trashedFor?: number | undefined;
}

export interface Schema extends DBSchema {
  slots: { key: [string, number]; value: Slot };
  index: { key: string; value: Entry };
  settings: { key: string; value: string };
}

type Upgrading = IDBPTransaction<Schema, ("slots" | "index" | "settings")[], "versionchange">;
export type Upgrade = (db: IDBPDatabase<Schema>, transaction: Upgrading) => void;

/// Step n makes version n + 1 of the storage out of version n. Steps are added, never changed.
export const kUpgrades: readonly Upgrade[] = [
  (db) => {
    db.createObjectStore("slots", { keyPath: ["id", "slot"] });
    db.createObjectStore("index", { keyPath: "id" });
    db.createObjectStore("settings");
  },
];

const kDatabase = "stringcourse";

/// The copy with this counter: the two slots take turns.
export function slotOf(id: string, text: string, counter: number): Slot {
  return { id, slot: counter % 2 === 0 ? 0 : 1, counter, hash: fingerprint(text), text };
}

/// The newest whole copy among a job's slots, and whether a newer one was torn.
export function newestWhole(slots: readonly Slot[]): { readonly slot: Slot; readonly setBack: boolean } | undefined {
  const byAge = [...slots].sort((a, b) => b.counter - a.counter);
  const slot = byAge.find((copy) => copy.hash === fingerprint(copy.text));
  return slot === undefined ? undefined : { slot, setBack: slot !== byAge[0] };
}

/// What a store does: this one, or the one in memory. Its functions reject with what the browser says.
export type JobStore = Pick<Store, keyof Store>;

/// The store on the device.
export class Store {
  /// False: what is written ends with the tab.
  readonly lasting: boolean = true;
  private readonly db: IDBPDatabase<Schema>;

  private constructor(db: IDBPDatabase<Schema>) {
    this.db = db;
  }

  /// Rejects if the browser has no storage, or if it was made by a newer version of the page.
  static async open(upgrades: readonly Upgrade[] = kUpgrades): Promise<Store> {
    const db = await openDB<Schema>(kDatabase, upgrades.length, {
      upgrade(fresh, from, _to, transaction) {
        for (const step of upgrades.slice(from)) step(fresh, transaction as unknown as Upgrading);
      },
      // A newer version of the page in another tab needs the storage: this tab lets go, and its writes fail from then on.
      blocking: (_current, _blocked, event) => (event.target as IDBDatabase).close(),
    });
    return new Store(db);
  }

  entries(): Promise<Entry[]> {
    return this.db.getAll("index");
  }

  entry(id: string): Promise<Entry | undefined> {
    return this.db.get("index", id);
  }

  slots(id: string): Promise<Slot[]> {
    return this.db.getAll("slots", IDBKeyRange.bound([id, 0], [id, 1]));
  }

  /// Ids of texts without an entry: jobs whose making was interrupted.
  async orphans(): Promise<readonly string[]> {
    const transaction = this.db.transaction(["slots", "index"]);
    const keys = await transaction.objectStore("slots").getAllKeys();
    const known = new Set(await transaction.objectStore("index").getAllKeys());
    return [...new Set(keys.map(([id]) => id))].filter((id) => !known.has(id));
  }

  /// Writes the copy that follows the one with `counter` (0: none yet) over the older slot. False, and nothing is
  /// written, if another copy has come meanwhile.
  async writeText(id: string, text: string, counter: number): Promise<boolean> {
    const transaction = this.db.transaction("slots", "readwrite");
    const slots = await transaction.store.getAll(IDBKeyRange.bound([id, 0], [id, 1]));
    const there = newestWhole(slots)?.slot.counter ?? 0;
    if (there !== counter) {
      await transaction.done;
      return false;
    }
    await Promise.all([transaction.store.put(slotOf(id, text, counter + 1)), transaction.done]);
    return true;
  }

  /// Puts the changed entry in the place of the one that stands there; undefined if none does. It is on the disk, with
  /// the text before it, when this is done: the next writeText() ends the copy that a power cut would fall back to.
  async changeEntry(id: string, change: (entry: Entry) => Entry): Promise<Entry | undefined> {
    const transaction = this.db.transaction("index", "readwrite", { durability: "strict" });
    const entry = await transaction.store.get(id);
    if (entry === undefined) {
      await transaction.done;
      return undefined;
    }
    const changed = change(entry);
    await Promise.all([transaction.store.put(changed), transaction.done]);
    return changed;
  }

  async addEntry(entry: Entry): Promise<void> {
    await this.db.put("index", entry);
  }

  /// The end of a job: entry and texts in one step, which does not happen by halves.
  async erase(id: string): Promise<void> {
    const transaction = this.db.transaction(["slots", "index"], "readwrite", { durability: "strict" });
    await Promise.all([
      transaction.objectStore("index").delete(id),
      transaction.objectStore("slots").delete(IDBKeyRange.bound([id, 0], [id, 1])),
      transaction.done,
    ]);
  }

  setting(name: string): Promise<string | undefined> {
    return this.db.get("settings", name);
  }

  async setSetting(name: string, value: string): Promise<void> {
    await this.db.put("settings", value, name);
  }

  close(): void {
    this.db.close();
  }
}

/// For tests: everything gone.
export function eraseAll(): Promise<void> {
  return deleteDB(kDatabase);
}
