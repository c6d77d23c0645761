// The view at the wall: what stands on the screen, and a state that comes back.
import { describe, expect, it } from "vitest";
import { withLaid } from "../../job/laid";
import { begunEntry, questionsOf } from "../../state/wall/entries";
import { nextMark, startMark } from "../../state/wall/marks";
import { readState } from "../../state/wall/step";
import { jointsText } from "../../wall/outcomes";
import type { Known } from "../../wall/screen";
import { screenOf } from "../../wall/screens";
import { courseOf, job, kFirst, site, stamp, written } from "./at_wall";
import { kQuiet } from "./quiet";

describe("the screen", () => {
  const known = (change: Partial<Known>): Known => ({
    state: readState(JSON.stringify({ side: "AB", course: 1, place: { screen: "face", face: "mark" } })),
    tape: "inches",
    course: courseOf(job).course,
    answer: undefined,
    question: undefined,
    written: (steps) => written([steps], "inches")[0] ?? "",
    ...kQuiet,
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
