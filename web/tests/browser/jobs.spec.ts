// Jobs on the device: into files and back, two tabs, reloads, a full store, newer versions.
import { readFile } from "node:fs/promises";
import { expect, type Page, test } from "@playwright/test";
import { focusSelected, goTo, handle, openTable, settled, tally, told, withoutDialogs } from "./table";

/// One change that makes the example a job of one's own.
async function change(page: Page): Promise<void> {
  await handle(page, "/outline/sides/0", "side").click();
  const field = page.locator("#in-hand").getByLabel("length", { exact: true });
  await field.fill("26'-8\"");
  await field.press("Enter");
  await expect(page.locator(".title-block")).toContainText("AB 26'-8\"");
  await settled(page);
  await expect(page.locator("#where")).toContainText("in this browser only");
}

async function savedFile(page: Page): Promise<string> {
  const [download] = await Promise.all([
    page.waitForEvent("download"),
    page.locator(".state").getByRole("button", { name: "Save to a file" }).click(),
  ]);
  return readFile(await download.path(), "utf8");
}

test("the first change makes the example a job of one's own, kept over a reload", async ({ page }) => {
  await openTable(page);
  await expect(page.locator(".state")).toContainText("Example");
  await change(page);
  await expect(page.locator("#where")).toContainText("1 change not yet in a file");
  await page.reload();
  await settled(page);
  await expect(page.locator(".title-block")).toContainText("AB 26'-8\"");
});

test("a reload in the middle of a drag finds the job as it was before the drag", async ({ page }) => {
  await openTable(page);
  await change(page);
  const before = await told(page, "/openings/1");
  await handle(page, "/openings/1").click();
  const box = await handle(page, "/openings/1").boundingBox();
  await page.mouse.move((box?.x ?? 0) + 10, (box?.y ?? 0) + 20);
  await page.mouse.down();
  await page.mouse.move((box?.x ?? 0) + 10, (box?.y ?? 0) - 30, { steps: 5 });
  await expect(page.locator(".tag")).toBeVisible();
  await page.reload();
  await settled(page);
  expect(await told(page, "/openings/1")).toBe(before);
});

test("a job goes into a file and comes back from it, byte for byte", async ({ page }) => {
  await withoutDialogs(page);
  await openTable(page);
  await change(page);
  const text = await savedFile(page);
  expect(JSON.parse(text)).toMatchObject({ stringcourse: 1, name: "Kiln house" });
  await expect(page.locator("#where")).toContainText("saved: the file holds every change");
  await goTo(page, "Jobs");
  await page.getByRole("button", { name: "Look at the example" }).click();
  await settled(page);
  await expect(page.locator(".title-block")).toContainText("AB 28'-0\"");
  await goTo(page, "Jobs");
  const [chooser] = await Promise.all([
    page.waitForEvent("filechooser"),
    page.getByRole("button", { name: "Open a file" }).click(),
  ]);
  await chooser.setFiles({ name: "back.json", mimeType: "application/json", buffer: Buffer.from(text) });
  await expect(page.locator(".title-block")).toContainText("AB 26'-8\"");
  await settled(page);
  expect(await savedFile(page)).toBe(text);
});

test("a file dropped on the page is opened", async ({ page }) => {
  await openTable(page);
  const text = await readFile(new URL("../../../examples/hillside-shed.json", import.meta.url), "utf8");
  const data = await page.evaluateHandle((content) => {
    const transfer = new DataTransfer();
    transfer.items.add(new File([content], "shed.json", { type: "application/json" }));
    return transfer;
  }, text);
  await page.dispatchEvent("body", "drop", { dataTransfer: data });
  await expect(page.getByRole("heading", { name: "Hillside shed" })).toBeVisible();
});

test("what is no job is refused in plain words, and the job on the table stays", async ({ page }) => {
  await openTable(page);
  for (const [content, words] of [
    ["<html>", "not a job"],
    ['{"stringcourse": 99, "name": "From next year"}', "newer version"],
  ] as const) {
    await goTo(page, "Jobs");
    const [chooser] = await Promise.all([
      page.waitForEvent("filechooser"),
      page.getByRole("button", { name: "Open a file" }).click(),
    ]);
    await chooser.setFiles({ name: "odd.json", mimeType: "application/json", buffer: Buffer.from(content) });
    await expect(page.locator(".notice.bad")).toContainText(words);
    await goTo(page, "Order");
    await expect(page.getByRole("heading", { name: "Kiln house" })).toBeVisible();
  }
  // JSON that is broken is told with the place where it breaks: two commas in the third line.
  await goTo(page, "Jobs");
  const [chooser] = await Promise.all([
    page.waitForEvent("filechooser"),
    page.getByRole("button", { name: "Open a file" }).click(),
  ]);
  const broken = '{\n  "stringcourse": 1,\n  "name": "x",,\n}';
  await chooser.setFiles({ name: "broken.json", mimeType: "application/json", buffer: Buffer.from(broken) });
  await expect(page.locator(".notice.bad")).toContainText("line 3, column 15");
  // The newer job was not opened, but it is kept.
  await expect(page.locator("#job-list")).toContainText("From next year");
});

test("jobs are doubled, renamed, deleted and brought back", async ({ page }) => {
  await openTable(page);
  await change(page);
  await goTo(page, "Jobs");
  const jobs = page.locator("#job-list");
  await jobs.getByRole("button", { name: "Duplicate: Kiln house" }).click();
  await expect(jobs.getByText("Kiln house (copy)")).toBeVisible();
  await jobs.getByRole("button", { name: "Rename: Kiln house (copy)" }).click();
  await jobs.getByLabel("New name").fill("Second kiln");
  await jobs.getByLabel("New name").press("Enter");
  await expect(jobs.getByText("Second kiln")).toBeVisible();
  await jobs.getByRole("button", { name: "Delete: Second kiln" }).click();
  await expect(jobs.getByText("Second kiln deleted.")).toBeVisible();
  await expect(jobs.getByRole("button", { name: "Open: Second kiln" })).toHaveCount(0);
  await jobs.getByRole("button", { name: "Bring it back" }).click();
  await jobs.getByRole("button", { name: "Open: Second kiln" }).click();
  await expect(page.getByRole("heading", { name: "Second kiln" })).toBeVisible();
});

test("the trash is seen, and a job ends for good only where that is asked for", async ({ page }) => {
  await openTable(page);
  await change(page);
  await goTo(page, "Jobs");
  const jobs = page.locator("#job-list");
  const copies = jobs.getByRole("button", { name: "Open: Kiln house (copy)" });
  for (const there of [1, 2]) {
    await jobs.getByRole("button", { name: "Duplicate: Kiln house", exact: true }).click();
    await expect(copies).toHaveCount(there);
  }
  for (const left of [1, 0]) {
    await jobs.getByRole("button", { name: "Delete: Kiln house (copy)" }).first().click();
    await expect(copies).toHaveCount(left);
  }
  const trash = jobs.locator(".trash");
  await trash.getByText("Deleted jobs (2)").click();
  await expect(trash).toContainText("30 days of use left");
  await trash.getByRole("button", { name: "Bring it back: Kiln house (copy)" }).first().click();
  await expect(trash).toContainText("Deleted jobs (1)");
  await expect(copies).toHaveCount(1);
  await trash.getByRole("button", { name: "Delete for good: Kiln house (copy)" }).click();
  await expect(trash).toHaveCount(0);
  await expect(copies).toHaveCount(1);
});

test("a file that is no job leaves the job on the table open, so that the next change is kept in it", async ({
  page,
}) => {
  await openTable(page);
  await change(page);
  await goTo(page, "Jobs");
  const [chooser] = await Promise.all([
    page.waitForEvent("filechooser"),
    page.getByRole("button", { name: "Open a file" }).click(),
  ]);
  await chooser.setFiles({ name: "odd.json", mimeType: "application/json", buffer: Buffer.from("<html>") });
  await expect(page.locator(".notice.bad")).toContainText("not a job");
  await goTo(page, "Order");
  await focusSelected(page, handle(page, "/openings/0"));
  await page.keyboard.press("Shift+ArrowLeft");
  await settled(page);
  await expect(page.locator("#where")).toContainText("2 changes not yet in a file");
  await goTo(page, "Jobs");
  await expect(page.locator("#job-list li")).toHaveCount(1);
});

test("a refusal ends the waiting for offers", async ({ page }) => {
  await openTable(page);
  const text = await readFile(new URL("../../../examples/kiln-house.json", import.meta.url), "utf8");
  await goTo(page, "Jobs");
  const [chooser] = await Promise.all([
    page.waitForEvent("filechooser"),
    page.getByRole("button", { name: "Open a file" }).click(),
  ]);
  const broken = text.replace("9'-4\\\"", "27'-4\\\"");
  await chooser.setFiles({ name: "b.json", mimeType: "application/json", buffer: Buffer.from(broken) });
  await expect(page.locator(".title-block .trouble")).toContainText("D1");
  await expect(page.locator('[aria-busy="true"]')).toHaveCount(0);
  await expect(page.locator(".offers")).not.toContainText("Offers follow");
});

test("a second tab on one job only looks on, and writes once the first has left", async ({ page, context }) => {
  await openTable(page);
  await change(page);
  const second = await context.newPage();
  await openTable(second);
  await expect(second.locator(".state")).toContainText("another tab");
  await focusSelected(second, handle(second, "/openings/0"));
  await second.keyboard.press("Shift+ArrowLeft");
  await expect(second.locator(".tag")).toHaveCount(0);
  // What the first tab changes is seen in the second.
  await page.getByRole("button", { name: "Undo" }).click();
  await expect(page.locator(".title-block")).toContainText("AB 28'-0\"");
  await expect(second.locator(".title-block")).toContainText("AB 28'-0\"");
  await page.close();
  await expect(second.locator(".state")).not.toContainText("another tab");
  await settled(second);
  await focusSelected(second, handle(second, "/openings/0"));
  await second.keyboard.press("Shift+ArrowLeft");
  await expect.poll(() => told(second, "/openings/0")).toContain("9'-11 5/8\"");
});

test("a full store is said aloud, the job goes on in the page, and is saved to a file", async ({ page }) => {
  await withoutDialogs(page);
  await page.addInitScript(() => {
    const put = IDBObjectStore.prototype.put;
    const add = IDBObjectStore.prototype.add;
    const full = (): never => {
      throw new DOMException("full", "QuotaExceededError");
    };
    Object.defineProperty(window, "fillTheStore", {
      value: (on: boolean) => {
        IDBObjectStore.prototype.put = on ? full : put;
        IDBObjectStore.prototype.add = on ? full : add;
      },
    });
  });
  await openTable(page);
  await change(page);
  await page.evaluate(() => (window as unknown as { fillTheStore(on: boolean): void }).fillTheStore(true));
  await focusSelected(page, handle(page, "/openings/0"));
  await page.keyboard.press("Shift+ArrowLeft");
  await expect(page.locator(".state .loud")).toContainText("store is full");
  await settled(page);
  expect(await tally(page, "saw cuts")).toBe(0);
  const text = await savedFile(page);
  expect(text).toContain("10'-0");
  // Left for another job, the text that was not kept is still offered.
  await goTo(page, "Jobs");
  await page.getByRole("button", { name: "Look at the example" }).click();
  await expect(page.locator(".notice.bad")).toContainText("could not be kept");
  // With room again the next change is kept as before.
  await page.evaluate(() => (window as unknown as { fillTheStore(on: boolean): void }).fillTheStore(false));
  await settled(page);
  await focusSelected(page, handle(page, "/openings/0"));
  await page.keyboard.press("Shift+ArrowLeft");
  await expect(page.locator("#where")).toContainText("in this browser only");
});

test("a change made before the store has opened is kept all the same", async ({ page }) => {
  await page.addInitScript(() => {
    const open = IDBFactory.prototype.open;
    IDBFactory.prototype.open = function (this: IDBFactory, ...asked: Parameters<IDBFactory["open"]>) {
      const until = performance.now() + 400;
      while (performance.now() < until); // a slow disk
      return open.apply(this, asked);
    };
  });
  await openTable(page);
  await change(page);
  await page.reload();
  await settled(page);
  await expect(page.locator(".title-block")).toContainText("AB 26'-8\"");
});

test("a job that cannot be built is opened with its reasons, and can be mended in the page", async ({ page }) => {
  await openTable(page);
  const text = await readFile(new URL("../../../examples/kiln-house.json", import.meta.url), "utf8");
  await goTo(page, "Jobs");
  const [chooser] = await Promise.all([
    page.waitForEvent("filechooser"),
    page.getByRole("button", { name: "Open a file" }).click(),
  ]);
  const broken = text.replace("9'-4\\\"", "27'-4\\\"").replace("Kiln house", "Broken house");
  await chooser.setFiles({ name: "b.json", mimeType: "application/json", buffer: Buffer.from(broken) });
  await expect(page.getByRole("heading", { name: "Broken house" })).toBeVisible();
  await expect(page.locator(".title-block .trouble")).toContainText("D1");
  await expect(page.locator("#plan .ink svg")).toHaveCount(0);
  await page.locator(".title-block .trouble").getByRole("button", { name: "Show" }).first().click();
  const field = page.locator("#in-hand").getByLabel("from corner A");
  await field.fill("9'-4\"");
  await field.press("Enter");
  await settled(page);
  expect(await tally(page, "units laid")).toBe(861);
});
