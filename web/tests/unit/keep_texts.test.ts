// The little of a document that keeping knows: version, name, fingerprint, file name; and the storage's own versions.
import { readFileSync } from "node:fs";
import { afterEach, beforeEach, expect, test } from "vitest";
import { kKnownVersion, readDocument, withName } from "../../keep/document";
import { fileNameOf } from "../../keep/files";
import { fingerprint } from "../../keep/hash";
import { kUpgrades, newestWhole, type Slot, Store, type Upgrade } from "../../keep/store";
import { Browser, jobOf } from "./keep_tab";

let browser: Browser;
beforeEach(() => {
  browser = new Browser();
});
afterEach(() => browser.close());

const kExample = readFileSync(new URL("../../../examples/kiln-house.json", import.meta.url), "utf8");

test("the version that is known here is that of the job documents", () => {
  const schema = JSON.parse(readFileSync(new URL("../../../docs/schema/job.schema.json", import.meta.url), "utf8"));
  expect(schema.properties.stringcourse.maximum).toBe(kKnownVersion);
});

test("a new name leaves the rest of a document as it was, in the engine's own form", () => {
  expect(withName(kExample, "Kiln house")).toBe(kExample);
  const named = '{\n  "stringcourse": 1,\n  "name": "x",\n  "notes": "n"\n}\n';
  expect(withName('{"notes": "n", "stringcourse": 1}', "x")).toBe(named);
  expect(withName("no json", "x")).toBeUndefined();
  const hostile = '</script><img src=x onerror=alert(1)>"\\\u202e';
  expect(readDocument(withName(kExample, hostile) ?? "")).toEqual({ kind: "job", name: hostile });
});

test("file names keep letters of any script and lose what a file system minds", () => {
  expect(fileNameOf("Kiln house", "json")).toBe("Kiln house.json");
  expect(fileNameOf("../../etc/passwd", "json")).toBe("etc passwd.json");
  expect(fileNameOf("Töpferei 窯 №1", "pdf")).toBe("Töpferei 窯 1.pdf");
  expect(fileNameOf("\u202e\0<>:|?*", "json")).toBe("job.json");
  expect(fileNameOf("x".repeat(300), "json").length).toBe(85);
});

test("texts that differ in one character have other fingerprints", () => {
  const text = jobOf("Shed", "some words of a note");
  const others: string[] = [];
  for (let i = 0; i < text.length; ++i) {
    for (const other of ["x", "\u0001", "é"]) others.push(text.slice(0, i) + other + text.slice(i + 1));
  }
  const apart = new Set([text, ...others]);
  expect(new Set([...apart].map(fingerprint)).size).toBe(apart.size);
});

test("the newest whole copy is found, whichever was torn", () => {
  const copy = (counter: number, text: string, whole = true): Slot => ({
    id: "a",
    slot: counter % 2 === 0 ? 0 : 1,
    counter,
    text: whole ? text : `${text} torn`,
    hash: fingerprint(text),
  });
  expect(newestWhole([copy(4, "four"), copy(5, "five")])).toMatchObject({ slot: { text: "five" }, setBack: false });
  expect(newestWhole([copy(6, "six"), copy(5, "five")])).toMatchObject({ slot: { text: "six" }, setBack: false });
  expect(newestWhole([copy(6, "six", false), copy(5, "five")])).toMatchObject({
    slot: { text: "five" },
    setBack: true,
  });
  expect(newestWhole([copy(6, "six", false)])).toBeUndefined();
  expect(newestWhole([])).toBeUndefined();
});

test("a newer version of the storage keeps all jobs, and the older page then says that it cannot store", async () => {
  const keep = await browser.tab();
  const job = await keep.create(jobOf("Shed"));
  if (!job.ok) throw new Error(job.trouble.detail);
  const more: Upgrade = (db) => void (db as unknown as IDBDatabase).createObjectStore("pictures");
  const newer = await Store.open([...kUpgrades, more]);
  expect((await newer.entries()).map((entry) => entry.name)).toEqual(["Shed"]);
  expect(newestWhole(await newer.slots(job.value.id))?.slot.text).toBe(jobOf("Shed"));
  const stored = await job.value.store(jobOf("Barn"));
  expect(stored).toMatchObject({ ok: false, trouble: { kind: "storage-failed", text: jobOf("Barn") } });
  newer.close();
  const older = await browser.tab(); // the older page again: it does not touch what it does not know
  expect([older.lasting, older.jobs.value]).toEqual([false, []]);
});
