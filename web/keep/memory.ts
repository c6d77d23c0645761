// The store of a browser without storage: in memory, gone with the tab. A job can still be opened from a file, changed
// and written to a file; every store() says that nothing lasting has it.
import { type Entry, type JobStore, type Slot, slotOf } from "./store";

interface Held {
  entry: Entry | undefined;
  slot: Slot | undefined;
}

export class MemoryStore implements JobStore {
  readonly lasting = false;
  private readonly jobs = new Map<string, Held>();
  private readonly settings = new Map<string, string>();

  async entries(): Promise<Entry[]> {
    return [...this.jobs.values()].flatMap(({ entry }) => (entry === undefined ? [] : [entry]));
  }

  async entry(id: string): Promise<Entry | undefined> {
    return this.jobs.get(id)?.entry;
  }

  async slots(id: string): Promise<Slot[]> {
    const slot = this.jobs.get(id)?.slot;
    return slot === undefined ? [] : [slot];
  }

  async orphans(): Promise<readonly string[]> {
    return [];
  }

  async writeText(id: string, text: string, counter: number): Promise<boolean> {
    const held = this.jobs.get(id) ?? { entry: undefined, slot: undefined };
    if ((held.slot?.counter ?? 0) !== counter) return false;
    held.slot = slotOf(id, text, counter + 1);
    this.jobs.set(id, held);
    return true;
  }

  async changeEntry(id: string, change: (entry: Entry) => Entry): Promise<Entry | undefined> {
    const held = this.jobs.get(id);
    if (held?.entry === undefined) return undefined;
    held.entry = change(held.entry);
    return held.entry;
  }

  async addEntry(entry: Entry): Promise<void> {
    const held = this.jobs.get(entry.id);
    if (held !== undefined) held.entry = entry;
  }

  async erase(id: string): Promise<void> {
    this.jobs.delete(id);
  }

  async setting(name: string): Promise<string | undefined> {
    return this.settings.get(name);
  }

  async setSetting(name: string, value: string): Promise<void> {
    this.settings.set(name, value);
  }

  close(): void {}
}
