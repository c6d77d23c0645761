// At the wall: a phone of 360 px worked by a thumb in a glove, with no network, that dies in the middle of an entry.
import { readFile } from "node:fs/promises";
import { createRequire } from "node:module";
import { expect, type Page, test } from "@playwright/test";
import type { AxeResults } from "axe-core";
import { goTo, openFile, openTable, settled } from "./table";

test.use({ viewport: { width: 360, height: 640 }, hasTouch: true, isMobile: true, deviceScaleFactor: 2 });

const zone = (page: Page, name: string) => page.locator(".at-wall").getByRole("button", { name, exact: true });
const figure = (page: Page) => page.locator(".wall-number");

/// What lies behind More, on whichever of its pages; each page that is passed is looked at.
async function more(page: Page, name: string, look: () => Promise<void> = async () => {}): Promise<void> {
  await zone(page, "More").tap();
  await look();
  while ((await zone(page, name).count()) === 0) {
    await zone(page, "Next page").tap();
    await look();
  }
  await zone(page, name).tap();
  await look();
}

async function openWall(page: Page): Promise<void> {
  await openTable(page);
  await goTo(page, "At the wall");
  await page.getByRole("button", { name: "Phone view" }).tap();
  await expect(figure(page)).toHaveText(`4'-7 5/8"`);
}

test("the view opens with the day's card where days are planned; one touch leads on, and nothing is entered", async ({
  page,
}) => {
  const example = new URL("../../../examples/kiln-house.json", import.meta.url);
  const house = JSON.parse(await readFile(example, "utf8")) as object;
  const job = {
    ...house,
    name: "Planned house",
    days: { start: "2027-05-03", forecast: [{ date: "2027-05-11", coldest: 30, warmest: 45 }] },
    laid: ["AB", "BC", "CD", "DA"].map((on) => ({ id: on, when: "2027-05-10 16:00", laid: { on, course: 1 } })),
  };
  await openTable(page);
  await openFile(page, JSON.stringify(job));
  await expect(page.getByRole("heading", { name: "Planned house" })).toBeVisible();
  await goTo(page, "At the wall");
  await page.getByRole("button", { name: "Phone view" }).tap();
  await expect(page.locator(".wall-lead")).toContainText("2027-05-11");
  await expect(page.locator(".at-wall")).toContainText("do what the weather card says of cold");
  await expect(figure(page)).toContainText("blocks");
  for (let turns = 0; turns < 8; ++turns) {
    const within = await page.locator(".at-wall").evaluate((view) => view.scrollHeight <= view.clientHeight + 1);
    expect(within, "something lies below the screen").toBe(true);
    if (/ 1 of /.test((await page.locator(".wall-lead").textContent()) ?? "") && turns > 0) break;
    if ((await zone(page, "Next page").count()) === 0) break;
    await zone(page, "Next page").tap();
  }
  await zone(page, "To the course").tap();
  await expect(page.locator(".wall-lead")).toContainText("course 2");
  await expect(zone(page, "On it")).toBeVisible();
  const kept = await page.evaluate(() => localStorage.getItem("stringcourse-wall"));
  expect(kept).toContain('"screen":"face"');
  await page.keyboard.press("Escape");
  await settled(page);
  await expect(page.locator("#wall .log li")).toHaveCount(4);
});

test("past at a mark gives the joints to the next one, and the entry is in the log", async ({ page }) => {
  await openWall(page);
  await expect(page.locator(".at-wall")).toContainText(`= 55 5/8"`);
  await expect(page.locator(".at-wall")).toContainText("end of unit 3");
  await zone(page, "Past").tap();
  await zone(page, `+1/16"`).tap();
  await zone(page, `+1/16"`).tap();
  await expect(figure(page)).toHaveText(`3/16" past`);
  // While it is tried, the joints are there: 3/16 over three joints.
  await expect(page.locator(".at-wall")).toContainText(`3 × 5/16"`);
  await zone(page, "Take it").tap();
  await expect(figure(page)).toHaveText(`3 × 5/16"`);
  await page.locator(".wall-turn").tap();
  await page.locator(".wall-turn").tap();
  await expect(figure(page)).toHaveText(`8'-7 5/8"`);
  await zone(page, "More").tap();
  await zone(page, "Undo last").tap();
  await expect(page.locator(".at-wall")).toContainText("struck: mark");
  await expect(figure(page)).toHaveText(`4'-7 5/8"`);
  await zone(page, "More").tap();
  await expect(zone(page, "Bring it back")).toBeVisible();
  await zone(page, "Leave").tap();
  await settled(page);
  // Struck, not erased.
  await expect(page.locator("#wall .log .struck")).toContainText(`3/16"`);
});

test("every zone is 120 px each way with 19 px between, on every screen, and nothing sticks out", async ({ page }) => {
  await openWall(page);
  const check = async (): Promise<void> => {
    const boxes = await page
      .locator(".wall-zone")
      .evaluateAll((zones) => zones.map((one) => one.getBoundingClientRect().toJSON() as DOMRect));
    for (const box of boxes) {
      expect(box.width).toBeGreaterThanOrEqual(120);
      expect(box.height).toBeGreaterThanOrEqual(120);
      for (const other of boxes) {
        if (other.x === box.x && other.y === box.y) continue;
        const dx = Math.max(other.x - box.x - box.width, box.x - other.x - other.width);
        const dy = Math.max(other.y - box.y - box.height, box.y - other.y - other.height);
        expect(Math.max(dx, dy)).toBeGreaterThanOrEqual(18.9);
      }
    }
    expect(await page.evaluate(() => document.documentElement.scrollWidth)).toBe(360);
    const within = await page.locator(".at-wall").evaluate((view) => view.scrollHeight <= view.clientHeight + 1);
    expect(within, "something lies below the screen").toBe(true);
  };
  await check();
  await zone(page, "Short").tap();
  await check();
  await zone(page, "Back").tap();
  await more(page, "One unit", check);
  await zone(page, "High").tap();
  await check();
});

test("a phone that dies in the middle of an entry comes back to it, and what was entered is there", async ({
  page,
}) => {
  await openWall(page);
  await zone(page, "Short").tap();
  await zone(page, `+1/16"`).tap();
  await zone(page, "Take it").tap();
  await expect(figure(page)).toContainText(`7/16"`);
  await zone(page, "next mark").tap();
  await zone(page, "Past").tap();
  await zone(page, `+5/16"`).tap();
  await expect(figure(page)).toHaveText(`3/8" past`);
  const session = await page.context().newCDPSession(page);
  const died = page.waitForEvent("crash");
  void session.send("Page.crash").catch(() => undefined);
  await died;
  const again = await page.context().newPage();
  await again.goto("./");
  await expect(figure(again)).toHaveText(`3/8" past`);
  await zone(again, "Take it").tap();
  await expect(again.locator(".wall-lead")).toContainText("next joints");
  const stored = await again.evaluate(() => localStorage.getItem("stringcourse-wall"));
  expect(stored).toContain('"open":true');
});

test("a reading that cannot be meant is questioned, and its likely meaning is one touch away", async ({ page }) => {
  await openWall(page);
  await zone(page, "Past").tap();
  // 48 sixteenths: 3 in, surely 3/16.
  for (let tens = 0; tens < 4; ++tens) await zone(page, `+10/16"`).tap();
  await zone(page, `+5/16"`).tap();
  await zone(page, `+1/16"`).tap();
  await zone(page, `+1/16"`).tap();
  await expect(figure(page)).toHaveText(`3" past`);
  await zone(page, "Take it").tap();
  await expect(page.locator(".at-wall")).toContainText(`Is it sixteenths: 3/16" past?`);
  await zone(page, "Yes").tap();
  await expect(figure(page)).toHaveText(`3 × 5/16"`);
});

test("a gap, a unit, the gauge rod and a check are judged on the spot", async ({ page }) => {
  await openWall(page);
  await more(page, "Closure gap");
  await expect(figure(page)).toHaveText(`16 3/8"`);
  await zone(page, `+1/16"`).tap();
  await zone(page, "Take it").tap();
  // 16 7/16 - 15 5/8 leaves two joints of 13/32: 7/16 to the nearest mark of the tape.
  await expect(figure(page)).toHaveText(`a whole unit; joints of 7/16"`);
  await zone(page, "next mark").tap();
  await more(page, "Check");
  await zone(page, "Plumb").tap();
  await zone(page, `+5/16"`).tap();
  await zone(page, "Take it").tap();
  // 1/4 in in 10 ft: over 48 in 0.1 in; 5/16 in is out by more than the doubt.
  await expect(figure(page)).toHaveText("Does not fit.");
  await zone(page, "next mark").tap();
  await more(page, "Story pole");
  await zone(page, "High").tap();
  await zone(page, `+1/16"`).tap();
  await zone(page, "Take it").tap();
  await expect(page.locator(".wall-number")).toContainText(`5/16"`);
});

async function toUnits(page: Page): Promise<void> {
  await more(page, "Measure units");
}

test("units that came up take their marks' readings with them, and the course is read anew", async ({ page }) => {
  await openWall(page);
  await zone(page, "Short").tap();
  await zone(page, `+10/16"`).tap();
  await zone(page, `+1/16"`).tap();
  await expect(figure(page)).toHaveText(`3/4" short`);
  await zone(page, "Take it").tap();
  await expect(figure(page)).toHaveText(`lift the last unit and lay again with 4 joints of 1/2"`);
  await zone(page, "Lifted: strike the mark").tap();
  await expect(figure(page)).toHaveText(`4'-7 5/8"`);
  // 1/2 past: a cut, or laying again.
  await zone(page, "Past").tap();
  await zone(page, `+5/16"`).tap();
  await zone(page, `+1/16"`).tap();
  await zone(page, `+1/16"`).tap();
  await zone(page, "Take it").tap();
  await expect(figure(page)).toHaveText(`cut the next unit 1/4" shorter, then 4 joints of 1/4"`);
  await expect(page.locator(".at-wall")).toContainText("or lift the last unit");
  const within = await page.locator(".at-wall").evaluate((view) => view.scrollHeight <= view.clientHeight + 1);
  expect(within).toBe(true);
});

test("units are measured one by one, and steps count down as well as up", async ({ page }) => {
  await openWall(page);
  await toUnits(page);
  await zone(page, "One by one").tap();
  await expect(figure(page)).toHaveText(`15 5/8"`);
  await zone(page, "Next unit").tap();
  await zone(page, `+1/16"`).tap();
  await expect(zone(page, "Enough")).toHaveCount(0);
  await zone(page, "Next unit").tap();
  await expect(page.locator(".wall-lead")).toContainText("unit 3");
  await zone(page, `−1/16"`).tap();
  await zone(page, "Enough").tap();
  await expect(figure(page)).toContainText(`mean 1'-3 5/8"`);
  await zone(page, "Undo last").tap();
  await toUnits(page);
  await zone(page, "Ten dry in a row").tap();
  await page.locator(".wall-turn").tap();
  await zone(page, `−10/16"`).tap();
  await expect(figure(page)).toHaveText(`155 5/8"`);
  await page.locator(".wall-turn").tap();
  await zone(page, `+5/16"`).tap();
  await expect(figure(page)).toHaveText(`155 15/16"`);
});

test("a note and the names of photos go into the log", async ({ page }) => {
  await openTable(page, "./#at-the-wall");
  await page.locator(".remark").getByLabel("note").fill("cell beside D1 cleaned out");
  const chooser = page.waitForEvent("filechooser");
  await page.getByRole("button", { name: "Photos" }).tap();
  await (await chooser).setFiles([{ name: "cell.jpg", mimeType: "image/jpeg", buffer: Buffer.from([0]) }]);
  await page.locator(".remark").getByRole("button", { name: "Enter" }).tap();
  await expect(page.locator("#wall .log")).toContainText("cell beside D1 cleaned out, cell.jpg");
});

test("left hand, evening, and no voice: the view says what it cannot do", async ({ page }) => {
  await openWall(page);
  const right = await zone(page, "Past").boundingBox();
  await more(page, "Left hand");
  const left = await zone(page, "Past").boundingBox();
  expect(left?.x ?? 999).toBeLessThan(right?.x ?? 0);
  await more(page, "Evening");
  await expect(page.locator(".at-wall")).toHaveCSS("background-color", "rgb(0, 0, 0)");
  await more(page, "Read aloud");
  await expect(page.locator(".at-wall")).toContainText("This phone has no voice of its own.");
});

test("axe finds nothing at the wall, in the sun or in the evening", async ({ page }) => {
  const source = await readFile(createRequire(import.meta.url).resolve("axe-core/axe.min.js"), "utf8");
  await openWall(page);
  const look = async (): Promise<void> => {
    await page.evaluate(source);
    const results = (await page.evaluate(() =>
      (window as unknown as { axe: { run(): Promise<unknown> } }).axe.run(),
    )) as AxeResults;
    expect(
      results.violations.flatMap((one) => one.nodes.map((node) => `${one.id}: ${node.html.slice(0, 160)}`)),
    ).toEqual([]);
  };
  await look();
  await zone(page, "Short").tap();
  await look();
  await zone(page, "Back").tap();
  await more(page, "Evening", look);
});

test("in flight mode: begun with the network, gone on without", async ({ page, context }) => {
  await openWall(page);
  await context.setOffline(true);
  await zone(page, "Past").tap();
  await zone(page, "Take it").tap();
  await expect(page.locator(".wall-lead")).toContainText("next joints");
  await context.setOffline(false);
});

/// From the corner to the far jamb of D1.
async function toFarJamb(page: Page): Promise<void> {
  for (const mark of [`4'-7 5/8"`, `8'-7 5/8"`, `9'-3 5/8"`]) {
    await expect(figure(page)).toHaveText(mark);
    await zone(page, "On it").tap();
    await expect(page.locator(".wall-lead")).toContainText("next joints");
    await zone(page, "next mark").tap();
  }
  await expect(figure(page)).toHaveText(`18'-8"`);
}

test("a far jamb is read as a mark is; on its place nothing is logged, past it what changes is one tap away", async ({
  page,
}) => {
  await openWall(page);
  await toFarJamb(page);
  await zone(page, "On it").tap();
  await expect(page.locator(".wall-lead")).toContainText("next mark");
  await page.keyboard.press("Escape");
  await expect(figure(page)).toHaveText(`18'-8"`);
  await zone(page, "Past").tap();
  await zone(page, `+5/16"`).tap();
  await expect(figure(page)).toHaveText(`3/8" past`);
  await zone(page, "Take it").tap();
  await zone(page, "What changes").tap();
  await expect(page.locator(".at-wall")).toContainText("unit");
  await expect(page.locator(".at-wall")).toContainText("AB, course");
  await zone(page, "next mark").tap();
  await expect(figure(page)).toHaveText(`18'-8 3/8"`);
});

test("Escape and the phone's own way back go one step back, and leave only from the first screen", async ({ page }) => {
  await openWall(page);
  await zone(page, "Past").tap();
  await expect(figure(page)).toHaveText(`1/16" past`);
  await page.goBack();
  await expect(figure(page)).toHaveText(`4'-7 5/8"`);
  await zone(page, "More").tap();
  await page.goBack();
  await expect(figure(page)).toHaveText(`4'-7 5/8"`);
  await zone(page, "More").tap();
  await page.keyboard.press("Escape");
  await expect(figure(page)).toHaveText(`4'-7 5/8"`);
  await page.goBack();
  await expect(page.locator(".at-wall")).toHaveCount(0);
  await expect(page.locator("#point-title")).toContainText("At the wall");
  await page.getByRole("button", { name: "Phone view" }).tap();
  await expect(figure(page)).toHaveText(`4'-7 5/8"`);
  await page.keyboard.press("Escape");
  await expect(page.locator(".at-wall")).toHaveCount(0);
  await settled(page);
  await expect(page.locator("#wall .log li")).toHaveCount(0);
});

test("a note of the course in hand is two taps away, and so is the way out", async ({ page }) => {
  await openWall(page);
  await zone(page, "More").tap();
  await zone(page, "Leave").tap();
  await expect(page.locator(".at-wall")).toHaveCount(0);
  await page.getByRole("button", { name: "Phone view" }).tap();
  await more(page, "Course up");
  await expect(page.locator(".wall-lead")).toContainText("course 2");
  await zone(page, "More").tap();
  await zone(page, "Note and photos").tap();
  const note = page.locator(".remark").getByLabel("note");
  await expect(note).toBeFocused();
  await page.keyboard.type("bed still soft");
  await page.keyboard.press("Enter");
  await expect(page.locator("#wall .log li").first()).toContainText("bed still soft");
  await expect(page.locator("#wall .log li").first()).toContainText("AB-2");
});

for (const size of [
  { width: 320, height: 640 },
  { width: 360, height: 640 },
  { width: 568, height: 320 },
  { width: 640, height: 360 },
  { width: 844, height: 390 },
]) {
  test(`at ${size.width} x ${size.height} every zone is on the screen, 120 px each way, beside a number that is read`, async ({
    page,
  }) => {
    await page.setViewportSize(size);
    await openWall(page);
    const check = async (): Promise<void> => {
      const boxes = await page
        .locator(".wall-zone")
        .evaluateAll((zones) => zones.map((one) => one.getBoundingClientRect().toJSON() as DOMRect));
      expect(boxes.length).toBeGreaterThan(0);
      for (const box of boxes) {
        expect(Math.min(box.width, box.height)).toBeGreaterThanOrEqual(119.9);
        expect(box.left).toBeGreaterThanOrEqual(0);
        expect(box.right).toBeLessThanOrEqual(size.width);
        expect(box.bottom).toBeLessThanOrEqual(size.height);
      }
      const number = await figure(page).boundingBox();
      if ((await figure(page).textContent()) !== "") {
        expect(number?.height ?? 0).toBeGreaterThanOrEqual(24);
        for (const box of boxes) {
          const apart =
            (number?.x ?? 0) + (number?.width ?? 0) <= box.left + 1 ||
            (number?.y ?? 0) + (number?.height ?? 0) <= box.top + 1;
          expect(apart, "the number lies under a zone").toBe(true);
        }
      }
      expect(await page.evaluate(() => document.documentElement.scrollWidth)).toBeLessThanOrEqual(size.width);
    };
    await check();
    await zone(page, "Past").tap();
    await check();
    await zone(page, "Take it").tap();
    await expect(page.locator(".wall-lead")).toContainText("next joints");
    await check();
    await zone(page, "More").tap();
    await check();
    await zone(page, "Next page").tap();
    await check();
  });
}
