// The spine: one hold point at a time, each with its address; nothing sticks out and nothing jumps, from a phone to a desk.
import { readFile } from "node:fs/promises";
import { expect, type Page, test } from "@playwright/test";
import { goTo, handle, openTable, select, settled, withoutDialogs } from "./table";

const kPoints = ["Order", "Pour", "First course", "Lintels", "Grout", "Top", "At the wall"] as const;

const heading = (page: Page) => page.locator(".point-head h2");

test("each point has its address; back, a link and an unknown address lead where they say", async ({ page }) => {
  await openTable(page, "./#pour");
  await expect(heading(page)).toHaveText("2Pour");
  await goTo(page, "Grout");
  await expect(heading(page)).toHaveText("5Grout");
  await expect(heading(page)).toBeFocused();
  expect(new URL(page.url()).hash).toBe("#grout");
  await page.goBack();
  await expect(heading(page)).toHaveText("2Pour");
  await expect(page.locator('.spine [aria-current="page"]')).toContainText("Pour");
  await page.goto("./#attic");
  await expect(heading(page)).toHaveText("1Order");
  await page.evaluate(() => (location.hash = "#first-course"));
  await expect(heading(page)).toHaveText("3First course");
});

test("every point has its questions, each with an answer in words, its findings and its sheets", async ({ page }) => {
  await withoutDialogs(page);
  await openTable(page);
  const pagesOf = new Map<string, number>();
  for (const name of kPoints) {
    await goTo(page, name);
    await expect(heading(page)).toContainText(name);
    if (name !== "At the wall") {
      const questions = page.locator(".question");
      expect(await questions.count()).toBeGreaterThan(1);
      for (const answer of await questions.locator(".answer strong").allTextContents())
        expect(["Yes", "No", "Can't tell", "Not read yet"]).toContain(answer);
    }
    await expect(page.locator("#findings")).toBeVisible();
    await expect(page.locator("#sheets")).not.toContainText("The sheets are listed when");
    // A sheet with the lists of two points is listed at both.
    for (const one of await page.locator(".sheet-names > li").all()) {
      const [title = ""] = await one.locator("> span:not(.sheet-pictures):not(.soft)").allTextContents();
      pagesOf.set(title, Number.parseInt((await one.locator("> .soft").textContent()) ?? "", 10));
    }
  }
  // All together they are the whole set: as many pages as the set's PDF has.
  await page.getByRole("button", { name: "Make the whole set (PDF)" }).click();
  await expect(page.getByText("The set is made")).toBeVisible();
  const [download] = await Promise.all([
    page.waitForEvent("download"),
    page.getByRole("button", { name: "Save the set (PDF)" }).click(),
  ]);
  const set = (await readFile(await download.path())).toString("latin1");
  const made = set.match(/\/Type \/Page\b/g)?.length ?? 0;
  const sheets = [...pagesOf.values()].reduce((sum, one) => sum + one, 0);
  expect(sheets).toBe(made);
  expect(sheets).toBeGreaterThan(10);
});

for (const width of [320, 360, 768, 1024, 1280, 1920]) {
  test(`at ${width} px nothing sticks out sideways at any point, and the spine's targets are 48 px`, async ({
    page,
  }) => {
    await page.setViewportSize({ width, height: 800 });
    await openTable(page);
    for (const name of [...kPoints, "Jobs"]) {
      await goTo(page, name);
      expect(await page.evaluate(() => document.documentElement.scrollWidth), name).toBeLessThanOrEqual(width);
    }
    const boxes = await page
      .locator(".spine a")
      .evaluateAll((links) => links.map((one) => one.getBoundingClientRect()));
    for (const box of boxes) expect(Math.min(box.width, box.height)).toBeGreaterThanOrEqual(47.9);
  });
}

test("on a phone the plan stays in view, where it is, while fields far below it are filled in and refused", async ({
  page,
}) => {
  await page.setViewportSize({ width: 360, height: 740 });
  await openTable(page);
  await page.getByText("Joints, cuts and bond").click();
  const field = page.getByLabel("shortest cut piece");
  await field.scrollIntoViewIfNeeded();
  await field.click();
  const board = page.locator(".board");
  const before = await board.boundingBox();
  expect(before?.y).toBe(0);
  await field.fill("none");
  await field.press("Enter");
  await expect(page.locator(".draft .trouble")).toContainText("none");
  await expect(field).toHaveValue("none");
  expect(await board.boundingBox()).toEqual(before);
  await expect(page.locator("#plan .ink svg")).toBeInViewport();
});

test("what is lacking leads to the very field that says it", async ({ page }) => {
  await openTable(page);
  await page.getByRole("button", { name: /^Fill it in: Will the yard have the units/ }).click();
  await expect(page.locator('[data-fold="order yard"] :focus').first()).toBeInViewport();
  await goTo(page, "First course");
  await page.getByRole("button", { name: /^Fill it in: Is what was poured square/ }).click();
  await expect(page.locator('[data-pointer="/readings"] :focus').first()).toBeInViewport();
  await goTo(page, "Lintels");
  await page.getByRole("button", { name: /^Fill it in: Do jambs, head course/ }).click();
  await expect(page.locator('[data-pointer^="/openings/0"] :focus').first()).toBeInViewport();
});

test("a tap selects, Escape and a tap beside it let go; only what is selected has handles", async ({ page }) => {
  await openTable(page);
  await expect(page.locator("#plan [role=slider]")).toHaveCount(0);
  await select(handle(page, "/openings/0"));
  await expect(page.locator("#plan [role=slider]")).toHaveCount(3);
  await expect(page.locator("#in-hand input[data-length]").first()).toBeFocused(); // the frame after
  await page.locator("#plan .box").press("Escape");
  await expect(page.locator("#plan [role=slider]")).toHaveCount(0);
  await select(handle(page, "/openings/0"));
  await settled(page);
  await page.locator("#plan .box").click(); // in its middle there is nothing
  await expect(page.locator("#plan [role=slider]")).toHaveCount(0);
  await settled(page);
  await expect(page.getByRole("button", { name: "Undo" })).toBeDisabled();
});
