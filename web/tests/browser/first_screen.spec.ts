// What is there before any script has run, and that nothing moves when the script takes over.
import { expect, type Page, test } from "@playwright/test";

/// The page whose script never comes.
async function withoutScript(page: Page): Promise<void> {
  await page.route(/assets\/.*\.js$/, (route) => route.abort());
}

const kSentence = /^For whoever lays the block walls/;

for (const width of [360, 1280]) {
  test(`at ${width} px sentence and drawing stand before the script, in the very places that they keep`, async ({
    page,
  }) => {
    await page.setViewportSize({ width, height: 800 });
    const places = () =>
      page.evaluate(() =>
        [".start h2", ".example .picture", ".example figcaption"].map((name) => {
          const { x, y, width: wide, height } = document.querySelector(name)?.getBoundingClientRect() ?? new DOMRect();
          return [x, y, wide, height].map(Math.round);
        }),
      );
    await withoutScript(page);
    await page.goto("./");
    await expect(page.getByRole("heading", { name: kSentence })).toBeVisible();
    await expect(page.locator("#first svg text", { hasText: /^A$/ }).first()).toBeVisible();
    await page.evaluate(() => document.fonts.ready);
    const before = await places();
    await page.unroute(/assets\/.*\.js$/);
    await page.goto("./?again");
    await expect(page.getByRole("button", { name: "Draw it" })).toBeVisible();
    await expect(page.locator("#first")).toHaveCount(0);
    await page.evaluate(() => document.fonts.ready);
    expect(await places()).toEqual(before);
  });
}

test("the largest paint comes before the engine has answered, and nothing shifts", async ({ page }) => {
  await page.addInitScript(() => {
    Object.assign(window, { largest: 0, shifted: 0, answered: Number.POSITIVE_INFINITY });
    const told = window as unknown as { largest: number; shifted: number; answered: number };
    new PerformanceObserver((list) => {
      for (const one of list.getEntries()) told.largest = one.startTime;
    }).observe({ type: "largest-contentful-paint", buffered: true });
    new PerformanceObserver((list) => {
      for (const one of list.getEntries()) told.shifted += (one as unknown as { value: number }).value;
    }).observe({ type: "layout-shift", buffered: true });
    // Answers are kept back for a while: nothing that is painted large may wait for them.
    const Plain = window.Worker;
    window.Worker = class extends Plain {
      override set onmessage(heard: ((event: MessageEvent) => void) | null) {
        super.onmessage = (event: MessageEvent<{ block?: Uint8Array }>) => {
          if (event.data.block === undefined) return heard?.call(this, event);
          setTimeout(() => {
            told.answered = Math.min(told.answered, performance.now());
            heard?.call(this, event);
          }, 2500);
        };
      }
    };
  });
  const session = await page.context().newCDPSession(page);
  await session.send("Emulation.setCPUThrottlingRate", { rate: 4 });
  await page.goto("./");
  await expect
    .poll(() => page.evaluate(() => Number.isFinite((window as unknown as { answered: number }).answered)))
    .toBe(true);
  await page.waitForTimeout(500);
  const told = await page.evaluate(() => {
    const { largest, shifted, answered } = window as unknown as Record<string, number>;
    return { largest, shifted, answered };
  });
  expect(told.largest).toBeGreaterThan(0);
  expect(told.largest).toBeLessThan(told.answered ?? 0);
  expect(told.shifted).toBeLessThan(0.1); // web vitals
});

test("whoever asks for a place, or has a job of their own, never sees it flash by", async ({ page }) => {
  await withoutScript(page);
  await page.goto("./#pour");
  await expect(page.locator("#first")).toBeHidden();
  await page.evaluate(() => localStorage.setItem("stringcourse-own-job", "1"));
  await page.goto("./?own");
  await expect(page.locator("#first")).toBeHidden();
});

test("dark paper is dark from the first paint on", async ({ page }) => {
  await page.emulateMedia({ colorScheme: "dark" });
  await withoutScript(page);
  await page.goto("./");
  await expect(page.locator("html")).toHaveAttribute("data-look", "dark");
  await expect(page.getByRole("heading", { name: kSentence })).toBeVisible();
});
