// What the engine tells the page, so that the page works nothing out of it: against values found by hand.
import { readFileSync } from "node:fs";
import { beforeAll, describe, expect, test } from "vitest";
import type { Answer, NewPart, Reply, Request, SideHandle } from "../../engine/contract";
import { type Engine, readReply } from "../../engine/glue";
import { type Json, readJson, textAt, withValue } from "../../job/pointer";
import { entriesOf } from "../../job/strikes";
import { example, realEngine } from "./real_engine";

const kInch = 25_400_000; // nanometres, by definition of the inch
const kExamples = [
  "kiln-house",
  "glaze-store",
  "clay-store",
  "pug-mill-shop",
  "hillside-shed",
  "drying-shed",
  "wash-stand",
] as const;

let engine: Engine;
beforeAll(async () => {
  engine = await realEngine();
});

const ask = (request: Omit<Request, "border">): Reply =>
  readReply(engine.ask(JSON.stringify({ border: 1, budget: 0, ...request })));

function answerTo(job: string): Answer {
  const { answer } = ask({ job });
  if (answer === undefined) throw new Error("not solved");
  return answer;
}

describe("lengths alone", () => {
  const written = (tape: "inches" | "millimetres", write: readonly number[]) =>
    ask({ lengths: { tape, write } }).head.lengths?.written;

  test("are written as they are read off a tape: sixteenths in lowest terms, no feet, a minus in front", () => {
    // 890 sixteenths are 55 whole inches (880) and ten sixteenths, 5/8.
    expect(written("inches", [0, 1, 2, 8, 16, 19, 250, 890, -3])).toEqual([
      ...[`0"`, `1/16"`, `1/8"`, `1/2"`, `1"`, `1 3/16"`, `15 5/8"`, `55 5/8"`, `-3/16"`],
    ]);
    expect(written("millimetres", [0, 7, 1200, -7])).toEqual(["0 mm", "7 mm", "1200 mm", "-7 mm"]);
  });

  test("are read back as that many steps, and nothing is solved for it", () => {
    const steps = Array.from({ length: 500 }, (_, at) => at * 7 - 1000);
    for (const [tape, step] of [["inches", kInch / 16] as const, ["millimetres", 1_000_000] as const]) {
      for (const [at, text] of (written(tape, steps) ?? []).entries()) {
        const { head } = ask({ lengths: { tape, read: text } });
        expect(head.lengths?.read, text).toEqual({ nm: (steps[at] ?? 0) * step, basis: "nominal" });
        expect(head.sections).toEqual(["reply.json"]);
      }
    }
  });

  test.each([
    ["inches", "26 ft", 312 * kInch, "nominal"],
    ["inches", `23'-11 5/8" actual`, 287.625 * kInch, "actual"],
    ["inches", "4.451 m", 4_451_000_000, "nominal"],
    ["millimetres", "2500", 2_500_000_000, "nominal"],
    ["millimetres", "2390 mm actual", 2_390_000_000, "actual"],
  ] as const)("in %s %s is %d nm, %s", (tape, read, nm, basis) => {
    expect(ask({ lengths: { tape, read } }).head.lengths?.read).toEqual({ nm, basis });
  });

  test.each(["", "26 cubits", `3 3/7"`, "actual", `5" 5"`])("'%s' is refused with what would mend it", (read) => {
    const { head, refusals } = ask({ lengths: { tape: "inches", read } });
    expect(head.state).toBe("refused");
    expect(head.lengths).toBeUndefined();
    expect(refusals?.refusals.map(({ code, place }) => [code, place])).toEqual([["not-a-length", "/lengths/read"]]);
    expect(refusals?.refusals[0]?.remedy).not.toBe("");
  });

  test.each<[string, string]>([
    [`{"border": 1, "lengths": {"tape": "inches"}, "job": "{}"}`, "one of job and begin is wanted, or lengths"],
    [`{"border": 1, "lengths": {"tape": "ells"}}`, "/lengths/tape: "],
    [`{"border": 1, "lengths": {"tape": "inches", "read": 7}}`, "/lengths/read: a text is wanted"],
    [`{"border": 1, "lengths": {"tape": "inches", "write": [0.5]}}`, "/lengths/write: whole steps"],
    [`{"border": 1, "lengths": {"tape": "inches", "write": [9007199254740991]}}`, "/lengths/write: whole steps"],
    [`{"border": 1, "lengths": {"tape": "inches", "way": 1}}`, "/lengths/way: there is no such field"],
  ])("a request that is none is answered in words: %s", (request, words) => {
    const { head } = readReply(engine.ask(request));
    expect(head.state).toBe("bad-request");
    expect(head.message).toContain(words);
  });
});

describe("an opening put in", () => {
  const openingsOf = (job: string | undefined): readonly Json[] => entriesOf(readJson(job ?? "") ?? {}, "/openings");
  const putIn = (job: string, place: string, what: NewPart): Reply =>
    ask({ job, edits: [{ do: "put-in", what, place }] });
  const begun = (length: string, width: string, series: string): string =>
    ask({ begin: { length, width, height: series.startsWith("us") ? `96"` : "2400 mm", series } }).job ?? "";
  const codesOf = (reply: Reply) => reply.refusals?.refusals.map((refusal) => refusal.code) ?? [];

  test("goes four feet from the corner, then a whole unit and its joint past what stands there, while there is room", () => {
    // 24 ft are 287 5/8 in actual. Doors are 40 in wide; each is 16 in past the one before (which ends on the grid), so
    // at 48, 48 + 40 + 16 = 104, 160 and 216 in. The next would be at 272 and end at 312: beyond the wall.
    let job = begun("24'", "16'", "us-8");
    const told: string[] = [];
    for (let count = 0; count < 4; ++count) {
      const reply = putIn(job, "/outline/sides/0", "door");
      expect(reply.head.state).toBe("solved");
      job = reply.job ?? "";
      told.push(textAt(openingsOf(job).at(-1) ?? null, "/place/at"));
    }
    expect(told).toEqual(["4'-0\"", "8'-8\"", "13'-4\"", "18'-0\""]);
    const full = putIn(job, "/outline/sides/0", "door");
    expect(codesOf(full)).toContain("openings-overlap");
    expect(openingsOf(full.job)).toHaveLength(5);
  });

  test("is a bare hole of a common size, stated from the side's start; a window's sill is on the fifth course", () => {
    expect(openingsOf(putIn(begun("24'", "16'", "us-8"), "/outline/sides/1", "window").job)).toEqual([
      {
        name: "W1",
        on: "BC",
        place: { from: "B", at: "4'-0\"" },
        masonry: { width: "4'-0\"", height: "3'-4\"" },
        sill_course: 5,
      },
    ]);
    expect(openingsOf(putIn(begun("8 m", "5 m", "au-190"), "/outline/sides/2", "overhead").job)).toEqual([
      {
        name: "D1",
        on: "CD",
        place: { from: "C", at: "1200 mm" },
        masonry: { width: "2800 mm", height: "2200 mm" },
      },
    ]);
  });

  test("stands on the grid of the side's own block: six half units of 215 + 10 mm are 1350 mm", () => {
    const [door] = openingsOf(putIn(begun("9 m", "5.4 m", "uk-215"), "/outline/sides/0", "door").job);
    expect(textAt(door ?? null, "/place/at")).toBe("1350 mm");
  });

  test("goes round what the drawings have: the kiln house's front", () => {
    // AB is 335 5/8 in, D1 stands from 111 5/8 to 224 in. A door at 48 ends at 88, 16 in before D1 at the latest. A
    // window of 48 in would end at 96 and want D1 at 112: it goes past D1, to 224 + 16 = 240, and ends at 288, which
    // leaves 47. An overhead door of 112 in fits nowhere.
    const at = (what: NewPart): string =>
      textAt(openingsOf(putIn(example("kiln-house"), "/outline/sides/0", what).job).at(-1) ?? null, "/place/at");
    expect([at("door"), at("window")]).toEqual(["4'-0\"", "20'-0\""]);
    expect(codesOf(putIn(example("kiln-house"), "/outline/sides/0", "overhead"))).toContain("openings-overlap");
  });

  test.each(["clay-store", "glaze-store", "kiln-house"])(
    "%s: a door put into any side is laid or refused in words",
    (name) => {
      for (const side of answerTo(example(name)).sides) {
        const reply = putIn(example(name), side.place, "door");
        const made = openingsOf(reply.job).at(-1) ?? null;
        expect(reply.head.state).not.toBe("bad-request");
        if (reply.answer !== undefined)
          expect(reply.answer.openings.at(-1)).toMatchObject({ name: textAt(made, "/name"), side: side.name });
      }
    },
  );

  test("gets a name that is free", () => {
    const named = (names: readonly string[]): string => {
      const openings = names.map((name, at) => ({
        name,
        on: "AB",
        place: { from: "A", at: `${48 + 56 * at}"` },
        masonry: { width: `40"`, height: `40"` },
      }));
      return JSON.stringify(withValue(readJson(begun("40'", "16'", "us-8")) ?? {}, "/openings", openings));
    };
    const name = (names: readonly string[], what: NewPart): string =>
      textAt(openingsOf(putIn(named(names), "/outline/sides/2", what).job).at(-1) ?? null, "/name");
    expect(name(["D1", "D3"], "door")).toBe("D2");
    expect(name(["D1", "D2"], "overhead")).toBe("D3");
    expect(name(["D1", "D2"], "window")).toBe("W1");
  });

  test("asked for where no side is, or of no kind, is told in words", () => {
    expect(putIn(example("kiln-house"), "/outline/sides/9", "door").head.message).toBe("There is no such side.");
    const gate = { border: 1, job: "{}", edits: [{ do: "put-in", what: "gate", place: "" }] };
    expect(readReply(engine.ask(JSON.stringify(gate))).head.message).toContain("/edits/0/what: ");
  });
});

describe("the answer", () => {
  test("tells the finest step of the job's tape, and the step of its block", () => {
    const kiln = answerTo(example("kiln-house"));
    expect(kiln.tape_step).toEqual({ text: `1/16"`, nm: kInch / 16 });
    // A half of 7 5/8 in and a joint of 3/8 in.
    expect(kiln.series.map((series) => series.pitch.nm)).toEqual([8 * kInch]);
    expect(answerTo(example("clay-store")).tape_step.nm).toBe(1_000_000);
  });

  test("tells of a rectangle which side is across, of no other outline", () => {
    const across = (name: string) => answerTo(example(name)).sides.map((side) => side.across);
    const sides = (...order: readonly number[]) => order.map((index) => `/outline/sides/${index}`);
    expect(across("kiln-house")).toEqual(sides(2, 3, 0, 1));
    expect(new Set(across("glaze-store"))).toEqual(new Set([undefined]));
    expect(new Set(across("wash-stand"))).toEqual(new Set([undefined]));
  });

  test("tells a rectangle's sides across also where it is walked with the building on the left", () => {
    const job = readJson(example("kiln-house")) ?? {};
    const sides = entriesOf(job, "/outline/sides").map((side) => withValue(side, "/turn", "left"));
    const left = withValue(withValue(withValue(job, "/outline/sides", sides), "/openings", []), "/steel", {});
    const { sides: told } = answerTo(JSON.stringify(left));
    expect(told).toHaveLength(4);
    for (const side of told) expect(told.find((one) => one.place === side.across)?.nominal.nm).toBe(side.nominal.nm);
    expect(new Set(told.map((side) => side.across)).size).toBe(4);
  });

  test("tells a mark in inches alone where that is another form", () => {
    const course = (job: string) => ask({ job, course: { side: "AB", course: 1 } }).course?.course.marks ?? [];
    const kiln = course(example("kiln-house"));
    // 4'-7 5/8" is 48 + 7 5/8.
    expect(kiln.find((mark) => mark.at.text === `4'-7 5/8"`)?.at.other).toBe(`55 5/8"`);
    for (const { at } of kiln) expect(at.other === undefined ? at.text : `${at.text} = ${at.other}`).toBe(at.both);
    for (const { at } of course(example("clay-store"))) expect(at.other).toBeUndefined();
  });
});

describe("units in space", () => {
  test("have the marks of the sheets, as the glossary lists them", () => {
    const glossary = readFileSync(new URL("../../../docs/glossary.md", import.meta.url), "utf8");
    const { solids } = ask({ job: example("kiln-house"), solids: true });
    if (solids === undefined) throw new Error("no solids");
    const marks = new Set(solids.marks.filter((mark) => mark !== ""));
    expect(marks.size).toBeGreaterThan(2);
    for (const mark of marks) expect(glossary).toMatch(new RegExp(`\\b${mark} [a-z]`));
    solids.kinds.forEach((kind, at) => {
      const [mark, fill] = [solids.marks[at], solids.fills[at]];
      if (solids.cut[at] === 1) expect([mark, fill]).toEqual(["CU", "rising"]);
      else if (kind === "full" || kind === "corner") expect([mark, fill]).toEqual(["", "plain"]);
      else if (kind === "half") expect([mark, fill]).toEqual(["HA", "tint"]);
      else expect(mark, kind).not.toBe("");
    });
  });
});

describe("where a side's length is lettered", () => {
  const kLetters = 3_500; // micrometres high, as ISO 3098 has them

  /// Every text of a drawing: what it says, and the middle of its letters; turned ones read upwards.
  function textsOf(svg: string) {
    const found = svg.matchAll(/<text[^>]* x="(\d+)" y="(\d+)"([^>]*)>([^<]*)<\/text>/g);
    return [...found].map(([, x = "", y = "", more = "", words = ""]) => {
      const turned = more.includes("rotate(-90");
      const [left, foot] = [Number(x), Number(y)];
      const middle = turned ? { x: left - kLetters / 2, y: foot } : { x: left, y: foot - kLetters / 2 };
      return { ...middle, words: words.replaceAll("&#39;", "'").replaceAll("&quot;", '"') };
    });
  }

  test.each(kExamples)("%s: the area that is told lies around that text, and clear of the corners", (name) => {
    const { head, svg, answer } = ask({ job: example(name), drawings: ["plan-course-1"] });
    const texts = textsOf(svg("plan-course-1") ?? "");
    const sides = head.drawings?.[0]?.handles.filter((one): one is SideHandle => one.kind === "side") ?? [];
    expect(sides).toHaveLength(answer?.sides.filter((side) => !side.interior).length ?? -1);
    for (const side of sides) {
      const length = answer?.sides.find((one) => one.name === side.name)?.actual.text ?? "no such side";
      const text = texts.find(({ words }) => words.startsWith(`${side.name}  ${length}`));
      if (text === undefined) throw new Error(`${side.name} is not lettered`);
      const { x, y, width, height } = side.length;
      expect(Math.abs(x + width / 2 - text.x)).toBeLessThanOrEqual(1);
      expect(Math.abs(y + height / 2 - text.y)).toBeLessThanOrEqual(1);
      const lying = side.outward[0] === 0;
      expect(lying ? height : width).toBe(kLetters + 2 * 1_550);
      expect(lying ? width : height).toBeLessThanOrEqual((lying ? side.width : side.height) - 9_000);
    }
  });

  test("the kiln house's front: 12 mm out, its letters' middle 2.9 mm above the line", () => {
    const { head } = ask({ job: example("kiln-house"), drawings: ["plan-course-1"] });
    const side = head.drawings?.[0]?.handles.find((one): one is SideHandle => one.kind === "side" && one.name === "AB");
    if (side === undefined) throw new Error("no side AB");
    // The outer face is the lower one; the line 12 000 below it. Letters 3 500 high stand a third of that above the line:
    // their middle is 1 167 + 1 750 above it.
    const middle = side.length.y + side.length.height / 2;
    expect(Math.abs(middle - (side.y + side.height + 12_000 - 2_917))).toBeLessThanOrEqual(1);
  });
});
