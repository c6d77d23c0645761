// First use: an example drawn at once, one's own building after four sizes.
import { expect, test } from "@playwright/test";
import { beginOwn, settled, tally } from "./table";

test("the first screen says whom the page serves, shows a drawing, and offers three ways to begin", async ({
  page,
}) => {
  await page.goto("./");
  await expect(page.getByRole("heading", { name: /^For whoever lays the block walls/ })).toBeVisible();
  await expect(page.locator(".example .ink svg")).toBeVisible();
  for (const name of ["Draw it", "Open a file", "Look at the example"])
    await expect(page.getByRole("button", { name })).toBeVisible();
  await page.getByRole("button", { name: "Look at the example" }).click();
  await settled(page);
  expect(new URL(page.url()).hash).toBe("#order");
  await expect(page.getByRole("heading", { name: "Kiln house" })).toBeVisible();
  expect(await tally(page, "units laid")).toBe(861);
  expect(await tally(page, "saw cuts")).toBe(0);
});

test("four sizes and one press draw a building of one's own", async ({ page }) => {
  await page.goto("./");
  await beginOwn(page, { length: "24'", width: "16'", height: "8'" });
  // 12 courses of 8 in. A course of 24' x 16' on the 8 in module: perimeter 80', less two half units at each pair of
  // corners: (2 x 24 + 2 x 16) x 12 in / 16 in - 2 = 58 units; 12 x 58 = 696.
  expect(await tally(page, "courses")).toBe(12);
  expect(await tally(page, "units laid")).toBe(696);
  await expect(page.locator("#where")).toContainText("in this browser only");
  // Whoever has a job of their own comes back to it.
  await page.goto("./?again");
  await settled(page);
  await expect(page.getByRole("heading", { name: "New building" })).toBeVisible();
});

test("a size that nobody can read is refused beside the line, with what would mend it", async ({ page }) => {
  await page.goto("./");
  await page.getByLabel("length", { exact: true }).fill("twenty feet");
  await page.getByRole("button", { name: "Draw it" }).click();
  await expect(page.locator("#begin-note")).toContainText("twenty feet");
  await expect(page.getByLabel("length", { exact: true })).toHaveValue("twenty feet");
});

test("metric blocks make a metric building", async ({ page }) => {
  await page.goto("./");
  await page.locator(".begin select").selectOption("au-190");
  await page.getByRole("button", { name: "Draw it" }).click();
  await settled(page);
  await expect(page.locator(".title-block")).toContainText("190 mm block");
  await expect(page.locator("#plan .ink svg")).toContainText("7190 mm");
});
