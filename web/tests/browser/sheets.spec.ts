// Each hold point ends with its sheets: their pages in little, how many they are, and a button that prints them.
import { readFile } from "node:fs/promises";
import { expect, type Page, test } from "@playwright/test";
import { goTo, openTable, settled, withoutDialogs } from "./table";

const pictures = (page: Page) => page.locator(".sheet-picture canvas");

/// How much ink each picture holds: the share of its pixels that is not white.
function inkOf(page: Page): Promise<readonly number[]> {
  return pictures(page).evaluateAll((canvases) =>
    canvases.map((one) => {
      const canvas = one as HTMLCanvasElement;
      const data = canvas.getContext("2d")?.getImageData(0, 0, canvas.width, canvas.height).data ?? [];
      let dark = 0;
      for (let at = 0; at < data.length; at += 4) if ((data[at] ?? 255) < 250) dark += 1;
      return dark / (data.length / 4);
    }),
  );
}

for (const name of ["Order", "Pour", "First course", "Lintels", "Grout", "Top"]) {
  test(`${name}: as many pictures as pages, each with ink on it, and one press prints them`, async ({ page }) => {
    await withoutDialogs(page);
    await openTable(page);
    await goTo(page, name);
    await settled(page);
    await expect(page.locator("#sheets")).not.toContainText("are listed when");
    const pages = (await page.locator(".sheet-names .soft").allTextContents())
      .map((text) => Number.parseInt(text, 10))
      .reduce((sum, one) => sum + one, 0);
    expect(pages).toBeGreaterThan(0);
    await page.locator("#sheets").scrollIntoViewIfNeeded();
    await expect(pictures(page)).toHaveCount(Math.min(pages, 40));
    for (const share of await inkOf(page)) {
      expect(share).toBeGreaterThan(0.005);
      expect(share).toBeLessThan(0.7);
    }
    const print = page.locator("#sheets").getByRole("button", { name: new RegExp(`^Print ${pages} page`) });
    await expect(print).toBeEnabled();
    // A browser without a window for PDF opens them in a tab.
    await page.evaluate(() => Object.defineProperty(navigator, "pdfViewerEnabled", { value: false }));
    await page.evaluate(() => {
      const opened: string[] = [];
      Object.assign(window, { opened, open: (address: string) => opened.push(address) });
    });
    await print.click();
    await expect
      .poll(() => page.evaluate(() => (window as unknown as { opened: readonly string[] }).opened))
      .toEqual([expect.stringMatching(/^blob:/)]);
    const [download] = await Promise.all([
      page.waitForEvent("download"),
      page.getByRole("button", { name: "Save the set (PDF)" }).click(),
    ]);
    const made = (await readFile(await download.path())).toString("latin1").match(/\/Type \/Page\b/g);
    expect(made?.length).toBe(pages);
  });
}

test("templates and the rules used come where they are ticked, in the list and in the set", async ({ page }) => {
  await openTable(page);
  for (const [point, first, tick, title] of [
    ["Pour", "Setting-out card", "with templates of the dowels, full size", "Dowel template"],
    ["Order", "Summary", "with the rules used, each with its source", "Standards"],
  ] as const) {
    await goTo(page, point);
    await settled(page);
    const names = page.locator(".sheet-names");
    await expect(names).toContainText(first);
    await expect(names).not.toContainText(title);
    const before = await names.locator("li").count();
    await page.getByLabel(tick).check();
    await expect(names).toContainText(title);
    expect(await names.locator("li").count()).toBeGreaterThan(before);
    await page.getByLabel(tick).uncheck();
    await expect(names).not.toContainText(title);
  }
});
