// First use: an example drawn at once, one's own building after four sizes.
import { expect, test } from "@playwright/test";
import { openTable, settled, tally } from "./table";

test("the page opens on the kiln house, drawn, with its tallies and hold points", async ({ page }) => {
  await openTable(page);
  await expect(page.getByRole("heading", { name: "Kiln house" })).toBeVisible();
  expect(await tally(page, "units laid")).toBe(861);
  expect(await tally(page, "saw cuts")).toBe(0);
  await expect(page.locator(".strip li")).toHaveCount(6);
});

test("four sizes and one press draw a building of one's own", async ({ page }) => {
  await openTable(page);
  await page.getByLabel("length", { exact: true }).fill("24'");
  await page.getByLabel("width", { exact: true }).fill("16'");
  await page.getByLabel("height", { exact: true }).fill("8'");
  await page.getByRole("button", { name: "Draw it" }).click();
  await expect(page.getByRole("heading", { name: "New building" })).toBeVisible();
  await settled(page);
  // 12 courses of 8 in. A course of 24' x 16' on the 8 in module: perimeter 80', less two half units at each pair of
  // corners: (2 x 24 + 2 x 16) x 12 in / 16 in - 2 = 58 units; 12 x 58 = 696.
  expect(await tally(page, "courses")).toBe(12);
  expect(await tally(page, "units laid")).toBe(696);
  await expect(page.locator("#where")).toContainText("in this browser only");
});

test("a size that nobody can read is refused beside the line, with what would mend it", async ({ page }) => {
  await openTable(page);
  await page.getByLabel("length", { exact: true }).fill("twenty feet");
  await page.getByRole("button", { name: "Draw it" }).click();
  await expect(page.locator("#begin-note")).toContainText("twenty feet");
  await expect(page.getByRole("heading", { name: "Kiln house" })).toBeVisible();
});

test("metric blocks make a metric building", async ({ page }) => {
  await openTable(page);
  await page.locator(".begin select").selectOption("au-190");
  await page.getByRole("button", { name: "Draw it" }).click();
  await settled(page);
  await expect(page.locator(".title-block")).toContainText("190 mm block");
  await expect(page.locator("#plan .ink svg")).toContainText("7190 mm");
});
