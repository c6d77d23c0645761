// The keep: jobs made, opened, renamed, thrown away and brought back. Promises: index.ts and types.ts.
import { type ReadonlySignal, signal } from "@preact/signals";
import { kLargestDocument, readDocument, withName } from "./document";
import { browserEnvironment, type Environment } from "./environment";
import { fingerprint } from "./hash";
import { MemoryStore } from "./memory";
import { KeptJob } from "./open_job";
import { storageTrouble, trouble, well } from "./outcome";
import { entryOf, headOf, Shelf, tidy } from "./shelf";
import { type Entry, type JobStore, newestWhole } from "./store";
import type { JobHead, Keep, Kept, OpenJob } from "./types";
import { type Right, rightNow } from "./writer";

const kLast = "last-opened";
const kPatience = 10_000; // milliseconds until a storage that does not answer counts as none

/// The browser's storage; in memory where that does not work.
async function storeOf(environment: Environment): Promise<JobStore> {
  let timer: ReturnType<typeof setTimeout> | undefined;
  const late = new Promise<undefined>((resolve) => {
    timer = setTimeout(() => resolve(undefined), kPatience);
  });
  const store = await Promise.race([environment.openStore(), late]).catch(() => undefined);
  clearTimeout(timer);
  return store ?? new MemoryStore();
}

/// Opens the device's storage. In a browser without storage jobs are held in memory, and every store() says
/// "storage-failed" with the text.
export async function openKeep(environment: Environment = browserEnvironment()): Promise<Keep> {
  const store = await storeOf(environment);
  await tidy(store, environment.now()).catch(() => undefined);
  const keep = new DeviceKeep(store, environment);
  await keep.look();
  return keep;
}

class DeviceKeep implements Keep {
  private readonly store: JobStore;
  private readonly environment: Environment;
  private readonly shelf: Shelf;
  private readonly promised = signal<"unknown" | "granted" | "refused" | "unsupported">("unknown");
  private readonly space = signal<{ readonly used: number; readonly allowed: number } | undefined>(undefined);
  private readonly openHere = new Map<string, KeptJob>();

  constructor(store: JobStore, environment: Environment) {
    this.store = store;
    this.environment = environment;
    this.shelf = new Shelf(store);
  }

  get jobs(): ReadonlySignal<readonly JobHead[]> {
    return this.shelf.jobs;
  }
  get trash(): ReadonlySignal<readonly JobHead[]> {
    return this.shelf.trash;
  }
  get persistence(): Keep["persistence"] {
    return this.promised;
  }
  get room(): Keep["room"] {
    return this.space;
  }
  get guarded(): boolean {
    return this.environment.locks !== undefined;
  }
  get lasting(): boolean {
    return this.store.lasting;
  }

  /// What stands in the store, and what the browser promises.
  async look(): Promise<void> {
    await this.shelf.refresh();
    const { storage } = this.environment;
    if (storage?.persist === undefined) this.promised.value = "unsupported";
    else if (await storage.persisted().catch(() => false)) this.promised.value = "granted";
    await this.measure();
  }

  async askPersistence(): Promise<void> {
    if (this.promised.value === "granted" || this.promised.value === "unsupported") return;
    const granted = await this.environment.storage?.persist().catch(() => false);
    this.promised.value = granted === true ? "granted" : "refused";
  }

  async lastOpened(): Promise<string | undefined> {
    return this.store.setting(kLast).catch(() => undefined);
  }

  create(text: string): Promise<Kept<OpenJob>> {
    return this.make(text, (entry) => entry);
  }

  async takeIn(text: string, fileName: string): Promise<Kept<OpenJob>> {
    const document = readDocument(text);
    if (document.kind === "none") return trouble("not-a-job", text);
    const fallback = fileName.replace(/\.json$/i, "");
    const filedAt = this.environment.now();
    const filed = (entry: Entry): Entry => ({
      ...entry,
      name: entry.name === "" ? fallback : entry.name,
      filedCounter: entry.counter,
      filedHash: entry.hash,
      filedAt,
    });
    if (document.kind === "job") return this.make(text, filed);
    const kept = await this.write(text, filed);
    return kept.ok ? trouble("newer", text) : kept;
  }

  async open(id: string): Promise<Kept<OpenJob>> {
    const here = this.openHere.get(id);
    if (here !== undefined) return well(here);
    const opened = await this.openQuietly(id);
    if (opened.ok) await this.noteLast(id);
    return opened;
  }

  async read(id: string): Promise<Kept<string>> {
    const slots = await this.store.slots(id).catch(() => undefined);
    if (slots === undefined || slots.length === 0) return trouble("not-found");
    const whole = newestWhole(slots);
    return whole === undefined ? trouble("damaged", slots[0]?.text ?? "") : well(whole.slot.text);
  }

  async duplicate(id: string, newName: string): Promise<Kept<JobHead>> {
    const text = await this.read(id);
    if (!text.ok) return text;
    const made = await this.write(withName(text.value, newName) ?? text.value, (entry) => entry);
    return made.ok ? well(headOf(made.value)) : made;
  }

  async rename(id: string, newName: string): Promise<Kept<JobHead>> {
    const here = this.openHere.get(id);
    if (here !== undefined) return here.store(withName(here.text.value, newName) ?? here.text.value);
    const opened = await this.openQuietly(id);
    if (!opened.ok) return opened;
    const job = opened.value;
    const done = await job.store(withName(job.text.value, newName) ?? job.text.value);
    await job.close();
    return done;
  }

  remove(id: string): Promise<Kept<JobHead>> {
    const trashedAt = this.environment.now();
    return this.withRight(id, (store) => store.changeEntry(id, (was) => ({ ...was, trashedAt, trashedFor: 0 })));
  }

  restore(id: string): Promise<Kept<JobHead>> {
    return this.withRight(id, (store) =>
      store.changeEntry(id, (was) => ({ ...was, trashedAt: undefined, trashedFor: undefined })),
    );
  }

  async destroy(id: string): Promise<Kept<void>> {
    const done = await this.withRight(id, async (store) => {
      const entry = await store.entry(id);
      if (entry?.trashedAt === undefined) return undefined;
      await store.erase(id);
      return entry;
    });
    return done.ok ? well(undefined) : done;
  }

  close(): void {
    for (const job of this.openHere.values()) void job.close();
    this.shelf.close();
    this.store.close();
  }

  /// Opens a job that may be opened; which one was last is not noted.
  private async openQuietly(id: string): Promise<Kept<OpenJob>> {
    try {
      const entry = await this.store.entry(id);
      if (entry === undefined || entry.trashedAt !== undefined) return trouble("not-found");
      const text = await this.read(id);
      if (!text.ok) return text;
      if (readDocument(text.value).kind === "newer") return trouble("newer", text.value);
      return well(await this.take(entry));
    } catch (error) {
      return storageTrouble(error, "");
    }
  }

  private async noteLast(id: string): Promise<void> {
    await this.store.setSetting(kLast, id).catch(() => undefined);
  }

  /// A new job, open here.
  private async make(text: string, mark: (entry: Entry) => Entry): Promise<Kept<OpenJob>> {
    const made = await this.write(text, mark);
    if (!made.ok) return made;
    try {
      const job = await this.take(made.value);
      await this.noteLast(job.id);
      return well(job);
    } catch (error) {
      return storageTrouble(error, text);
    }
  }

  /// A new job in the store: its text first, its entry after it.
  private async write(text: string, mark: (entry: Entry) => Entry): Promise<Kept<Entry>> {
    const { store, environment } = this;
    if (text.length > kLargestDocument) return trouble("too-large", text);
    const id = environment.newId();
    const entry = mark(entryOf(id, text, fingerprint(text), 1, environment.now()));
    try {
      await store.writeText(id, text, 0);
      await store.addEntry(entry);
    } catch (error) {
      await store.erase(id).catch(() => undefined); // a text without its entry would come back as one job more
      return storageTrouble(error, text);
    }
    await this.shelf.tell(id);
    void this.measure();
    return well(entry);
  }

  /// Opens a job: with the right to write it, if no other tab has that.
  private async take(entry: Entry): Promise<OpenJob> {
    const right = await rightNow(this.environment.locks, entry.id);
    try {
      const job = await this.laidOut(entry, right);
      this.openHere.set(entry.id, job);
      return job;
    } catch (error) {
      await right?.giveUp();
      throw error;
    }
  }

  private async laidOut(entry: Entry, right: Right | undefined): Promise<KeptJob> {
    const { store, shelf, environment } = this;
    const whole = newestWhole(await store.slots(entry.id));
    if (whole === undefined) throw new Error("no whole copy");
    const changed = (): void => void this.measure();
    const left = (id: string): void => void this.openHere.delete(id);
    const desk = { store, shelf, environment, changed, left };
    return new KeptJob(desk, (await store.entry(entry.id)) ?? entry, whole.slot, whole.setBack, right);
  }

  /// Changes an entry while no other tab has the job open.
  private async withRight(id: string, act: (store: JobStore) => Promise<Entry | undefined>): Promise<Kept<JobHead>> {
    let right: Right | undefined;
    try {
      const mine = this.openHere.get(id)?.access.value === "writer";
      right = mine ? { giveUp: async () => undefined } : await rightNow(this.environment.locks, id);
      if (right === undefined) return trouble("read-only");
      const entry = await act(this.store);
      if (entry === undefined) return trouble("not-found");
      await this.shelf.tell(id);
      return well(headOf(entry));
    } catch (error) {
      return storageTrouble(error, "");
    } finally {
      await right?.giveUp();
    }
  }

  private async measure(): Promise<void> {
    const estimate = await this.environment.storage?.estimate?.().catch(() => undefined);
    if (estimate?.usage === undefined || estimate.quota === undefined) return;
    this.space.value = { used: estimate.usage, allowed: estimate.quota };
  }
}
