// What is kept stays whole: round trips, cuts in the middle of a store, damage, a full storage, no storage.
import { afterEach, beforeEach, describe, expect, it, vi } from "vitest";
import { kLargestDocument } from "../../keep/document";
import { Browser, jobOf, troubleOf, worthOf } from "./keep_tab";

let browser: Browser;
beforeEach(() => {
  browser = new Browser();
});
afterEach(() => {
  vi.restoreAllMocks();
  browser.close();
});

function storeOf(tab: number) {
  const store = browser.stores[tab];
  if (store === undefined) throw new Error(`no tab ${tab}`);
  return store;
}

describe("a job", () => {
  it("comes back to a later visit as it was stored last", async () => {
    const first = await browser.tab();
    const made = worthOf(await first.create(jobOf("Shed")));
    worthOf(await made.store(jobOf("Shed", "second")));
    worthOf(await made.store(jobOf("Long shed", "third \ud83e\uddf1 \ud800")));
    await made.close();

    const later = await browser.tab();
    const opened = worthOf(await later.open(made.id));
    expect(opened.text.value).toBe(jobOf("Long shed", "third \ud83e\uddf1 \ud800"));
    expect(opened.setBack).toBe(false);
    expect(opened.access.value).toBe("writer");
    expect(later.jobs.value.map((head) => head.name)).toEqual(["Long shed"]);
    expect(await later.lastOpened()).toBe(made.id);
  });

  it("is listed with the newest change first", async () => {
    const keep = await browser.tab();
    const one = worthOf(await keep.create(jobOf("One")));
    browser.time += 1;
    worthOf(await keep.create(jobOf("Two")));
    expect(keep.jobs.value.map((head) => head.name)).toEqual(["Two", "One"]);
    browser.time += 1;
    worthOf(await one.store(jobOf("One", "changed")));
    expect(keep.jobs.value.map((head) => head.name)).toEqual(["One", "Two"]);
  });

  it("is stored in the order of the calls", async () => {
    const keep = await browser.tab();
    const job = worthOf(await keep.create(jobOf("Shed")));
    const texts = Array.from({ length: 20 }, (_, index) => jobOf("Shed", String(index)));
    const all = await Promise.all(texts.map((text) => job.store(text)));
    expect(all.every((kept) => kept.ok)).toBe(true);
    expect(worthOf(await keep.read(job.id))).toBe(texts[19]);
  });

  it("has its new name in its own text, and the job opened last stays the one opened last", async () => {
    const keep = await browser.tab();
    const other = worthOf(await keep.create(jobOf("Other", "kept")));
    await other.close();
    const open = worthOf(await keep.create(jobOf("Open")));
    expect(worthOf(await keep.rename(other.id, "Renamed")).name).toBe("Renamed");
    expect(JSON.parse(worthOf(await keep.read(other.id)))).toEqual({ stringcourse: 1, name: "Renamed", notes: "kept" });
    expect(await keep.lastOpened()).toBe(open.id);
  });

  it("is doubled with another name; the first stays as it was", async () => {
    const keep = await browser.tab();
    const job = worthOf(await keep.create(jobOf("Shed", "same")));
    const double = worthOf(await keep.duplicate(job.id, "Shed 2"));
    expect(JSON.parse(worthOf(await keep.read(double.id)))).toEqual({ stringcourse: 1, name: "Shed 2", notes: "same" });
    expect(worthOf(await keep.read(job.id))).toBe(jobOf("Shed", "same"));
  });
});

describe("a store that is cut off", () => {
  it("before its payload: the old text is there", async () => {
    const job = worthOf(await (await browser.tab()).create(jobOf("Shed")));
    vi.spyOn(storeOf(0), "writeText").mockRejectedValueOnce(new Error("cut"));
    expect(troubleOf(await job.store(jobOf("Shed", "new")))).toEqual({
      kind: "storage-failed",
      text: jobOf("Shed", "new"),
    });
    await job.close();
    expect(worthOf(await (await browser.tab()).open(job.id)).text.value).toBe(jobOf("Shed"));
  });

  it("between payload and index: old and new are whole, and the next visit has the new one with its name and count", async () => {
    const job = worthOf(await (await browser.tab()).create(jobOf("Shed")));
    vi.spyOn(storeOf(0), "changeEntry").mockRejectedValueOnce(new Error("cut"));
    expect(troubleOf(await job.store(jobOf("Barn"))).kind).toBe("storage-failed");
    expect((await storeOf(0).slots(job.id)).map((slot) => slot.text).sort()).toEqual([jobOf("Barn"), jobOf("Shed")]);
    expect((await storeOf(0).entry(job.id))?.name).toBe("Shed");
    await job.close();

    const later = await browser.tab();
    expect(later.jobs.value.map(({ name, unfiled }) => ({ name, unfiled }))).toEqual([{ name: "Barn", unfiled: 2 }]);
    expect(worthOf(await later.open(job.id)).text.value).toBe(jobOf("Barn"));
  });

  it("in a job's making: the next visit has the job", async () => {
    await browser.tab();
    await storeOf(0).writeText("cut-off", jobOf("Shed"), 0);
    const later = await browser.tab();
    expect(later.jobs.value.map(({ id, name, unfiled }) => ({ id, name, unfiled }))).toEqual([
      { id: "cut-off", name: "Shed", unfiled: 1 },
    ]);
  });
});

/// Damages the copies of a job that `which` picks.
async function damage(id: string, which: (counter: number) => boolean): Promise<void> {
  const database = await new Promise<IDBDatabase>((resolve) => {
    const request = indexedDB.open("stringcourse");
    request.onsuccess = () => resolve(request.result);
  });
  const slots = (await storeOf(0).slots(id)).filter((slot) => which(slot.counter));
  const transaction = database.transaction("slots", "readwrite");
  for (const slot of slots) transaction.objectStore("slots").put({ ...slot, text: slot.text.slice(0, 12) });
  await new Promise<void>((resolve) => {
    transaction.oncomplete = () => resolve();
  });
  database.close();
}

describe("a damaged copy", () => {
  it("gives way to the one before it, which the next store does not touch", async () => {
    const job = worthOf(await (await browser.tab()).create(jobOf("Shed", "first")));
    worthOf(await job.store(jobOf("Shed", "second")));
    await job.close();
    await damage(job.id, (counter) => counter === 2);

    const opened = worthOf(await (await browser.tab()).open(job.id));
    expect(opened.text.value).toBe(jobOf("Shed", "first"));
    expect(opened.setBack).toBe(true);
    worthOf(await opened.store(jobOf("Shed", "third")));
    const texts = (await storeOf(0).slots(job.id)).map((slot) => slot.text).sort();
    expect(texts).toEqual([jobOf("Shed", "first"), jobOf("Shed", "third")]);
  });

  it("beside another damaged one: the trouble has the remainder, and nothing is opened", async () => {
    const job = worthOf(await (await browser.tab()).create(jobOf("Shed", "first")));
    worthOf(await job.store(jobOf("Shed", "second")));
    await job.close();
    await damage(job.id, () => true);
    const opened = await (await browser.tab()).open(job.id);
    expect(troubleOf(opened)).toEqual({ kind: "damaged", text: jobOf("Shed").slice(0, 12) });
  });
});

function fillUp(): void {
  vi.spyOn(IDBObjectStore.prototype, "put").mockImplementation(() => {
    throw new DOMException("no room", "QuotaExceededError");
  });
}

describe("a full storage", () => {
  it("is said with the whole text; the text before stays, and the same store works once there is room", async () => {
    const keep = await browser.tab();
    const job = worthOf(await keep.create(jobOf("Shed")));
    fillUp();
    expect(troubleOf(await job.store(jobOf("Shed", "more")))).toEqual({
      kind: "storage-full",
      text: jobOf("Shed", "more"),
    });
    expect(job.text.value).toBe(jobOf("Shed"));
    vi.restoreAllMocks();
    expect(worthOf(await keep.read(job.id))).toBe(jobOf("Shed"));
    worthOf(await job.store(jobOf("Shed", "more")));
    expect(worthOf(await keep.read(job.id))).toBe(jobOf("Shed", "more"));
  });

  it("that has room for a new job's text but not for its entry leaves no half of it", async () => {
    const keep = await browser.tab();
    const full = new DOMException("no room", "QuotaExceededError");
    vi.spyOn(storeOf(0), "addEntry").mockRejectedValueOnce(full);
    expect(troubleOf(await keep.create(jobOf("Shed")))).toEqual({ kind: "storage-full", text: jobOf("Shed") });
    expect((await browser.tab()).jobs.value).toEqual([]);
  });
});

describe("without storage", () => {
  const none = { openStore: () => Promise.reject(new Error("none")) };

  it("a job is open and changes, and every store says so with the text", async () => {
    const keep = await browser.tab(none);
    expect(keep.lasting).toBe(false);
    const job = worthOf(await keep.takeIn(jobOf("Shed"), "shed.json"));
    expect(job.access.value).toBe("writer");
    for (const more of ["one", "two", "three"]) {
      const text = jobOf("Shed", more);
      expect(troubleOf(await job.store(text))).toEqual({ kind: "storage-failed", text });
      expect(job.text.value).toBe(text);
    }
    expect(job.head.value.unfiled).toBe(3);
    await job.close();
    expect(worthOf(await keep.open(job.id)).text.value).toBe(jobOf("Shed", "three"));
    worthOf(await keep.remove(job.id));
    expect(keep.trash.value.map((head) => head.id)).toEqual([job.id]);
  });

  it("a storage that does not answer counts as none after ten seconds", async () => {
    vi.useFakeTimers();
    const opening = browser.tab({ openStore: () => new Promise(() => undefined) });
    await vi.advanceTimersByTimeAsync(10_000);
    vi.useRealTimers();
    expect((await opening).lasting).toBe(false);
  });
});

describe("a text", () => {
  it("longer than the engine reads is refused and leaves the job as it was", async () => {
    const keep = await browser.tab();
    const job = worthOf(await keep.create(jobOf("Shed")));
    const text = "x".repeat(kLargestDocument + 1);
    expect(troubleOf(await job.store(text)).kind).toBe("too-large");
    expect(troubleOf(await keep.create(text)).kind).toBe("too-large");
    expect(worthOf(await keep.read(job.id))).toBe(jobOf("Shed"));
  });
});
