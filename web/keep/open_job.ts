// A job that is open in this tab: stores in order, follows other tabs while it only looks on.
import { type ReadonlySignal, type Signal, signal } from "@preact/signals";
import { kLargestDocument } from "./document";
import type { Environment } from "./environment";
import { type FileHandle, fileNameOf, writeFile } from "./files";
import { fingerprint } from "./hash";
import { storageTrouble, trouble, well } from "./outcome";
import { entryAfter, headOf, type Shelf } from "./shelf";
import { type Entry, type JobStore, newestWhole, type Slot } from "./store";
import type { JobHead, Kept, OpenJob } from "./types";
import { type Right, rightLater } from "./writer";

export interface Desk {
  readonly store: JobStore;
  readonly shelf: Shelf;
  readonly environment: Environment;
  /// What was stored or let go of changes how much room is left, and who is open.
  changed(): void;
  left(id: string): void;
}

export class KeptJob implements OpenJob {
  readonly id: string;
  readonly setBack: boolean;
  private readonly desk: Desk;
  private readonly words: Signal<string>;
  private readonly entry: Signal<JobHead>;
  private readonly role = signal<"writer" | "reader">("reader");
  private counter: number;
  private right: Right | undefined;
  private file: FileHandle | undefined;
  private queue: Promise<unknown> = Promise.resolve();
  private readonly waiting = new AbortController();
  private readonly deaf: () => void;

  constructor(desk: Desk, entry: Entry, slot: Slot, setBack: boolean, right: Right | undefined) {
    this.id = entry.id;
    this.setBack = setBack;
    this.desk = desk;
    this.words = signal(slot.text);
    this.entry = signal(headOf(entry));
    this.counter = slot.counter;
    this.deaf = desk.shelf.listen(entry.id, () => void this.inOrder(() => this.lookAgain()));
    if (right === undefined) void this.waitForRight();
    else this.take(right);
  }

  get text(): ReadonlySignal<string> {
    return this.words;
  }

  get head(): ReadonlySignal<JobHead> {
    return this.entry;
  }

  get access(): ReadonlySignal<"writer" | "reader"> {
    return this.role;
  }

  store(text: string): Promise<Kept<JobHead>> {
    return this.inOrder(() => this.write(text));
  }

  saveToFile(how: { readonly as: "same" | "new" } = { as: "same" }): ReturnType<OpenJob["saveToFile"]> {
    return this.inOrder(() => this.writeFile(how.as === "same" ? this.file : undefined));
  }

  async close(): Promise<void> {
    this.waiting.abort();
    await this.queue;
    this.deaf();
    this.role.value = "reader";
    const { right } = this;
    this.right = undefined;
    this.desk.left(this.id);
    await right?.giveUp();
  }

  private inOrder<T>(act: () => Promise<T>): Promise<T> {
    const done = this.queue.then(act);
    this.queue = done.catch(() => undefined);
    return done;
  }

  private async write(text: string): Promise<Kept<JobHead>> {
    if (this.role.value === "reader") return trouble("read-only", text);
    if (text.length > kLargestDocument) return trouble("too-large", text);
    const { store, shelf, environment } = this.desk;
    try {
      if (!(await store.writeText(this.id, text, this.counter))) return trouble("changed-elsewhere", text);
      this.counter += 1;
      const entry = await store.changeEntry(this.id, (was) => entryAfter(was, text, this.counter, environment.now()));
      if (entry === undefined) return trouble("not-found", text);
      this.words.value = text;
      this.entry.value = headOf(entry);
    } catch (error) {
      return storageTrouble(error, text);
    }
    await shelf.tell(this.id);
    this.desk.changed();
    return store.lasting ? well(this.entry.value) : trouble("storage-failed", text, "no storage");
  }

  private async writeFile(handle: FileHandle | undefined): ReturnType<OpenJob["saveToFile"]> {
    const text = this.words.value;
    const { counter } = this;
    const name = fileNameOf(this.entry.value.name, "json");
    const written = await writeFile(text, name, "application/json", handle);
    if (!written.ok) return written;
    this.file = written.value.handle;
    await this.markFiled(counter, fingerprint(text));
    return well({ to: written.value.to, name: written.value.name });
  }

  /// The file is there even if this cannot be noted; the count of changes then stays too high, which does no harm.
  private async markFiled(filedCounter: number, filedHash: string): Promise<void> {
    const { store, shelf, environment } = this.desk;
    const filedAt = environment.now();
    const note = (was: Entry): Entry => ({ ...was, filedCounter, filedHash, filedAt });
    const entry = await store.changeEntry(this.id, note).catch(() => undefined);
    if (entry !== undefined) this.entry.value = headOf(entry);
    await shelf.tell(this.id);
  }

  private async lookAgain(): Promise<void> {
    const { store } = this.desk;
    const entry = await store.entry(this.id).catch(() => undefined);
    if (entry !== undefined) this.entry.value = headOf(entry);
    if (this.role.value === "writer" && this.desk.environment.locks !== undefined) return;
    const whole = newestWhole(await store.slots(this.id).catch(() => []));
    // Without locks this tab's own text may be another: then its next store() finds out.
    if (whole === undefined || this.role.value === "writer") return;
    this.counter = whole.slot.counter;
    this.words.value = whole.slot.text;
  }

  private take(right: Right): void {
    this.right = right;
    this.role.value = "writer";
  }

  private async waitForRight(): Promise<void> {
    const { locks } = this.desk.environment;
    if (locks === undefined) return;
    const right = await rightLater(locks, this.id, this.waiting.signal);
    if (right === undefined) return;
    if (this.waiting.signal.aborted) return void right.giveUp();
    await this.inOrder(() => this.lookAgain());
    if (this.waiting.signal.aborted) return void right.giveUp();
    this.take(right);
  }
}
