// A first visit: the brief module draws and follows the hand, the whole one takes over between two answers.
import { mkdtemp, rm } from "node:fs/promises";
import { tmpdir } from "node:os";
import { join } from "node:path";
import { chromium, expect, type Page, type Route, test } from "@playwright/test";
import { drag, focusSelected, goTo, handle, pick, settled, slowEngine, tally, told } from "./table";

const kWhole = /\/stringcourse-(?!brief-)[^/]*\.wasm$/;

/// Holds the whole module back until the test lets it come, or fails it.
async function heldBack(page: Page): Promise<{ come(): Promise<void>; fail(): Promise<void> }> {
  const waiting: Route[] = [];
  let open = false;
  await page.route(kWhole, (route) => (open ? route.continue() : waiting.push(route)));
  const asked = async (): Promise<void> => {
    await expect.poll(() => waiting.length).toBeGreaterThan(0);
    open = true;
  };
  return {
    async come() {
      await asked();
      await Promise.all(waiting.map((route) => route.continue()));
    },
    async fail() {
      await asked();
      await Promise.all(waiting.map((route) => route.abort()));
    },
  };
}

const stage = (page: Page) => page.locator("main");

/// A job of one's own without anything but the brief module.
async function drawn(page: Page): Promise<void> {
  await expect(stage(page)).toHaveAttribute("data-stage", "first");
  await expect(page.locator("#plan .handle").first()).toBeVisible();
}

test("drawings and counts stand, and nothing is said of what is not known yet, while the whole module is on its way", async ({
  page,
}) => {
  const whole = await heldBack(page);
  await page.goto("./#order");
  await drawn(page);
  expect(await tally(page, "units laid")).toBe(861);
  await expect(page.getByText("follow in a moment")).toBeVisible();
  await expect(page.getByText("No finding at this point.")).toHaveCount(0);
  await goTo(page, "Grout");
  for (const none of ["No upright bars", "No pour is so high"])
    await expect(page.getByText(none).filter({ visible: true })).toHaveCount(0);
  await goTo(page, "Order");
  await whole.come();
  await settled(page);
  await expect(page.getByText("follow in a moment")).toHaveCount(0);
  expect(await tally(page, "units laid")).toBe(861);
  await expect(page.locator("#questions li").first()).toBeVisible();
});

test("a hand that drags while the whole module comes in sees every frame drawn, and what it leaves is solved whole", async ({
  page,
}) => {
  const whole = await heldBack(page);
  await page.goto("./#order");
  await drawn(page);
  const opening = handle(page, "/openings/0");
  const before = await told(page, "/openings/0");
  await drag(page, opening, -30, 0);
  await expect.poll(() => told(page, "/openings/0")).not.toBe(before);
  const half = await told(page, "/openings/0");
  await whole.come();
  await page.waitForTimeout(500); // it takes over between two frames of the drag
  const box = await opening.boundingBox();
  if (box === null) throw new Error("the opening has no handle");
  await page.mouse.move(box.x + box.width / 2 - 60, box.y + box.height / 2, { steps: 12 });
  await expect.poll(() => told(page, "/openings/0")).not.toBe(half);
  await page.mouse.up();
  await settled(page);
  await expect(page.locator(".notice.bad")).toHaveCount(0);
});

test("a whole module that cannot be had is said plainly; the drawing goes on, and trying again brings it", async ({
  page,
}) => {
  const whole = await heldBack(page);
  await page.goto("./#order");
  await drawn(page);
  await whole.fail();
  const notice = page.locator(".notice.bad");
  await expect(notice).toBeVisible();
  await expect(page.locator("#plan .handle").first()).toBeVisible();
  await notice.getByRole("button", { name: "Try again" }).click();
  await settled(page);
});

test("with an engine that answers late everything comes all the same", async ({ page }) => {
  await slowEngine(page, 400);
  const whole = await heldBack(page);
  await page.goto("./#order");
  await drawn(page);
  await pick(page, handle(page, "/openings/0"));
  await page.mouse.up();
  await whole.come();
  await settled(page);
  await focusSelected(page, handle(page, "/openings/0"));
  const before = await told(page, "/openings/0");
  await page.keyboard.press("Shift+ArrowLeft");
  await expect.poll(() => told(page, "/openings/0")).not.toBe(before);
  await settled(page);
});

test("a browser that ends between the two modules has kept the job", async ({ launchOptions, baseURL }) => {
  const profile = await mkdtemp(join(tmpdir(), "stringcourse-modules-"));
  const start = () => chromium.launchPersistentContext(profile, { ...launchOptions, serviceWorkers: "block" });
  try {
    const first = await start();
    const page = await first.newPage();
    await page.route(kWhole, () => undefined); // never comes
    await page.goto(`${baseURL}#jobs`);
    await page.locator(".begin").getByLabel("length", { exact: true }).fill("24'");
    await page.getByRole("button", { name: "Draw it" }).click();
    await expect(page.getByRole("heading", { name: "New building" })).toBeVisible();
    await drawn(page);
    await expect(page.locator("#where")).toBeVisible();
    await expect(page.locator(".state")).toContainText("not yet in a file"); // it is in the store by then
    await first.close();

    const second = await start();
    const again = await second.newPage();
    await again.goto(`${baseURL}#order`);
    await settled(again);
    await expect(again.getByRole("heading", { name: "New building" })).toBeVisible();
    expect(await tally(again, "courses")).toBe(12);
    await second.close();
  } finally {
    await rm(profile, { recursive: true, force: true });
  }
});
