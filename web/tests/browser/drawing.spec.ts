// A drawing that was changed frame by frame is the drawing made anew.
import { expect, type Page, test } from "@playwright/test";
import { drag, handle, openTable, settled } from "./table";

async function keepDrawings(page: Page): Promise<void> {
  await page.evaluate(() => {
    const copies = [...document.querySelectorAll(".ink svg")].map((svg) => svg.cloneNode(true));
    Object.assign(globalThis, { copies });
  });
}

function asKept(page: Page): Promise<boolean[]> {
  return page.evaluate(() => {
    const { copies } = globalThis as unknown as { readonly copies: readonly Node[] };
    return [...document.querySelectorAll(".ink svg")].map((svg, at) => svg.isEqualNode(copies[at] ?? null));
  });
}

/// Another course and another side are other drawings: coming back, both are made from nothing.
async function drawAnew(page: Page): Promise<void> {
  const [plan, elevation] = [page.locator("#plan .ink svg"), page.locator("#elevation .ink svg")];
  const side = (await elevation.getAttribute("id")) ?? "";
  await page.locator("#plan").getByRole("button", { name: "Higher course" }).click();
  await page.locator("#elevation").getByRole("button", { name: "CD" }).click();
  await expect(plan).toHaveAttribute("id", "plan-course-2");
  await expect(elevation).toHaveAttribute("id", "elevation-3");
  await page.locator("#plan").getByRole("button", { name: "Lower course" }).click();
  await page.locator("#elevation").getByRole("button", { name: "AB" }).click();
  await expect(plan).toHaveAttribute("id", "plan-course-1");
  await expect(elevation).toHaveAttribute("id", side);
}

test("after a free drag through many layouts both drawings are what a fresh drawing would be", async ({ page }) => {
  await openTable(page);
  await page.getByLabel("No snapping: any size, whatever it cuts").check();
  await drag(page, handle(page, "/openings/0"), -83, 0, 40);
  await page.mouse.up();
  await settled(page);
  await keepDrawings(page);
  await drawAnew(page);
  expect(await asKept(page)).toEqual([true, true]);
});

test("undo brings back the very drawings", async ({ page }) => {
  await openTable(page);
  await keepDrawings(page);
  await page.getByLabel("No snapping: any size, whatever it cuts").check();
  await drag(page, handle(page, "/openings/0"), 47, 0, 20);
  await page.mouse.up();
  await settled(page);
  expect(await asKept(page)).toEqual([false, false]);
  await page.getByRole("button", { name: "Undo" }).click();
  await settled(page);
  await expect.poll(() => asKept(page)).toEqual([true, true]);
});
