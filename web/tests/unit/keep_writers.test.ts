// Two tabs with one job: one writes, the other looks on and takes over; nothing is written over unseen.
import { afterEach, describe, expect, it, vi } from "vitest";
import { Browser, jobOf, troubleOf, worthOf } from "./keep_tab";

let browser: Browser;
afterEach(() => browser.close());

describe("the second tab with a job", () => {
  async function two() {
    browser = new Browser();
    const [left, right] = [await browser.tab(), await browser.tab()];
    const writer = worthOf(await left.create(jobOf("Shed")));
    const reader = worthOf(await right.open(writer.id));
    return { left, right, writer, reader };
  }

  it("looks on and can't write", async () => {
    const { left, writer, reader } = await two();
    expect(writer.access.value).toBe("writer");
    expect(reader.access.value).toBe("reader");
    expect(troubleOf(await reader.store(jobOf("Mine")))).toEqual({ kind: "read-only", text: jobOf("Mine") });
    expect(worthOf(await left.read(writer.id))).toBe(jobOf("Shed"));
  });

  it("sees what the first stores, in the job and in the list", async () => {
    const { right, writer, reader } = await two();
    worthOf(await writer.store(jobOf("Barn")));
    await vi.waitFor(() => expect(reader.text.value).toBe(jobOf("Barn")));
    await vi.waitFor(() => expect(right.jobs.value.map((head) => head.name)).toEqual(["Barn"]));
    expect(reader.head.value.name).toBe("Barn");
    expect(reader.access.value).toBe("reader");
  });

  it("can't rename, delete or end it", async () => {
    const { right, writer } = await two();
    expect(troubleOf(await right.rename(writer.id, "Mine")).kind).toBe("read-only");
    expect(troubleOf(await right.remove(writer.id)).kind).toBe("read-only");
    expect(troubleOf(await right.destroy(writer.id)).kind).toBe("read-only");
  });

  it("takes over with the last text when the first closes it", async () => {
    const { left, writer, reader } = await two();
    const last = writer.store(jobOf("Shed", "last words"));
    await writer.close();
    worthOf(await last);
    await vi.waitFor(() => expect(reader.access.value).toBe("writer"));
    expect(reader.text.value).toBe(jobOf("Shed", "last words"));
    worthOf(await reader.store(jobOf("Shed", "mine now")));
    expect(troubleOf(await writer.store(jobOf("Shed", "too late"))).kind).toBe("read-only");
    expect(worthOf(await left.read(reader.id))).toBe(jobOf("Shed", "mine now"));
  });

  it("that closes it while it waits is not in the way of a third", async () => {
    const { writer, reader } = await two();
    await reader.close();
    await writer.close();
    expect(reader.access.value).toBe("reader");
    expect(worthOf(await (await browser.tab()).open(writer.id)).access.value).toBe("writer");
  });

  it("can have it at once when close() is done", async () => {
    const { left, right, writer, reader } = await two();
    await reader.close();
    await writer.close();
    worthOf(await right.remove(writer.id));
    await vi.waitFor(() => expect(left.trash.value).toHaveLength(1));
  });
});

describe("without locks", () => {
  it("the one who has not seen the other's change writes nothing, and gets its text back", async () => {
    browser = new Browser();
    const alone = { locks: undefined };
    const [left, right] = [await browser.tab(alone), await browser.tab(alone)];
    expect(left.guarded).toBe(false);
    const one = worthOf(await left.create(jobOf("Shed")));
    const other = worthOf(await right.open(one.id));
    worthOf(await one.store(jobOf("Shed", "one")));
    expect(troubleOf(await other.store(jobOf("Shed", "other")))).toEqual({
      kind: "changed-elsewhere",
      text: jobOf("Shed", "other"),
    });
    expect(worthOf(await left.read(one.id))).toBe(jobOf("Shed", "one"));
    worthOf(await one.store(jobOf("Shed", "one more")));
  });
});
