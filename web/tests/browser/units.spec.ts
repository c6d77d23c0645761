// Courses, single units, and the units in space.
import { expect, test } from "@playwright/test";
import { openTable } from "./table";

test("the plan steps from course to course", async ({ page }) => {
  await openTable(page);
  await page.locator("#plan").getByRole("button", { name: "Higher course" }).click();
  await expect(page.locator("#plan .ink svg")).toHaveAttribute("id", "plan-course-2");
  await page.locator("#plan").getByRole("button", { name: "Lower course" }).click();
  await expect(page.locator("#plan .ink svg")).toHaveAttribute("id", "plan-course-1");
  await expect(page.locator("#plan").getByRole("button", { name: "Lower course" })).toBeDisabled();
});

test("each side has its elevation", async ({ page }) => {
  await openTable(page);
  await page.locator("#elevation").getByRole("button", { name: "CD" }).click();
  await expect(page.locator("#elevation .ink svg")).toHaveAttribute("id", "elevation-3");
  await expect(page.locator("#elevation .ink svg")).toContainText("W1");
});

test("a tapped unit says what it is and who lies beside it", async ({ page }) => {
  await openTable(page);
  await page.locator("#plan-course-1-AB-1-3").click();
  const card = page.locator("#unit");
  await expect(card.getByRole("heading", { name: "AB-1-3" })).toBeVisible();
  await expect(card).toContainText("open end");
  await expect(card).toContainText("1'-3 5/8\"");
  await card.getByRole("button", { name: "AB-1-2" }).click();
  await expect(card.getByRole("heading", { name: "AB-1-2" })).toBeVisible();
});

test("a unit is found by its name, and a name that is none is said to be none", async ({ page }) => {
  await openTable(page);
  const field = page.getByRole("textbox", { name: "Unit by its name" });
  await field.fill("CD-5-2");
  await field.press("Enter");
  await expect(page.locator("#unit h2")).toHaveText("CD-5-2");
  await field.fill("ZZ-9-9");
  await field.press("Enter");
  await expect(page.getByText("There is no unit ZZ-9-9.")).toBeVisible();
});

test("the units in space are drawn, as many as stand up to the course, and are turned by keys", async ({ page }) => {
  await openTable(page);
  const requests: string[] = [];
  page.on("request", (request) => requests.push(request.url()));
  await page.getByRole("button", { name: "Show the units in space" }).click();
  const canvas = page.locator(".space canvas");
  await expect(canvas).toHaveAttribute("data-units", /[1-9]/);
  expect(requests.some((url) => url.includes("view-"))).toBe(true);
  // As many boxes as the plan of course 1 has units: both come from the same answer by different ways.
  const inPlan = await page
    .locator("#plan .ink g > title")
    .evaluateAll((titles) => titles.filter((title) => /-\d+-\d+$/.test(title.textContent ?? "")).length);
  await expect(canvas).toHaveAttribute("data-units", String(inPlan));
  for (let course = 1; course < 14; ++course) {
    await page.locator("#units").getByRole("button", { name: "Higher course" }).click();
  }
  await expect(canvas).toHaveAttribute("data-units", "861");
  await expect(canvas).toHaveAttribute("aria-label", /861 units up to course 14/);
  const first = await colours(page);
  expect(first.different).toBeGreaterThan(20);
  expect(first.dark).toBeGreaterThan(500);
  await canvas.focus();
  for (let turn = 0; turn < 5; ++turn) await page.keyboard.press("ArrowRight");
  await expect.poll(async () => (await colours(page)).print).not.toBe(first.print);
});

/// What the canvas shows: how many colours, how many dark pixels, and a print of all of it.
async function colours(page: import("@playwright/test").Page) {
  const png = (await page.locator(".space canvas").screenshot()).toString("base64");
  return page.evaluate(async (picture) => {
    const image = new Image();
    image.src = `data:image/png;base64,${picture}`;
    await image.decode();
    const sheet = new OffscreenCanvas(image.width, image.height);
    const brush = sheet.getContext("2d");
    if (brush === null) throw new Error("no canvas");
    brush.drawImage(image, 0, 0);
    const { data } = brush.getImageData(0, 0, image.width, image.height);
    const seen = new Set<number>();
    let dark = 0;
    let print = 0;
    for (let at = 0; at < data.length; at += 4) {
      const value = ((data[at] ?? 0) << 16) | ((data[at + 1] ?? 0) << 8) | (data[at + 2] ?? 0);
      seen.add(value);
      if ((data[at] ?? 0) < 90) dark += 1;
      print = (print * 31 + value) | 0;
    }
    return { different: seen.size, dark, print };
  }, png);
}

test("a finding leads to its place on the drawing, and to the field that mends it", async ({ page }) => {
  await openTable(page);
  const found = page.locator("#findings");
  await expect(found).toContainText("D1");
  await found.getByRole("button", { name: /^On the drawing: The head of D1/ }).click();
  await expect(page.locator('#plan .handle[data-place="/openings/0"].lit').first()).toBeVisible();
  await expect(page.locator("#plan")).toBeInViewport();
  await expect(page.locator("#in-hand h3")).toContainText("Opening D1");
  await found.getByRole("button", { name: /^Fill it in: The head of D1/ }).click();
  await expect(page.locator('[data-pointer^="/openings/0"] :focus').first()).toBeInViewport();
});
