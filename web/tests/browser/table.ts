// What the browser tests do over and over: open the page, read its tallies, take hold of things.
import { expect, type Locator, type Page } from "@playwright/test";

export async function openTable(page: Page, address = "./#order"): Promise<void> {
  await page.goto(address.includes("#") ? address : `${address}#order`);
  await settled(page);
}

/// Every change that was asked for is made, a drawing stands, no hand moves, and the offers of this very job are there.
export async function settled(page: Page): Promise<void> {
  await expect(page.locator("main")).toHaveAttribute("data-turns", "0");
  await expect(page.locator(".view .ink svg").first()).toBeVisible();
  await expect(page.locator("main")).toHaveAttribute("data-stage", "whole");
  await expect(page.locator("main")).toHaveAttribute("data-offers", "there");
}

/// To one of the hold points, the wall or the jobs, as a person goes there.
export async function goTo(page: Page, name: string): Promise<void> {
  const link = page.locator(name === "Jobs" ? ".head" : ".spine").getByRole("link", { name });
  await link.click();
  await expect(link).toHaveAttribute("aria-current", "page");
  await expect(page.locator('.point[aria-busy="true"]')).toHaveCount(0);
}

/// One's own building of four sizes, where one is begun; what is left out stays as it stands there.
export async function beginOwn(page: Page, sizes: Readonly<Record<string, string>> = {}): Promise<void> {
  await goTo(page, "Jobs");
  for (const [name, text] of Object.entries(sizes))
    await page.locator(".begin").getByLabel(name, { exact: true }).fill(text);
  await page.getByRole("button", { name: "Draw it" }).click();
  await expect(page.getByRole("heading", { name: "New building" })).toBeVisible();
  await settled(page);
}

/// A job out of a file.
export async function openFile(page: Page, text: string, name = "job.json"): Promise<void> {
  await goTo(page, "Jobs");
  const [chooser] = await Promise.all([
    page.waitForEvent("filechooser"),
    page.getByRole("button", { name: "Open a file" }).click(),
  ]);
  await chooser.setFiles({ name, mimeType: "application/json", buffer: Buffer.from(text) });
}

/// A tap on what is not selected selects it.
export async function select(what: Locator): Promise<void> {
  await what.click();
  await expect(what).toHaveClass(/chosen/);
}

export async function tally(page: Page, name: string): Promise<number> {
  const text = await page.locator(".tallies > div", { hasText: name }).locator("dd").textContent();
  return Number(text);
}

export function handle(page: Page, place: string, part: "body" | "from" | "to" | "side" = "body"): Locator {
  return page.locator(`#plan .handle[data-place="${place}"][data-part="${part}"]`);
}

/// The place of an opening as the plan's handle tells it.
export function told(page: Page, place: string): Promise<string | null> {
  return handle(page, place).getAttribute("data-told");
}

/// Only what is selected can be moved.
export async function drag(page: Page, what: Locator, dx: number, dy: number, steps = 12): Promise<void> {
  if (!(await what.evaluate((one) => one.classList.contains("chosen")))) await select(what);
  await pick(page, what);
  const box = await what.boundingBox();
  if (box === null) throw new Error("nothing to take hold of");
  const x = box.x + box.width / 2;
  const y = box.y + box.height / 2;
  for (let step = 1; step <= steps; ++step) await page.mouse.move(x + (dx * step) / steps, y + (dy * step) / steps);
}

/// CSS pixels of so many inches on the example's plan, which is drawn at 1:50 in micrometres.
export async function inchesOnPlan(page: Page, inches: number): Promise<number> {
  const drawing = page.locator("#plan .ink svg");
  const pixels = await drawing.evaluate((svg) => (svg as SVGSVGElement).getScreenCTM()?.a ?? 0);
  return ((inches * 25_400) / 50) * pixels;
}

/// Presses the mouse button on the middle of a handle.
export async function pick(page: Page, what: Locator): Promise<void> {
  await what.scrollIntoViewIfNeeded();
  const box = await what.boundingBox();
  if (box === null) throw new Error("nothing to take hold of");
  await page.mouse.move(box.x + box.width / 2, box.y + box.height / 2);
  await page.mouse.down();
}

export async function undo(page: Page): Promise<void> {
  await page.getByRole("button", { name: "Undo" }).click();
  await settled(page);
}

/// Files are saved as downloads, as in a browser without file dialogs.
export async function withoutDialogs(page: Page): Promise<void> {
  await page.addInitScript(() => {
    Reflect.deleteProperty(window, "showSaveFilePicker");
  });
}

/// By the keyboard: what is in focus is selected, and can then be moved.
export async function focusSelected(page: Page, what: Locator): Promise<void> {
  await what.focus();
  if (!(await what.evaluate((one) => one.classList.contains("chosen")))) await page.keyboard.press("Enter");
  await expect(what).toHaveClass(/chosen/);
}

/// An engine that answers each question so many milliseconds late.
export async function slowEngine(page: Page, late: number): Promise<void> {
  await page.addInitScript((by) => {
    const Real = window.Worker;
    window.Worker = class extends Real {
      override set onmessage(heard: ((event: MessageEvent) => void) | null) {
        super.onmessage = (event: MessageEvent) => {
          const wait = "block" in event.data ? by : 0;
          setTimeout(() => heard?.call(this, event), wait);
        };
      }
    } as typeof Worker;
  }, late);
}
