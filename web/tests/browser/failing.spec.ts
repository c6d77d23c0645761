// A job that fails never stands in the way of the others: the page opens, shows the list, says which job it was and hands
// out its file.
import { readFile } from "node:fs/promises";
import { expect, type Page, test } from "@playwright/test";
import { goTo, openTable, settled, withoutDialogs } from "./table";

/// An engine that a job called Crowded ends ("trap"), or that never answers for it ("hang").
async function frailEngine(page: Page, how: "trap" | "hang"): Promise<void> {
  await page.addInitScript((way) => {
    const Real = window.Worker;
    window.Worker = class extends Real {
      override postMessage(message: unknown): void {
        const asked = JSON.stringify(message).includes("Crowded");
        if (!asked) super.postMessage(message);
        else if (way === "trap")
          queueMicrotask(() => this.onerror?.(new ErrorEvent("error", { message: "bad_alloc" })));
      }
    } as typeof Worker;
  }, how);
}

async function crowdedJob(): Promise<string> {
  const text = await readFile(new URL("../../../examples/kiln-house.json", import.meta.url), "utf8");
  return text.replace("Kiln house", "Crowded");
}

async function openFile(page: Page, text: string): Promise<void> {
  await goTo(page, "Jobs");
  const [chooser] = await Promise.all([
    page.waitForEvent("filechooser"),
    page.getByRole("button", { name: "Open a file" }).click(),
  ]);
  await chooser.setFiles({ name: "crowded.json", mimeType: "application/json", buffer: Buffer.from(text) });
}

/// A first job of one's own, to be reached whatever becomes of the other.
async function ownJob(page: Page): Promise<void> {
  await goTo(page, "Jobs");
  await page.getByRole("button", { name: "Draw it" }).click();
  await expect(page.getByRole("heading", { name: "New building" })).toBeVisible();
  await settled(page);
  await expect(page.locator("#where")).toContainText("in this browser only");
}

async function openOther(page: Page): Promise<void> {
  await goTo(page, "Jobs");
  await page.locator("#job-list").getByRole("button", { name: "Open: New building" }).click();
  await expect(page.getByRole("heading", { name: "New building" })).toBeVisible();
  await settled(page);
  await expect(page.locator(".notice.bad")).toHaveCount(0);
}

test("a job that ends the engine is named, its file is offered, and the others open, also after a reload", async ({
  page,
}) => {
  await withoutDialogs(page);
  await frailEngine(page, "trap");
  await openTable(page);
  await ownJob(page);
  const text = await crowdedJob();
  await openFile(page, text);
  const notice = page.locator(".notice.bad");
  await expect(notice).toContainText("a mistake of its own with Crowded");
  await expect(page.locator("#plan .ink svg")).toHaveCount(0); // the other job's drawing is not this one's
  await page.reload();
  await expect(notice).toContainText("Crowded");
  const [download] = await Promise.all([
    page.waitForEvent("download"),
    notice.getByRole("button", { name: "Save to a file" }).click(),
  ]);
  expect(await readFile(await download.path(), "utf8")).toBe(text);
  await openOther(page);
});

test("a job that takes for ever leaves the list in reach, and the next one does not wait for it", async ({ page }) => {
  await frailEngine(page, "hang");
  await openTable(page);
  await ownJob(page);
  await openFile(page, await crowdedJob());
  await expect(page.locator("#building")).toContainText("Crowded is being worked out");
  await expect(page.locator("#plan .ink svg")).toHaveCount(0); // another job's drawing does not stand for it
  await page.reload();
  await expect(page.locator("#building")).toContainText("Crowded is being worked out");
  await openOther(page);
});

test("a job that the page did not outlive is not opened again by itself", async ({ page, context }) => {
  await withoutDialogs(page);
  await frailEngine(page, "hang");
  await openTable(page);
  await ownJob(page);
  const text = await crowdedJob();
  await openFile(page, text);
  await expect.poll(() => page.evaluate(() => localStorage.getItem("stringcourse-being-opened"))).not.toBeNull();
  const session = await context.newCDPSession(page);
  const died = page.waitForEvent("crash");
  void session.send("Page.crash").catch(() => undefined);
  await died;
  const again = await context.newPage();
  await withoutDialogs(again);
  await openTable(again);
  await expect(again.getByRole("heading", { name: "Kiln house" })).toBeVisible();
  const notice = again.locator(".notice.bad");
  await expect(notice).toContainText("Crowded was not opened");
  const [download] = await Promise.all([
    again.waitForEvent("download"),
    notice.getByRole("button", { name: "Save to a file" }).click(),
  ]);
  expect(await readFile(await download.path(), "utf8")).toBe(text);
  await notice.getByRole("button", { name: "Open it all the same" }).click();
  await settled(again);
  await expect(again.getByRole("heading", { name: "Crowded" })).toBeVisible();
});
