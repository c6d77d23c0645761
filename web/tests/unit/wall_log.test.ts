// The view at the wall: lengths by thumb, what is logged, and what it comes to.
import { describe, expect, it } from "vitest";
import { readReply } from "../../engine/glue";
import { laidOf, lastLaid, lastStruck, withLaid } from "../../job/laid";
import { jobText, type Json, readJson, textAt, valueAt, withValue } from "../../job/pointer";
import { withLogsOf } from "../../job/strikes";
import { tapeOf } from "../../job/tape";
import { begunEntry, entryBody, stepsIn, stepsOf } from "../../state/wall/entries";
import { closingGap, placeText } from "../../state/wall/marks";
import { spoken } from "../../wall/aloud";
import { outcomeLines } from "../../wall/outcomes";
import { courseOf, engine, job, kFirst, site, stamp, written } from "./at_wall";
import { example } from "./real_engine";

describe("lengths by thumb", () => {
  it("are counted in steps of the tape", () => {
    // 55 5/8 in are 890 sixteenths.
    expect(stepsOf(kFirst, site.step)).toBe(890);
    expect(stepsOf(kFirst, 0)).toBe(0);
  });

  it("are spoken with their unit", () => {
    expect(spoken(`4'-7 5/8"`)).toBe("4 feet 7 and 5 over 8 inches");
    expect(spoken(`3/16"`)).toBe("3 over 16 inch");
    expect(spoken("4451 mm")).toBe("4 4 5 1 millimetres");
  });
});

describe("the log", () => {
  const stamp = { id: "a", when: "2026-05-09 14:20", by: " JB " };

  it("takes every kind of entry that the view makes, and the engine takes it", () => {
    const kinds = ["mark", "gauge", "gap", "set", "check", "row", "jamb", "end"] as const;
    let document: Json = job;
    kinds.forEach((kind, index) => {
      const pick = kind === "check" ? "position" : kind === "jamb" ? "near-jamb D1" : kind === "row" ? "each" : "";
      const entry = begunEntry(kind, pick, kFirst, site);
      const done = { ...entry, signs: entry.signs.map((sign) => (sign === 0 ? -1 : sign)) };
      const answered = kind === "mark" || kind === "gauge" || kind === "set" ? done : entry;
      document = withLaid(
        document,
        entryBody(
          answered,
          { ...site, planned: kind === "end" ? 8_524_875_000 : site.planned },
          written(stepsIn(answered, site), site.tape),
        ),
        {
          ...stamp,
          id: String(index),
        },
      );
    });
    const { reply } = courseOf(document);
    expect(reply.head.state).toBe("solved");
    const unknown = reply.answer?.findings.filter(
      (one) => one.code === "laid-entry-unknown" || one.code === "no-such-mark",
    );
    expect(unknown).toEqual([]);
    expect(laidOf(document).map((one) => one.kind)).toEqual([
      "mark",
      "gauge",
      "gap",
      "set",
      "check",
      "units",
      "found",
      "found",
    ]);
    expect(textAt(document, "/laid/0/by")).toBe("JB");
  });

  it("is struck by undo, never erased", () => {
    const earlier = withLaid(job, { laid: { on: "AB", course: 1 } }, stamp);
    const later = withLaid(earlier, { laid: { on: "AB", course: 2 } }, { ...stamp, id: "b" });
    const undone = withLogsOf(earlier, later, () => ({ ...stamp, id: "c" }));
    expect(valueAt(undone, "/laid")).toHaveLength(3);
    expect(lastLaid(undone)?.id).toBe("a");
    // Undone once more nothing is struck twice.
    const all = withLogsOf(job, undone, () => ({ ...stamp, id: "d" }));
    expect(valueAt(all, "/laid")).toHaveLength(4);
    expect(lastLaid(all)).toBeUndefined();
    expect(withLogsOf(job, job, () => stamp)).toBe(job);
  });

  it("names what was struck last until something is entered, so that it can be brought back", () => {
    const on = (course: number) => ({ laid: { on: "AB", course } });
    let document = withLaid(withLaid(job, on(1), { ...stamp, id: "1" }), on(2), { ...stamp, id: "2" });
    expect(lastStruck(document)).toBeUndefined();
    document = withLaid(
      withLaid(document, { strike: "2" }, { ...stamp, id: "3" }),
      { strike: "1" },
      { ...stamp, id: "4" },
    );
    expect(lastStruck(document)?.id).toBe("1");
    document = withLaid(document, { strike: "4" }, { ...stamp, id: "5" });
    expect(lastStruck(document)?.id).toBe("2");
    document = withLaid(document, { strike: "3" }, { ...stamp, id: "6" });
    expect(lastStruck(document)).toBeUndefined();
    expect(laidOf(document).every((one) => !one.struck)).toBe(true);
  });
});

const kExamples = [
  "kiln-house",
  "glaze-store",
  "clay-store",
  "pug-mill-shop",
  "hillside-shed",
  "drying-shed",
  "wash-stand",
] as const;

describe.each(kExamples)("in %s", (name) => {
  const document = { ...(readJson(example(name)) as object), laid: [] } as Json;
  const asked = (laid: Json, side: string, course: number) =>
    readReply(
      engine.ask(
        JSON.stringify({
          border: 1,
          job: jobText(withValue(document, "/laid", laid)),
          course: { side, course },
          budget: 0,
        }),
      ),
    ).course?.course;
  const { answer } = readReply(engine.ask(JSON.stringify({ border: 1, job: jobText(document), budget: 0 })));
  const courses = (answer?.sides ?? []).flatMap((side) => [1, 2].map((course) => ({ side: side.name, course })));

  it("each mark's text, in the job's tape, is read back as that very mark", () => {
    for (const { side, course } of courses) {
      const ends = asked([], side, course)?.marks.filter((mark) => mark.run !== undefined) ?? [];
      expect(ends.length).toBeGreaterThan(0);
      const laid = ends.map((mark, index) => {
        const entry = { ...begunEntry("mark", "", mark.at.nm, site), signs: [1] };
        const text = placeText(asked([], side, course), mark.at.nm);
        return {
          id: String(index),
          ...entryBody(
            entry,
            { ...site, tape: tapeOf(document), side, course, markText: text },
            written(stepsIn(entry, site), tapeOf(document)),
          ),
        };
      });
      const metric = tapeOf(document) === "millimetres";
      for (const entry of laid) expect(textAt(entry as Json, "/mark/at").endsWith("mm")).toBe(metric);
      const read = asked(laid, side, course)?.marks.filter((mark) => mark.run !== undefined) ?? [];
      expect(read.map((mark) => mark.entries)).toEqual(ends.map((_, index) => [index]));
    }
  });

  it("a closing gap is offered in each run that closes, before its closing unit and never at a doorway", () => {
    for (const { side, course } of courses) {
      const now = asked([], side, course);
      for (const [run, { from, units }] of (now?.runs ?? []).entries()) {
        const here = now === undefined ? undefined : { ...now, run };
        const gap = closingGap(here);
        const ends = now?.marks.filter((mark) => mark.run === run) ?? [];
        const closes = ends.findIndex((mark) => mark.closes === true);
        expect(gap === undefined).toBe(closes < 0);
        if (gap === undefined) continue;
        expect(ends).toHaveLength(units);
        // One unit is missing: it begins a joint after the gap's place, and ends at its own mark.
        expect(gap.at.nm).toBe(closes === 0 ? from.nm : ends[closes - 1]?.at.nm);
        const edge = now?.marks.find((mark) => mark.kind === "near-jamb" && mark.at.nm === gap.at.nm);
        expect(edge).toBeUndefined();
      }
    }
  });
});

describe("a gap", () => {
  const gapAt = (at: string, measured: string): readonly string[] => {
    const entry = { gap: { on: "AB", course: 1, at, measured } };
    const { answer } = courseOf(withLaid(job, entry, stamp("g"))).reply;
    return outcomeLines(answer, answer?.laying?.gaps.at(-1)?.entry ?? -1);
  };

  it("in a doorway has no closure: nothing is laid there", () => {
    expect(gapAt("10'-0\"", `16 3/8"`)).toEqual([expect.stringContaining("D1")]);
  });

  it("of a unit and a half takes both and no saw", () => {
    const [text = ""] = gapAt(`3'-3 5/8"`, `24 3/8"`);
    expect(text).toContain("a whole unit");
    expect(text).toContain("a half unit");
    expect(text).not.toContain("cut");
  });
});
