import { beforeAll, expect, test } from "vitest";
import type { Answer, Request } from "../../engine/contract";
import { type Engine, readReply } from "../../engine/glue";
import { fieldsAt, type Room, withOpening, withTyped } from "../../job/fields";
import { type Json, jobText, readJson, valueAt } from "../../job/pointer";
import { words } from "../../words/words";
import { example, realEngine } from "./real_engine";

const kExamples = ["clay-store", "glaze-store", "hillside-shed", "kiln-house", "pug-mill-shop", "wash-stand"] as const;

/// A side of 20 ft with nothing in it.
const kEmpty = (name: string, start: string): Room => ({ name, start, long: 240 * 25_400_000, taken: [] });

let engine: Engine;
beforeAll(async () => {
  engine = await realEngine();
});

function solved(request: Omit<Request, "border">) {
  return readReply(engine.ask(JSON.stringify({ border: 1, budget: 0, ...request })));
}

function list(job: Json, pointer: string): readonly Json[] {
  const found = valueAt(job, pointer);
  return Array.isArray(found) ? (found as readonly Json[]) : [];
}

function placesOf(job: Json): readonly string[] {
  const openings = list(job, "/openings").map((_, at) => `/openings/${at}`);
  return ["", ...openings, ...list(job, "/outline/sides").map((_, at) => `/outline/sides/${at}`)];
}

test.each(kExamples)("%s: every field has a name in words and its text from the job", (name) => {
  const job = readJson(example(name)) ?? {};
  let seen = 0;
  for (const place of placesOf(job)) {
    for (const field of fieldsAt(job, place)) {
      seen += 1;
      expect(Object.keys(words.inHand.fields), field.pointer).toContain(field.name);
      if (!field.free) expect(field.text, field.pointer).not.toBe("");
    }
  }
  expect(seen).toBeGreaterThan(4);
});

test.each(kExamples)("%s: typing a field's own text anew changes nothing", (name) => {
  const job = readJson(example(name)) ?? {};
  for (const place of placesOf(job)) {
    for (const field of fieldsAt(job, place)) {
      if (field.free && field.text === "") continue;
      expect(jobText(withTyped(job, field, ` ${field.text} `)), field.pointer).toBe(jobText(job));
    }
  }
});

function roomIn(answer: Answer, name: string): Room {
  const side = answer.sides.find((one) => one.name === name);
  if (side === undefined) throw new Error(`no side ${name}`);
  const taken = answer.openings.filter((one) => one.side === name).map((one) => ({ from: one.from.nm, to: one.to.nm }));
  return { name, start: side.start, long: side.actual.nm, taken };
}

const kWithOpenings = ["clay-store", "glaze-store", "kiln-house"] as const;
test.each(kWithOpenings)(
  "%s: a door put into any side goes where there is room, past what stands there already",
  (name) => {
    const job = readJson(example(name)) ?? {};
    const { answer } = solved({ job: jobText(job) });
    if (answer === undefined) throw new Error("the example was not solved");
    for (const side of answer.sides.filter((one) => !one.interior)) {
      const room = roomIn(answer, side.name);
      const made = withOpening(job, room, "door");
      const reply = solved({ job: jobText(made.job) });
      const codes = reply.refusals?.refusals.map((refusal) => refusal.code) ?? [];
      expect(codes, side.name).not.toContain("openings-overlap");
      const laid = reply.answer?.openings.find((one) => one.name === made.name);
      if (codes.length === 0) expect(laid?.side).toBe(side.name);
    }
  },
);

test("where a side has no room the engine is asked all the same, and says why not", () => {
  const job = readJson(example("kiln-house")) ?? {};
  const { answer } = solved({ job: jobText(job) });
  if (answer === undefined) throw new Error("the example was not solved");
  const full = roomIn(answer, "AB");
  // A door of 9'-4" beside another of 9'-4" in 28 ft would need three piers of 16 in and 4 ft at the corner: none fits.
  const made = withOpening(job, full, "overhead");
  const codes = solved({ job: jobText(made.job) }).refusals?.refusals.map((refusal) => refusal.code) ?? [];
  expect(codes).toContain("openings-overlap");
});

test("a door put into the far side of the kiln house is laid there", () => {
  const job = readJson(example("kiln-house")) ?? {};
  const made = withOpening(job, kEmpty("DA", "D"), "door");
  expect(made).toMatchObject({ name: "D3", place: `/openings/${list(job, "/openings").length}` });
  const reply = solved({ job: jobText(made.job) });
  expect(reply.refusals).toBeUndefined();
  expect(reply.answer?.openings.find((one) => one.name === "D3")?.side).toBe("DA");
});

test("a name already taken is not given again", () => {
  const job: Json = { openings: [{ name: "D1" }, { name: "D3" }] };
  const first = withOpening(job, kEmpty("AB", "A"), "door");
  expect(first.name).toBe("D2");
  expect(withOpening(first.job, kEmpty("AB", "A"), "overhead").name).toBe("D4");
  expect(withOpening(job, kEmpty("AB", "A"), "window").name).toBe("W1");
});

test("a job without openings gets its first", () => {
  expect(withOpening({}, kEmpty("AB", "A"), "door").place).toBe("/openings/0");
});

test("a whole number stays a number, other text is left for the engine to judge", () => {
  const job: Json = { heights: { courses: 14 } };
  const field = fieldsAt(job, "").find((one) => one.name === "courses");
  expect(field?.whole).toBe(true);
  if (field === undefined) return;
  expect(valueAt(withTyped(job, field, "12"), "/heights/courses")).toBe(12);
  expect(valueAt(withTyped(job, field, "12'"), "/heights/courses")).toBe("12'");
});

test("an emptied free text is taken out; the name of a job is emptied, not taken out", () => {
  const job: Json = { name: "x", drawn_by: "y" };
  const drawnBy = fieldsAt(job, "").find((one) => one.name === "drawn_by");
  const name = fieldsAt(job, "").find((one) => one.pointer === "/name");
  if (drawnBy === undefined || name === undefined) throw new Error("fields are missing");
  expect(withTyped(job, drawnBy, "")).toEqual({ name: "x" });
  expect(withTyped(job, name, "")).toEqual({ name: "", drawn_by: "y" });
});

test("in a rectangle the side across is typed along, in other outlines it is not", () => {
  const kiln = readJson(example("kiln-house")) ?? {};
  const length = fieldsAt(kiln, "/outline/sides/1")[0];
  if (length === undefined) throw new Error("no length");
  const changed = withTyped(kiln, length, "22'-0\"");
  const lengths = list(changed, "/outline/sides").map((_, at) => valueAt(changed, `/outline/sides/${at}/length`));
  expect(lengths).toEqual(["28'-0\"", "22'-0\"", "28'-0\"", "22'-0\""]);
  const glaze = readJson(example("glaze-store")) ?? {};
  const first = fieldsAt(glaze, "/outline/sides/0")[0];
  if (first === undefined) throw new Error("no length");
  const typed = withTyped(glaze, first, "33'-4\"");
  const differing = list(typed, "/outline/sides").filter((side, at) => side !== list(glaze, "/outline/sides")[at]);
  expect(differing.length).toBe(1);
});
