// The WebAssembly modules and the native engine give the same bytes: all examples and random jobs, sheets included; and
// the brief module says nothing but what the whole one says in the same bytes.
// Usage: node compare.mjs MODULE BRIEF TWIN PROGRAM REPOSITORY COUNT
import { execFileSync } from "node:child_process";
import { mkdtempSync, readdirSync, readFileSync, rmSync } from "node:fs";
import { tmpdir } from "node:os";
import { join } from "node:path";

const [moduleFile, briefFile, twin, program, repository, count] = process.argv.slice(2);
const room = mkdtempSync(join(tmpdir(), "stringcourse-"));
process.on("exit", () => rmSync(room, { recursive: true, force: true }));

/// Asks the module of that file: a request in, a block out.
async function asking(file) {
  let engine;
  const { instance } = await WebAssembly.instantiate(readFileSync(file), {
    wasi_snapshot_preview1: {
      fd_write(_stream, lists, size, written) {
        const view = new DataView(engine.memory.buffer);
        const start = view.getUint32(lists, true);
        console.error(Buffer.from(engine.memory.buffer, start, view.getUint32(lists + 4, true)).toString());
        view.setUint32(written, view.getUint32(lists + 4, true), true);
        return 0;
      },
      fd_seek: () => 8,
      fd_close: () => 8,
    },
  });
  engine = instance.exports;
  engine._initialize();
  return (request) => {
    const bytes = Buffer.from(request);
    const place = engine.stringcourse_allocate(bytes.length);
    Buffer.from(engine.memory.buffer, place, bytes.length).set(bytes);
    const reply = engine.stringcourse_solve(place, bytes.length);
    engine.stringcourse_free(place);
    const view = new DataView(engine.memory.buffer, reply);
    const sections = view.getUint32(0, true);
    let size = 4 + 4 * sections;
    for (let i = 0; i < sections; ++i) size += view.getUint32(4 + 4 * i, true);
    const block = Buffer.from(engine.memory.buffer.slice(reply, reply + size));
    engine.stringcourse_free(reply);
    return block;
  };
}

const ask = await asking(moduleFile);
const askBrief = await asking(briefFile);

function sectionsOf(block) {
  const names = [];
  const all = block.readUInt32LE(0);
  let at = 4 + 4 * all;
  for (let i = 0; i < all; ++i) {
    const size = block.readUInt32LE(4 + 4 * i);
    names.push(block.subarray(at, at + size));
    at += size;
  }
  const head = JSON.parse(names[0].toString());
  return { head, of: (name) => names[head.sections.indexOf(name)] };
}

const font = (face) => readFileSync(join(repository, `engine/paper/fonts/B612-${face}.otf`)).toString("base64");
const fonts = { regular: font("Regular"), bold: font("Bold") };

let compared = 0;
let states = {};
const broken = [];
function hold(same, what) {
  ++compared;
  if (!same) broken.push(what);
}

function compareWithTwin(requests, called, asked = ask) {
  const native = execFileSync(twin, ["answers"], { input: `${requests.join("\n")}\n`, maxBuffer: 2 ** 31 });
  let at = 0;
  for (const [index, request] of requests.entries()) {
    const size = native.readUInt32LE(at);
    const block = asked(request);
    hold(block.equals(native.subarray(at + 4, at + 4 + size)), `${called} ${index + 1}: the blocks differ`);
    const { state } = sectionsOf(block).head;
    states[state] = (states[state] ?? 0) + 1;
    at += 4 + size;
  }
  hold(at === native.length, `${called}: as many blocks as requests`);
}

const examples = readdirSync(join(repository, "examples")).filter((name) => name.endsWith(".json")).sort();
const wholeRequests = [];
for (const name of examples) {
  const job = readFileSync(join(repository, "examples", name), "utf8");
  for (const set of ["letter", "a4"]) {
    const request = JSON.stringify({ border: 1, job, set, fonts, solids: true, offers: true, drawings: ["plan-course-1", "elevation-1"], piece: "AB-1-1" });
    wholeRequests.push(request);
    const folder = join(room, `${name}-${set}`);
    execFileSync(program, ["plan", join(repository, "examples", name), "--out", folder, "--paper", set, "--quiet"]);
    const { of } = sectionsOf(ask(request));
    for (const file of ["answer.json", `set-${set}.pdf`]) {
      hold(of(file)?.equals(readFileSync(join(folder, file))) === true, `${name}: ${file} is not what the command line wrote`);
    }
  }
}
compareWithTwin(wholeRequests, "example");

// A drag, asked of a module that has already seen much and of a fresh native one.
const kiln = readFileSync(join(repository, "examples", "kiln-house.json"), "utf8");
const drag = [];
for (let step = 0; step < 60; ++step) {
  drag.push(JSON.stringify({ border: 1, job: kiln, budget: 0, moving: step % 2 === 0, drawings: ["plan-course-8", "elevation-1"], edits: [{ do: "move-opening", opening: 2, to_nm: 1_819_275_000 + ((step * 37) % 60) * 7_937_500 }] }));
}
compareWithTwin(drag, "drag");
compareWithTwin([...drag].reverse(), "drag backwards");

// Lengths alone, and openings put in.
const lengths = ["26 ft", `391 5/8" actual`, "26 cubits"].map((read) => JSON.stringify({ border: 1, lengths: { tape: "inches", read, write: [-3, 0, 890] } }));
const putIn = ["door", "window", "overhead", "gate"].map((what) => JSON.stringify({ border: 1, job: kiln, budget: 0, edits: [{ do: "put-in", what, place: "/outline/sides/3" }] }));
compareWithTwin([...lengths, ...putIn], "length or new opening");

const random = execFileSync(twin, ["requests", count], { maxBuffer: 2 ** 30 }).toString().trim().split("\n");
hold(random.length === Number(count), "as many random jobs as asked for");
const withFonts = (request) => (request.includes('"set"') ? JSON.stringify({ ...JSON.parse(request), fonts }) : request);
compareWithTwin(random.map(withFonts), "random job");

// Brief answers: of both modules and the native engine.
const briefly = (request) => {
  const { budget, set, fonts, solids, offers, piece, merge, ...rest } = JSON.parse(request);
  return JSON.stringify({ ...rest, brief: true });
};
const begun = JSON.stringify({ border: 1, begin: { length: "24'", width: "16'", height: "8'" } });
const brief = [...wholeRequests, ...drag, ...putIn, begun, ...random].map(briefly);
compareWithTwin([...lengths, ...brief], "brief", askBrief);
compareWithTwin(brief, "brief of the whole module");
for (const request of [...wholeRequests, ...drag]) {
  hold(sectionsOf(askBrief(request)).head.state === "bad-request", "the brief module answers only in brief");
}

// What a brief answer says and draws, the whole one without a search does too; of findings it may have more.
function holdAlike(called, name, brief, whole) {
  if (name !== "findings") return hold(JSON.stringify(brief) === JSON.stringify(whole), `${called}: ${name} is otherwise in a brief answer`);
  const told = new Set(whole.map((one) => JSON.stringify(one)));
  hold(brief.every((one) => told.has(JSON.stringify(one))), `${called}: a finding that the whole answer does not have`);
}
for (const request of [...wholeRequests, ...random].map(briefly)) {
  const moving = { ...JSON.parse(request), moving: true };
  const brief = sectionsOf(askBrief(JSON.stringify(moving)));
  const whole = sectionsOf(ask(JSON.stringify({ ...moving, brief: false, budget: 0 })));
  hold(brief.head.state === whole.head.state, "refused by one, solved by the other");
  if (brief.head.state !== "solved") continue;
  const [said, told] = [brief, whole].map(({ of }) => JSON.parse(of("answer.json")));
  for (const name of Object.keys(said)) holdAlike(said.job.name, name, said[name], told[name]);
  for (const { name } of whole.head.drawings) hold(brief.of(`${name}.svg`).equals(whole.of(`${name}.svg`)), `${said.job.name}: ${name} is otherwise`);
}

console.log(`${compared} comparisons: ${JSON.stringify(states)}`);
for (const what of broken.slice(0, 20)) console.log(`NOT SO: ${what}`);
process.exitCode = broken.length > 0 || compared < Number(count) ? 1 : 0;
