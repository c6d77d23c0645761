// How soon the page answers on a slow machine, and what Lighthouse says of it. Prints `name value unit target met|missed`.
// Usage: node tools/measure_start.mjs [FOLDER]     FOLDER: a built page (default web/dist)
//
// interactive_at_quarter_speed: Chromium with its processor slowed down 4 times, nothing kept from an earlier visit, the
// network as fast as this machine's: from the start of the visit until the plan stands with its grips and the last task
// of more than 50 ms is over. The middle of five visits.
import { chromium } from "@playwright/test";
import lighthouse, { desktopConfig } from "lighthouse";
import { served } from "./served.mjs";

const kPort = 8496;
const kDoor = 8495;
const kVisits = 5;
const kQuiet = 1000; // milliseconds without a long task: the page has come to rest
const address = `http://127.0.0.1:${kPort}/`;

const server = await served(kPort);
const browser = await chromium.launch({
  executablePath: process.env.CHROMIUM ?? "/usr/bin/chromium",
  args: ["--no-sandbox", "--disable-quic", `--remote-debugging-port=${kDoor}`],
});

function told(name, value, unit, target, met) {
  console.log(`${name} ${value.toPrecision(4)} ${unit} ${target} ${met ? "met" : "missed"}`);
}

async function interactiveAfter() {
  const context = await browser.newContext({ viewport: { width: 412, height: 823 } });
  const page = await context.newPage();
  const session = await context.newCDPSession(page);
  await session.send("Emulation.setCPUThrottlingRate", { rate: 4 });
  await page.addInitScript(() => {
    globalThis.lastLong = 0;
    new PerformanceObserver((list) => {
      for (const task of list.getEntries()) globalThis.lastLong = task.startTime + task.duration;
    }).observe({ type: "longtask", buffered: true });
    const watch = new MutationObserver(() => {
      if (document.querySelector("#plan .grip") === null) return;
      watch.disconnect();
      globalThis.planAt = performance.now();
    });
    watch.observe(document, { subtree: true, childList: true });
  });
  await page.goto(address);
  await page.waitForFunction(() => globalThis.planAt !== undefined);
  await page.waitForFunction(
    (quiet) => performance.now() - Math.max(globalThis.planAt, globalThis.lastLong) > quiet,
    kQuiet,
  );
  const after = await page.evaluate(() => Math.max(globalThis.planAt, globalThis.lastLong));
  await context.close();
  return after;
}

async function scores(name, config) {
  const { lhr } = await lighthouse(address, { port: kDoor, output: "json", logLevel: "error" }, config);
  for (const { id, score } of Object.values(lhr.categories)) {
    told(`lighthouse_${name}_${id}`, (score ?? 0) * 100, "points", 95, (score ?? 0) >= 0.95);
  }
  if (process.env.WHY) {
    for (const id of [
      "first-contentful-paint",
      "largest-contentful-paint",
      "total-blocking-time",
      "speed-index",
      "cumulative-layout-shift",
      "interactive",
    ]) {
      console.error(`  ${id} ${lhr.audits[id]?.displayValue}`);
    }
  }
}

try {
  const visits = [];
  for (let visit = 0; visit < kVisits; ++visit) visits.push(await interactiveAfter());
  const middle = visits.sort((a, b) => a - b)[kVisits >> 1];
  told("interactive_at_quarter_speed", middle, "ms", 1500, middle <= 1500);
  await scores("desktop", desktopConfig);
  await scores("mobile", undefined);
} finally {
  await browser.close();
  server.kill();
}
