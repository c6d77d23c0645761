// The wall's top from above, the zone beside unbraced walls, and heads off a course line.
import { expect, type Page, test } from "@playwright/test";
import { goTo, openTable } from "./table";

async function noWiderThanTheScreen(page: Page): Promise<void> {
  const wide = await page.evaluate(() => document.documentElement.scrollWidth - document.documentElement.clientWidth);
  expect(wide).toBeLessThanOrEqual(0);
}

for (const width of [360, 1280]) {
  test(`${width} px: the plate is drawn from above, another side on wish, and the zone is unfolded`, async ({
    page,
  }) => {
    await page.setViewportSize({ width, height: 800 });
    await openTable(page);
    await goTo(page, "Top");
    const plate = page.getByRole("figure", { name: "Plate and bolts from above" });
    await expect(plate.locator("svg")).toContainText("Plate and bolts of AB");
    await expect(plate.locator("svg")).toContainText("16'-0\"");
    await plate.getByRole("button", { name: "CD", exact: true }).click();
    await expect(plate.locator("svg")).toContainText("Plate and bolts of CD");
    await expect(plate.getByRole("button", { name: "BC", exact: true })).toHaveCount(0); // it carries none
    const zone = page.getByRole("region", { name: "Keep out beside unbraced walls" });
    await expect(zone).toContainText("13'-4\" wide along every side without a scaffold");
    await zone.getByText("The zone in plan").click();
    await expect(zone.locator("svg")).toContainText("AB: 13'-4\"");
    await noWiderThanTheScreen(page);
  });
}

test("a head off its course line has its choices, with blocks and cuts", async ({ page }) => {
  await page.setViewportSize({ width: 360, height: 800 });
  await openTable(page);
  await goTo(page, "Lintels");
  const heads = page.getByRole("region", { name: "Heads off a course line" });
  const lower = heads.getByRole("row", { name: /make it 5 1\/8" lower/ });
  await expect(lower.getByRole("cell").nth(1)).toHaveText("7");
  await expect(lower.getByRole("cell").nth(2)).toHaveText("0");
  await noWiderThanTheScreen(page);
});
