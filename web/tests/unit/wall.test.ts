// The view at the wall: lengths by thumb, what is logged, what stands on the screen, and a state that comes back.
import { describe, expect, it } from "vitest";
import { lastLaid, lastStruck, laidOf, withLaid } from "../../job/laid";
import { type Json, jobText, readJson, textAt, valueAt, withValue } from "../../job/pointer";
import { withLogsOf } from "../../job/strikes";
import { spoken } from "../../wall/aloud";
import { begunEntry, entryBody, questionsOf, type Site } from "../../wall/entries";
import { stepsOf, stepsText, type Tape } from "../../wall/lengths";
import { closingGap, nextMark, placeText, startMark } from "../../wall/places";
import { jointsText } from "../../wall/outcomes";
import { type Known, screenOf } from "../../wall/screens";
import { readState } from "../../wall/state";
import { example, realEngine } from "./real_engine";
import { readReply } from "../../engine/glue";

const engine = await realEngine();
const job = readJson(example("kiln-house")) ?? {};
const kFirst = 1_412_875_000; // 55 5/8 in

function courseOf(document: Json, trial?: { at_nm: number; past_nm: number }) {
  const course = { side: "AB", course: 1, ...(trial === undefined ? {} : { trial }) };
  const reply = readReply(engine.ask(JSON.stringify({ border: 1, job: jobText(document), course })));
  return { reply, course: reply.course };
}

const site: Site = {
  tape: "inches",
  side: "AB",
  course: 1,
  unit: 396_875_000,
  joint: 9_525_000,
  planned: 2_835_275_000,
  plannedText: `9'-3 5/8"`,
  markText: `4'-7 5/8"`,
};

describe("lengths by thumb", () => {
  it("are written in the trade's form, and the engine reads back what is written", () => {
    expect([0, 1, 2, 8, 16, 19, 250].map((steps) => stepsText(steps, "inches"))).toEqual([
      `0"`,
      `1/16"`,
      `1/8"`,
      `1/2"`,
      `1"`,
      `1 3/16"`,
      `15 5/8"`,
    ]);
    expect(stepsText(-3, "inches")).toBe(`-3/16"`);
    expect(stepsText(7, "millimetres")).toBe("7 mm");
    expect(stepsOf(kFirst, "inches")).toBe(890);
  });

  it("are spoken with their unit", () => {
    expect(spoken(`4'-7 5/8"`)).toBe("4 feet 7 and 5 over 8 inches");
    expect(spoken(`3/16"`)).toBe("3 over 16 inch");
    expect(spoken("4451 mm")).toBe("4 4 5 1 millimetres");
  });
});

const stamp = (id: string) => ({ id, when: "", by: "" });

function tapeOf(document: Json): Tape {
  return textAt(document, "/tape") === "millimetres" ? "millimetres" : "inches";
}

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
        entryBody(answered, { ...site, planned: kind === "end" ? 8_524_875_000 : site.planned }),
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

describe("the screen", () => {
  const known = (change: Partial<Known>): Known => ({
    state: readState(JSON.stringify({ side: "AB", course: 1, place: { screen: "face", face: "mark" } })),
    tape: "inches",
    course: courseOf(job).course,
    answer: undefined,
    question: undefined,
    jambs: [],
    waiting: false,
    failed: false,
    undoable: false,
    redoable: false,
    awake: true,
    readOnly: false,
    said: "",
    ...change,
  });

  it("shows the next mark, from where, and two columns of zones", () => {
    const screen = screenOf(known({}));
    expect(screen.number).toBe(`4'-7 5/8"`);
    expect(screen.lead).toContain("from outer corner A");
    expect(screen.zones.map((zone) => zone.label)).toEqual(["Short", "Past", "On it", "More"]);
  });

  it("shows the joints that a tried reading asks for", () => {
    const tried = courseOf(job, { at_nm: kFirst, past_nm: 3 * 1_587_500 });
    expect(tried.reply.answer).toBeUndefined();
    expect(jointsText(tried.course?.course.runs[0]?.next.joints ?? [])).toBe(`3 × 5/16"`);
    expect(nextMark(tried.course?.course)?.at.text).toBe(`8'-7 5/8"`);
  });

  it("reads a mark only where that mark is the number shown", () => {
    const course = courseOf(withLaid(job, { laid: { on: "AB", course: 1 } }, stamp("x"))).course;
    for (const one of [courseOf(job).course, course]) {
      for (const face of ["next", "mark", "joints", "bed"] as const) {
        const state = { ...known({}).state, place: { screen: "face", face } as const };
        const screen = screenOf(known({ state, course: one }));
        const readings = screen.zones.filter((zone) => zone.act.do === "begin" && zone.act.kind === "mark");
        if (face === "joints" || face === "bed") expect(readings).toEqual([]);
        for (const { act } of readings) {
          const mark = one?.course.marks.find((each) => act.do === "begin" && each.at.nm === act.mark);
          expect(mark?.at.text).toBe(screen.number);
        }
      }
    }
    expect(screenOf(known({ course: undefined, waiting: true })).zones.map((zone) => zone.act.do)).toEqual(["leave"]);
  });

  it("begins a run beyond a doorway at its far jamb, before the next mark", () => {
    // The last unit of AB's first run ends at D1's near jamb, 9'-3 5/8": 7 units from the corner.
    const done = withLaid(job, { mark: { on: "AB", course: 1, at: `9'-3 5/8"`, past: `0"` } }, stamp("x"));
    const { course } = courseOf(done);
    expect(startMark(course?.course)?.opening).toBe("D1");
    const state = (face: "next" | "mark") => ({ ...known({}).state, place: { screen: "face", face } as const });
    const start = screenOf(known({ course, state: state("next") }));
    expect(start.number).toBe(`18'-8"`);
    expect(start.under[0]).toBe(`= 224" · far jamb of D1`);
    expect(screenOf(known({ course, state: state("mark") })).number).toBe(nextMark(course?.course)?.at.text);
    expect(startMark(courseOf(job).course?.course)).toBeUndefined();
  });

  it("says that the screen may sleep when it may", () => {
    expect(screenOf(known({ awake: false })).under.join()).toContain("Screen may sleep.");
  });

  it("reaches every jamb of a side with many openings", () => {
    const jambs = ["W1", "W2", "D1", "W3"].flatMap((name) => [
      { pick: `near-jamb ${name}`, name: `${name}, near` },
      { pick: `far-jamb ${name}`, name: `${name}, far` },
    ]);
    const shown = new Set<string>();
    for (let page = 0, seen = 0; seen < 4; ++seen) {
      const entry = { ...begunEntry("jamb", "", 0, site), page };
      const state = { ...known({}).state, place: { screen: "enter", entry } as const };
      const { zones } = screenOf(known({ state, jambs }));
      expect(zones.length).toBeLessThanOrEqual(6);
      for (const zone of zones) {
        if (zone.act.do === "pick") shown.add(zone.act.pick);
        if (zone.act.do === "page") page = zone.act.page;
      }
    }
    expect([...shown].sort()).toEqual(jambs.map((jamb) => jamb.pick).sort());
  });

  it("asks for nothing that is not there: every kind has its questions", () => {
    for (const kind of ["mark", "gauge", "gap", "set", "check", "row", "jamb", "end"] as const)
      expect(questionsOf(kind, "plumb", site).length).toBeGreaterThan(0);
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
          ...entryBody(entry, { ...site, tape: tapeOf(document), side, course, markText: text }),
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

describe("what the device kept", () => {
  it("comes back, and nonsense starts anew", () => {
    const entry = begunEntry("set", "", kFirst, site);
    const kept = JSON.stringify({
      open: true,
      side: "AB",
      course: 2,
      place: { screen: "enter", entry },
      hand: "left",
      light: "evening",
      by: "JB",
    });
    expect(readState(kept).place).toEqual({ screen: "enter", entry });
    expect(readState(kept).hand).toBe("left");
    for (const text of [
      null,
      "",
      "{",
      "[]",
      `{"side":1}`,
      `{"side":"AB","course":1,"place":{"screen":"enter","entry":{"kind":"mark"}}}`,
    ])
      expect(readState(text).open).toBe(false);
  });
});
