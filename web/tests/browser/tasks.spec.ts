// What people come for, done from end to end, with the number of interactions that each may take.
import { readFile } from "node:fs/promises";
import { expect, type Page, test } from "@playwright/test";
import { Person } from "./counted";
import { beginOwn, goTo, handle, openTable, select, settled, undo, withoutDialogs } from "./table";

async function jobOf(page: Page) {
  const [download] = await Promise.all([
    page.waitForEvent("download"),
    page.locator(".state").getByRole("button", { name: "Save to a file" }).click(),
  ]);
  return JSON.parse(await readFile(await download.path(), "utf8"));
}

const form = (page: Page, name: string) => page.getByRole("form", { name, exact: true });

test("a store of 24 by 16 ft with a door, a window and a bond beam on top", async ({ page }) => {
  await withoutDialogs(page);
  await page.goto("./");
  await beginOwn(page, { length: "24'", width: "16'", height: "8'" });
  await select(handle(page, "/outline/sides/0", "side"));
  await page.locator("#in-hand").getByRole("button", { name: "Door", exact: true }).click();
  await settled(page);
  await select(handle(page, "/outline/sides/2", "side"));
  await page.locator("#in-hand").getByRole("button", { name: "Window", exact: true }).click();
  await settled(page);
  await goTo(page, "Top");
  const beams = form(page, "Bond beams");
  await beams.getByLabel("bond beams are courses").fill("12");
  await beams.getByRole("button", { name: "Set" }).click();
  await expect(beams.getByRole("button", { name: "Set" })).toHaveCount(0);
  await settled(page);
  const job = await jobOf(page);
  expect(job.openings.map((one: { on: string }) => one.on)).toEqual(["AB", "CD"]);
  expect(job.steel.bond_beams).toEqual([12]);
  await goTo(page, "Order");
  // A course of bond beams: 58 units of the twelfth, whole and half, corners apart.
  await expect(page.locator(".schedule")).toContainText("bond beam");
  await undo(page);
  await expect(page.locator(".schedule")).not.toContainText("bond beam");
});

test("an L is made in one step: its corners are typed together, and a shape that does not close is refused", async ({
  page,
}) => {
  await withoutDialogs(page);
  await page.goto("./");
  await beginOwn(page, { length: "24'", width: "16'", height: "8'" });
  await page.getByText("Outline: sides and corners").click();
  const outline = form(page, "Outline: sides and corners");
  const side = (at: number) => outline.locator(".form-list > li").nth(at);
  const type = async (at: number, from: string, to: string, length: string, turn: string): Promise<void> => {
    await side(at).getByLabel("from corner").fill(from);
    await side(at).getByLabel("to corner").fill(to);
    await side(at).getByLabel("length", { exact: true }).fill(length);
    await side(at).getByLabel("then turn").selectOption(turn);
  };
  const add = outline.getByRole("button", { name: /^Add one/ });
  await add.click();
  await add.click();
  // 16 = 6 + 10 and 24 = 12 + 12.
  await type(2, "C", "D", "12'", "right");
  await type(3, "D", "E", "6'", "left");
  await type(4, "E", "F", "12'", "right");
  await type(5, "F", "A", "9'", "right");
  await outline.getByRole("button", { name: "Set" }).click();
  await expect(outline.getByRole("alert").first()).toBeVisible();
  await expect(side(5).getByLabel("length", { exact: true })).toHaveValue("9'");
  await expect(page.locator(".title-block")).toContainText("AB 24'-0\" · BC 16'-0\"");
  await side(5).getByLabel("length", { exact: true }).fill("10'");
  await outline.getByRole("button", { name: "Set" }).click();
  await expect(page.locator(".title-block")).toContainText("EF 12'-0\"");
  await settled(page);
  await expect(page.locator("#plan .handle[data-part=side]")).toHaveCount(6);
  await undo(page);
  await expect(page.locator("#plan .handle[data-part=side]")).toHaveCount(4);
});

test("an inner wall is put in by its form, changed, and taken out", async ({ page }) => {
  await withoutDialogs(page);
  await openTable(page);
  await page.locator('[data-fold="order inner"] > summary').click();
  await page.getByText("One more: inner walls").click();
  const one = form(page, "One more: inner walls");
  await one.getByLabel("name", { exact: true }).fill("inner");
  await one.getByLabel("starts from wall").selectOption("DA");
  await one.getByLabel("from corner").selectOption("D");
  await one.getByLabel("distance").fill("10");
  await one.getByRole("button", { name: "Put it in" }).click();
  // A bare number may mean two lengths: it is asked about.
  await one.locator(".which").getByRole("button", { name: "feet" }).click();
  await settled(page);
  const job = await jobOf(page);
  expect(job.interior_walls).toEqual([{ name: "inner", off: "DA", place: { from: "D", at: "10'" } }]);
  await page.locator('[data-fold="order inner 0"] > summary').click();
  await page.getByRole("button", { name: "Take inner out" }).click();
  await settled(page);
  expect((await jobOf(page)).interior_walls).toEqual([]);
});

test("an entry of the laid log is typed where the phone view has no button for it", async ({ page }) => {
  await withoutDialogs(page);
  await openTable(page, "./#at-the-wall");
  await page.getByText("Write an entry").click();
  const entry = form(page, "A course laid");
  await entry.getByLabel("it is a").selectOption("laid");
  await entry.getByLabel("in wall").selectOption("AB");
  await entry.getByLabel("course", { exact: true }).fill("1");
  await entry.getByRole("button", { name: "Put it in" }).click();
  await settled(page);
  await expect(page.locator("#wall .log li")).toHaveCount(1);
  const job = await jobOf(page);
  expect(job.laid[0]).toMatchObject({ laid: { on: "AB", course: 1 } });
});

const spine = (page: Page, name: string) => page.locator(".spine").getByRole("link", { name });
const inHand = (page: Page) => page.locator("#in-hand");

async function put(person: Person, side: number, what: string): Promise<void> {
  const { page } = person;
  await person.tap(handle(page, `/outline/sides/${side}`, "side"));
  await person.tap(inHand(page).getByRole("button", { name: what, exact: true }));
  await settled(page);
}

/// A store of 24 x 20 ft: overhead door, man door, window, an inner wall, bond beams over the openings and on top.
async function drawStore(person: Person): Promise<void> {
  const { page } = person;
  await page.goto("./");
  const begin = page.locator(".begin");
  await person.fill(begin.getByLabel("length", { exact: true }), "24'");
  await person.fill(begin.getByLabel("width", { exact: true }), "20'");
  await person.tap(page.getByRole("button", { name: "Draw it" }));
  await settled(page);
  await put(person, 0, "Overhead door 9 × 7");
  await put(person, 2, "Man door 3-0 × 6-8");
  await put(person, 1, "Window");
  await put(person, 2, "Inner wall");
  await person.tap(page.getByRole("button", { name: "Whole building" }));
  await person.choose(inHand(page).getByLabel("bond beams"), "over the openings and on top");
  await settled(page);
  await expect(inHand(page).getByLabel("bond beams")).toHaveValue("both");
}

async function printOrder(person: Person): Promise<string> {
  const { page } = person;
  await person.tap(page.getByRole("button", { name: "Make these sheets (PDF)" }));
  await expect(page.getByText("The set is made")).toBeVisible();
  const saved = page.waitForEvent("download");
  await person.tap(page.getByRole("button", { name: "Save the set (PDF)" }));
  return (await readFile(await (await saved).path())).toString("latin1");
}

/// The reading that the form asks for, entered.
async function read(person: Person, text: string, value: string): Promise<void> {
  const { page } = person;
  const entry = page.getByRole("form", { name: "Enter a reading" });
  await expect(entry.locator(".next-reading strong")).toHaveText(text);
  await person.fill(entry.getByLabel(text.startsWith("Rod") ? "rod reads" : "tape reads"), value);
  await person.press("Enter");
  await expect(entry.locator(".next-reading strong")).not.toHaveText(text);
}

/// 24 x 20 ft are 287 5/8 by 239 5/8 in, the diagonals 374 3/8. C and D stand 1 in toward the east, so that one diagonal is
/// longer and the other shorter, by 1 in x 287.6 / 374.4 = 3/4 in each.
const kLines = [
  ["Tape A to B", `287 5/8"`],
  ["Tape B to C", `239 5/8"`],
  ["Tape C to D", `287 5/8"`],
  ["Tape D to A", `239 5/8"`],
  ["Tape A to C", `375 1/8"`],
  ["Tape B to D", `373 5/8"`],
] as const;
/// C lies 1 1/8 in lower than A: a bed of 1/4 to 3/4 in takes 1/2 in.
const kRods = [
  ["Rod on A", `52"`],
  ["Rod on B", `52 3/8"`],
  ["Rod on C", `53 1/8"`],
  ["Rod on D", `52 1/2"`],
] as const;

async function readSlab(person: Person): Promise<void> {
  const { page } = person;
  await person.tap(spine(page, "First course"));
  const square = page.locator(".question", { hasText: "Is what was poured square" });
  const level = page.locator(".question", { hasText: "Is it level enough" });
  for (const [text, value] of kLines) {
    await expect(square.locator(".answer strong")).toHaveText("Not read yet");
    await expect(page.locator("svg.aim line")).toHaveCount(1);
    await read(person, text, value);
  }
  await expect(square.locator(".answer strong")).toHaveText("No");
  for (const [text, value] of kRods) {
    await expect(level.locator(".answer strong")).not.toHaveText("Yes");
    await expect(page.locator("svg.aim circle")).toHaveCount(1);
    await read(person, text, value);
  }
  await expect(level.locator(".answer strong")).toHaveText("No");
}

async function chooseRemedies(person: Person): Promise<void> {
  const { page } = person;
  for (const about of ["shape", "bed"]) {
    const list = page.locator(`.remedies[data-pointer="/ground/${about}_remedy"]`);
    const best = list.locator("li").first();
    await expect(best).toContainText("Recommended");
    await expect(best.locator(".takes")).toContainText("saw");
    await person.tap(best.getByRole("button"));
    await expect(list.locator("li.chosen")).toHaveCount(1);
    await settled(page);
  }
}

for (const width of [360, 1280]) {
  for (const keys of [false, true]) {
    const how = `${width} px${keys ? ", by the keyboard alone" : ""}`;
    test(`an owner draws a store and prints its order in at most 45 interactions: ${how}`, async ({ page }) => {
      await page.setViewportSize({ width, height: 800 });
      await withoutDialogs(page);
      const person = new Person(page, keys);
      await drawStore(person);
      const set = await printOrder(person);
      expect(person.count).toBeLessThanOrEqual(45);
      // The rest is seen, not done.
      expect(set).toContain("%PDF");
      const job = await jobOf(page);
      expect(job.openings.map((one: { on: string }) => one.on)).toEqual(["AB", "CD", "BC"]);
      expect(job.openings[0].overhead.leaf_width).toBe(`9'-0"`);
      expect(job.openings[1].door).toMatchObject({ leaf_width: `3'-0"`, leaf_height: `6'-8"` });
      expect(job.interior_walls).toHaveLength(1);
      // 88 in are eleven courses: lintels lie in the twelfth, which is the top one of 8 ft.
      expect(job.steel.bond_beams.at(-1)).toBe(12);
    });

    test(`after the pour a slab out of square and out of level is read, and what is done is chosen: ${how}`, async ({
      page,
    }) => {
      await page.setViewportSize({ width, height: 800 });
      await withoutDialogs(page);
      await page.goto("./");
      await beginOwn(page, { length: "24'", width: "20'", height: "8'" });
      const person = new Person(page, keys);
      await readSlab(person);
      await chooseRemedies(person);
      // One to go there, two for each of ten readings, one for each remedy.
      expect(person.count).toBeLessThanOrEqual(23);
      const job = await jobOf(page);
      expect(job.ground.shape_remedy.do).toBe("square-lines");
      expect(job.ground.bed_remedy.after).toBe(job.readings.at(-1).id);
      const level = page.locator(".question", { hasText: "Is it level enough" });
      await expect(level).toContainText("Chosen: ");
      // No litres where the tape has inches.
      await expect(page.locator(".remedies").last()).toContainText("gal");
      await expect(page.locator("main")).not.toContainText("litre");
      // What is chosen is one step, and undone in one.
      await undo(page);
      expect((await jobOf(page)).ground.bed_remedy).toBeUndefined();
    });
  }
}

test("a reading that is struck and read otherwise after a remedy was chosen is told at both points", async ({
  page,
}) => {
  await withoutDialogs(page);
  await page.goto("./");
  await beginOwn(page, { length: "24'", width: "20'", height: "8'" });
  const person = new Person(page, false);
  await readSlab(person);
  await chooseRemedies(person);
  await page.getByRole("button", { name: `Strike the reading 1 · C, 53 1/8"` }).click();
  await settled(page);
  await read(person, "Rod on C", `52 1/4"`);
  await settled(page);
  const against = page.locator("#findings li", { hasText: "Chosen: " });
  await expect(against).toHaveCount(1);
  await expect(page.locator('.remedies[data-pointer="/ground/bed_remedy"] [role=alert]')).toBeVisible();
  await goTo(page, "Pour");
  await expect(against).toHaveCount(1);
});

const zone = (page: Page, name: string) => page.locator(".at-wall").getByRole("button", { name, exact: true });
const figure = (page: Page) => page.locator(".wall-number");

for (const keys of [false, true]) {
  for (const size of [
    { width: 360, height: 740 },
    { width: 1280, height: 800 },
  ]) {
    const how = `${size.width} px${keys ? ", by the keyboard alone" : ""}`;
    test(`a mason lays a course whose far jamb stands 3/8 in past its place: ${how}`, async ({ page }) => {
      await page.setViewportSize(size);
      await openTable(page);
      const person = new Person(page, keys);
      await person.tap(spine(page, "At the wall"));
      await person.tap(page.getByRole("button", { name: "Phone view" }));
      // Side AB of the kiln house: three marks to the near jamb of D1.
      for (const mark of [`4'-7 5/8"`, `8'-7 5/8"`, `9'-3 5/8"`]) {
        await expect(figure(page)).toHaveText(mark);
        await person.tap(zone(page, "On it"));
        await expect(page.locator(".wall-lead")).toContainText("next joints");
        await person.tap(zone(page, "next mark"));
      }
      await expect(figure(page)).toHaveText(`18'-8"`);
      await person.tap(zone(page, "Past"));
      await person.tap(zone(page, `+5/16"`));
      await expect(figure(page)).toHaveText(`3/8" past`);
      await person.tap(zone(page, "Take it"));
      // What changes is one tap away.
      await person.tap(zone(page, "What changes"));
      await expect(page.locator(".wall-lead")).toContainText("What changes");
      await person.tap(zone(page, "next mark"));
      await expect(figure(page)).toHaveText(`18'-8 3/8"`);
      await person.tap(zone(page, "More"));
      await person.tap(zone(page, "Leave"));
      await settled(page);
      expect(person.count).toBeLessThanOrEqual(15);
      await expect(page.locator("#wall .log li").first()).toContainText(`far jamb of D1 at 224 3/8"`);
    });
  }
}
