// Off the block grid a search takes its time: a layout is there at once, and the search never holds the page up.
import { readFile } from "node:fs/promises";
import { expect, type Page, test } from "@playwright/test";
import { focusSelected, goTo, handle, openTable, settled, tally } from "./table";

/// So soon after a change a person sees it answered: frames of the screen, 300 ms of them. Frames and not a clock: where other
/// programs take the processor from the page, they take it from its frames as well.
const kSoon = 18;

const length = (page: Page) => page.locator("#in-hand").getByLabel("length", { exact: true });

interface Drawn {
  readonly frames: number;
  readonly stage: string | undefined;
}

/// The side's length as typed: how many frames it takes until the page shows it, and what it shows then.
async function typedAndDrawn(page: Page, text: string, shown: string): Promise<Drawn> {
  await length(page).fill(text);
  const drawn = page.evaluate(
    (wanted) =>
      new Promise<Drawn>((done) => {
        let frames = 0;
        const look = (): void => {
          frames += 1;
          const told = document.querySelector(".title-block")?.textContent ?? "";
          if (told.includes(wanted))
            done({ frames, stage: document.querySelector<HTMLElement>(".tallies")?.dataset["stage"] });
          else requestAnimationFrame(look);
        };
        document.addEventListener("submit", () => requestAnimationFrame(look), { capture: true, once: true });
      }),
    shown,
  );
  await length(page).press("Enter");
  return drawn;
}

/// Searches begun so far, with the job that each was for; and how many workers were ended.
async function watched(page: Page): Promise<void> {
  await page.addInitScript(() => {
    const seen = { asked: [] as { budget?: number; job?: string; offers?: boolean }[], ended: 0 };
    const Real = window.Worker;
    window.Worker = class extends Real {
      override postMessage(message: unknown): void {
        const { request } = message as { request?: string };
        if (request !== undefined) seen.asked.push(JSON.parse(request));
        super.postMessage(message);
      }
      override terminate(): void {
        seen.ended += 1;
        super.terminate();
      }
    } as typeof Worker;
    Object.assign(window, { seen });
  });
}

const seen = (page: Page) =>
  page.evaluate(
    () =>
      (window as unknown as { seen: { asked: { budget?: number; job?: string; offers?: boolean }[]; ended: number } })
        .seen,
  );

test("a side off the grid is drawn at once; the search's verdict follows", async ({ page }) => {
  await openTable(page);
  await handle(page, "/outline/sides/0", "side").click();
  const drawn: Drawn[] = [];
  for (const [text, shown] of [
    ["28'-10\"", "AB 28'-10\""],
    ["28'-9\"", "AB 28'-9\""],
    ["28'-11\"", "AB 28'-11\""],
    ["28'-7\"", "AB 28'-7\""],
    ["28'-5\"", "AB 28'-5\""],
  ] as const) {
    drawn.push(await typedAndDrawn(page, text, shown));
    await settled(page);
    await expect(page.locator(".proof")).toContainText(/^(Proven|Not proven)/);
  }
  expect(drawn.map(({ stage }) => stage)).toEqual(drawn.map(() => "first"));
  expect(Math.max(...drawn.map(({ frames }) => frames))).toBeLessThan(kSoon);
  expect(await tally(page, "saw cuts")).toBeGreaterThan(0);
});

test("a change while the search goes on is drawn at once and ends it; the last job's answer is what stands", async ({
  page,
}) => {
  await watched(page);
  await openTable(page);
  await handle(page, "/outline/sides/0", "side").click();
  await length(page).fill("28'-10\"");
  await length(page).press("Enter");
  await expect(page.locator(".tallies")).toHaveAttribute("data-stage", "first");
  const { ended } = await seen(page);
  await typedAndDrawn(page, "29'-1\"", "AB 29'-1\"");
  expect((await seen(page)).ended).toBe(ended + 1);
  await settled(page);
  await expect(page.locator(".tallies")).toHaveAttribute("data-stage", "whole");
  await expect(page.locator(".title-block")).toContainText("AB 29'-1\"");
  await expect(page.locator(".proof")).toContainText(/^(Proven|Not proven)/);
  const last = (await seen(page)).asked.filter((one) => one.budget === undefined && one.offers !== true).at(-1);
  expect(JSON.parse(last?.job ?? "{}").outline.sides[0].length).toBe("29'-1\"");
});

test("while the search goes on the page says so, steps its courses and moves its openings", async ({ page }) => {
  await page.addInitScript(() => {
    const Real = window.Worker;
    window.Worker = class extends Real {
      // A search that never ends by itself.
      override postMessage(message: unknown): void {
        const { request } = message as { request?: string };
        if (request === undefined || "budget" in JSON.parse(request)) super.postMessage(message);
      }
    } as typeof Worker;
  });
  await page.goto("./#order");
  await expect(page.locator("#plan .ink svg")).toBeVisible();
  await expect(page.locator(".proof")).toContainText(/Looking for a better layout: [1-9] s/);
  await page.locator("#plan").getByRole("button", { name: "Higher course" }).click();
  await expect(page.locator("#plan .ink svg")).toHaveAttribute("id", "plan-course-2");
  await page.locator("#plan-course-2-AB-2-3").click();
  await expect(page.locator("#unit").getByRole("heading", { name: "AB-2-3" })).toBeVisible();
  await focusSelected(page, handle(page, "/openings/0"));
  await page.keyboard.press("Shift+ArrowLeft");
  await expect.poll(() => handle(page, "/openings/0").getAttribute("aria-valuetext")).toContain("9'-11 5/8\"");
  await expect(page.getByRole("button", { name: "Undo" })).toBeEnabled();
  await page.getByRole("button", { name: "Make the whole set (PDF)" }).click();
  await expect(page.locator("#sheets")).toContainText("the set follows it");
});

test("the job in the store is the job that was typed, whatever the search does", async ({ page }) => {
  await openTable(page);
  await goTo(page, "Jobs");
  await page.getByRole("button", { name: "Draw it" }).click();
  await expect(page.getByRole("heading", { name: "New building" })).toBeVisible();
  await handle(page, "/outline/sides/0", "side").click();
  await length(page).fill("24'-7\"");
  await length(page).press("Enter");
  await expect(page.locator(".title-block")).toContainText("AB 24'-7\"");
  await expect(page.locator("#where")).toContainText("in this browser only");
  const download = page.waitForEvent("download");
  await page.evaluate(() => Reflect.deleteProperty(window, "showSaveFilePicker"));
  await page.locator(".state").getByRole("button", { name: "Save to a file" }).click();
  const early = await readFile(await (await download).path(), "utf8");
  await settled(page);
  const again = page.waitForEvent("download");
  await page.locator(".state").getByRole("button", { name: "Save to a file" }).click();
  expect(await readFile(await (await again).path(), "utf8")).toBe(early);
});
