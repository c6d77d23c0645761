// What the view at the wall shows: one number, what it is, and two columns of large zones. Pure: from where the view
// stands and what the engine said to what is on the screen.
import type { Answer } from "../app/answer";
import type { CourseAtWall, CourseReply } from "../engine/contract";
import { words } from "../words/words";
import { kChecks, kFewestUnits, kMeasured, type Question } from "./entries";
import { stepsText, type Tape } from "./lengths";
import type { Entering, EntryKind, Face, WallState } from "./state";

export type Act =
  | { readonly do: "face"; readonly face: Face }
  | { readonly do: "more"; readonly page: number }
  | { readonly do: "begin"; readonly kind: EntryKind; readonly way?: number }
  | { readonly do: "pick"; readonly pick: string }
  | { readonly do: "way"; readonly way: number }
  | { readonly do: "step"; readonly by: number }
  | { readonly do: "turn" }
  | { readonly do: "page"; readonly page: number }
  | { readonly do: "next-unit" }
  | { readonly do: "enough" }
  | { readonly do: "lifted" }
  | { readonly do: "take" }
  | { readonly do: "likely" }
  | { readonly do: "as-read" }
  | { readonly do: "back" }
  | { readonly do: "undo" }
  | { readonly do: "laid" }
  | { readonly do: "course"; readonly by: number }
  | { readonly do: "side" }
  | { readonly do: "aloud" }
  | { readonly do: "hand" }
  | { readonly do: "light" }
  | { readonly do: "leave" };

export interface Zone {
  readonly label: string;
  readonly act: Act;
  /// The one that is meant to be pressed next.
  readonly first?: boolean;
}

export interface Screen {
  readonly lead: string;
  readonly number: string;
  readonly under: readonly string[];
  /// What a touch of the number does.
  readonly turn?: { readonly label: string; readonly act: Act };
  readonly zones: readonly Zone[];
}

export interface Known {
  readonly state: WallState;
  readonly tape: Tape;
  readonly course: CourseReply | undefined;
  readonly answer: Answer | undefined;
  readonly question: Question | undefined;
  /// Jambs of this side, for what is found: pick and name.
  readonly jambs: readonly { readonly pick: string; readonly name: string }[];
  readonly undoable: boolean;
  readonly awake: boolean;
  readonly readOnly: boolean;
  readonly said: string;
}

type Mark = CourseAtWall["marks"][number];

/// The next mark to be met in the run that is laid now.
export function nextMark(course: CourseAtWall | undefined): Mark | undefined {
  if (course === undefined || course.run < 0) return undefined;
  const laid = course.runs[course.run]?.laid ?? 0;
  const inRun = course.marks.filter((mark) => mark.run === course.run);
  return inRun.find((mark, index) => mark.to_read === true && index + 1 > laid);
}

/// The block end at which the run stands now; none at its start.
export function lastMark(course: CourseAtWall | undefined): Mark | undefined {
  if (course === undefined || course.run < 0) return undefined;
  const laid = course.runs[course.run]?.laid ?? 0;
  return course.marks.filter((mark) => mark.run === course.run)[laid - 1];
}

const w = words.wall;

function name(known: Known): string {
  return `${known.state.side}, ${w.course(known.state.course)}`;
}

function notes(known: Known): string[] {
  return [known.readOnly ? w.readOnly : "", known.said, known.awake ? "" : w.maySleep].filter((text) => text !== "");
}

/// "3 x 5/16"" of three equal joints, else one after the other.
export function jointsText(joints: readonly string[]): string {
  const groups: { text: string; count: number }[] = [];
  for (const text of joints) {
    const last = groups.at(-1);
    if (last?.text === text) last.count += 1;
    else groups.push({ text, count: 1 });
  }
  return groups.map((group) => (group.count === 1 ? group.text : `${group.count} × ${group.text}`)).join(", ");
}

function faceScreen(known: Known, face: Face): Screen {
  const course = known.course?.course;
  const mark = nextMark(course);
  const zones: readonly Zone[] = [
    { label: w.short, act: { do: "begin", kind: "mark", way: -1 } },
    { label: w.past, act: { do: "begin", kind: "mark", way: 1 } },
    { label: w.onIt, act: { do: "begin", kind: "mark", way: 0 }, first: true },
    { label: w.more, act: { do: "more", page: 0 } },
  ];
  if (course === undefined || mark === undefined) {
    const text = course === undefined ? "" : course.runs.length === 0 ? w.stopped : w.courseLaid;
    return {
      lead: name(known),
      number: course === undefined ? "…" : "✓",
      under: [text, ...notes(known)],
      zones: [
        { label: w.courseUp, act: { do: "course", by: 1 }, first: true },
        { label: w.nextSide, act: { do: "side" } },
        { label: w.undo, act: { do: "undo" } },
        { label: w.more, act: { do: "more", page: 0 } },
      ],
    };
  }
  const run = course.runs[course.run];
  if (face === "joints") {
    const next = run?.next;
    const few = next?.what === "joints" ? jointsText(next.joints) : (next?.text ?? "");
    const lines = [
      next?.outside_working === true ? w.outside : "",
      next?.instead === undefined ? "" : w.or(next.instead.text),
      ...(next?.loses ?? []).map(w.loses),
    ];
    return {
      lead: `${name(known)} · ${w.nextJoints}`,
      number: few,
      under: [...lines.filter((text) => text !== ""), ...notes(known)],
      turn: { label: w.thisBed, act: { do: "face", face: "bed" } },
      // Units that come up take what was read at their marks with them.
      zones:
        next?.what === "lay-again"
          ? [
              { label: w.more, act: { do: "more", page: 0 } },
              { label: w.lifted, act: { do: "lifted" }, first: true },
            ]
          : next?.instead === undefined
            ? zones
            : [...zones.slice(0, 3), { label: w.lifted, act: { do: "lifted" } }],
    };
  }
  if (face === "bed") {
    const gauge = known.answer?.laying?.gauges.find((one) => one.side === known.state.side);
    const bed = gauge?.beds.find((one) => one.course === known.state.course);
    return {
      lead: `${name(known)} · ${w.thisBed}`,
      number: bed?.bed.text ?? known.course?.joints.planned.text ?? "",
      under: [bed === undefined ? w.planned : "", ...notes(known)].filter((text) => text !== ""),
      turn: { label: w.nextMark, act: { do: "face", face: "mark" } },
      zones,
    };
  }
  const both = mark.at.both.split(" = ");
  return {
    lead: `${name(known)} · ${w.nextMark} ${w.from(course.from)}`,
    number: mark.at.text,
    under: [
      [both[1] === undefined ? "" : `= ${both[1]}`, w.endOfUnit(mark.unit ?? 0)]
        .filter((text) => text !== "")
        .join(" · "),
      ...notes(known),
    ],
    turn: { label: w.nextJoints, act: { do: "face", face: "joints" } },
    zones,
  };
}

function moreScreen(known: Known, page: number): Screen {
  const { state } = known;
  const all: readonly Zone[] = [
    { label: w.undo, act: { do: "undo" } },
    { label: w.done, act: { do: "laid" } },
    { label: w.courseUp, act: { do: "course", by: 1 } },
    { label: w.nextSide, act: { do: "side" } },
    { label: w.gauge, act: { do: "begin", kind: "gauge" } },
    { label: w.gap, act: { do: "begin", kind: "gap" } },
    { label: w.set, act: { do: "begin", kind: "set" } },
    { label: w.check, act: { do: "begin", kind: "check" } },
    { label: w.row, act: { do: "begin", kind: "row" } },
    { label: w.courseDown, act: { do: "course", by: -1 } },
    { label: w.jamb, act: { do: "begin", kind: "jamb" } },
    { label: w.end, act: { do: "begin", kind: "end" } },
    { label: w.aloud, act: { do: "aloud" } },
    { label: state.hand === "right" ? w.toLeft : w.toRight, act: { do: "hand" } },
    { label: state.light === "sun" ? w.evening : w.sunlight, act: { do: "light" } },
    { label: w.leave, act: { do: "leave" } },
  ];
  return {
    lead: name(known),
    number: "",
    under: notes(known),
    zones: paged(all, page, (further) => ({ do: "more", page: further })),
  };
}

const kZones = 6;

/// As many as there is room for, and the way to the others.
function paged(all: readonly Zone[], page: number, further: (page: number) => Act): readonly Zone[] {
  const back: Zone = { label: w.back, act: { do: "back" } };
  if (all.length < kZones) return [...all, back];
  const each = kZones - 2;
  const next = (page + 1) * each < all.length ? page + 1 : 0;
  return [...all.slice(page * each, (page + 1) * each), { label: w.nextPage, act: further(next) }, back];
}

function picksOf(known: Known, kind: EntryKind): readonly { readonly pick: string; readonly name: string }[] {
  if (kind === "check") return kChecks.map((pick) => ({ pick, name: w.checks[pick] ?? pick }));
  if (kind === "row") return kMeasured.map((pick) => ({ pick, name: w.measured[pick] }));
  return known.jambs;
}

function pickScreen(known: Known, entry: Entering): Screen {
  const picks = picksOf(known, entry.kind).map(({ pick, name }): Zone => ({ label: name, act: { do: "pick", pick } }));
  return {
    lead: name(known),
    number: entry.kind === "check" ? w.whichCheck : entry.kind === "row" ? w.whichRow : w.whichJamb,
    under: [...(picks.length === 0 ? [w.noOpening] : []), ...notes(known)],
    zones: paged(picks, entry.page ?? 0, (page) => ({ do: "page", page })),
  };
}

export function needsPick(entry: Entering): boolean {
  return entry.pick === "" && (entry.kind === "check" || entry.kind === "jamb" || entry.kind === "row");
}

function stepZones(entry: Entering): readonly Zone[] {
  const step = (by: number): Zone => ({ label: by < 0 ? `−${-by}` : `+${by}`, act: { do: "step", by } });
  const way = entry.down === true ? -1 : 1;
  // One unit is within a step or two of the next one.
  if (entry.pick === "each")
    return [
      step(-1),
      step(1),
      { label: w.nextUnit, act: { do: "next-unit" }, first: true },
      ...(entry.at + 1 < kFewestUnits ? [] : [{ label: w.enough, act: { do: "enough" } } as const]),
      { label: w.back, act: { do: "back" } },
    ];
  return [
    step(-way),
    step(way),
    step(5 * way),
    step(10 * way),
    { label: w.back, act: { do: "back" } },
    { label: w.take, act: { do: "take" }, first: true },
  ];
}

function enterScreen(known: Known, entry: Entering): Screen {
  if (needsPick(entry)) return pickScreen(known, entry);
  const question = known.question;
  const sign = entry.signs[entry.at] ?? 1;
  const value = entry.values[entry.at] ?? 0;
  if (question?.ways !== undefined && sign === 0) {
    const [above, below, level] = question.ways;
    return {
      lead: name(known),
      number: question.title,
      under: notes(known),
      zones: [
        { label: below, act: { do: "way", way: -1 } },
        { label: above, act: { do: "way", way: 1 } },
        { label: level, act: { do: "way", way: 0 }, first: true },
        { label: w.back, act: { do: "back" } },
      ],
    };
  }
  const way = question?.ways === undefined ? "" : sign < 0 ? question.ways[1] : question.ways[0];
  const run = known.course?.course.runs[known.course.course.run];
  const next =
    entry.kind === "mark" && run?.next.what === "joints" ? `${w.nextJoints}: ${jointsText(run.next.joints)}` : "";
  return {
    lead: `${name(known)} · ${question?.title ?? ""}`,
    number: `${stepsText(value, known.tape)}${way === "" ? "" : ` ${way.toLowerCase()}`}`,
    under: [next, ...notes(known)].filter((text) => text !== ""),
    // What has a way is small; a plain length may have to go down a good deal.
    ...(entry.pick === "each" || question?.ways !== undefined
      ? {}
      : { turn: { label: entry.down === true ? w.countUp : w.countDown, act: { do: "turn" } } as const }),
    zones: stepZones(entry),
  };
}

function questionScreen(known: Known, entry: Entering): Screen {
  const doubtful = known.course?.course.marks.find(
    (mark) => mark.at.nm === entry.mark && mark.run !== undefined,
  )?.doubtful;
  const likely = doubtful?.past !== undefined;
  return {
    lead: name(known),
    number: "?",
    under: [
      doubtful === undefined ? "" : likely ? w.doubtful(doubtful.why, doubtful.likely) : w.doubtfulBare(doubtful.why),
      ...notes(known),
    ].filter((text) => text !== ""),
    zones: [
      ...(likely ? [{ label: w.itIs, act: { do: "likely" }, first: true } as const] : []),
      { label: w.asRead, act: { do: "as-read" } },
      { label: w.back, act: { do: "back" } },
    ],
  };
}

/// {0} and {1} of a sentence.
function filled(pattern: string, ...values: readonly string[]): string {
  return values.reduce((text, value, index) => text.replace(`{${index}}`, value), pattern);
}

/// What an entry came to, in a few lines.
export function outcomeLines(answer: Answer | undefined, entry: number): readonly string[] {
  const laying = answer?.laying;
  if (laying === undefined) return [];
  const check = laying.checks.find((one) => one.entry === entry);
  if (check !== undefined)
    return [w.verdicts[check.verdict] ?? "", w.limits(check.least.text, check.most.text), check.rule];
  const set = laying.sets.find((one) => one.entry === entry);
  if (set !== undefined) {
    const taps = set.taps.map((tap) => w.taps(w.tapCorners[tap.corner] ?? tap.corner, tap.down.text));
    const line = set.from_line?.nm ?? 0;
    const move =
      line === 0
        ? []
        : [line < 0 ? w.in(set.from_line?.text.replace("-", "") ?? "") : w.out(set.from_line?.text ?? "")];
    return [...(set.lift ? [w.lift] : taps.length === 0 ? [w.liesRight] : taps), ...move];
  }
  const gap = laying.gaps.find((one) => one.entry === entry);
  if (gap !== undefined) {
    const closure = gap.closure;
    if (closure === undefined) return [w.noClosure];
    const pattern = closure.next_to_last ? w.nextToLast : (w.closures[closure.piece] ?? "");
    return [filled(pattern, closure.length.text, closure.cut?.text ?? ""), w.joints(closure.joint.text)];
  }
  const gauge = laying.gauges.find((one) => one.entry === entry);
  if (gauge !== undefined) {
    const beds = gauge.beds.map((one) => one.bed.text);
    return gauge.to === "" ? [] : [beds.length === 0 ? w.noBeds(gauge.to) : w.beds(gauge.to, jointsText(beds))];
  }
  return [];
}

function toldScreen(known: Known, kind: EntryKind, id: string): Screen {
  const log = (known.answer?.job as { laid?: readonly { id: string }[] } | undefined)?.laid ?? [];
  const lines = [
    ...outcomeLines(
      known.answer,
      log.findIndex((entry) => entry.id === id),
    ),
  ];
  const batch = known.answer?.laying?.batch;
  if (kind === "row" && batch !== undefined)
    lines.push(w.mean(batch.mean_exact, w.verdicts[batch.within_tolerance] ?? ""));
  if (kind === "jamb" || kind === "end") lines.push(w.resolved);
  return {
    lead: name(known),
    number: lines[0] ?? "✓",
    under: [...lines.slice(1), ...notes(known)],
    zones: [
      { label: w.undo, act: { do: "undo" } },
      { label: w.nextMark, act: { do: "face", face: "mark" }, first: true },
    ],
  };
}

export function screenOf(known: Known): Screen {
  const { place } = known.state;
  switch (place.screen) {
    case "face":
      return faceScreen(known, place.face);
    case "more":
      return moreScreen(known, place.page);
    case "enter":
      return enterScreen(known, place.entry);
    case "question":
      return questionScreen(known, place.entry);
    case "told":
      return toldScreen(known, place.kind, place.id);
  }
}
