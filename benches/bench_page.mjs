// Size and speed of the page's engine. Prints `name value unit target met|missed`, one figure a line.
// Usage: node bench_page.mjs REPOSITORY (after the module, the page and border_twin were built)
import { execFileSync } from "node:child_process";
import { readdirSync, readFileSync, statSync } from "node:fs";
import { join } from "node:path";
import { gzipSync } from "node:zlib";
import { moduleFactor } from "./machine.mjs";

const repository = process.argv[2];
const moduleFile = join(repository, "build/wasm/stringcourse.wasm");
const factor = await moduleFactor(repository);
const isTime = (unit) => unit === "ms" || unit === "s";
const print = (name, value, unit, quiet) => show(name, value, unit, isTime(unit) ? quiet * factor : quiet);
const show = (name, value, unit, target) =>
  console.log(`${name} ${value.toPrecision(4)} ${unit} ${target.toPrecision(4)} ${value <= target ? "met" : "missed"}`);
const packed = (file) => gzipSync(readFileSync(file), { level: 9 }).length / 1000;

function filesOf(folder) {
  return readdirSync(folder, { withFileTypes: true }).flatMap((entry) =>
    entry.isDirectory() ? filesOf(join(folder, entry.name)) : [join(folder, entry.name)],
  );
}

const engine = (
  await WebAssembly.instantiate(readFileSync(moduleFile), {
    wasi_snapshot_preview1: { fd_write: () => 0, fd_seek: () => 8, fd_close: () => 8 },
  })
).instance.exports;
engine._initialize();

function ask(bytes) {
  const place = engine.stringcourse_allocate(bytes.length);
  Buffer.from(engine.memory.buffer, place, bytes.length).set(bytes);
  const reply = engine.stringcourse_solve(place, bytes.length);
  engine.stringcourse_free(place);
  engine.stringcourse_free(reply);
}

// Two jobs in turn, so that none is answered from memory.
const kiln = JSON.parse(readFileSync(join(repository, "examples/kiln-house.json"), "utf8"));
const request = (number) => JSON.stringify({ border: 1, job: JSON.stringify({ ...kiln, name: `Kiln house ${number % 2}` }) });
const lines = (count) => Array.from({ length: count }, (_, number) => request(number));
const seconds = (work) => {
  const start = process.hrtime.bigint();
  work();
  return Number(process.hrtime.bigint() - start) / 1e9;
};
const median = (values) => values.sort((a, b) => a - b)[values.length >> 1];
// Natively the clock runs inside the program: no pipe is counted.
const native = (count) =>
  Number(execFileSync(join(repository, "build/release/border_twin"), ["seconds"], { input: `${lines(count).join("\n")}\n` }));
const inModule = (count) => {
  const requests = lines(count).map((line) => Buffer.from(line));
  return seconds(() => requests.forEach(ask));
};
inModule(100); // compiled well by now
const kMany = 300;
const ratios = Array.from({ length: 5 }, () => inModule(kMany) / native(kMany));

print("wasm_size", packed(moduleFile), "kB", 400);
print("wasm_brief_size", packed(join(repository, "build/wasm/stringcourse-brief.wasm")), "kB", 220);
print("wasm_against_native", median(ratios), "times", 2);

// What edges and dowels as found add to an answer: every dowel of the plan measured, three of them in webs.
const moved = { "DA 8'-3 13/16\"": `103 13/16"`, "CD 10'-3 13/16\"": `127 13/16"`, "AB 22'-11 13/16\"": `279 13/16"` };
const planned = JSON.parse(
  execFileSync(join(repository, "build/release/stringcourse"), ["look", "--no-offers", "--json", join(repository, "examples/kiln-house.json")], {
    maxBuffer: 1 << 26,
  }),
).dowels.map((one) => ({ on: one.side, at: one.at.text, moved: moved[`${one.side} ${one.at.text}`] }));
if (planned.filter((one) => one.moved).length !== 3) throw new Error("the plan has no dowels where three are to be moved");
const dowels = planned.map((one, index) => ({ id: `d${index}`, dowel: { on: one.on, at: one.moved ?? one.at, off_face: `3 13/16"` } }));
const edges = ["AB", "BC", "CD", "DA"].flatMap((on, side) =>
  [`2'`, `18'`].map((at, index) => ({ id: `e${side}${index}`, edge: { on, at, beyond: `${index + 1}"` } })),
);
const withReadings = (number) =>
  JSON.stringify({ border: 1, job: JSON.stringify({ ...kiln, name: `Kiln house ${number % 2}`, readings: [...dowels, ...edges] }) });
const each = (make) =>
  median(Array.from({ length: 15 }, (_, number) => Buffer.from(make(number))).map((bytes) => seconds(() => ask(bytes))));
print("kiln_house_slab_fit_and_dowel_search", 1000 * (each(withReadings) - each(request)), "ms", 100);

// A reading tried at the wall: the plan is known, one course is asked about.
const tried = (number) =>
  JSON.stringify({ border: 1, job: JSON.stringify(kiln), course: { side: "AB", course: 1, trial: { at_nm: 1_412_875_000, past_nm: 1_587_500 * (number % 9) } } });
ask(Buffer.from(tried(0)));
print("correction_in_module", 1000 * each(tried), "ms", 10);

const dist = join(repository, "web/dist");
try {
  statSync(dist);
  const first = filesOf(dist).filter((file) => !/Space-|view-|stringcourse-(?!brief-)|sw\.js$|\.otf$/i.test(file.slice(dist.length)));
  const page = readFileSync(join(dist, "index.html"), "utf8");
  const scripts = [...page.matchAll(/(?:src|modulepreload" crossorigin href)="\.\/(assets\/[^"]+\.js)"/g)].map((found) => found[1]);
  print("page_first_script", scripts.reduce((sum, file) => sum + packed(join(dist, file)), 0), "kB", 60);
  print("page_first_load", first.reduce((sum, file) => sum + packed(file), 0), "kB", 330);
} catch {
  console.error("web/dist is not built: page_first_load is left out");
}
