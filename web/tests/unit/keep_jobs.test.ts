// Jobs from outside and to outside: files, newer versions, the trash.
import { afterEach, beforeEach, describe, expect, it, vi } from "vitest";
import { readFile, saveBytes } from "../../keep";
import { kLargestDocument } from "../../keep/document";
import { Browser, jobOf, troubleOf, worthOf } from "./keep_tab";

let browser: Browser;
beforeEach(() => {
  browser = new Browser();
});
afterEach(() => {
  vi.unstubAllGlobals();
  browser.close();
});

/// A file dialog that always gives the same file; what was written to it.
function dialogTo(name: string): { asked: number; readonly written: string[] } {
  const seen = { asked: 0, written: [] as string[] };
  vi.stubGlobal("showSaveFilePicker", async () => {
    seen.asked += 1;
    let beside = "";
    return {
      name,
      createWritable: async () => ({
        write: async (text: string) => {
          beside = text;
        },
        close: async () => void seen.written.push(beside),
      }),
    };
  });
  return seen;
}

describe("changes outside no file", () => {
  it("are counted from the job's making, go to 0 with a file, and stay 0 for the file's own text", async () => {
    const file = dialogTo("shed.json");
    const job = worthOf(await (await browser.tab()).create(jobOf("Shed")));
    expect(job.head.value.unfiled).toBe(1);
    expect(job.head.value.filedAt).toBeUndefined();
    expect(worthOf(await job.store(jobOf("Shed", "a"))).unfiled).toBe(2);

    browser.time = 5_000;
    expect(worthOf(await job.saveToFile())).toEqual({ to: "file", name: "shed.json" });
    expect(file.written).toEqual([jobOf("Shed", "a")]);
    expect(job.head.value).toMatchObject({ unfiled: 0, filedAt: 5_000 });

    expect(worthOf(await job.store(jobOf("Shed", "b"))).unfiled).toBe(1);
    expect(worthOf(await job.store(jobOf("Shed", "a"))).unfiled).toBe(0);
    expect(worthOf(await job.store(jobOf("Shed", "c"))).unfiled).toBe(3);
  });

  it("go to the same file the second time, and to another when asked", async () => {
    const file = dialogTo("shed.json");
    const job = worthOf(await (await browser.tab()).create(jobOf("Shed")));
    worthOf(await job.saveToFile());
    worthOf(await job.saveToFile());
    expect(file.asked).toBe(1);
    worthOf(await job.saveToFile({ as: "new" }));
    expect(file.asked).toBe(2);
    expect(file.written).toHaveLength(3);
  });

  it("stay counted when the user closes the dialog or the file can't be written", async () => {
    const job = worthOf(await (await browser.tab()).create(jobOf("Shed")));
    vi.stubGlobal("showSaveFilePicker", () => Promise.reject(new DOMException("closed", "AbortError")));
    expect(troubleOf(await job.saveToFile()).kind).toBe("cancelled");
    vi.stubGlobal("showSaveFilePicker", async () => ({
      name: "shed.json",
      createWritable: () => Promise.reject(new DOMException("gone", "NotFoundError")),
    }));
    expect(troubleOf(await job.saveToFile())).toEqual({ kind: "file-failed", text: jobOf("Shed") });
    expect(job.head.value).toMatchObject({ unfiled: 1, filedAt: undefined });
  });
});

describe("bytes for a file", () => {
  it("come as a download where the browser refuses its dialog", async () => {
    const link = { href: "", download: "", click: vi.fn() };
    vi.stubGlobal("document", { createElement: () => link });
    vi.stubGlobal("showSaveFilePicker", () => Promise.reject(new DOMException("too late", "SecurityError")));
    expect(worthOf(await saveBytes("bytes", "set.pdf", "application/pdf"))).toEqual({
      to: "download",
      name: "set.pdf",
    });
    expect(link.click).toHaveBeenCalledOnce();
    expect(link.download).toBe("set.pdf");
  });
});

describe("a file", () => {
  it("becomes a job that is in a file already, named after the file where the document has no name", async () => {
    const keep = await browser.tab();
    const job = worthOf(await keep.takeIn('{"stringcourse":1}', "Kiln.JSON"));
    expect(job.head.value).toMatchObject({ name: "Kiln", unfiled: 0, filedAt: 1_000 });
    expect(job.text.value).toBe('{"stringcourse":1}');
    expect(worthOf(await keep.takeIn(jobOf("Shed"), "shed.json")).head.value.name).toBe("Shed");
  });

  it("of a newer version is kept as it is, byte for byte, and not opened", async () => {
    const text = '{ "stringcourse": 2,\n"name":"Later" }';
    const keep = await browser.tab();
    const mine = worthOf(await keep.create(jobOf("Mine")));
    expect(troubleOf(await keep.takeIn(text, "later.json"))).toEqual({ kind: "newer", text });
    const head = keep.jobs.value.find((one) => one.newer);
    expect(head).toMatchObject({ name: "Later", unfiled: 0 });
    expect(troubleOf(await keep.open(head?.id ?? ""))).toEqual({ kind: "newer", text });
    expect(troubleOf(await keep.rename(head?.id ?? "", "Mine now")).kind).toBe("newer");
    expect(worthOf(await keep.read(head?.id ?? ""))).toBe(text);
    expect(await keep.lastOpened()).toBe(mine.id);
  });

  it.each(["", "no JSON", "[1]", "null", "{}", '{"stringcourse":"1"}', '{"stringcourse":0}', '{"stringcourse":1.5}'])(
    "that is no job is refused and not kept: %j",
    async (text) => {
      const keep = await browser.tab();
      expect(troubleOf(await keep.takeIn(text, "x.json"))).toEqual({ kind: "not-a-job", text });
      expect(keep.jobs.value).toEqual([]);
    },
  );

  it("is read as UTF-8, with or without a byte order mark, or refused", async () => {
    const marked = new File([Uint8Array.of(0xef, 0xbb, 0xbf), jobOf("H\u00fctte")], "hut.json");
    expect(worthOf(await readFile(marked))).toEqual({ text: jobOf("H\u00fctte"), name: "hut.json" });
    expect(troubleOf(await readFile(new File([Uint8Array.of(0xff, 0xfe)], "x.json"))).kind).toBe("not-a-job");
  });

  it("larger than the engine reads is refused before it is read", async () => {
    const file = { size: kLargestDocument + 1, arrayBuffer: vi.fn() };
    expect(troubleOf(await readFile(file as unknown as File)).kind).toBe("too-large");
    expect(file.arrayBuffer).not.toHaveBeenCalled();
  });
});

describe("a deleted job", () => {
  it("goes into the trash and comes back whole", async () => {
    const keep = await browser.tab();
    const job = worthOf(await keep.create(jobOf("Shed")));
    await job.close();
    const head = keep.jobs.value[0];
    browser.time = 2_000;
    expect(worthOf(await keep.remove(job.id)).trashedAt).toBe(2_000);
    expect(keep.jobs.value).toEqual([]);
    expect(keep.trash.value.map((one) => one.id)).toEqual([job.id]);
    expect(troubleOf(await keep.open(job.id)).kind).toBe("not-found");

    worthOf(await keep.restore(job.id));
    expect(keep.jobs.value).toEqual([head]);
    expect(keep.trash.value).toEqual([]);
    expect(worthOf(await keep.open(job.id)).text.value).toBe(jobOf("Shed"));
  });

  const kDay = 24 * 3_600_000;

  async function trashed(): Promise<string> {
    const keep = await browser.tab();
    const job = worthOf(await keep.create(jobOf("Shed")));
    await job.close();
    worthOf(await keep.remove(job.id));
    return job.id;
  }

  it("is there for 30 days of use, then gone with its texts", async () => {
    const id = await trashed();
    for (let day = 1; day <= 30; ++day) {
      browser.time += kDay;
      const { trash } = await browser.tab();
      expect(trash.value.map((head) => head.daysLeft)).toEqual([30 - day]);
    }
    browser.time += 1;
    const later = await browser.tab();
    expect(later.trash.value).toEqual([]);
    expect(troubleOf(await later.read(id)).kind).toBe("not-found");
  });

  it("is not emptied by a clock that was set back or forward, or that was wrong when the job was thrown away", async () => {
    browser.time = 50_000 * kDay;
    await browser.tab();
    browser.time = 20 * kDay; // the battery was empty: a phone that thinks it is 1970
    const id = await trashed();
    for (const time of [50_000, 50_001, 90_000, 3, 50_002]) {
      browser.time = time * kDay;
      const keep = await browser.tab();
      expect(keep.trash.value.map((head) => head.id)).toEqual([id]);
      expect(keep.trash.value[0]?.daysLeft).toBeGreaterThanOrEqual(25); // each start is worth a day at the most
    }
  });

  it("is ended for good only out of the trash", async () => {
    const keep = await browser.tab();
    const job = worthOf(await keep.create(jobOf("Shed")));
    await job.close();
    expect(troubleOf(await keep.destroy(job.id)).kind).toBe("not-found");
    expect(worthOf(await keep.read(job.id))).toBe(jobOf("Shed"));
    worthOf(await keep.remove(job.id));
    worthOf(await keep.destroy(job.id));
    expect(troubleOf(await keep.read(job.id)).kind).toBe("not-found");
    expect(keep.trash.value).toEqual([]);
  });
});

describe("the browser's promise", () => {
  it("is asked for once and told", async () => {
    const persist = vi.fn(async () => true);
    const storage = { persist, persisted: async () => false, estimate: async () => ({ usage: 5, quota: 50 }) };
    const keep = await browser.tab({ storage });
    expect(keep.persistence.value).toBe("unknown");
    expect(keep.room.value).toEqual({ used: 5, allowed: 50 });
    await keep.askPersistence();
    await keep.askPersistence();
    expect(keep.persistence.value).toBe("granted");
    expect(persist).toHaveBeenCalledOnce();
  });

  it("is refused, or not to be had", async () => {
    const storage = { persist: async () => false, persisted: async () => false, estimate: async () => ({}) };
    const keep = await browser.tab({ storage });
    await keep.askPersistence();
    expect(keep.persistence.value).toBe("refused");
    expect((await browser.tab()).persistence.value).toBe("unsupported");
  });
});
