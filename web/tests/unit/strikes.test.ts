// Strikes that may be struck: the page's reading of a log is the engine's, and undo only ever adds to it.
import fc from "fast-check";
import { expect, test } from "vitest";
import { readReply } from "../../engine/glue";
import { laidOf, withLaid } from "../../job/laid";
import { jobText, type Json, readJson, valueAt } from "../../job/pointer";
import { readingsOf, withReading } from "../../job/readings";
import { entriesOf, entriesStanding, standingOf, type Striking, withCounting, withLogsOf } from "../../job/strikes";
import { example, realEngine } from "./real_engine";

const engine = await realEngine();
const kiln = readJson(example("kiln-house")) ?? {};

/// Entries that strike only earlier ones, in any order: no rings, so that every entry may be asked for its strikers.
const kLog: fc.Arbitrary<readonly Striking[]> = fc
  .array(fc.nat(), { maxLength: 14 })
  .map((dice) =>
    dice.map((roll, at) => ({ id: `e${at}`, strikes: roll % (at + 1) === at ? "" : `e${roll % (at + 1)}` })),
  )
  .chain((log) => fc.shuffledSubarray(log, { minLength: log.length }));

function standsSlowly(log: readonly Striking[], one: Striking): boolean {
  return !log.some((other) => other.strikes === one.id && standsSlowly(log, other));
}

test("an entry stands if no standing entry strikes it, in whatever order they are listed", () => {
  fc.assert(
    fc.property(kLog, (log) => {
      expect(standingOf(log)).toEqual(log.map((one) => standsSlowly(log, one)));
    }),
  );
});

test("a ring of strikes strikes nothing else, and ends", () => {
  const ring = (pairs: readonly string[]): readonly boolean[] =>
    standingOf(pairs.map((pair) => ({ id: pair.charAt(0), strikes: pair.slice(1) })));
  expect(ring(["ss", "a"])).toEqual([false, true]);
  expect(ring(["st", "ts", "a"])).toEqual([false, false, true]);
  expect(ring(["st", "ts", "us"])).toEqual([false, true, true]);
});

test("the engine counts the readings that the page says stand", () => {
  const first = 1_412_875_000; // 55 5/8 in: AB's first mark
  fc.assert(
    fc.property(kLog, (log) => {
      const laid = log.map(({ id, strikes }) =>
        strikes === "" ? { id, mark: { on: "AB", course: 1, at: '55 5/8"', past: '0"' } } : { id, strike: strikes },
      );
      const job = jobText({ ...(kiln as object), laid });
      const reply = readReply(
        engine.ask(JSON.stringify({ border: 1, job, course: { side: "AB", course: 1 }, budget: 0 })),
      );
      const counted =
        reply.course?.course.marks.find((mark) => mark.at.nm === first && mark.run !== undefined)?.entries ?? [];
      const stands = laidOf({ laid }).flatMap((one) => (one.struck ? [] : [one.index]));
      expect([...counted].sort()).toEqual([...stands].sort());
    }),
    { numRuns: 25 },
  );
});

type Act = "read" | "lay" | "strike" | "count" | "undo" | "redo";
const kActs = fc.array(
  fc.record({ act: fc.constantFrom<Act>("read", "lay", "strike", "count", "undo", "redo"), roll: fc.nat(99) }),
  { maxLength: 30 },
);

interface Desk {
  readonly past: readonly Json[];
  readonly now: Json;
  readonly future: readonly Json[];
}

test("undo and redo of entries and strikes bring back what counted, and the logs only grow", () => {
  fc.assert(
    fc.property(kActs, (acts) => {
      let made = 0;
      const stamp = () => ({ id: `n${made++}`, when: "", by: "" });
      const counting = (job: Json): string =>
        ["/readings", "/laid"]
          .flatMap((log) => {
            const stands = entriesStanding(job, log);
            return entriesOf(job, log).flatMap((entry, at) =>
              stands[at] === true && valueAt(entry, "/strike") === undefined ? [String(valueAt(entry, "/id"))] : [],
            );
          })
          .join();
      const done = (desk: Desk, next: Json): Desk =>
        next === desk.now ? desk : { past: [...desk.past, desk.now], now: next, future: [] };
      const after = (desk: Desk, act: Act, roll: number): Desk => {
        const laid = laidOf(desk.now);
        const one = laid[roll % Math.max(1, laid.length)];
        if (act === "read")
          return done(desk, withReading(desk.now, { kind: "tape", from: "A", to: "B", length: "9'" }, stamp()));
        if (act === "lay") return done(desk, withLaid(desk.now, { laid: { on: "AB", course: 1 } }, stamp()));
        if (act === "strike")
          return one === undefined ? desk : done(desk, withLaid(desk.now, { strike: one.id }, stamp()));
        if (act === "count")
          return one === undefined ? desk : done(desk, withCounting(desk.now, "/laid", one.id, stamp));
        const [wanted] = act === "undo" ? desk.past.slice(-1) : desk.future;
        if (wanted === undefined) return desk;
        const now = withLogsOf(wanted, desk.now, stamp);
        expect(counting(now)).toBe(counting(wanted));
        return act === "undo"
          ? { past: desk.past.slice(0, -1), now, future: [desk.now, ...desk.future] }
          : { past: [...desk.past, desk.now], now, future: desk.future.slice(1) };
      };
      let desk: Desk = { past: [], now: kiln, future: [] };
      for (const { act, roll } of acts) {
        const next = after(desk, act, roll);
        for (const log of ["/readings", "/laid"]) {
          const before = entriesOf(desk.now, log);
          expect(entriesOf(next.now, log).slice(0, before.length)).toEqual(before);
        }
        desk = next;
      }
    }),
  );
});

test("an entry brought back is listed as counting; one that counts is left as it is", () => {
  const stamp = (id: string) => ({ id, when: "", by: "" });
  let job = withReading(kiln, { kind: "tape", from: "A", to: "B", length: "9'" }, stamp("1"));
  job = withReading(job, { kind: "strike", id: "1" }, stamp("2"));
  expect(readingsOf(job)[0]?.struck).toBe(true);
  const again = withCounting(job, "/readings", "1", () => stamp("3"));
  expect(readingsOf(again)[0]?.struck).toBe(false);
  expect(entriesOf(again, "/readings")).toHaveLength(3);
  expect(withCounting(again, "/readings", "1", () => stamp("4"))).toBe(again);
});
