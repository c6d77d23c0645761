// A first visit on a phone through a slow network: what is there stays where it is, under the finger too, while the rest of
// the engine comes in.
import { expect, type Page, type Route, test } from "@playwright/test";
import { settled } from "./table";

test.use({ viewport: { width: 360, height: 740 }, hasTouch: true, isMobile: true, deviceScaleFactor: 2 });

const kWhole = /\/stringcourse-(?!brief-)[^/]*\.wasm$/;

/// The whole module is kept back until it is let come.
async function wholeHeldBack(page: Page): Promise<() => Promise<void>> {
  const waiting: Route[] = [];
  let open = false;
  await page.route(kWhole, (route) => (open ? route.continue() : waiting.push(route)));
  return async () => {
    await expect.poll(() => waiting.length).toBeGreaterThan(0);
    open = true;
    await Promise.all(waiting.map((route) => route.continue()));
  };
}

/// Sums what the browser calls layout shift; what follows a touch within half a second counts too.
async function watchShifts(page: Page): Promise<void> {
  await page.addInitScript(() => {
    Object.assign(window, { shifted: 0 });
    new PerformanceObserver((list) => {
      for (const one of list.getEntries())
        (window as unknown as { shifted: number }).shifted += (one as unknown as { value: number }).value;
    }).observe({ type: "layout-shift", buffered: true });
  });
}
const shifted = (page: Page) => page.evaluate(() => (window as unknown as { shifted: number }).shifted);

interface Spot {
  readonly name: string;
  readonly x: number;
  readonly y: number;
}

/// Whatever can be pressed or filled in and is in view, marked, with its place on the screen.
function inView(page: Page): Promise<Readonly<Record<string, Spot>>> {
  return page.evaluate(() => {
    const spots: Record<string, { name: string; x: number; y: number }> = {};
    const all = document.querySelectorAll<HTMLElement>("a, button, input, select, summary, [role=slider]");
    for (const [index, one] of [...all].entries()) {
      const { x, y, height } = one.getBoundingClientRect();
      const seen = height > 0 && y + height > 0 && y < innerHeight && one.checkVisibility({ visibilityProperty: true });
      if (!seen) continue;
      one.dataset["mark"] ??= String(index);
      spots[one.dataset["mark"]] = { name: `${one.tagName} ${one.textContent?.slice(0, 40)}`, x, y };
    }
    return spots;
  });
}

/// Those that stand elsewhere than before, or are gone. Half a pixel is none: the browser itself rounds where it scrolls.
function moved(before: Readonly<Record<string, Spot>>, now: Readonly<Record<string, Spot>>): readonly string[] {
  const off = (one: Spot, other: Spot | undefined): boolean =>
    other === undefined || Math.abs(one.x - other.x) > 0.5 || Math.abs(one.y - other.y) > 0.5;
  return Object.entries(before)
    .filter(([mark, spot]) => off(spot, now[mark]))
    .map(([mark, { name, x, y }]) => `${name} ${x} ${y} -> ${now[mark]?.x} ${now[mark]?.y}`);
}

const kPlaces = ["order", "pour", "first-course", "lintels", "grout", "top", "at-the-wall"] as const;

for (const place of kPlaces) {
  test(`at ${place} nothing moves while the whole engine comes in`, async ({ page }) => {
    await watchShifts(page);
    const come = await wholeHeldBack(page);
    await page.goto(`./#${place}`);
    await expect(page.locator("main")).toHaveAttribute("data-stage", "first");
    if (place !== "at-the-wall") await expect(page.locator(".questions.coming")).toBeVisible();
    await page.waitForTimeout(300);
    const before = await inView(page);
    expect(Object.keys(before).length).toBeGreaterThan(8);
    await come();
    await settled(page);
    expect(moved(before, await inView(page))).toEqual([]);
    expect(await shifted(page)).toBeLessThan(0.01);
  });
}

for (const far of [600, 1100, 1700, 2600]) {
  test(`order, scrolled by ${far} px: nothing moves while the whole engine comes in`, async ({ page }) => {
    const come = await wholeHeldBack(page);
    await page.goto("./#order");
    await expect(page.locator("main")).toHaveAttribute("data-stage", "first");
    await page.evaluate((by) => scrollTo({ top: by, behavior: "instant" }), far);
    await page.waitForTimeout(300);
    const before = await inView(page);
    await come();
    await settled(page);
    await page.waitForTimeout(300);
    expect(moved(before, await inView(page))).toEqual([]);
  });
}
