// How slow this machine is at a fixed piece of work (workload.c), against the quiet machine that the targets were set on:
// in a module of its own, here and in an empty page. Targets of time are multiplied by it.
import { execFileSync } from "node:child_process";
import { mkdtempSync, readFileSync } from "node:fs";
import { tmpdir } from "node:os";
import { join } from "node:path";

const kRounds = 4;
const kRuns = 5;
const kQuiet = { module: 26, page: 27 }; // milliseconds, two quiet cores

function moduleBytes(repository) {
  const file = join(mkdtempSync(join(tmpdir(), "workload-")), "workload.wasm");
  execFileSync(`clang-${process.env.LLVM_V ?? 22}`, [
    "--target=wasm32",
    "-O2",
    "-nostdlib",
    "-Wl,--no-entry",
    "-Wl,--export=workload",
    "-o",
    file,
    join(repository, "benches/workload.c"),
  ]);
  return readFileSync(file);
}

// Runs where the module is measured: in this process, or in a page.
async function medianOf(bytes, runs, rounds) {
  const { instance } = await WebAssembly.instantiate(new Uint8Array(bytes));
  instance.exports.workload(1);
  const taken = [];
  for (let run = 0; run < runs; ++run) {
    const start = performance.now();
    instance.exports.workload(rounds);
    taken.push(performance.now() - start);
  }
  return taken.sort((a, b) => a - b)[runs >> 1];
}

function told(where, milliseconds) {
  const factor = milliseconds / kQuiet[where];
  console.log(`machine_factor_${where} ${factor.toPrecision(3)} times (workload ${milliseconds.toFixed(1)} ms)`);
  return factor;
}

export async function moduleFactor(repository) {
  return told("module", await medianOf(moduleBytes(repository), kRuns, kRounds));
}

export async function pageFactor(repository, browser) {
  const page = await browser.newPage();
  const bytes = [...moduleBytes(repository)];
  const milliseconds = await page.evaluate(
    `(${medianOf})(${JSON.stringify(bytes)}, ${kRuns}, ${kRounds})`,
  );
  await page.close();
  return told("page", milliseconds);
}
