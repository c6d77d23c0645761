// Within everyone's reach: axe finds nothing in any view, light or dark; less motion is honoured; paper keeps its words.
import { readFile } from "node:fs/promises";
import { createRequire } from "node:module";
import { expect, type Page, test } from "@playwright/test";
import type { AxeResults } from "axe-core";
import { goTo, handle, openTable, settled } from "./table";

const kAxe = createRequire(import.meta.url).resolve("axe-core/axe.min.js");
const kRules = ["wcag2a", "wcag2aa", "wcag21a", "wcag21aa", "wcag22aa"];

async function violations(page: Page): Promise<readonly string[]> {
  const source = await readFile(kAxe, "utf8");
  await page.evaluate(source);
  const results = (await page.evaluate(
    (rules) =>
      (window as unknown as { axe: { run(o: object): Promise<unknown> } }).axe.run({
        runOnly: { type: "tag", values: rules },
      }),
    kRules,
  )) as AxeResults;
  return results.violations.flatMap((one) => one.nodes.map((node) => `${one.id}: ${node.html.slice(0, 160)}`));
}

/// So tall that nothing scrolls: whatever the state line covers by chance is no fault of its own.
const kTall: Readonly<Record<number, number>> = { 360: 8000, 1280: 4500 };

/// One after another on one page: each adds to what stands there.
const kViews: Readonly<Record<string, (page: Page) => Promise<void>>> = {
  "at first": async () => undefined,
  "an opening in hand": async (page) => handle(page, "/openings/0").click(),
  "a side in hand": async (page) => handle(page, "/outline/sides/1", "side").click(),
  "what can be said": async (page) => {
    const folds = page.locator(".forms > .fold:not([open]) > summary");
    while ((await folds.count()) > 0) await folds.first().click();
  },
  "a unit's card": async (page) => {
    await page.locator("#plan-course-1-AB-1-3").click();
    await expect(page.locator("#unit")).toBeVisible();
  },
  "a refused size": async (page) => {
    await handle(page, "/openings/0").click();
    await page.locator("#in-hand").getByLabel("from corner A").fill("none");
    await page.keyboard.press("Enter");
    await expect(page.locator("#in-hand .trouble")).toBeVisible();
  },
  "units in space": async (page) => {
    await page.getByRole("button", { name: "Show the units in space" }).click();
    await expect(page.locator(".space canvas")).toHaveAttribute("data-units", /[1-9]/);
  },
  "a job of one's own, the set made": async (page) => {
    await handle(page, "/outline/sides/0", "side").click();
    const field = page.locator("#in-hand").getByLabel("length", { exact: true });
    await field.fill("26'-8\"");
    await field.press("Enter");
    await settled(page);
    await page.getByRole("button", { name: "Make the whole set (PDF)" }).click();
    await expect(page.getByText("The set is made")).toBeVisible();
  },
  ...Object.fromEntries(
    ["Pour", "First course", "Lintels", "Grout", "Top", "At the wall"].map((name) => [
      name,
      async (page: Page) => {
        await goTo(page, name);
        await expect(page.locator(".point-head h2")).toContainText(name);
      },
    ]),
  ),
  "the jobs": async (page) => {
    await goTo(page, "Jobs");
    await page.getByRole("button", { name: /^Rename:/ }).click();
  },
};

for (const width of [360, 1280]) {
  test(`axe finds nothing in any view, light or dark: ${width} px`, async ({ browser }) => {
    test.setTimeout(240_000);
    const found: string[] = [];
    const context = await browser.newContext({ viewport: { width, height: kTall[width] ?? 0 } });
    const page = await context.newPage();
    await openTable(page);
    for (const [view, reach] of Object.entries(kViews)) {
      await reach(page);
      for (const colorScheme of ["light", "dark"] as const) {
        await page.emulateMedia({ colorScheme, reducedMotion: "reduce" }); // no colour on its way to another
        await expect(page.locator("html")).toHaveAttribute("data-look", colorScheme);
        for (const one of await violations(page)) found.push(`${view}, ${colorScheme}: ${one}`);
      }
    }
    await context.close();
    expect(found).toEqual([]);
  });
}

test("the look is chosen by hand and stays chosen", async ({ page }) => {
  await openTable(page);
  await page.getByRole("button", { name: "Dark paper" }).press("Enter"); // a foot that lists still push down is no target
  await expect(page.locator("html")).toHaveAttribute("data-look", "dark");
  await page.reload();
  await expect(page.locator("html")).toHaveAttribute("data-look", "dark");
});

test("on paper stand drawings, tallies and cautions, and nothing that is pressed", async ({ page }) => {
  await openTable(page);
  await page.emulateMedia({ media: "print" });
  await expect(page.locator("#plan .ink svg")).toBeVisible();
  await expect(page.locator(".tallies")).toBeVisible();
  await expect(page.getByText("Unbraced walls fall in wind").first()).toBeVisible();
  for (const hidden of [".spine", ".handle", ".state", ".head-tools"]) {
    await expect(page.locator(hidden).first()).toBeHidden();
  }
});
