// The list of jobs as signals, and news between tabs. Everything that changes a job tells the shelf.
import { type ReadonlySignal, signal } from "@preact/signals";
import { readDocument } from "./document";
import { fingerprint } from "./hash";
import { type Entry, type JobStore, newestWhole } from "./store";
import type { JobHead } from "./types";

const kChannel = "stringcourse-keep";
const kTrashDays = 30;
const kDay = 86_400_000;
const kTidied = "tidied";

/// An entry as a list shows it. A text that is again the one in the file has no changes outside it.
export function headOf(entry: Entry): JobHead {
  const { id, name, createdAt, changedAt, filedAt, newer, trashedAt } = entry;
  const unfiled = entry.hash === entry.filedHash ? 0 : entry.counter - entry.filedCounter;
  const daysLeft = Math.max(0, Math.ceil(kTrashDays - (entry.trashedFor ?? 0) / kDay));
  return { id, name, createdAt, changedAt, unfiled, filedAt, newer, trashedAt, daysLeft };
}

function newestFirst(a: JobHead, b: JobHead): number {
  return b.changedAt - a.changedAt || (a.id < b.id ? -1 : 1);
}

export class Shelf {
  private readonly store: JobStore;
  private readonly all = signal<readonly JobHead[]>([]);
  private readonly kept = signal<readonly JobHead[]>([]);
  private readonly trashed = signal<readonly JobHead[]>([]);
  private channel = typeof BroadcastChannel === "undefined" ? undefined : new BroadcastChannel(kChannel);
  private readonly listeners = new Map<string, Set<() => void>>();

  constructor(store: JobStore) {
    this.store = store;
    this.channel?.addEventListener("message", (event: MessageEvent<string>) => {
      void this.refresh();
      for (const hear of this.listeners.get(event.data) ?? []) hear();
    });
  }

  get jobs(): ReadonlySignal<readonly JobHead[]> {
    return this.kept;
  }

  get trash(): ReadonlySignal<readonly JobHead[]> {
    return this.trashed;
  }

  /// Reads the list again. A list that cannot be read stays as it was.
  async refresh(): Promise<void> {
    const entries = await this.store.entries().catch(() => undefined);
    if (entries === undefined) return;
    this.all.value = entries.map(headOf).sort(newestFirst);
    this.kept.value = this.all.value.filter((head) => head.trashedAt === undefined);
    this.trashed.value = this.all.value.filter((head) => head.trashedAt !== undefined);
  }

  /// This job was changed here.
  async tell(id: string): Promise<void> {
    await this.refresh();
    this.channel?.postMessage(id);
  }

  /// Calls `hear` when another tab changes this job, until the answer is called.
  listen(id: string, hear: () => void): () => void {
    const known = this.listeners.get(id) ?? new Set();
    this.listeners.set(id, known.add(hear));
    return () => known.delete(hear);
  }

  close(): void {
    this.channel?.close();
    this.channel = undefined;
  }
}

/// The time since the store was tidied last, as far as it can be believed: a clock that was set wrong, or right again, is
/// worth one day at the most, and none if it went back.
async function livedSince(store: JobStore, now: number): Promise<number> {
  const last = Number((await store.setting(kTidied)) ?? now);
  await store.setSetting(kTidied, String(now));
  return Math.min(kDay, Math.max(0, now - last));
}

/// One start more in the trash; the last one ends it.
async function aged(store: JobStore, entry: Entry, lived: number): Promise<void> {
  const trashedFor = (entry.trashedFor ?? 0) + lived;
  if (trashedFor > kTrashDays * kDay) await store.erase(entry.id);
  else await store.changeEntry(entry.id, (was) => ({ ...was, trashedFor }));
}

/// At the start: jobs whose making or change was interrupted get their entry, and what lay long enough in the trash ends.
export async function tidy(store: JobStore, now: number): Promise<void> {
  const lived = await livedSince(store, now);
  for (const id of await store.orphans()) {
    const slots = await store.slots(id);
    const whole = newestWhole(slots)?.slot;
    if (whole !== undefined) await store.addEntry(entryOf(id, whole.text, whole.hash, whole.counter, now));
  }
  for (const entry of await store.entries()) {
    if (entry.trashedAt !== undefined) await aged(store, entry, lived);
    else await mend(store, entry, now);
  }
}

/// A text that was written without its entry: the entry is made to follow.
async function mend(store: JobStore, entry: Entry, now: number): Promise<void> {
  const whole = newestWhole(await store.slots(entry.id))?.slot;
  if (whole === undefined || whole.counter === entry.counter) return;
  await store.changeEntry(entry.id, (was) => entryAfter(was, whole.text, whole.counter, now));
}

/// The entry of a job whose text has become another.
export function entryAfter(was: Entry, text: string, counter: number, now: number): Entry {
  const document = readDocument(text);
  const name = document.kind === "none" ? was.name : document.name;
  return { ...was, name, counter, hash: fingerprint(text), changedAt: now, newer: document.kind === "newer" };
}

/// The entry of a new job that no file has yet.
export function entryOf(id: string, text: string, hash: string, counter: number, now: number): Entry {
  const document = readDocument(text);
  return {
    id,
    name: document.kind === "none" ? "" : document.name,
    createdAt: now,
    changedAt: now,
    counter,
    hash,
    filedCounter: 0,
    filedHash: "",
    filedAt: undefined,
    newer: document.kind === "newer",
    trashedAt: undefined,
  };
}
