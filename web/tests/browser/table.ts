// What the browser tests do over and over: open the page, read its tallies, take hold of things.
import { expect, type Locator, type Page } from "@playwright/test";

export async function openTable(page: Page, address = "./"): Promise<void> {
  await page.goto(address);
  await settled(page);
}

/// The drawing stands, no hand moves, and the offers of this very job are there.
export async function settled(page: Page): Promise<void> {
  await expect(page.locator("#plan .ink svg")).toBeVisible();
  await expect(page.locator(".tallies")).toHaveAttribute("data-draft", "false");
  await expect(page.locator(".offers")).toHaveAttribute("aria-busy", "false");
}

export async function tally(page: Page, name: string): Promise<number> {
  const text = await page.locator(".tallies > div", { hasText: name }).locator("dd").textContent();
  return Number(text);
}

export function grip(page: Page, place: string, part: "body" | "from" | "to" | "side" = "body"): Locator {
  return page.locator(`#plan .grip[data-place="${place}"][data-grip="${part}"]`);
}

/// The place of an opening as the plan's handle tells it.
export function told(page: Page, place: string): Promise<string | null> {
  return grip(page, place).getAttribute("aria-valuetext");
}

export async function drag(page: Page, what: Locator, dx: number, dy: number, steps = 12): Promise<void> {
  await pick(page, what);
  const box = await what.boundingBox();
  if (box === null) throw new Error("nothing to take hold of");
  const x = box.x + box.width / 2;
  const y = box.y + box.height / 2;
  for (let step = 1; step <= steps; ++step) await page.mouse.move(x + (dx * step) / steps, y + (dy * step) / steps);
}

/// Presses the mouse button on the middle of a grip.
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
