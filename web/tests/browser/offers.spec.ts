// Where rules are given up, what would keep them stands beside: one tap takes it, and undo brings the job back.
import { expect, type Page, test } from "@playwright/test";
import { goTo, openTable, settled, tally, told, undo } from "./table";

const side = (from: string, to: string, length: string) => ({ from, to, length, turn: "right" });
const door = (name: string, at: string) => ({
  name,
  on: "AB",
  place: { from: "A", at },
  masonry: { width: "3'-4\"", height: "6'-8\"" },
});
/// The pier between two doors is 10 in wide: more than a half unit, less than a whole one.
const kAnnex = {
  stringcourse: 1,
  name: "Clay store annex",
  tape: "inches",
  units: { series: "us-8" },
  outline: {
    closed: true,
    sides: [side("A", "B", "24'"), side("B", "C", "20'"), side("C", "D", "24'"), side("D", "A", "20'")],
  },
  heights: { courses: 12 },
  openings: [door("D1", "4'"), door("D2", "8'-2\"")],
};

async function openJob(page: Page, job: object): Promise<void> {
  await goTo(page, "Jobs");
  const [chooser] = await Promise.all([
    page.waitForEvent("filechooser"),
    page.getByRole("button", { name: "Open a file" }).click(),
  ]);
  await chooser.setFiles({ name: "job.json", mimeType: "application/json", buffer: Buffer.from(JSON.stringify(job)) });
  await expect(page.getByRole("heading", { name: kAnnex.name })).toBeVisible();
  await settled(page);
}

test("beside the rule that is given up stand the offers that keep it; one is taken and undone", async ({ page }) => {
  await openTable(page);
  await openJob(page, kAnnex);
  const given = page.locator("#findings li", { hasText: "its sawn end shows" }).first();
  await expect(given).toContainText("What would mend it:");
  const cuts = await tally(page, "saw cuts");
  expect(cuts).toBeGreaterThan(0);
  await given.getByRole("button", { name: /^Take it: D2 6 in toward B: every rule kept, no cuts/ }).click();
  await expect.poll(() => tally(page, "saw cuts")).toBe(0);
  await settled(page);
  await expect(page.locator("#findings")).not.toContainText("its sawn end shows");
  await expect(page.getByRole("button", { name: "Undo" })).toHaveAttribute("title", /offer taken: D2 6 in toward B/);
  await undo(page);
  expect(await tally(page, "saw cuts")).toBe(cuts);
  await expect(page.locator("#findings")).toContainText("its sawn end shows");
});

test("a hole that is off at both jambs is offered a width, and has it when it is taken", async ({ page }) => {
  await openTable(page);
  const opening = { ...door("D1", "5'-7\""), masonry: { width: "3'-7\"", height: "6'-8\"" } };
  await openJob(page, { ...kAnnex, openings: [opening] });
  const more = page.locator(".offers").getByRole("button", { name: /more$/ });
  if ((await more.count()) > 0) await more.click();
  await page
    .locator(".offers")
    .getByRole("button", { name: /^Take it: D1 5 in wider, 3 in at the A end and 2 in at the B end: no cuts/ })
    .click();
  await expect.poll(() => tally(page, "saw cuts")).toBe(0);
  await settled(page);
  // From 5'-4" by 4'-0" of nominal lengths: between the lines at 64 and 112 in.
  await expect.poll(() => told(page, "/openings/0")).toContain(`5'-3 5/8" to 9'-4"`);
});
