// Deciding by hand: dragging with a live answer, offers, undo, typed sizes, and all of it from the keyboard.
import { expect, test } from "@playwright/test";
import { drag, focusSelected, goTo, handle, inchesOnPlan, openTable, settled, tally, told, undo } from "./table";

test("an opening is dragged: tallies and drawings move with the hand, one undo brings it back", async ({ page }) => {
  await openTable(page);
  expect(await told(page, "/openings/0")).toContain("9'-3 5/8\"");
  const plan = await page.locator("#plan .ink svg").innerHTML();
  await drag(page, handle(page, "/openings/0"), -(await inchesOnPlan(page, 40)), 0);
  await expect(page.locator(".tallies")).toHaveAttribute("data-draft", "true");
  await expect(page.locator(".tag")).toContainText("12'-7 5/8\"");
  await expect.poll(() => page.locator("#plan .ink svg").innerHTML()).not.toBe(plan);
  await page.mouse.up();
  await settled(page);
  // Toward B by 3'-4", a whole number of modules: free of cuts.
  expect(await told(page, "/openings/0")).toContain("12'-7 5/8\"");
  expect(await tally(page, "saw cuts")).toBe(0);
  await undo(page);
  expect(await told(page, "/openings/0")).toContain("9'-3 5/8\"");
});

test("a free hand does not snap, and off the module there are saw cuts", async ({ page }) => {
  await openTable(page);
  await page.getByLabel("No snapping: any size, whatever it cuts").check();
  await drag(page, handle(page, "/openings/0"), -5, 0);
  await page.mouse.up();
  await expect.poll(() => told(page, "/openings/0")).not.toContain("9'-3 5/8\"");
  await settled(page);
  expect(await tally(page, "saw cuts")).toBeGreaterThan(0);
  await undo(page);
  expect(await tally(page, "saw cuts")).toBe(0);
});

test("an edge is dragged: the opening widens by a module and its other jamb stays", async ({ page }) => {
  await openTable(page);
  await handle(page, "/openings/1").click();
  const to = handle(page, "/openings/1", "to");
  await expect(to).toBeVisible();
  await expect(page.locator("#in-hand input[data-length]").first()).toBeFocused(); // brought into view: the page has moved
  await drag(page, to, 0, -12);
  await page.mouse.up();
  await expect.poll(() => told(page, "/openings/1")).toContain("3'-11 5/8\" to 8'-0\"");
  await settled(page);
});

test("a side is dragged in: its neighbours get shorter, and what stands still stays where it was", async ({ page }) => {
  await openTable(page);
  const still = page.locator('#plan .handle[data-place="/outline/sides/3"]');
  const before = await still.boundingBox();
  await drag(page, handle(page, "/outline/sides/1", "side"), await inchesOnPlan(page, 40), 0);
  await expect(page.locator(".tag")).toContainText("24'-8\"");
  const during = await still.boundingBox();
  expect(Math.abs((during?.x ?? 0) - (before?.x ?? 0))).toBeLessThan(1.5);
  await page.mouse.up();
  await settled(page);
  await expect(page.locator(".title-block")).toContainText("AB 24'-8\"");
});

test("Escape gives a drag up: the job is as it was", async ({ page }) => {
  await openTable(page);
  await focusSelected(page, handle(page, "/openings/0"));
  await page.keyboard.press("ArrowLeft");
  await expect(page.locator(".tag")).toBeVisible();
  await page.keyboard.press("Escape");
  await settled(page);
  expect(await told(page, "/openings/0")).toContain("9'-3 5/8\"");
  await expect(page.getByRole("button", { name: "Undo" })).toBeDisabled();
});

test("a building of whole units is offered nothing: fewer bars alone are no offer", async ({ page }) => {
  await openTable(page);
  expect(await tally(page, "upright bars")).toBe(25);
  await expect(page.getByRole("button", { name: /^Take it:/ })).toHaveCount(0);
});

test("any notation is typed into a dimension; the job keeps the text that was typed", async ({ page }) => {
  await openTable(page);
  await handle(page, "/outline/sides/1", "side").click();
  const field = page.getByLabel("length", { exact: true }).last();
  await expect(field).toHaveValue("20'-0\"");
  await field.fill("6.4008 m");
  await field.press("Enter");
  await expect(page.locator(".title-block")).toContainText("21'-0\"");
  await expect(page.locator("#in-hand").getByLabel("length", { exact: true })).toHaveValue("6.4008 m");
});

test("a size that cannot be built is refused beside its field, and the last good drawing stays", async ({ page }) => {
  await openTable(page);
  await handle(page, "/openings/0").click();
  const field = page.locator("#in-hand").getByLabel("from corner A");
  await field.fill("26'-0\"");
  await field.press("Enter");
  const refusal = page.locator("#in-hand .trouble");
  await expect(refusal).toBeVisible();
  await expect(refusal.locator(".remedy").first()).not.toBeEmpty();
  await expect(field).toHaveAttribute("aria-invalid", "true");
  expect(await told(page, "/openings/0")).toContain("9'-3 5/8\"");
  expect(await tally(page, "units laid")).toBe(861);
});

test("the main job is done with the keyboard alone", async ({ page }) => {
  await openTable(page);
  const focusOn = async (name: string | RegExp): Promise<void> => {
    for (let step = 0; step < 90; ++step) {
      await page.keyboard.press("Tab");
      const label = await page.evaluate(
        () => document.activeElement?.getAttribute("aria-label") ?? document.activeElement?.textContent ?? "",
      );
      if (typeof name === "string" ? label.startsWith(name) : name.test(label)) return;
    }
    throw new Error(`no way to ${name} by Tab`);
  };
  await focusOn("Opening D1: select");
  await page.keyboard.press("Enter");
  await expect(page.locator("*:focus")).toHaveAttribute("aria-label", "Opening D1: move along its side");
  await page.keyboard.press("Shift+ArrowLeft");
  await expect(page.locator("p[aria-live]").last()).toContainText("D1: 9'-11 5/8\"");
  await expect.poll(() => told(page, "/openings/0")).toContain("9'-11 5/8\"");
  await settled(page);
  await page.keyboard.press("Control+z");
  await settled(page);
  expect(await told(page, "/openings/0")).toContain("9'-3 5/8\"");
  expect(await tally(page, "units laid")).toBe(861);
});

test("arrow keys move by the tape's smallest step", async ({ page }) => {
  await openTable(page);
  await focusSelected(page, handle(page, "/openings/0"));
  await page.keyboard.press("ArrowRight");
  await expect.poll(() => told(page, "/openings/0")).toContain("9'-3 9/16\"");
  await settled(page);
  await expect(page.getByRole("button", { name: "Undo" })).toBeEnabled();
});

test("a door is put into a side of one's own building and taken out again", async ({ page }) => {
  await openTable(page);
  await goTo(page, "Jobs");
  await page.getByRole("button", { name: "Draw it" }).click();
  await expect(page.getByRole("heading", { name: "New building" })).toBeVisible();
  await settled(page);
  await handle(page, "/outline/sides/0", "side").click();
  await page.locator("#in-hand").getByRole("button", { name: "Door", exact: true }).click();
  await expect(handle(page, "/openings/0")).toBeVisible();
  await page.locator("#in-hand").getByRole("button", { name: "Take D1 out" }).click();
  await expect(handle(page, "/openings/0")).toHaveCount(0);
});

test("a typed side of an L takes along the side that runs the other way", async ({ page }) => {
  await openTable(page);
  await goTo(page, "Jobs");
  const [chooser] = await Promise.all([
    page.waitForEvent("filechooser"),
    page.getByRole("button", { name: "Open a file" }).click(),
  ]);
  await chooser.setFiles("../examples/glaze-store.json");
  await expect(page.locator(".title-block")).toContainText("AB 32'-0\"");
  await settled(page);
  await handle(page, "/outline/sides/0", "side").click();
  const field = page.locator("#in-hand").getByLabel("length", { exact: true });
  await field.fill("34 ft");
  await field.press("Enter");
  await expect(page.locator(".title-block")).toContainText("AB 34'-0\"");
  await expect(page.locator(".title-block")).toContainText("CD 18'-0\"");
  await expect(field).toHaveValue("34 ft");
  await settled(page);
  await undo(page);
  await expect(page.locator(".title-block")).toContainText("AB 32'-0\"");
});

test("leaving a refused field moves nothing, so that what is pressed next is pressed", async ({ page }) => {
  await openTable(page);
  await handle(page, "/openings/0").click();
  const field = page.locator("#in-hand").getByLabel("from corner A");
  await field.fill("none");
  await field.press("Enter");
  await expect(page.locator("#in-hand .trouble")).toBeVisible();
  await settled(page);
  const below = page.locator("#in-hand").getByRole("button", { name: "Done" });
  await below.scrollIntoViewIfNeeded();
  const before = await below.boundingBox();
  await page.mouse.move((before?.x ?? 0) + 20, (before?.y ?? 0) + 20);
  await page.mouse.down();
  await expect(field).not.toBeFocused();
  expect(await below.boundingBox()).toEqual(before);
  await page.mouse.up();
  await expect(page.locator("#in-hand h3")).toContainText("Whole building");
});
