// The page's policy: sent by the bundled server, without a loophole for styles, and kept by everything that the page does.
import { expect, type Page, test } from "@playwright/test";
import { drag, goTo, handle, openTable, settled } from "./table";

/// What the browser refused, told by the page itself.
async function watched(page: Page): Promise<void> {
  await page.addInitScript(() => {
    const refused: string[] = [];
    Object.assign(window, { refused });
    document.addEventListener("securitypolicyviolation", (event) =>
      refused.push(
        `${event.effectiveDirective} ${event.blockedURI} ${event.sourceFile}:${event.lineNumber} ${event.sample}`,
      ),
    );
  });
}

const refusedBy = (page: Page): Promise<readonly string[]> =>
  page.evaluate(() => (window as unknown as { refused: readonly string[] }).refused);

test("the server sends the page's own policy, which lets no text style or run", async ({ page, request }) => {
  await openTable(page);
  const meta = await page.locator('meta[http-equiv="Content-Security-Policy"]').getAttribute("content");
  for (const file of ["./", "./index.html", "./manifest.webmanifest"]) {
    const policy = (await request.get(file)).headers()["content-security-policy"] ?? "";
    expect(policy.startsWith(meta ?? "none"), file).toBe(true);
    expect(policy).toContain("frame-ancestors 'none'");
    expect(policy).not.toContain("'unsafe-inline'");
    expect(policy).toContain("style-src 'self';");
    expect(policy).toContain("default-src 'self'");
  }
});

test("nothing that the page does is refused by it", async ({ page }) => {
  await watched(page);
  await openTable(page);
  await drag(page, handle(page, "/openings/0"), -66, 0);
  await page.mouse.up();
  await settled(page);
  await handle(page, "/outline/sides/0", "side").click();
  await page.getByRole("button", { name: "Dark paper" }).click();
  await page.getByRole("button", { name: "Show the units in space" }).click();
  await expect(page.locator(".space canvas")).toHaveAttribute("data-units", /[1-9]/);
  await page.getByRole("button", { name: "Make the whole set (PDF)" }).click();
  await expect(page.getByText("The set is made")).toBeVisible();
  await goTo(page, "At the wall");
  await page.getByRole("button", { name: "Phone view" }).click();
  await expect(page.locator(".wall-number")).toBeVisible();
  expect(await refusedBy(page)).toEqual([]);
  // The one style that drawings have is kept by other means.
  await page.reload();
  await expect(page.locator(".wall-number")).toBeVisible();
});

test("the letters of a drawing stand unkerned, as the engine measured them", async ({ page }) => {
  await openTable(page);
  await expect(page.locator("#plan .ink svg text").first()).toHaveCSS("font-kerning", "none");
});

test("a style written into the page is refused", async ({ page }) => {
  await watched(page);
  await openTable(page);
  await page.evaluate(() => document.body.insertAdjacentHTML("beforeend", '<p id="dyed" style="color: red">x</p>'));
  await expect.poll(() => refusedBy(page)).not.toEqual([]);
  await expect(page.locator("#dyed")).not.toHaveCSS("color", "rgb(255, 0, 0)");
});
