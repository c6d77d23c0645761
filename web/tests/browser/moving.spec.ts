// The shorter picture that a drag shows is to the eye the picture with a group for each unit.
import { readdirSync, readFileSync } from "node:fs";
import { expect, type Page, test } from "@playwright/test";
import { realEngine } from "../unit/real_engine";
import { readReply } from "../../engine/glue";

// Drawn by the processor: what stands in for a graphics chip half-covers pixels even where sharp edges are asked for.
test.use({ launchOptions: { executablePath: process.env["CHROMIUM"] ?? "/usr/bin/chromium", args: ["--no-sandbox"] } });

const kExamples = new URL("../../../examples/", import.meta.url);
/// Without half-covered pixels the order of what does not overlap leaves no trace.
const kStyle = "<style>body{margin:0} svg{width:1600px;height:auto} path,circle{shape-rendering:crispEdges}</style>";

async function pixelsOf(page: Page, svg: string): Promise<Buffer> {
  await page.setContent(kStyle + svg);
  return page.locator("svg").screenshot();
}

for (const name of readdirSync(kExamples).filter((file) => file.endsWith(".json"))) {
  test(`${name}: the shorter plan and elevation are pixel for pixel those with all groups`, async ({ page }) => {
    await page.setViewportSize({ width: 1600, height: 1200 });
    const engine = await realEngine();
    const job = readFileSync(new URL(name, kExamples), "utf8");
    const drawings = ["plan-course-1", "plan-course-2", "elevation-1", "elevation-2"];
    const whole = readReply(engine.ask(JSON.stringify({ border: 1, job, drawings })));
    const moving = readReply(engine.ask(JSON.stringify({ border: 1, job, drawings, moving: true })));
    expect(whole.head.drawings?.length).toBeGreaterThanOrEqual(3);
    expect(moving.head.drawings).toEqual(whole.head.drawings);
    for (const { name: drawing } of whole.head.drawings ?? []) {
      const [one, other] = [whole.svg(drawing) ?? "", moving.svg(drawing) ?? ""];
      expect(other.length, drawing).toBeLessThan(0.8 * one.length);
      expect((await pixelsOf(page, one)).equals(await pixelsOf(page, other)), drawing).toBe(true);
    }
  });
}
