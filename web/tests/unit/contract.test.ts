// The documents' types are those of docs/schema, and the glue reads what the engine itself says.
import { readFileSync } from "node:fs";
import { beforeAll, expect, test } from "vitest";
import type { Reply, Request } from "../../engine/contract";
import { base64, type Engine, readReply, sectionsOf } from "../../engine/glue";
import { drifted } from "../../tools/contract_types.mjs";
import { example, realEngine } from "./real_engine";

let engine: Engine;
beforeAll(async () => {
  engine = await realEngine();
});

/// As the worker adds them to a request for a set.
function fonts(): { readonly regular: string; readonly bold: string } {
  const face = (name: string): string =>
    base64(readFileSync(new URL(`../../../engine/paper/fonts/B612-${name}.otf`, import.meta.url)));
  return { regular: face("Regular"), bold: face("Bold") };
}

test("a set without whole fonts is refused: the module has none of its own", () => {
  const job = example("clay-store");
  expect(ask({ border: 1, job, set: "a4" }).head.message).toContain("/fonts");
  expect(ask({ border: 1, job, set: "a4", fonts: { regular: "AAAA", bold: "AAAA" } }).head.message).toContain("/fonts");
  expect(ask({ border: 1, job, set: "a4", fonts: { regular: "A", bold: "=" } }).head.message).toContain("base64");
});

const ask = (request: Request): Reply => readReply(engine.ask(JSON.stringify(request)));

test("the types in engine/generated are made from docs/schema as it is", { timeout: 30_000 }, async () => {
  expect(await drifted()).toEqual([]);
});

test("everything that is asked for comes, each section under its name and in its form", () => {
  const reply = ask({
    border: 1,
    job: example("kiln-house"),
    edits: [{ do: "move-opening", opening: 0, to_nm: 1_016_000_000 }],
    drawings: ["plan-course-2", "elevation-1", "elevation-99"],
    solids: true,
    piece: "AB-1-1",
    set: "letter",
    fonts: fonts(),
    budget: 20_000,
  });
  expect(reply.head.sections).toEqual([
    "reply.json",
    "answer.json",
    "job.json",
    "plan-course-2.svg",
    "elevation-1.svg",
    "solids.json",
    "set-letter.pdf",
  ]);
  expect(reply.head.drawings?.map((head) => [head.name, head.course, head.side])).toEqual([
    ["plan-course-2", 2, ""],
    ["elevation-1", 0, "AB"],
  ]);
  expect(reply.svg("plan-course-2")).toMatch(/^<svg /);
  expect(reply.svg("elevation-99")).toBeUndefined();
  expect(reply.head.piece?.name).toBe("AB-1-1");
  expect(reply.head.hold_points?.length).toBe(6);
  expect(reply.answer?.state).toBe("whole");
  expect(JSON.parse(reply.job ?? "")).toEqual(reply.answer?.job);
  const solids = reply.solids;
  expect(solids?.boxes.length).toBe(6 * (solids?.names.length ?? 0));
  expect(new TextDecoder("latin1").decode(reply.bytes("set-letter.pdf")).slice(0, 8)).toBe("%PDF-1.7");
});

test("a job begun from measures comes back as a document; measures that are none are refused by their names", () => {
  const begun = ask({ border: 1, begin: { name: "Shed", length: "24'", width: "16'", height: "8'" } });
  expect(begun.head.state).toBe("solved");
  expect(ask({ border: 1, job: begun.job ?? "" }).bytes("answer.json")).toEqual(begun.bytes("answer.json"));
  const wrong = ask({ border: 1, begin: { length: "24 cubits", width: "", height: "8'", series: "us-9" } });
  expect(wrong.head.state).toBe("refused");
  const places = wrong.refusals?.refusals.map((refusal) => refusal.place);
  expect(places).toEqual(["/begin/series", "/begin/length", "/begin/width"]);
});

test.each<[string, string]>([
  ["{", "breaks off"],
  ["[]", "an object is wanted"],
  ['{"border": 2, "job": "{}"}', "/border: only version 1"],
  ['{"border": 1}', "one of job and begin"],
  ['{"border": 1, "job": "{}", "begin": {"length": "1", "width": "1", "height": "1"}}', "one of job and begin"],
  ['{"border": 1, "job": "{}", "wish": 1}', "/wish: there is no such field"],
  ['{"border": 1, "job": "{}", "job": "{}"}', "/job: this field stands twice"],
  ['{"border": 1, "job": 7}', "/job: a text is wanted"],
  ['{"border": 1, "job": "{}", "solids": 1}', "/solids: true or false"],
  ['{"border": 1, "job": "{}", "budget": -1}', "/budget: this number is beyond its limits"],
  ['{"border": 1, "job": "{}", "budget": 1.5}', "/budget: a whole number is wanted"],
  ['{"border": 1, "job": "{}", "set": "a5"}', "/set: "],
  ['{"border": 1, "job": "{}", "drawings": [1]}', "/drawings/0: the name of a drawing"],
  ['{"border": 1, "job": "{}", "edits": [{"do": "paint"}]}', "/edits/0/do: there is no such edit"],
  ['{"border": 1, "job": "{}", "edits": [{"do": "move-side", "side": 0}]}', "/edits/0/by_nm: this field is missing"],
  [
    '{"border": 1, "job": "{}", "edits": [{"do": "move-side", "side": 0, "by_nm": 10000000000001}]}',
    "beyond its limits",
  ],
  [
    '{"border": 1, "job": "{}", "edits": [{"do": "move-side", "side": 0, "by_nm": 0, "way": 1}]}',
    "/edits/0/way: there is no such field",
  ],
])("a request that is none is answered in words: %s", (request, words) => {
  const { head } = readReply(engine.ask(request));
  expect([head.state, head.sections]).toEqual(["bad-request", ["reply.json"]]);
  expect(head.message).toContain(words);
});

test("what edits made of a job is handed back even when it cannot be built", () => {
  const far = ask({
    border: 1,
    job: example("kiln-house"),
    edits: [{ do: "move-opening", opening: 0, to_nm: 9_000_000_000_000 }],
  });
  expect(far.head.state).toBe("refused");
  expect(far.refusals?.refusals.length).toBeGreaterThan(0);
  expect(far.job).toContain('"stringcourse": 1');
});

test("a block of sections is cut where its lengths say", () => {
  const block = new Uint8Array([2, 0, 0, 0, 1, 0, 0, 0, 2, 0, 0, 0, 7, 8, 9]);
  expect(sectionsOf(block).map((section) => [...section])).toEqual([[7], [8, 9]]);
});
