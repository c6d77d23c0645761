// The day's card on the phone: everything of the day on pages that fit, and nothing that enters.
import { describe, expect, it } from "vitest";
import type { Answer, WorkDay } from "../../engine/contract";
import { hasCard } from "../../state/wall/going";
import { readState } from "../../state/wall/step";
import { dayScreen, linesOf, pagesOf } from "../../wall/day_screen";
import type { Known } from "../../wall/screen";
import { words } from "../../words/words";
import { kQuiet } from "./quiet";

const day: WorkDay = {
  number: 6,
  date: "2027-05-10",
  tasks: [0, 1],
  works: ["Lay course 3 of AB: 18 blocks", "Lay course 3 of BC: 12 blocks"],
  units: [
    { series: "us-8", kind: "full", whole: 24, cut_pieces: 2 },
    { series: "us-8", kind: "half", whole: 4, cut_pieces: 0 },
  ],
  laid: 30,
  batches: 3,
  reached: [],
  brace: ["AB", "BC"],
  zone: { nm: 1, text: `6'-0"` },
  stacked: ["Whole block: pallets 1 and 2 outside AB"],
  steel: ["Joint reinforcement on course 3 of AB and BC"],
  checks: ["Check tops from the datum: course 3 at 2'-0\"; plumb, level and line of each course"],
  stop: ["Stop at course 3 of AB and BC, 2'-0\" high"],
  weather: "Forecast 24 to 38 °F: do what the weather card says of cold",
} as unknown as WorkDay;

const { date: _, ...rest } = day;
const dateless: WorkDay = rest;

const answerWith = (days: readonly WorkDay[], planned = true): Answer =>
  ({ programme: { days, planned } }) as unknown as Answer;

const known = (change: Partial<Known>): Known => ({
  state: readState(null),
  tape: "inches",
  course: undefined,
  answer: answerWith([day]),
  question: undefined,
  written: () => "",
  ...kQuiet,
  today: "2027-05-10",
  ...change,
});

describe("the day's card", () => {
  it("says what, how many of which kind, where they stand, batches, bars, checks, where to stop, what to brace", () => {
    const lines = linesOf(day).join("\n");
    for (const part of [...day.works, ...day.stacked, ...day.steel, ...day.checks, ...day.stop, day.weather])
      expect(lines).toContain(part);
    expect(lines).toContain(`24 ${words.kinds["full"]}, ${words.wall.day.cutFrom(2, words.kinds["full"] ?? "")}`);
    expect(lines).toContain("3 batches of mortar");
    expect(lines).toContain(`Without grout tonight: AB, BC. Brace before you leave; keep 6'-0" clear on both sides.`);
  });

  it("comes on pages that together say all of it, each line once", () => {
    const lines = linesOf(day);
    for (const room of [1, 3, 8, 11, 40]) expect(pagesOf(lines, room).flat()).toEqual(lines);
    const seen: string[] = [];
    for (let page = 0, turns = 0; turns === 0 || page !== 0; ++turns) {
      const screen = dayScreen(known({}), page);
      seen.push(...screen.under);
      const further = screen.zones.find((zone) => zone.act.do === "day");
      page = further?.act.do === "day" ? further.act.page : 0;
    }
    expect(seen).toEqual(lines);
  });

  it("enters nothing, and is left for the course in hand by one touch", () => {
    for (const page of [0, 1, 2, 7]) {
      const { zones, turn } = dayScreen(known({}), page);
      expect(turn).toBeUndefined();
      for (const { act } of zones) expect(["day", "face"]).toContain(act.do);
      expect(zones.filter((zone) => zone.first).map((zone) => zone.act)).toEqual([{ do: "face", face: "next" }]);
    }
  });

  it("says whether it is today's, one to come, or one that is late", () => {
    expect(dayScreen(known({}), 0).lead).toContain("Day 6, today");
    expect(dayScreen(known({ today: "2027-05-09" }), 0).lead).toContain("Next: day 6, 2027-05-10");
    expect(dayScreen(known({ today: "2027-05-12" }), 0).lead).toContain("Day 6, planned for 2027-05-10");
    expect(dayScreen(known({ answer: answerWith([dateless]) }), 0).lead).toContain("Day 6");
  });

  it("is there where the job plans its days and something is left", () => {
    expect(hasCard(answerWith([day]))).toBe(true);
    expect(hasCard(answerWith([]))).toBe(false);
    expect(hasCard(answerWith([day], false))).toBe(false);
    expect(hasCard(undefined)).toBe(false);
    expect(dayScreen(known({ answer: answerWith([]) }), 0).zones).toHaveLength(1);
  });
});
