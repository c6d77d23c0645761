// Parts of the page that come when they are opened: what is fetched before the first paint, what stands while a part is on
// its way, and what is said when it cannot be had.
import { readdirSync, readFileSync } from "node:fs";
import { basename, join } from "node:path";
import { fileURLToPath } from "node:url";
import { gzipSync } from "node:zlib";
import { expect, type Page, type Route, test } from "@playwright/test";
import { goTo, openTable, settled } from "./table";

const kAssets = fileURLToPath(new URL("../../dist/assets", import.meta.url));
const heading = (page: Page) => page.locator(".point-head h2");

/// Holds back a part of the page, by the name of its file, until it is let come or fails.
async function heldBack(page: Page, name: string): Promise<{ come(): Promise<void>; fail(): Promise<void> }> {
  const waiting: Route[] = [];
  let open = false;
  await page.route(new RegExp(`/assets/${name}-[^/]*\\.js$`), (route) =>
    open ? route.continue() : waiting.push(route),
  );
  const asked = async (): Promise<void> => expect.poll(() => waiting.length).toBeGreaterThan(0);
  return {
    async come() {
      await asked();
      open = true;
      await Promise.all(waiting.map((route) => route.continue()));
    },
    async fail() {
      await asked();
      await Promise.all(waiting.splice(0).map((route) => route.abort()));
    },
  };
}

test("before the first screen can be worked with, at most 60 kB of script are fetched", async ({ page }) => {
  const fetched: string[] = [];
  page.on("request", (request) => {
    if (/\/assets\/.*\.js$/.test(request.url())) fetched.push(basename(new URL(request.url()).pathname));
  });
  await page.route(/\.wasm$/, () => undefined); // what is fetched once the engine is there comes after
  await page.goto("./");
  await expect(page.getByRole("button", { name: "Draw it" })).toBeVisible();
  await page.waitForTimeout(500);
  const scripts = fetched.filter((file) => !file.startsWith("worker-"));
  const bytes = scripts.reduce(
    (sum, file) => sum + gzipSync(readFileSync(join(kAssets, file)), { level: 9 }).length,
    0,
  );
  expect(scripts.length).toBeGreaterThan(0);
  expect(bytes).toBeLessThanOrEqual(60_000);
});

test("once the engine has come every part is fetched, so that none is waited for", async ({ page }) => {
  const fetched = new Set<string>();
  page.on("request", (request) => fetched.add(basename(new URL(request.url()).pathname)));
  await openTable(page);
  const parts = readdirSync(kAssets).filter((file) => file.endsWith(".js") && !/^(view|Space)-/.test(file));
  await expect.poll(() => parts.filter((file) => !fetched.has(file))).toEqual([]);
});

test("while a part is on its way its head stands, takes the focus, and keeps both when the part has come", async ({
  page,
}) => {
  const grout = await heldBack(page, "Grout");
  await openTable(page);
  await page.locator(".spine").getByRole("link", { name: "Grout" }).click();
  await expect(heading(page)).toHaveText("5Grout");
  await expect(heading(page)).toBeFocused();
  await expect(page.locator("#point-grout")).toHaveAttribute("aria-busy", "true");
  const before = await page.locator(".point-head").boundingBox();
  const high = await page.evaluate(() => document.documentElement.scrollHeight);
  expect(high).toBeGreaterThan(1400); // the frame has its room
  await grout.come();
  await expect(page.locator("#questions .question").first()).toBeVisible();
  await expect(heading(page)).toBeFocused();
  expect(await page.locator(".point-head").boundingBox()).toEqual(before);
  await page.goBack();
  await expect(heading(page)).toHaveText("1Order");
  await page.goForward();
  await expect(heading(page)).toHaveText("5Grout");
  await expect(page.locator("#questions .question").first()).toBeVisible();
});

test("an address leads to a part that comes late", async ({ page }) => {
  const top = await heldBack(page, "Top");
  await page.goto("./#top");
  await expect(heading(page)).toHaveText("6Top");
  await top.come();
  await settled(page);
  await expect(page.locator("#questions .question").first()).toBeVisible();
});

test("a part that cannot be had is said, keeps nobody from the others, and is fetched anew when asked for", async ({
  page,
}) => {
  const grout = await heldBack(page, "Grout");
  await openTable(page);
  await page.locator(".spine").getByRole("link", { name: "Grout" }).click();
  await grout.fail();
  await expect(page.getByRole("alert").filter({ hasText: "could not be fetched" })).toBeVisible();
  await goTo(page, "Lintels");
  await expect(page.locator("#questions .question").first()).toBeVisible();
  await page.unroute(/Grout/);
  await page.unrouteAll();
  await page.locator(".spine").getByRole("link", { name: "Grout" }).click();
  await expect(page.locator("#point-grout #questions .question").first()).toBeVisible();
});
