// Sizes as they are typed: a bare number is asked about, a typed size stays, and what is built otherwise is said.
import { expect, type Page, test } from "@playwright/test";
import { goTo, handle, openTable, settled, tally } from "./table";

async function type(page: Page, sizes: Readonly<Record<string, string>>): Promise<void> {
  if ((await page.locator(".begin").count()) === 0) await goTo(page, "Jobs");
  for (const [name, text] of Object.entries(sizes))
    await page.locator(".begin").getByLabel(name, { exact: true }).fill(text);
}

test("24, 20 and 8 are asked about once, and become the building that was meant", async ({ page }) => {
  await openTable(page);
  await type(page, { length: "24", width: "20", height: "8" });
  await page.getByRole("button", { name: "Draw it" }).click();
  const question = page.locator(".begin .which");
  await expect(question).toContainText("24, 20, 8: feet or inches?");
  expect(new URL(page.url()).hash).toBe("#jobs"); // nothing is begun yet
  await question.getByRole("button", { name: "feet" }).click();
  await expect(page.getByRole("heading", { name: "New building" })).toBeVisible();
  await settled(page);
  await expect(page.locator(".title-block")).toContainText("AB 24'-0\" · BC 20'-0\"");
  expect(await tally(page, "courses")).toBe(12); // 8 ft of 8 in courses
});

test("what can mean one thing only is not asked about, and is written out", async ({ page }) => {
  await openTable(page);
  await goTo(page, "Jobs");
  await page.locator(".begin select").selectOption("au-190");
  await type(page, { length: "7200", width: "4.8", height: "2400" });
  await page.getByRole("button", { name: "Draw it" }).click();
  await expect(page.getByRole("heading", { name: "New building" })).toBeVisible();
  await settled(page);
  await expect(page.locator(".title-block")).toContainText("AB 7200 mm · BC 4800 mm");
});

test("another block leaves what was typed; examples that nobody touched go with it", async ({ page }) => {
  await openTable(page);
  await type(page, { length: "31'-4\"" });
  await page.locator(".begin select").selectOption("au-190");
  const begin = page.locator(".begin");
  await expect(begin.getByLabel("length", { exact: true })).toHaveValue("31'-4\"");
  await expect(begin.getByLabel("width", { exact: true })).toHaveValue("4800 mm");
  await page.locator(".begin select").selectOption("us-8");
  await expect(begin.getByLabel("length", { exact: true })).toHaveValue("31'-4\"");
  await expect(begin.getByLabel("width", { exact: true })).toHaveValue("16'");
  // The same of a building that stands: the height that was typed stays, and what is built is said beside it.
  await type(page, { length: "24'", width: "16'", height: "7'-0\"" });
  await page.getByRole("button", { name: "Draw it" }).click();
  await settled(page);
  const height = page.locator("#in-hand").getByLabel("height of the walls");
  await expect(height).toHaveValue("7'-0\"");
  await expect(page.locator("#in-hand .built")).toHaveCount(0);
  await page.locator("#in-hand select").first().selectOption("au-190");
  await expect(page.locator(".title-block")).toContainText("190 mm block");
  await expect(height).toHaveValue("7'-0\"");
  // 7'-0" is 2133.6 mm: nearest are eleven courses of 200 mm, which no sixteenth of an inch is.
  await expect(page.locator("#in-hand .built")).toHaveText("built 2200 mm");
});

test("a bare number in a field is asked about beside it, and one unit is taken where only one can be", async ({
  page,
}) => {
  await openTable(page);
  await handle(page, "/outline/sides/0", "side").click();
  const length = page.locator("#in-hand").getByLabel("length", { exact: true });
  await length.fill("30");
  await length.press("Enter");
  const question = page.locator("#in-hand .which");
  await expect(question).toContainText("30: feet or inches?");
  await expect(page.locator(".title-block")).toContainText("AB 28'-0\"");
  await question.getByRole("button", { name: "feet" }).click();
  await expect(page.locator(".title-block")).toContainText("AB 30'-0\"");
  await expect(length).toHaveValue("30'");
  await settled(page);
  await handle(page, "/openings/1").click();
  const width = page.locator("#in-hand").getByLabel("width of the leaf");
  await width.fill("32"); // 32 ft is longer than the side
  await width.press("Enter");
  await expect(width).toHaveValue('32"');
  await settled(page);
  await expect(page.locator("#in-hand .which")).toHaveCount(0);
});
