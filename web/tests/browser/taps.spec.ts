// One tap, one entry, of the number shown: fingers that tap twice, an engine that takes its time, undo in between.
import { expect, type Locator, type Page, test } from "@playwright/test";
import { goTo, openTable, settled, slowEngine } from "./table";

test.use({ viewport: { width: 360, height: 640 }, hasTouch: true, isMobile: true, deviceScaleFactor: 2 });

const zone = (page: Page, name: string) => page.locator(".at-wall").getByRole("button", { name, exact: true });
const figure = (page: Page) => page.locator(".wall-number");

/// As fast as a finger that taps twice, or more often, without looking: nothing waits for the page.
async function tapTimes(page: Page, what: Locator, times: number, apart: number): Promise<void> {
  await expect(what).toBeEnabled();
  const box = await what.boundingBox();
  if (box === null) throw new Error("nothing to tap");
  const session = await page.context().newCDPSession(page);
  const at = { x: box.x + box.width / 2, y: box.y + box.height / 2 };
  for (let tap = 0; tap < times; ++tap) {
    if (tap > 0) await page.waitForTimeout(apart);
    await session.send("Input.dispatchTouchEvent", { type: "touchStart", touchPoints: [at] });
    await session.send("Input.dispatchTouchEvent", { type: "touchEnd", touchPoints: [] });
  }
}

interface Logged {
  readonly at: string;
  readonly past: string;
  readonly struck: boolean;
}

/// The marks of the laid log, oldest first, as the table lists them.
async function marksLogged(page: Page): Promise<readonly Logged[]> {
  const rows = page.locator("#wall .log li");
  const texts = await rows.evaluateAll((items) =>
    items.map((item) => ({
      value: item.querySelector(".value")?.textContent ?? "",
      struck: item.classList.contains("struck"),
    })),
  );
  return texts.reverse().map(({ value, struck }) => {
    const [at = "", past = ""] = value.split(": ");
    return { at, past, struck };
  });
}

async function openWall(page: Page): Promise<void> {
  await openTable(page);
  await goTo(page, "At the wall");
  await page.getByRole("button", { name: "Phone view" }).tap();
  await expect(figure(page)).toHaveText(`4'-7 5/8"`);
}

async function leaveWall(page: Page): Promise<void> {
  await zone(page, "More").tap();
  for (let turn = 0; turn < 6 && (await zone(page, "Leave").count()) === 0; ++turn) await zone(page, "Next page").tap();
  await zone(page, "Leave").tap();
  await settled(page);
}

/// AB's first run: 4'-7 5/8", 8'-7 5/8", then the last unit's end at D1's near jamb.
const kMarks = [`4'-7 5/8"`, `8'-7 5/8"`, `9'-3 5/8"`] as const;

for (const [late, apart] of [
  [0, 60],
  [0, 250],
  [700, 120],
  [1500, 400],
] as const) {
  test(`a double tap is one entry: engine ${late} ms late, taps ${apart} ms apart`, async ({ page }) => {
    if (late > 0) await slowEngine(page, late);
    await openWall(page);
    for (const mark of kMarks) {
      await expect(figure(page)).toHaveText(mark);
      await tapTimes(page, zone(page, "On it"), late > 0 ? 4 : 2, apart);
      await expect(page.locator(".wall-lead")).toContainText(/next joints|next mark|start at/);
      await expect(page.locator(".at-wall")).not.toContainText("mistake of its own");
      if (mark !== kMarks[2]) {
        await expect(page.locator(".wall-lead")).toContainText("next joints");
        await expect(zone(page, "On it")).toHaveCount(0);
      }
      await zone(page, "next mark").tap();
    }
    // Beyond the doorway the run starts at the far jamb.
    await expect(figure(page)).toHaveText(`18'-8"`);
    await expect(page.locator(".at-wall")).toContainText("far jamb of D1");
    await leaveWall(page);
    expect(await marksLogged(page)).toEqual(kMarks.map((at) => ({ at, past: "on it", struck: false })));
  });
}

test("undo between double taps strikes one entry each, and brings one back", async ({ page }) => {
  await slowEngine(page, 300);
  await openWall(page);
  await tapTimes(page, zone(page, "On it"), 3, 90);
  await expect(page.locator(".wall-lead")).toContainText("next joints");
  await tapTimes(page, zone(page, "Undo last"), 3, 90);
  await expect(figure(page)).toHaveText(`4'-7 5/8"`);
  await expect(page.locator(".at-wall")).toContainText("struck: mark");
  await tapTimes(page, zone(page, "On it"), 2, 90);
  await expect(page.locator(".wall-lead")).toContainText("next joints");
  await zone(page, "next mark").tap();
  await expect(figure(page)).toHaveText(`8'-7 5/8"`);
  await tapTimes(page, zone(page, "On it"), 2, 90);
  await expect(page.locator(".wall-lead")).toContainText("next joints");
  await tapTimes(page, zone(page, "Undo last"), 2, 90);
  await expect(figure(page)).toHaveText(`8'-7 5/8"`);
  await zone(page, "More").tap();
  await tapTimes(page, zone(page, "Bring it back"), 2, 90);
  await expect(page.locator(".at-wall")).toContainText("counts again: mark");
  await expect(page.locator(".at-wall")).not.toContainText("mistake of its own");
  await leaveWall(page);
  expect(await marksLogged(page)).toEqual([
    { at: `4'-7 5/8"`, past: "on it", struck: true },
    { at: `4'-7 5/8"`, past: "on it", struck: false },
    { at: `8'-7 5/8"`, past: "on it", struck: false },
  ]);
});

test("steps are counted tap by tap, however fast", async ({ page }) => {
  await openWall(page);
  await zone(page, "Past").tap();
  await tapTimes(page, zone(page, `+1/16"`), 6, 30);
  await expect(figure(page)).toHaveText(`7/16" past`);
});
