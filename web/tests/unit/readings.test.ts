import fc from "fast-check";
import { expect, test } from "vitest";
import { readReply } from "../../engine/glue";
import { type Json, readJson, valueAt } from "../../job/pointer";
import { type Entry, readingsOf, withReading } from "../../job/readings";
import { english } from "../../words/english";
import { example, realEngine } from "./real_engine";

const kName = fc.constantFrom("A", "B", "C", "D");
const kEntry: fc.Arbitrary<Entry> = fc.oneof(
  fc.record({
    kind: fc.constant("tape" as const),
    from: kName,
    to: kName,
    length: fc.constantFrom(`27'-11"`, "412 3/8"),
  }),
  fc.record({
    kind: fc.constant("rod" as const),
    setup: fc.constantFrom("1", "2"),
    station: fc.constantFrom("datum", "A", "AB middle"),
    rod: fc.constantFrom(`52"`, `-3"`),
    on: fc.constantFrom("", "AB"),
    at: fc.constantFrom(`4'`, `14'`),
    surface: fc.constantFrom("", "floor"),
    sight: fc.constantFrom("", `40'`),
  }),
  fc.record({
    kind: fc.constant("two_peg" as const),
    readings: fc.constant({
      midway_a: `52"`,
      midway_b: `61 1/2"`,
      close_a: `44"`,
      close_b: `53 5/8"`,
      sight_a: `6'`,
      sight_b: `106'`,
    }),
  }),
  fc.record({
    kind: fc.constant("dowel" as const),
    on: fc.constant("AB"),
    at: fc.constant(`52"`),
    offFace: fc.constant(`3 3/4"`),
  }),
  fc.record({
    kind: fc.constant("edge" as const),
    on: fc.constant("CD"),
    at: fc.constant(`9'`),
    beyond: fc.constantFrom(`2"`, `-1/2"`),
  }),
  fc.record({ kind: fc.constant("strike" as const), id: fc.constantFrom("r0", "r1", "r2") }),
);

test("the log only grows, and what stood in it stands there unchanged", () => {
  fc.assert(
    fc.property(fc.array(kEntry, { maxLength: 12 }), (entries) => {
      let job: Json = { name: "x" };
      entries.forEach((entry, index) => {
        const before = (valueAt(job, "/readings") ?? []) as readonly Json[];
        job = withReading(job, entry, { id: `r${index}`, when: "now", by: "" });
        const after = (valueAt(job, "/readings") ?? []) as readonly Json[];
        expect(after.slice(0, -1)).toEqual(before);
      });
      const strikes = entries.filter((entry) => entry.kind === "strike").length;
      expect(readingsOf(job).length).toBe(entries.length - strikes);
    }),
  );
});

test("the engine takes every entry that the page makes", async () => {
  const engine = await realEngine();
  const kiln = readJson(example("kiln-house")) ?? {};
  fc.assert(
    fc.property(fc.array(kEntry, { minLength: 1, maxLength: 8 }), (entries) => {
      let job: Json = kiln;
      entries.forEach((entry, index) => {
        job = withReading(job, entry, { id: `r${index}`, when: "now", by: "K" });
      });
      const reply = readReply(engine.ask(JSON.stringify({ border: 1, job: JSON.stringify(job), budget: 0 })));
      expect(reply.head.state).toBe("solved");
    }),
    { numRuns: 60 },
  );
});

test("a struck entry is listed as struck, newest first", () => {
  const stamp = (id: string) => ({ id, when: "", by: "" });
  let job: Json = {};
  job = withReading(job, { kind: "tape", from: "A", to: "B", length: "9'" }, stamp("1"));
  job = withReading(job, { kind: "tape", from: "A", to: "C", length: "8'" }, stamp("2"));
  job = withReading(job, { kind: "strike", id: "1" }, stamp("3"));
  expect(readingsOf(job).map(({ id, struck }) => [id, struck])).toEqual([
    ["2", false],
    ["1", true],
  ]);
});

test("a slab of which only a little is read neither fits nor not, and says what is still to be read", async () => {
  const engine = await realEngine();
  const entries: readonly Entry[] = [
    { kind: "rod", setup: "1", station: "datum", rod: `48"`, on: "", at: "", surface: "", sight: "" },
    { kind: "rod", setup: "1", station: "A", rod: `52"`, on: "", at: "", surface: "", sight: "" },
    { kind: "tape", from: "A", to: "B", length: `27'-11 5/8"` },
    { kind: "tape", from: "B", to: "C", length: `19'-11 5/8"` },
    { kind: "tape", from: "C", to: "D", length: `27'-11 5/8"` },
    { kind: "edge", on: "AB", at: "2'", beyond: `4"` },
  ];
  let job: Json = { ...(readJson(example("kiln-house")) as object), readings: [], laid: [] } as Json;
  entries.forEach((entry, index) => {
    job = withReading(job, entry, { id: `r${index}`, when: "now", by: "" });
  });
  const { answer } = readReply(engine.ask(JSON.stringify({ border: 1, job: JSON.stringify(job), budget: 0 })));
  const bed = answer?.ground?.levels?.bed;
  expect(bed?.verdict).toBe("not-read");
  expect([...(bed?.lacks ?? [])].sort()).toEqual(["B", "C", "D"]);
  expect(bed?.choices).toEqual([]);
  expect(answer?.ground?.tape.verdict).toBe("not-read");
  expect(answer?.ground?.tape.missing.length).toBe(2);
  expect(answer?.ground?.fit).toBeUndefined();
  expect(answer?.ground?.fit_lacks).toEqual(["the edge along BC", "the edge along CD", "the edge along DA"]);
  for (const verdict of ["fits", "does-not-fit", "cannot-tell", "not-read"])
    expect(english.ground.verdicts[verdict]).toBeTruthy();
});
