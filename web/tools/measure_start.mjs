// How soon the page answers on a slow machine, and what Lighthouse says of it. Prints `name value unit target met|missed`;
// targets of time are multiplied by the machine's factor in an empty page.
// Usage: node tools/measure_start.mjs [FOLDER]     FOLDER: a built page (default web/dist)
//
// interactive_at_quarter_speed: Chromium with its processor slowed down 4 times, nothing kept from an earlier visit, the
// network as fast as this machine's: from the start of the visit until the plan stands with its handles and the last task
// of more than 50 ms is over. The middle of five visits.
// interactive_on_slow_network: the same through a network as slow_network.mjs makes it.
// largest_paint_at_quarter_speed: the same, to the first screen: until its largest text or picture is painted, as the
// browser tells it; and, as talk on the other stream, until the engine's first answer is there.
import { resolve } from "node:path";
import { chromium } from "@playwright/test";
import lighthouse, { desktopConfig } from "lighthouse";
import { pageFactor } from "../../benches/machine.mjs";
import { served } from "./served.mjs";

const kPort = 8496;
const kSlowPort = 8494;
const kDoor = 8495;
const kVisits = 5;
const kRounds = 5; // of Lighthouse: the middle one counts
const kQuiet = 1000; // milliseconds without a long task: the page has come to rest
const address = `http://127.0.0.1:${kPort}/`;

const server = await served(kPort);
const slow = await served(kSlowPort, true);
const browser = await chromium.launch({
  executablePath: process.env.CHROMIUM ?? "/usr/bin/chromium",
  args: ["--no-sandbox", "--disable-quic", `--remote-debugging-port=${kDoor}`],
});

const factor = await pageFactor(resolve(import.meta.dirname, "../.."), browser);

function timed(name, value, quiet) {
  const target = quiet * factor;
  told(name, value, "ms", target.toPrecision(4), value <= target);
}

function told(name, value, unit, target, met) {
  console.log(`${name} ${value.toPrecision(4)} ${unit} ${target} ${met ? "met" : "missed"}`);
}

async function interactiveAfter(from) {
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
      if (document.querySelector("#plan .handle") === null) return;
      watch.disconnect();
      globalThis.planAt = performance.now();
    });
    watch.observe(document, { subtree: true, childList: true });
  });
  await page.goto(`${from}#order`);
  await page.waitForFunction(() => globalThis.planAt !== undefined);
  await page.waitForFunction(
    (quiet) => performance.now() - Math.max(globalThis.planAt, globalThis.lastLong) > quiet,
    kQuiet,
  );
  const after = await page.evaluate(() => Math.max(globalThis.planAt, globalThis.lastLong));
  await context.close();
  return after;
}

/// To the first screen: milliseconds until the largest paint, and until the engine's first answer.
async function firstScreenAfter() {
  const context = await browser.newContext({ viewport: { width: 412, height: 823 } });
  const page = await context.newPage();
  const session = await context.newCDPSession(page);
  await session.send("Emulation.setCPUThrottlingRate", { rate: 4 });
  await page.addInitScript(() => {
    new PerformanceObserver((list) => {
      for (const one of list.getEntries()) globalThis.largestAt = one.startTime;
    }).observe({ type: "largest-contentful-paint", buffered: true });
    const Plain = globalThis.Worker;
    globalThis.Worker = class extends Plain {
      constructor(...of) {
        super(...of);
        this.addEventListener("message", (event) => {
          if (event.data.block !== undefined) globalThis.answeredAt ??= performance.now();
        });
      }
    };
  });
  await page.goto(address);
  await page.waitForFunction(() => globalThis.answeredAt !== undefined);
  await page.waitForTimeout(kQuiet);
  const after = await page.evaluate(() => ({ paint: globalThis.largestAt, engine: globalThis.answeredAt }));
  await context.close();
  return after;
}

const middleOf = (values) => [...values].sort((a, b) => a - b)[values.length >> 1];

async function scores(name, config) {
  const rounds = [];
  for (let round = 0; round < kRounds; ++round) {
    const { lhr } = await lighthouse(address, { port: kDoor, output: "json", logLevel: "error" }, config);
    rounds.push(lhr);
  }
  for (const { id } of Object.values(rounds[0].categories)) {
    const score = middleOf(rounds.map((lhr) => lhr.categories[id].score ?? 0));
    told(`lighthouse_${name}_${id}`, score * 100, "points", 95, score >= 0.95);
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
      console.error(`  ${id} ${rounds.map((lhr) => lhr.audits[id]?.displayValue).join(", ")}`);
    }
  }
}

try {
  const visits = [];
  for (let visit = 0; visit < kVisits; ++visit) visits.push(await interactiveAfter(address));
  const middle = middleOf(visits);
  timed("interactive_at_quarter_speed", middle, 1500);
  const far = [];
  for (let visit = 0; visit < kVisits; ++visit) far.push(await interactiveAfter(`http://127.0.0.1:${kSlowPort}/`));
  timed("interactive_on_slow_network", middleOf(far), 1500);
  const first = [];
  for (let visit = 0; visit < kVisits; ++visit) first.push(await firstScreenAfter());
  const [paint, engine] = [middleOf(first.map((one) => one.paint)), middleOf(first.map((one) => one.engine))];
  timed("largest_paint_at_quarter_speed", paint, 1000);
  console.error(`the engine's first answer: ${engine.toFixed(0)} ms`);
  await scores("desktop", desktopConfig);
  await scores("mobile", undefined);
} finally {
  await browser.close();
  server.kill();
  slow.kill();
}
