// How long a frame of a drag takes on the kiln house, in Chromium drawn by software. Usage:
//   node tools/measure_drag.mjs [FOLDER]     FOLDER: a built page (default web/dist)
//
// First part, one frame after another: the pointer moves, the next move waits until its answer is drawn. Read from the
// browser's own trace: time computed by the engine (the worker's thread) and by own script (the page's thread); and the
// time on the clock from pointer to drawn.
// Second part, a hand that does not wait: a move every 16 ms; times between the browser's frames, and tasks over 50 ms.
// Prints `name value unit target met|missed`, targets times the machine's factor in an empty page; what has no target is
// talk, on the other stream.
import { resolve } from "node:path";
import { chromium } from "@playwright/test";
import { pageFactor } from "../../benches/machine.mjs";
import { served } from "./served.mjs";

const kMoves = 150;
const kPort = 8497;
const kTargets = { median: 8, high: 14, frame: 33, blocked: 50 };
const kScript = new Set([
  "EventDispatch",
  "FunctionCall",
  "RunMicrotasks",
  "FireAnimationFrame",
  "HandlePostMessage",
  "TimerFire",
]);

const server = await served(kPort);
const browser = await chromium.launch({
  executablePath: process.env.CHROMIUM ?? "/usr/bin/chromium",
  args: ["--no-sandbox", "--disable-quic", "--use-angle=swiftshader", "--enable-unsafe-swiftshader"],
});

const factor = await pageFactor(resolve(import.meta.dirname, "../.."), browser);

function share(sorted, part) {
  return sorted[Math.min(sorted.length - 1, Math.floor(sorted.length * part))] ?? Number.NaN;
}

function figure(name, value, unit, quiet, slowness = factor) {
  const target = quiet * slowness;
  console.log(`${name} ${value.toFixed(1)} ${unit} ${target.toFixed(1)} ${value <= target ? "met" : "missed"}`);
}

function inOrder(values) {
  return [...values].sort((a, b) => a - b);
}

function talk(name, values) {
  const sorted = inOrder(values);
  const [median, high] = [share(sorted, 0.5), share(sorted, 0.95)];
  console.error(
    `${name}: ${sorted.length} frames, median ${median.toFixed(1)} ms, 95th percentile ${high.toFixed(1)} ms`,
  );
}

async function opened() {
  const page = await browser.newPage({ viewport: { width: 1280, height: 800 } });
  await page.goto(`http://127.0.0.1:${kPort}/#order`);
  await page.locator('.offers[aria-busy="false"]').waitFor();
  await page.locator('#plan .handle[data-place="/openings/0"][data-part="body"]').click(); // only what is selected moves
  return page;
}

async function takenHold(page) {
  const handle = page.locator('#plan .handle[data-place="/openings/0"][data-part="body"]');
  await handle.scrollIntoViewIfNeeded();
  const box = await handle.boundingBox();
  if (box === null) throw new Error("the opening has no handle");
  const [x, y] = [box.x + box.width / 2, box.y + box.height / 2];
  await page.mouse.move(x, y);
  await page.mouse.down();
  await page.mouse.move(x - 6, y);
  return { x, y };
}

/// There and back along the side, never the same place twice in a row; shift lets no frame snap to the one before.
function placeOf(move) {
  const round = (move * 7) % 240;
  return round < 120 ? 60 - round : round - 180;
}

/// Microseconds that a thread computed in the outermost spans of script begun in [from, to): its own time, which other
/// programs on the machine do not lengthen.
function busy(spans, from, to) {
  let total = 0;
  let end = -1;
  for (const { ts, dur, tdur } of spans) {
    if (ts >= to || ts < from || ts < end) continue;
    total += tdur ?? dur;
    end = ts + dur;
  }
  return total;
}

function spansOn(events, thread) {
  return events
    .filter((one) => one.ph === "X" && kScript.has(one.name) && thread.has(`${one.pid} ${one.tid}`))
    .sort((a, b) => a.ts - b.ts);
}

function threads(events, name) {
  const named = events.filter((one) => one.ph === "M" && one.name === "thread_name" && one.args.name === name);
  return new Set(named.map((one) => `${one.pid} ${one.tid}`));
}

async function oneByOne() {
  const page = await opened();
  const { x, y } = await takenHold(page);
  await page.keyboard.down("Shift");
  await page.evaluate(() => {
    globalThis.drawnAfter = [];
    globalThis.frame = () => new Promise((next) => requestAnimationFrame(next));
    // What the handle says of its place changes with every answer. Only that is watched: to watch the drawing itself would
    // cost the page a record for each change of it.
    globalThis.changed = () =>
      new Promise((done) => {
        const watch = new MutationObserver(() => {
          watch.disconnect();
          done();
        });
        watch.observe(document.querySelector('#plan .handle[data-place="/openings/0"][data-part="body"]'), {
          attributeFilter: ["aria-valuetext"],
        });
      });
    addEventListener(
      "pointermove",
      () => {
        globalThis.began = performance.now();
        performance.mark("hand moved");
      },
      { capture: true },
    );
  });
  await browser.startTracing(page, { categories: ["devtools.timeline", "blink.user_timing", "toplevel"] });
  for (let move = 1; move <= kMoves; ++move) {
    const drawn = page.evaluate(async () => {
      await globalThis.changed();
      await globalThis.frame();
      // The frame in which the change is drawn has begun; its script is over in the next task.
      await new Promise((next) => setTimeout(next, 0));
      globalThis.drawnAfter.push(performance.now() - globalThis.began);
    });
    await page.mouse.move(x + placeOf(move), y);
    await drawn;
  }
  const { traceEvents } = JSON.parse((await browser.stopTracing()).toString("utf8"));
  const drawn = await page.evaluate(() => globalThis.drawnAfter);
  await page.close();
  const marks = traceEvents
    .filter((one) => one.name === "hand moved")
    .map((one) => one.ts)
    .sort((a, b) => a - b);
  const main = spansOn(traceEvents, threads(traceEvents, "CrRendererMain"));
  const worker = spansOn(traceEvents, threads(traceEvents, "DedicatedWorker thread"));
  const frames = marks.slice(0, -1).map((from, at) => ({
    script: busy(main, from, marks[at + 1]) / 1000,
    engine: busy(worker, from, marks[at + 1]) / 1000,
  }));
  if (frames.length < kMoves / 2) throw new Error(`the trace holds only ${frames.length} frames`);
  if (frames.every(({ engine }) => engine === 0)) throw new Error("the trace holds nothing of the engine's thread");
  talk(
    "engine",
    frames.map(({ engine }) => engine),
  );
  talk(
    "own script",
    frames.map(({ script }) => script),
  );
  talk("pointer to drawn", drawn);
  const both = inOrder(frames.map(({ script, engine }) => script + engine));
  figure("drag_engine_and_script_median", share(both, 0.5), "ms", kTargets.median);
  figure("drag_engine_and_script_95", share(both, 0.95), "ms", kTargets.high);
}

async function withoutWaiting() {
  const page = await opened();
  const { x, y } = await takenHold(page);
  await page.keyboard.down("Shift");
  await page.evaluate(() => {
    globalThis.frames = [];
    globalThis.blocked = [];
    const next = (now) => {
      globalThis.frames.push(now);
      requestAnimationFrame(next);
    };
    requestAnimationFrame(next);
    new PerformanceObserver((list) => globalThis.blocked.push(...list.getEntries().map((one) => one.duration))).observe(
      {
        type: "longtask",
      },
    );
  });
  for (let move = 1; move <= kMoves; ++move) {
    const rest = new Promise((next) => setTimeout(next, 16));
    await page.mouse.move(x + placeOf(move), y);
    await rest;
  }
  const { frames, blocked } = await page.evaluate(() => ({ frames: globalThis.frames, blocked: globalThis.blocked }));
  await page.close();
  const between = inOrder(frames.slice(1).map((at, index) => at - frames[index]));
  talk("between frames", between);
  // Frames come at the screen's pace, on a fast machine too: two of its periods are 33.3 ms.
  figure("drag_between_frames_median", Math.floor(share(between, 0.5)), "ms", kTargets.frame, Math.max(factor, 1));
  figure("drag_longest_block", Math.max(0, ...blocked), "ms", kTargets.blocked);
}

try {
  await oneByOne();
  await withoutWaiting();
} finally {
  await browser.close();
  server.kill();
}
