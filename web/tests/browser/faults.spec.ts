// When the engine fails: plain words, the job still there, and on it goes.
import { expect, type Page, test } from "@playwright/test";
import { focusSelected, handle, openTable, settled, tally, told } from "./table";

/// Workers that can be made to fail from outside: to die without a word, or to trap.
async function failing(page: Page): Promise<void> {
  await page.addInitScript(() => {
    const Real = window.Worker;
    const all: Worker[] = [];
    let trap = false;
    window.Worker = class extends Real {
      constructor(address: string | URL, how?: WorkerOptions) {
        super(address, how);
        all.push(this);
      }
      override postMessage(message: unknown): void {
        if (!trap) super.postMessage(message);
        else queueMicrotask(() => this.onerror?.(new ErrorEvent("error", { message: "unreachable executed" })));
      }
    } as typeof Worker;
    Object.assign(window, {
      trapTheEngine: (on: boolean) => {
        trap = on;
      },
    });
  });
}

const setTrap = (page: Page, on: boolean): Promise<void> =>
  page.evaluate((to) => (window as unknown as { trapTheEngine(on: boolean): void }).trapTheEngine(to), on);

test("a trap in the engine is said plainly; job and drawing stand; trying again goes on", async ({ page }) => {
  await failing(page);
  await openTable(page);
  await setTrap(page, true);
  await focusSelected(page, handle(page, "/openings/0"));
  await page.keyboard.press("Shift+ArrowLeft");
  const notice = page.locator(".notice.bad");
  await expect(notice).toContainText("Your job is untouched");
  expect(await told(page, "/openings/0")).toContain("9'-3 5/8\"");
  expect(await tally(page, "units laid")).toBe(861);
  await expect(page.locator(".tag")).toHaveCount(0); // the hand has let go
  await expect(notice).toBeVisible();
  await setTrap(page, false);
  await notice.getByRole("button", { name: "Try again" }).click();
  await expect(notice).toHaveCount(0);
  await settled(page);
  await focusSelected(page, handle(page, "/openings/0"));
  await page.keyboard.press("Shift+ArrowLeft");
  await expect.poll(() => told(page, "/openings/0")).toContain("9'-11 5/8\"");
});

test("an engine that cannot be fetched is said plainly, and trying again goes on", async ({ page }) => {
  let broken = true;
  await page.route("**/*.wasm", (route) => (broken ? route.abort() : route.continue()));
  await page.goto("./#order");
  const notice = page.locator(".notice.bad");
  await expect(notice).toBeVisible();
  broken = false;
  await notice.getByRole("button", { name: "Try again" }).click();
  await settled(page);
  expect(await tally(page, "units laid")).toBe(861);
});
