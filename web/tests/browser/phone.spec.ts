// A phone in portrait, 360 CSS px wide, worked with a finger.
import { readFile } from "node:fs/promises";
import { expect, test } from "@playwright/test";
import { goTo, handle, openFile, openTable, settled, tally, told } from "./table";

test.use({ viewport: { width: 360, height: 740 }, hasTouch: true, isMobile: true, deviceScaleFactor: 2 });

/// A finger laid on a point, drawn along and lifted, as the browser tells it.
async function fingerDrag(page: import("@playwright/test").Page, from: { x: number; y: number }, dx: number) {
  const session = await page.context().newCDPSession(page);
  const at = (x: number) => ({ touchPoints: [{ x, y: from.y }] });
  await session.send("Input.dispatchTouchEvent", { type: "touchStart", ...at(from.x) });
  for (let step = 1; step <= 8; ++step) {
    await session.send("Input.dispatchTouchEvent", { type: "touchMove", ...at(from.x + (dx * step) / 8) });
  }
  await session.send("Input.dispatchTouchEvent", { type: "touchEnd", touchPoints: [] });
}

/// How far the plan stands from the top of the screen, once it has come to rest.
async function rest(page: import("@playwright/test").Page): Promise<number> {
  const top = () => page.locator("#plan .box").evaluate((box) => box.getBoundingClientRect().top);
  let [before, now] = [Number.NaN, await top()];
  while (before !== now) {
    await page.waitForTimeout(200);
    [before, now] = [now, await top()];
  }
  return now;
}

test("nothing sticks out sideways, and the drawing comes before the cards", async ({ page }) => {
  await openTable(page);
  expect(await page.evaluate(() => document.documentElement.scrollWidth)).toBe(360);
  const plan = await page.locator("#plan").boundingBox();
  const block = await page.locator(".title-block").boundingBox();
  expect(plan?.y ?? 0).toBeLessThan(block?.y ?? 0);
});

test("whatever can be pressed is at least 44 px in both directions", async ({ page }) => {
  await openTable(page);
  await handle(page, "/openings/0").tap();
  const small = await page
    .locator("button:visible, a:visible, select:visible, input:not([type=checkbox]):visible, label.check, .handle")
    .evaluateAll((targets) =>
      targets
        .filter((target) => !target.classList.contains("skip"))
        .map((target) => ({ box: target.getBoundingClientRect(), text: target.outerHTML.slice(0, 120) }))
        .filter(({ box }) => box.width > 0 && (box.width < 43.9 || box.height < 43.9))
        .map(({ box, text }) => `${box.width} x ${box.height} ${text}`),
    );
  expect(small).toEqual([]);
});

test("a finger drags an opening that it tapped, and the plan stays where it is on the screen", async ({ page }) => {
  await openTable(page);
  await handle(page, "/openings/0").tap();
  await handle(page, "/openings/0").scrollIntoViewIfNeeded();
  const top = await rest(page);
  const box = await handle(page, "/openings/0").boundingBox();
  await fingerDrag(page, { x: (box?.x ?? 0) + (box?.width ?? 0) / 2, y: (box?.y ?? 0) + 22 }, -24);
  await expect.poll(() => told(page, "/openings/0")).not.toContain("9'-3 5/8\"");
  await settled(page);
  expect(await tally(page, "saw cuts")).toBe(0);
  expect(Math.abs((await rest(page)) - top)).toBeLessThan(1);
});

test("a tap on a unit shows its card, a tap on a dimension its field", async ({ page }) => {
  await openTable(page);
  await page.locator("#plan").getByRole("button", { name: "Larger" }).tap();
  await page.locator("#plan-course-1-AB-1-3").tap();
  await expect(page.locator("#unit h2")).toHaveText("AB-1-3");
  await page.locator("#unit").getByRole("button", { name: "Done" }).tap();
  await handle(page, "/outline/sides/1", "side").tap();
  await expect(page.locator("#in-hand")).toContainText("Side BC");
  await expect(page.locator("#in-hand").getByLabel("length", { exact: true })).toBeInViewport();
});

test("one's own building is begun on a phone", async ({ page }) => {
  await openTable(page);
  await goTo(page, "Jobs");
  await page.getByLabel("length", { exact: true }).fill("20'");
  await page.getByRole("button", { name: "Draw it" }).tap();
  await expect(page.getByRole("heading", { name: "New building" })).toBeVisible();
  await settled(page);
  expect(await page.evaluate(() => document.documentElement.scrollWidth)).toBe(360);
});

test("where a job of one's own is kept is said in lines of words, and leaves the screen to the drawing", async ({
  page,
}) => {
  await page.goto("./#jobs");
  await openFile(page, await readFile("../examples/wash-stand.json", "utf8"));
  await expect(page.getByRole("button", { name: "Ask the browser to keep it" })).toBeVisible();
  const said = await page.locator(".top .state").evaluate((state) => state.getBoundingClientRect().height);
  expect(said).toBeLessThan(148); // a fifth of the screen
});

test("the drawing is made larger inside its own box", async ({ page }) => {
  await openTable(page);
  for (let press = 0; press < 3; ++press) await page.locator("#plan").getByRole("button", { name: "Larger" }).tap();
  const inner = await page.locator(".box.plan").evaluate((box) => box.scrollWidth / box.clientWidth);
  expect(inner).toBeGreaterThan(2.5); // three steps are 3.2 times as large; the box is wider than the drawing
  expect(await page.evaluate(() => document.documentElement.scrollWidth)).toBe(360);
});

const kPoints = ["Order", "Pour", "First course", "Lintels", "Grout", "Top", "At the wall"];

test("no length in a list is broken into two lines, and small drawings can be read", async ({ page }) => {
  await page.goto("./#jobs");
  await openFile(page, await readFile("../examples/glaze-store.json", "utf8"));
  await settled(page);
  const looked = { lengths: 0, letters: 0 };
  for (const name of kPoints) {
    await goTo(page, name);
    await settled(page);
    looked.lengths += await page.locator("td:visible", { hasText: /^-?\d[\d' /-]*"$/ }).count();
    looked.letters += await page.locator(".paper-box svg text").count();
    const broken = await page.locator("td:visible, .value:visible").evaluateAll((cells) =>
      cells
        .filter((cell) => {
          if (!/^-?\d[\d' /-]*("| mm)$/.test(cell.textContent?.trim() ?? "")) return false;
          const lines = document.createRange();
          lines.selectNodeContents(cell);
          return new Set([...lines.getClientRects()].map((line) => Math.round(line.bottom))).size > 1;
        })
        .map((cell) => cell.textContent),
    );
    expect(broken, name).toEqual([]);
    const small = await page.locator(".paper-box svg text").evaluateAll(
      (texts) =>
        texts
          .map((text) => {
            const scale = (text as SVGTextElement).getScreenCTM();
            const size = Number.parseFloat(text.getAttribute("font-size") ?? "0");
            return size * Math.hypot(scale?.a ?? 0, scale?.b ?? 0);
          })
          .filter((size) => size < 11.5), // 12 px, less what a frame rounds
    );
    expect(small, name).toEqual([]);
  }
  expect(Math.min(looked.lengths, looked.letters)).toBeGreaterThan(10);
});

test("the order list has room for its names: what is said beside an article stands under it", async ({ page }) => {
  for (const job of ["wash-stand", "clay-store"]) {
    await page.goto("./#jobs");
    await openFile(page, await readFile(`../examples/${job}.json`, "utf8"));
    await settled(page);
    await goTo(page, "Order");
    const rows = page.locator(".order-list > .articles tbody tr:not(.group)");
    expect(await rows.count()).toBeGreaterThan(8);
    const odd = await rows.evaluateAll((all) =>
      all
        .map((row) => [...row.children].map((cell) => cell.getBoundingClientRect()))
        .filter(
          (cells) =>
            (cells[0]?.width ?? 0) < 110 || ((cells.at(-1)?.height ?? 0) > 0 && cells.at(-1)?.left !== cells[0]?.left),
        )
        .map((cells) => cells.map(({ width, height }) => `${width} x ${height}`).join(", ")),
    );
    expect(odd, job).toEqual([]);
  }
});

/// Lettering in view that the label of the start corner lies on.
function coveredLetters(view: Element): readonly (string | null)[] {
  const label = view.querySelector(".start-corner")?.getBoundingClientRect();
  const box = view.querySelector(".box")?.getBoundingClientRect();
  const letters = [...view.querySelectorAll(".ink text")];
  if (label === undefined || box === undefined || letters.length === 0) return ["nothing to look at"];
  const edge = (view.querySelector(".box")?.clientTop ?? 0) + box.top;
  const shown = new DOMRect(box.left, edge, box.width, box.bottom - edge);
  const over = (one: DOMRect, other: DOMRect): boolean =>
    one.left < other.right && one.right > other.left && one.top < other.bottom && one.bottom > other.top;
  return letters
    .map((text) => ({ text: text.textContent, place: text.getBoundingClientRect() }))
    .filter(({ place }) => over(place, shown) && over(place, label))
    .map(({ text }) => text);
}

test("what is written in an elevation is covered by nothing", async ({ page }) => {
  await openTable(page, "./#lintels");
  for (const side of ["BC", "CD", "DA", "AB"]) {
    await page.locator("#elevation").getByRole("button", { name: side, exact: true }).tap();
    await expect(page.locator("#elevation")).toHaveAttribute("aria-label", new RegExp(side));
    await settled(page);
    expect(await page.locator("#elevation").evaluate(coveredLetters), side).toEqual([]);
  }
});
