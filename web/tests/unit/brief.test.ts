// What the page believes of the brief module is what that module does.
import { readdirSync, readFileSync } from "node:fs";
import { beforeAll, expect, test } from "vitest";
import { isBrief } from "../../engine/brief";
import { kBriefMembers, type Request } from "../../engine/contract";
import { Engine, readReply } from "../../engine/glue";
import { example } from "./real_engine";

const kModule = new URL("../../../build/wasm/stringcourse-brief.wasm", import.meta.url);
const kExamples = new URL("../../../examples/", import.meta.url);

let engine: Engine;
beforeAll(async () => {
  engine = await Engine.make(await WebAssembly.compile(readFileSync(kModule)));
});
const ask = (request: object) => readReply(engine.ask(JSON.stringify(request)));

const kJob = example("kiln-house");
const kAtOnce = { border: 1, job: kJob, budget: 0 } as const;
const kRequests: readonly Request[] = [
  kAtOnce,
  { ...kAtOnce, drawings: ["plan-course-1", "elevation-2-inside"], moving: true },
  { ...kAtOnce, edits: [{ do: "move-opening", opening: 0, to_nm: 1_016_000_000 }] },
  { border: 1, begin: { length: "24'", width: "16'", height: "8'" }, budget: 0 },
  { border: 1, job: kJob },
  { ...kAtOnce, budget: 400_000 },
  { ...kAtOnce, merge: kJob },
  { ...kAtOnce, solids: true },
  { ...kAtOnce, offers: true },
  { ...kAtOnce, piece: "AB-1-1" },
  { ...kAtOnce, course: { side: "AB", course: 1 } },
  { ...kAtOnce, sheets: "letter" },
  { ...kAtOnce, set: "a4" },
];

test("a request is brief where the brief module answers it", () => {
  for (const request of kRequests) {
    const answers = request.budget === undefined ? false : ask({ ...request, brief: true }).head.state === "solved";
    expect(isBrief(request), JSON.stringify({ ...request, job: "" })).toBe(answers);
  }
  expect(kRequests.filter(isBrief).length).toBe(4);
});

test("lengths alone are told by it; drawings of what was read are not drawn", () => {
  const lengths = { border: 1, lengths: { tape: "inches", read: "4'", write: [8] } } as const;
  expect(isBrief(lengths)).toBe(true);
  expect(ask(lengths).head.lengths?.written).toEqual(['1/2"']);
  const pegs: Request = { ...kAtOnce, drawings: ["pegs"] };
  expect(isBrief(pegs)).toBe(false);
  expect(ask({ ...pegs, brief: true }).head.drawings).toEqual([]);
});

test("its answers have the members that the page's type names, and no others", () => {
  const met = new Set<string>();
  for (const name of readdirSync(kExamples).filter((one) => one.endsWith(".json"))) {
    const { answer } = ask({ border: 1, job: example(name.replace(".json", "")), brief: true });
    for (const member of Object.keys(answer ?? {})) met.add(member);
  }
  met.add("conceded"); // only where a rule is given up
  expect([...met].sort()).toEqual([...kBriefMembers].sort());
});
