// Without a network: a cold start with the server stopped, and updates that take nothing away from open work.
import { mkdtemp, readFile, rm, unlink, writeFile } from "node:fs/promises";
import { tmpdir } from "node:os";
import { join } from "node:path";
import { chromium, expect, type Page, test } from "@playwright/test";
import { OwnHost } from "./own_host";
import { focusSelected, goTo, handle, openTable, settled, tally, told, withoutDialogs } from "./table";

test.use({ serviceWorkers: "allow" });
test.setTimeout(120_000); // a browser is started twice, on a machine that may be busy

let host: OwnHost;
test.beforeEach(async () => {
  host = await OwnHost.begin();
});
test.afterEach(() => host.end());

/// The whole page is on the device, and its worker serves this very tab.
async function onDevice(page: Page): Promise<void> {
  await page.evaluate(async () => {
    await navigator.serviceWorker.ready;
    while (navigator.serviceWorker.controller === null) await new Promise((next) => setTimeout(next, 20));
  });
}

async function beginOwn(page: Page, length: string): Promise<void> {
  await goTo(page, "Jobs");
  await page.getByLabel("length", { exact: true }).fill(length);
  await page.getByRole("button", { name: "Draw it" }).click();
  await expect(page.getByRole("heading", { name: "New building" })).toBeVisible();
  await settled(page);
}

/// Another build: its page says so, and its 3D part has another name.
async function publishNewer(): Promise<void> {
  const page = join(host.folder, "index.html");
  await writeFile(page, (await readFile(page, "utf8")).replace("<body>", '<body data-version="newer">'));
  await host.publish();
}

async function lookForNewer(page: Page): Promise<void> {
  await page.evaluate(async () => void (await (await navigator.serviceWorker.ready).update()));
}

test("a browser started anew with the server stopped opens the kept job, solves it, prints it and shows it in space", async ({
  launchOptions,
}) => {
  const profile = await mkdtemp(join(tmpdir(), "stringcourse-profile-"));
  const start = () => chromium.launchPersistentContext(profile, { ...launchOptions, serviceWorkers: "allow" });
  try {
    const first = await start();
    const page = await first.newPage();
    await openTable(page, host.address);
    await beginOwn(page, "24'");
    await onDevice(page);
    await first.close();
    await host.stop();

    const second = await start();
    const cold = await second.newPage();
    await withoutDialogs(cold);
    await openTable(cold, `${host.address}?from=home-screen`);
    await expect(cold.getByRole("heading", { name: "New building" })).toBeVisible();
    expect(await tally(cold, "courses")).toBe(12);
    // The server is really gone: what the worker does not hold cannot be had.
    expect(
      await cold.evaluate(() =>
        fetch("./sw.js").then(
          () => "answered",
          () => "unreachable",
        ),
      ),
    ).toBe("unreachable");
    await cold.getByRole("button", { name: "Make the whole set (PDF)" }).click();
    const [download] = await Promise.all([
      cold.waitForEvent("download"),
      cold.getByRole("button", { name: "Save the set (PDF)" }).click(),
    ]);
    expect((await readFile(await download.path())).subarray(0, 8).toString("latin1")).toBe("%PDF-1.7");
    await cold.getByRole("button", { name: "Show the units in space" }).click();
    await expect(cold.locator(".space canvas")).toHaveAttribute("data-units", /[1-9]/);
    await second.close();
  } finally {
    await rm(profile, { recursive: true, force: true });
  }
});

test("a newer version waits, says so, and is taken when asked, with the open work kept", async ({ page }) => {
  await openTable(page, host.address);
  await onDevice(page);
  await publishNewer();
  await lookForNewer(page);
  await expect(page.getByText("A newer version of this page is ready.")).toBeVisible();
  await focusSelected(page, handle(page, "/openings/0"));
  await page.keyboard.press("ArrowRight"); // work goes on in the version that is open
  // A run of keys is a step once it has ended: until then the hand has not let go, and a reload leaves all as it was.
  await expect(page.getByRole("button", { name: "Undo" })).toBeEnabled();
  await settled(page);
  const place = await told(page, "/openings/0");
  await page.reload();
  await settled(page);
  await expect(page.locator("body")).not.toHaveAttribute("data-version", "newer");
  expect(await told(page, "/openings/0")).toBe(place);
  await page.locator(".notice", { hasText: "A newer version" }).getByRole("button").first().click();
  await expect(page.locator("body")).toHaveAttribute("data-version", "newer");
  await settled(page);
  expect(await told(page, "/openings/0")).toBe(place);
});

test("a newer version comes by itself with the next start after all pages are closed", async ({ context, page }) => {
  await openTable(page, host.address);
  await onDevice(page);
  await publishNewer();
  await lookForNewer(page);
  await expect(page.getByText("A newer version of this page is ready.")).toBeVisible();
  await page.close();
  const next = await context.newPage();
  await openTable(next, host.address);
  await expect(next.locator("body")).toHaveAttribute("data-version", "newer");
});

test("a tab of the version before still gets its own parts after another tab took the newer one", async ({
  context,
  page,
}) => {
  await openTable(page, host.address);
  await onDevice(page);
  const other = await context.newPage();
  await openTable(other, host.address);
  const parts = await page.evaluate(async () => {
    const [name] = await caches.keys();
    return (await (await caches.open(name ?? "")).keys()).map((request) => new URL(request.url).pathname);
  });
  const view = parts.find((part) => part.includes("/assets/view-"));
  if (view === undefined) throw new Error("the part for the view in space has another name");
  await unlink(join(host.folder, view));
  await publishNewer();
  await lookForNewer(page);
  await page.locator(".notice", { hasText: "A newer version" }).getByRole("button").first().click();
  await expect(page.locator("body")).toHaveAttribute("data-version", "newer");
  expect(await other.evaluate(async (part) => (await fetch(part)).status, view)).toBe(200);
});

test("a version of which a file cannot be had is not taken; the one that is here stays whole", async ({ page }) => {
  await openTable(page, host.address);
  await onDevice(page);
  await publishNewer();
  await unlink(join(host.folder, "manifest.webmanifest"));
  await page.evaluate(async () => {
    const registration = await navigator.serviceWorker.ready;
    await registration.update();
    const { installing } = registration;
    if (installing !== null)
      await new Promise((done) => installing.addEventListener("statechange", done, { once: true }));
  });
  await host.stop();
  await page.reload();
  await settled(page);
  await expect(page.locator("body")).not.toHaveAttribute("data-version", "newer");
});
