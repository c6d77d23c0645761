// Without a network: after one visit the page starts cold with its server stopped, and does its whole job.
import { type ChildProcess, spawn } from "node:child_process";
import { createHash } from "node:crypto";
import { readFile } from "node:fs/promises";
import { expect, test } from "@playwright/test";
import { grip, openTable, settled, told, withoutDialogs } from "./table";

const kOwnPort = 8493;
const kBuilt = process.env["PAGE_BUILT"] ?? "dist";

test.use({ serviceWorkers: "allow", baseURL: `http://127.0.0.1:${kOwnPort}/` });

function serve(): Promise<ChildProcess> {
  const server = spawn(process.execPath, ["tools/serve_dist.mjs", String(kOwnPort), kBuilt]);
  return new Promise((resolve, reject) => {
    server.once("error", reject);
    server.stdout.once("data", () => resolve(server));
  });
}

test("a cold start with the server stopped: the job is there, is changed, and its set is printed", async ({
  context,
}) => {
  const server = await serve();
  const first = await context.newPage();
  await openTable(first);
  await first.evaluate(async () => {
    await navigator.serviceWorker.ready;
  });
  await first.getByRole("button", { name: /^Take the offer: AB 1'-4" shorter/ }).click();
  await expect(first.locator("#where")).toContainText("1 change not yet in a file");
  await first.close();
  server.kill();
  await new Promise((gone) => server.once("exit", gone));

  const page = await context.newPage();
  await withoutDialogs(page);
  await openTable(page);
  await expect(page.locator(".title-block")).toContainText("AB 26'-8\"");
  await grip(page, "/openings/1").focus();
  await page.keyboard.press("Shift+ArrowUp");
  await settled(page);
  expect(await told(page, "/openings/1")).not.toContain("3'-11 5/8\"");
  await page.getByRole("button", { name: "Show the units in space" }).click();
  await expect(page.locator("canvas")).toHaveAttribute("data-units", /[1-9]/);
  await page.getByRole("button", { name: "Make the set" }).click();
  const [download] = await Promise.all([
    page.waitForEvent("download"),
    page.getByRole("button", { name: "Save the set (PDF)" }).click(),
  ]);
  const bytes = await readFile(await download.path());
  expect(bytes.subarray(0, 5).toString()).toBe("%PDF-");
  expect(createHash("sha256").update(bytes).digest("hex")).toMatch(/^[0-9a-f]{64}$/);
});
