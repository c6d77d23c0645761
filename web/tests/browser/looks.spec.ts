// Drawings in their frames: lettering that can be read at any width and zoom, the start corner seen or named, and nothing of
// it moves the page or the job.
import { type CDPSession, expect, type Locator, type Page, test } from "@playwright/test";
import { goTo, handle, openTable, select, settled } from "./table";

const kDrawn = ["Order", "Pour", "First course", "Lintels", "Grout", "Top", "At the wall"] as const;

/// The smallest lettering of each drawing as it stands on the screen, CSS pixels: its size in the drawing's own units, by
/// how large the browser says that those units are.
function smallest(page: Page): Promise<readonly number[]> {
  return page.locator(".ink svg").evaluateAll((drawings) =>
    drawings
      .filter((svg) => svg.checkVisibility())
      .map((svg) => {
        const scale = (svg as SVGSVGElement).getScreenCTM()?.a ?? 0;
        const sizes = [...svg.querySelectorAll("text")].map((text) => Number(text.getAttribute("font-size")));
        return Math.min(...sizes) * scale;
      }),
  );
}

for (const width of [320, 360, 768, 1280, 1920]) {
  test(`at ${width} px no lettering of a drawing is under 12 px, at any point and zoom`, async ({ page }) => {
    test.setTimeout(180_000);
    await page.setViewportSize({ width, height: 800 });
    await page.goto("./");
    await expect(page.locator(".example svg")).toBeVisible();
    const shown = [...(await smallest(page))];
    await openTable(page);
    for (const name of kDrawn) {
      await goTo(page, name);
      await settled(page);
      shown.push(...(await smallest(page)));
    }
    await goTo(page, "Order");
    for (let press = 0; press < 3; ++press) {
      await page.locator("#plan").getByRole("button", { name: "Larger" }).click();
      shown.push(...(await smallest(page)));
    }
    for (let press = 0; press < 3; ++press)
      await page.locator("#plan").getByRole("button", { name: "Smaller" }).click();
    await expect(page.locator("#plan").getByRole("button", { name: "Smaller" })).toBeDisabled();
    shown.push(...(await smallest(page)));
    expect(shown.length).toBeGreaterThan(kDrawn.length);
    expect(Math.min(...shown)).toBeGreaterThanOrEqual(11.99);
  });
}

const frameOf = (page: Page, kind: "plan" | "elevation"): Locator => page.locator(`#${kind} .box`);

interface Place {
  readonly left: number;
  readonly top: number;
}
const placeOf = (frame: Locator): Promise<Place> =>
  frame.evaluate((box) => ({ left: box.scrollLeft, top: box.scrollTop }));

const scaleOf = (frame: Locator): Promise<number> =>
  frame.locator(".ink svg").evaluate((svg) => (svg as SVGSVGElement).getScreenCTM()?.a ?? 0);

/// What of the drawing lies under a spot of the screen, in the drawing's own units.
function under(frame: Locator, x: number, y: number): Promise<{ x: number; y: number }> {
  return frame.locator(".ink svg").evaluate(
    (svg, at) => {
      const turned = (svg as SVGSVGElement).getScreenCTM()?.inverse();
      const point = new DOMPoint(at.x, at.y).matrixTransform(turned);
      return { x: point.x, y: point.y };
    },
    { x, y },
  );
}

async function boxOf(what: Locator): Promise<{ x: number; y: number; width: number; height: number }> {
  const box = await what.boundingBox();
  if (box === null) throw new Error("not on the screen");
  return box;
}

test("a wheel with Ctrl makes the drawing larger about the pointer; the page stays", async ({ page }) => {
  await openTable(page);
  const frame = frameOf(page, "plan");
  const box = await boxOf(frame);
  const [x, y] = [box.x + box.width * 0.4, box.y + box.height * 0.4];
  const [before, was, top] = [await scaleOf(frame), await under(frame, x, y), await page.evaluate(() => scrollY)];
  await page.mouse.move(x, y);
  await page.keyboard.down("Control");
  await page.mouse.wheel(0, -300);
  await page.keyboard.up("Control");
  // 300 px of wheel are three notches: 1.2^3 = 1.728.
  await expect.poll(async () => (await scaleOf(frame)) / before).toBeCloseTo(1.728, 2);
  const now = await under(frame, x, y);
  // Within what two CSS pixels are at that size: browsers scroll by whole ones.
  const two = 2 / (await scaleOf(frame));
  expect(Math.abs(now.x - was.x)).toBeLessThan(two);
  expect(Math.abs(now.y - was.y)).toBeLessThan(two);
  expect(await page.evaluate(() => scrollY)).toBe(top);
  expect(await page.evaluate(() => visualViewport?.scale)).toBe(1);
});

test("a mouse takes hold of bare paper and moves it; what it lets go over is not tapped", async ({ page }) => {
  await openTable(page);
  const frame = frameOf(page, "plan");
  for (let press = 0; press < 3; ++press) await page.locator("#plan").getByRole("button", { name: "Larger" }).click();
  await select(handle(page, "/openings/0"));
  await frame.evaluate((box) => box.scrollTo(200, 200));
  const before = await placeOf(frame);
  // Somewhere on the frame where no handle and no unit lies.
  const { x, y } = await frame.evaluate((box) => {
    const { left, top, width, height } = box.getBoundingClientRect();
    for (let down = 80; down < height - 60; down += 20)
      for (let across = 100; across < width - 60; across += 20) {
        const spot = { x: left + across, y: top + down };
        if (document.elementFromPoint(spot.x, spot.y)?.tagName === "svg") return spot;
      }
    throw new Error("no bare paper");
  });
  await page.mouse.move(x, y);
  await page.mouse.down();
  await page.mouse.move(x - 70, y - 40, { steps: 5 });
  await page.mouse.up();
  expect(await placeOf(frame)).toEqual({ left: before.left + 70, top: before.top + 40 });
  await expect(handle(page, "/openings/0")).toHaveClass(/chosen/);
  await expect(page.getByRole("button", { name: "Undo" })).toBeDisabled();
});

test("arrow keys move a frame that has the focus", async ({ page }) => {
  await openTable(page);
  const frame = frameOf(page, "plan");
  for (let press = 0; press < 2; ++press) await page.locator("#plan").getByRole("button", { name: "Larger" }).click();
  await frame.evaluate((box) => box.scrollTo(0, 0));
  await frame.focus();
  await page.keyboard.press("ArrowRight");
  await page.keyboard.press("ArrowDown");
  expect(await placeOf(frame)).toEqual({ left: 48, top: 48 });
});

test.describe("on a phone", () => {
  test.use({ viewport: { width: 360, height: 740 }, hasTouch: true, isMobile: true, deviceScaleFactor: 2 });

  test("plan and elevation begin at their start corner; away from it it is named and leads back", async ({ page }) => {
    await openTable(page);
    const plan = frameOf(page, "plan");
    const written = plan.locator(".ink svg text", { hasText: /^A$/ });
    await expect(written).toBeInViewport({ ratio: 1 });
    await expect(page.locator("#plan .start-corner")).toHaveText("From corner A");
    await plan.evaluate((box) => box.scrollTo(0, 0));
    await expect(written).not.toBeInViewport();
    const back = page.locator("#plan .start-corner");
    await expect(back).toHaveText("Back to corner A");
    await back.tap();
    await expect(back).toHaveText("From corner A");
    await expect(written).toBeInViewport({ ratio: 1 });
    // A wall is seen from outside: its start lies at the right.
    await goTo(page, "Lintels");
    const elevation = frameOf(page, "elevation");
    const far = await elevation.evaluate((box) => box.scrollWidth - box.clientWidth - box.scrollLeft);
    expect(far).toBeLessThan(40);
    await expect(page.locator("#elevation .start-corner")).toContainText("seen from outside");
    await elevation.evaluate((box) => box.scrollTo(0, 0));
    await expect(page.locator("#elevation .start-corner")).toHaveText("Back to corner A");
    // Another side begins at its own start.
    await page.locator("#elevation").getByRole("button", { name: "BC", exact: true }).tap();
    await expect(page.locator("#elevation .start-corner")).toContainText("From B");
  });

  test("the small map shows where the frame stands, and a tap on it moves the frame there", async ({ page }) => {
    await openTable(page);
    const map = page.locator("#plan .map");
    await expect(map).toBeVisible();
    expect(await map.locator("text").count()).toBe(0);
    const box = await boxOf(map);
    await page.touchscreen.tap(box.x + 4, box.y + 4);
    await expect.poll(() => placeOf(frameOf(page, "plan"))).toEqual({ left: 0, top: 0 });
    const off = async (): Promise<number> => {
      const part = await boxOf(page.locator("#plan .map-part"));
      const whole = await boxOf(map);
      return Math.max(Math.abs(part.x - whole.x), Math.abs(part.y - whole.y));
    };
    await expect.poll(off).toBeLessThan(2);
    await expect(page.getByRole("button", { name: "Undo" })).toBeDisabled();
  });

  async function pinch(session: CDPSession, middle: { x: number; y: number }, from: number, to: number) {
    const at = (apart: number) => ({
      touchPoints: [
        { x: middle.x - apart / 2, y: middle.y, id: 0 },
        { x: middle.x + apart / 2, y: middle.y, id: 1 },
      ],
    });
    await session.send("Input.dispatchTouchEvent", { type: "touchStart", ...at(from) });
    for (let step = 1; step <= 10; ++step)
      await session.send("Input.dispatchTouchEvent", { type: "touchMove", ...at(from + ((to - from) * step) / 10) });
    await session.send("Input.dispatchTouchEvent", { type: "touchEnd", touchPoints: [] });
  }

  test("two fingers make the drawing larger and smaller, never the page, and select nothing", async ({ page }) => {
    await openTable(page);
    const frame = frameOf(page, "plan");
    await frame.evaluate((element) => element.scrollIntoView({ block: "center", behavior: "instant" }));
    const box = await boxOf(frame);
    const session = await page.context().newCDPSession(page);
    const before = await scaleOf(frame);
    const middle = { x: box.x + box.width / 2, y: box.y + box.height / 2 };
    await pinch(session, middle, 60, 150);
    // As much larger as the fingers went apart.
    await expect.poll(async () => (await scaleOf(frame)) / before).toBeCloseTo(2.5, 1);
    expect(await page.evaluate(() => visualViewport?.scale)).toBe(1);
    await pinch(session, middle, 150, 30);
    await expect.poll(async () => (await scaleOf(frame)) / before).toBeCloseTo(1, 2);
    await expect(page.locator("#plan [role=slider]")).toHaveCount(0);
    await expect(page.getByRole("button", { name: "Undo" })).toBeDisabled();
  });
});
