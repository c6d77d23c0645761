// Scrolling never edits: a swipe or the wheel over any drawing, label or handle moves the page and nothing of the job.
import { readFile } from "node:fs/promises";
import { type CDPSession, expect, type Locator, type Page, test } from "@playwright/test";
import { goTo, handle, openTable, settled, told, withoutDialogs } from "./table";

async function jobOf(page: Page): Promise<string> {
  const [download] = await Promise.all([
    page.waitForEvent("download"),
    page.locator(".state").getByRole("button", { name: "Save to a file" }).click(),
  ]);
  return readFile(await download.path(), "utf8");
}

const topOf = (page: Page): Promise<number> => page.evaluate(() => scrollY);

/// How far the plan stands from the top of the screen, once it has come to rest.
async function planAtRest(page: Page): Promise<number> {
  const top = () => page.locator("#plan .box").evaluate((box) => box.getBoundingClientRect().top);
  let [before, now] = [Number.NaN, await top()];
  while (before !== now) {
    await page.waitForTimeout(200);
    [before, now] = [now, await top()];
  }
  return now;
}

async function middleOf(what: Locator): Promise<{ x: number; y: number }> {
  await what.evaluate((element) => element.scrollIntoView({ block: "center", behavior: "instant" }));
  const box = await what.boundingBox();
  if (box === null) throw new Error("nothing to swipe over");
  return { x: box.x + box.width / 2, y: box.y + box.height / 2 };
}

/// A finger laid on a point, drawn along and lifted, as the browser tells it.
async function swipe(session: CDPSession, from: { x: number; y: number }, dx: number, dy: number): Promise<void> {
  await session.send("Input.dispatchTouchEvent", { type: "touchStart", touchPoints: [from] });
  for (let step = 1; step <= 8; ++step) {
    const at = { x: from.x + (dx * step) / 8, y: from.y + (dy * step) / 8 };
    await session.send("Input.dispatchTouchEvent", { type: "touchMove", touchPoints: [at] });
  }
  await new Promise((rest) => setTimeout(rest, 150)); // a finger that rests before it is lifted throws nothing
  await session.send("Input.dispatchTouchEvent", { type: "touchEnd", touchPoints: [] });
}

/// Swipes up and down over it; the page follows the finger each time.
async function swipeOver(page: Page, session: CDPSession, what: Locator, name: string): Promise<void> {
  for (const dy of [-80, 80]) {
    const middle = await middleOf(what);
    const before = await topOf(page);
    await swipe(session, middle, 0, dy);
    if (dy > 0 && before < dy) continue; // the page stands at its top
    await expect.poll(async () => Math.sign((await topOf(page)) - before), name).toBe(-Math.sign(dy));
  }
  // Across, where the page has nowhere to go.
  await swipe(session, await middleOf(what), 60, 0);
}

async function everyHandle(page: Page): Promise<readonly [Locator, string][]> {
  const handles = page.locator(".handle");
  const count = await handles.count();
  return Promise.all(
    Array.from({ length: count }, async (_, at): Promise<[Locator, string]> => {
      const one = handles.nth(at);
      return [one, (await one.getAttribute("aria-label")) ?? ""];
    }),
  );
}

test.describe("on a phone", () => {
  test.use({ viewport: { width: 360, height: 740 }, hasTouch: true, isMobile: true, deviceScaleFactor: 2 });
  test.setTimeout(400_000);

  test("a swipe over a drawing, a label or a handle scrolls, and the job is byte for byte as it was", async ({
    page,
  }) => {
    await withoutDialogs(page);
    await openTable(page);
    const before = await jobOf(page);
    const session = await page.context().newCDPSession(page);
    const handles = await everyHandle(page);
    expect(handles.length).toBe(8 + 1); // four sides and four openings on the plan, D1 on AB's elevation
    for (const [one, name] of handles) await swipeOver(page, session, one, name);
    for (const drawing of [".box.plan", ".box.elevation"]) {
      await swipeOver(page, session, page.locator(drawing), drawing);
    }
    for (const name of ["Pour", "First course", "Lintels", "Grout", "Top", "At the wall"]) {
      await goTo(page, name);
      await swipeOver(page, session, page.locator(".board .box"), name);
      for (const [one, told] of await everyHandle(page)) await swipeOver(page, session, one, `${name}: ${told}`);
    }
    await goTo(page, "Order");
    await page.getByRole("button", { name: "Show the units in space" }).tap();
    await expect(page.locator(".space canvas")).toHaveAttribute("data-units", /[1-9]/);
    await swipeOver(page, session, page.locator(".space canvas"), "canvas");
    expect(await jobOf(page)).toBe(before);
    await expect(page.getByRole("button", { name: "Undo" })).toBeDisabled();
  });

  test("a tap selects and brings out the handles; only they are moved, and a swipe elsewhere puts them away", async ({
    page,
  }) => {
    await withoutDialogs(page);
    await openTable(page);
    const before = await jobOf(page);
    const session = await page.context().newCDPSession(page);
    await handle(page, "/openings/0").tap();
    await expect(handle(page, "/openings/0", "to")).toBeVisible();
    await swipeOver(page, session, handle(page, "/outline/sides/0", "side"), "AB's label");
    await expect(handle(page, "/openings/0", "to")).toHaveCount(0);
    await swipeOver(page, session, handle(page, "/openings/0"), "the opening again");
    expect(await jobOf(page)).toBe(before);
    await handle(page, "/openings/0").tap();
    const at = await middleOf(handle(page, "/openings/0"));
    const top = await planAtRest(page);
    await swipe(session, at, -24, 0);
    await expect.poll(() => told(page, "/openings/0")).not.toContain(`9'-3 5/8"`);
    await settled(page);
    // What is held stays under the finger: a quarter of a target's 44 px is not felt.
    expect(Math.abs((await planAtRest(page)) - top)).toBeLessThan(44 / 4);
  });

  test("a drawing made larger is moved within its box, and beyond its edge the page goes on", async ({ page }) => {
    await openTable(page);
    await page.locator("#plan").getByRole("button", { name: "Larger" }).tap();
    const session = await page.context().newCDPSession(page);
    const box = page.locator(".box.plan");
    const inner = (): Promise<number> => box.evaluate((element) => element.scrollTop);
    await box.evaluate((element) => element.scrollTo(0, 0));
    const middle = await middleOf(box);
    await swipe(session, middle, 0, -60);
    await expect.poll(inner).toBeGreaterThan(0);
    // The next finger comes when the box stands there on the screen too: a touch is judged by what was drawn last.
    await box.evaluate(async (element) => {
      element.scrollTo(0, 9_999);
      for (let frame = 0; frame < 3; ++frame) await new Promise(requestAnimationFrame);
    });
    const before = await topOf(page);
    // A first touch may still be the box's own, by the browser's rules; the next one is the page's.
    await expect(async () => {
      await swipe(session, await middleOf(box), 0, -80);
      await expect.poll(() => topOf(page), { timeout: 1_500 }).toBeGreaterThan(before);
    }).toPass({ timeout: 15_000 });
  });
});

test("the wheel over a drawing, a label or a handle turns the page and leaves the job", async ({ page }) => {
  test.setTimeout(120_000);
  await withoutDialogs(page);
  await openTable(page);
  const before = await jobOf(page);
  for (const [one, name] of await everyHandle(page)) {
    const { x, y } = await middleOf(one);
    await page.mouse.move(x, y);
    const top = await topOf(page);
    await page.mouse.wheel(0, 60);
    await expect.poll(() => topOf(page), name).toBeGreaterThan(top);
  }
  expect(await jobOf(page)).toBe(before);
});
