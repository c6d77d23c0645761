// The example is shown from point to point, can be left at any moment, and touches nothing of one's own.
import { readFile } from "node:fs/promises";
import { expect, type Page, test } from "@playwright/test";
import { beginOwn, goTo, handle, openTable, select, settled, withoutDialogs } from "./table";

const strip = (page: Page) => page.locator(".show-me");
const show = (page: Page) => page.getByRole("button", { name: "Show me, in two minutes" });

async function jobOf(page: Page): Promise<string> {
  const [download] = await Promise.all([
    page.waitForEvent("download"),
    page.locator(".state").getByRole("button", { name: "Save to a file" }).click(),
  ]);
  return readFile(await download.path(), "utf8");
}

/// The stops one after the other; hands back the points that were shown.
async function throughAll(page: Page): Promise<readonly string[]> {
  const points: string[] = [];
  for (;;) {
    await settled(page);
    const point = (await page.locator(".spine [aria-current=page] .title").textContent()) ?? "";
    if (points.at(-1) !== point) points.push(point);
    const next = strip(page).getByRole("button", { name: "Next" });
    if ((await next.count()) === 0) return points;
    await next.click();
  }
}

test("from the first screen through all six points, and back to begin one's own", async ({ page }) => {
  await page.goto("./");
  await show(page).click();
  expect(await throughAll(page)).toEqual(["Order", "Pour", "First course", "Lintels", "Grout", "Top"]);
  await expect(page.locator("#sheets")).toBeInViewport();
  await strip(page).getByRole("button", { name: "Begin your own" }).click();
  await expect(page.getByRole("button", { name: "Draw it" })).toBeVisible();
  await expect(strip(page)).toHaveCount(0);
  expect(new URL(page.url()).hash).not.toBe("#top");
});

test("it goes on by itself, all of it in less than two minutes, and rests when it is asked to", async ({ page }) => {
  await page.clock.install();
  await page.goto("./");
  await show(page).click();
  await expect(strip(page)).toContainText("1 of 8");
  await expect(page.locator(".view .ink svg").first()).toBeVisible();
  await page.clock.runFor(13_000);
  await expect(strip(page)).toContainText("2 of 8");
  await strip(page).getByRole("button", { name: "Stop here" }).click();
  await page.clock.runFor(60_000);
  await expect(strip(page)).toContainText("2 of 8");
  await strip(page).getByRole("button", { name: "Go on by itself" }).click();
  let seconds = 13;
  while ((await strip(page).getByRole("button", { name: "Begin your own" }).count()) === 0) {
    await page.clock.runFor(1_000);
    seconds += 1;
    expect(seconds).toBeLessThan(120);
  }
});

for (const [how, leave] of [
  ["Escape", (page: Page) => page.keyboard.press("Escape")],
  ["the browser's way back", (page: Page) => page.goBack()],
  ["its button", (page: Page) => strip(page).getByRole("button", { name: "Leave" }).click()],
  ["a link", (page: Page) => goTo(page, "Lintels")],
] as const) {
  test(`left by ${how}, one's own job is as it was, with its steps`, async ({ page }) => {
    await withoutDialogs(page);
    await page.goto("./");
    await beginOwn(page, { length: "20'", width: "16'", height: "8'" });
    await select(handle(page, "/outline/sides/0", "side"));
    await page.locator("#in-hand").getByRole("button", { name: "Door", exact: true }).click();
    await settled(page);
    const before = await jobOf(page);
    await goTo(page, "Jobs");
    await show(page).click();
    await settled(page);
    await expect(page.getByRole("heading", { name: "Kiln house" })).toBeVisible();
    await expect(page.locator(".state")).toContainText("only shown");
    await strip(page).getByRole("button", { name: "Next" }).click();
    await strip(page).getByRole("button", { name: "Next" }).click();
    // Nothing can be changed meanwhile.
    await expect(page.getByRole("button", { name: "Undo" })).toBeDisabled();
    await leave(page);
    await expect(strip(page)).toHaveCount(0);
    await goTo(page, "Order");
    await settled(page);
    await expect(page.getByRole("heading", { name: "New building" })).toBeVisible();
    expect(await jobOf(page)).toBe(before);
    await expect(page.getByRole("button", { name: "Undo" })).toBeEnabled();
    await goTo(page, "Jobs");
    await expect(page.locator(".jobs li")).toHaveCount(1);
  });
}

test("it is shown on a phone too: the strip covers neither the drawing nor the points", async ({ page }) => {
  await page.setViewportSize({ width: 360, height: 740 });
  await page.goto("./");
  await show(page).click();
  await settled(page);
  const [box, spine] = [await strip(page).boundingBox(), await page.locator(".spine").boundingBox()];
  expect((box?.y ?? 0) + (box?.height ?? 0)).toBeLessThanOrEqual((spine?.y ?? 0) + 1);
  expect(box?.height ?? 999).toBeLessThan(200);
  expect(await page.evaluate(() => document.documentElement.scrollWidth)).toBe(360);
  await openTable(page); // and a link to elsewhere ends it
});
