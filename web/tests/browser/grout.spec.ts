// Grout at the wall by a thumb in a glove, and the boxes of the list before the pour on the table.
import { expect, type Page, test } from "@playwright/test";
import { goTo, openTable, settled, slowEngine } from "./table";

test.use({ viewport: { width: 360, height: 640 }, hasTouch: true, isMobile: true, deviceScaleFactor: 2 });

const zone = (page: Page, name: string) => page.locator(".at-wall").getByRole("button", { name, exact: true });
const figure = (page: Page) => page.locator(".wall-number");

/// Behind More, on whichever of its pages.
async function toGrout(page: Page): Promise<void> {
  await openTable(page);
  await goTo(page, "At the wall");
  await page.getByRole("button", { name: "Phone view" }).tap();
  await zone(page, "More").tap();
  while ((await zone(page, "Grout").count()) === 0) await zone(page, "Next page").tap();
  await zone(page, "Grout").tap();
}

/// Fingers in gloves tap twice without looking.
async function tapTwice(page: Page, name: string): Promise<void> {
  const what = zone(page, name);
  await expect(what).toHaveAttribute("aria-disabled", "false");
  const box = await what.boundingBox();
  if (box === null) throw new Error("nothing to tap");
  const session = await page.context().newCDPSession(page);
  const at = { x: box.x + box.width / 2, y: box.y + box.height / 2 };
  for (let tap = 0; tap < 2; ++tap) {
    await session.send("Input.dispatchTouchEvent", { type: "touchStart", touchPoints: [at] });
    await session.send("Input.dispatchTouchEvent", { type: "touchEnd", touchPoints: [] });
    await page.waitForTimeout(120);
  }
}

test("cell after cell is filled by one tap each, a double tap is one, and what is full is due again", async ({
  page,
}) => {
  await page.clock.install();
  await toGrout(page);
  // The first of the pour card, the way round that is shortest.
  await expect(figure(page)).toHaveText("DA 5");
  await expect(page.locator(".at-wall")).toContainText("7.8 gal");
  await tapTwice(page, "Filled");
  await expect(figure(page)).toHaveText("DA 4");
  await expect(page.locator(".at-wall")).toContainText("DA 5: again in 3 min");
  await page.clock.fastForward("04:00");
  await expect(page.locator(".at-wall")).toContainText("DA 5: again now");
  await zone(page, "Again done: DA 5").tap();
  await expect(page.locator(".at-wall")).not.toContainText("DA 5");
  await expect(figure(page)).toHaveText("DA 4");
  for (const one of await page.locator(".wall-zone").all()) {
    const box = await one.boundingBox();
    expect(box?.width).toBeGreaterThanOrEqual(120);
    expect(box?.height).toBeGreaterThanOrEqual(120);
  }
});

test("a box that is ticked is an entry of the log with its time; taken out it is struck", async ({ page }) => {
  await openTable(page);
  await goTo(page, "Grout");
  await page
    .getByText(/^Boxes to tick: 0 of/)
    .first()
    .tap();
  const box = page.locator(".boxes input").first();
  await box.check();
  await settled(page);
  await expect(page.getByText(/^Boxes to tick: 1 of/)).toHaveCount(1);
  await expect(page.locator(".boxes .box").first()).toContainText(/20\d\d-\d\d-\d\d/);
  await box.uncheck();
  await settled(page);
  await expect(page.getByText(/^Boxes to tick: 1 of/)).toHaveCount(0);
});

test("a box that is tapped twice while the engine takes its time is ticked once", async ({ page }) => {
  await slowEngine(page, 700);
  await openTable(page);
  await goTo(page, "Grout");
  await page
    .getByText(/^Boxes to tick: 0 of/)
    .first()
    .tap();
  const box = page.locator(".boxes input").first();
  await box.click();
  await box.click();
  await expect(page.getByText(/^Boxes to tick: 1 of/)).toHaveCount(1);
  await settled(page);
  await expect(box).toBeChecked();
  // Were it two entries, striking one would leave the other.
  await box.uncheck();
  await expect(page.getByText(/^Boxes to tick: 1 of/)).toHaveCount(0);
});
