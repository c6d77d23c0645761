// What the view at the wall shows: one number, what it is, and two columns of large zones. Pure: from where the view
// stands and what the engine said to what is on the screen.
import type { Answer } from "../app/answer";
import type { CourseAtWall, CourseReply } from "../engine/contract";
import { words } from "../words/words";
import { kChecks, kFewestUnits, kMeasured, type Question } from "./entries";
import { stepsText, type Tape } from "./lengths";
import { jointsText, outcomeLines } from "./outcomes";
import { closingGap, edgeAt, type Mark, nextMark, startMark } from "./places";
import type { Entering, EntryKind, Face, WallState } from "./state";

export type Act =
  | { readonly do: "face"; readonly face: Face }
  | { readonly do: "more"; readonly page: number }
  /// `mark`: the mark that is on the screen, nanometres; a reading is of that one and no other.
  | {
      readonly do: "begin";
      readonly kind: EntryKind;
      readonly way?: number;
      readonly mark?: number;
      readonly pick?: string;
    }
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
  | { readonly do: "redo" }
  | { readonly do: "look" }
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
  /// Nothing but a moment's wait: its zones come after that moment.
  readonly passing?: true;
}

export interface Known {
  readonly state: WallState;
  readonly tape: Tape;
  /// Of this very side, course and job; undefined while it is still asked for.
  readonly course: CourseReply | undefined;
  /// Something is on its way: what stands on the screen is not to be touched.
  readonly waiting: boolean;
  /// The engine did not answer.
  readonly failed: boolean;
  readonly answer: Answer | undefined;
  readonly question: Question | undefined;
  /// Jambs of this side, for what is found: pick and name.
  readonly jambs: readonly { readonly pick: string; readonly name: string }[];
  readonly undoable: boolean;
  /// What was struck last may be brought back.
  readonly redoable: boolean;
  readonly awake: boolean;
  readonly readOnly: boolean;
  readonly said: string;
}

const w = words.wall;

function name(known: Known): string {
  return `${known.state.side}, ${w.course(known.state.course)}`;
}

function notes(known: Known): string[] {
  return [known.readOnly ? w.readOnly : "", known.said, known.awake ? "" : w.maySleep].filter((text) => text !== "");
}

const kMore: Zone = { label: w.more, act: { do: "more", page: 0 } };
const kUndo: Zone = { label: w.undo, act: { do: "undo" } };
const kToMark: Zone = { label: w.nextMark, act: { do: "face", face: "next" }, first: true };

/// Nothing of this course is known yet: nothing on the screen can be meant.
function waitingScreen(known: Known): Screen {
  const again: Zone = { label: w.again, act: { do: "look" }, first: true };
  const leave: Zone = { label: w.leave, act: { do: "leave" } };
  const zones = known.failed ? [again, kMore, leave] : [leave];
  return { lead: name(known), number: "…", under: notes(known), zones, passing: true };
}

function endScreen(known: Known, course: CourseAtWall | undefined): Screen {
  return {
    lead: name(known),
    number: course === undefined ? "–" : "✓",
    under: [course === undefined || course.runs.length === 0 ? w.stopped : w.courseLaid, ...notes(known)],
    zones: [
      { label: w.courseUp, act: { do: "course", by: 1 }, first: true },
      { label: w.nextSide, act: { do: "side" } },
      kUndo,
      kMore,
    ],
  };
}

/// "3'-11 5/8"" and, where it is another, "= 47 5/8"".
function bothForms(mark: Mark): string {
  const second = mark.at.both.split(" = ")[1];
  return second === undefined ? "" : `= ${second}`;
}

function edgeWords(mark: Mark | undefined): string {
  if (mark === undefined) return "";
  const { kind, opening = "" } = mark;
  if (kind === "near-jamb") return w.nearJamb(opening);
  if (kind === "far-jamb") return w.farJamb(opening);
  return kind === "joint-near-edge" ? w.jointNear : w.jointFar;
}

/// Where the run beyond an opening or a control joint starts.
function startScreen(known: Known, course: CourseAtWall, start: Mark): Screen {
  const found: Zone = {
    label: w.elsewhere,
    act: { do: "begin", kind: "jamb", pick: `far-jamb ${start.opening ?? ""}` },
  };
  return {
    lead: `${name(known)} · ${w.startsAt} ${w.from(course.from)}`,
    number: start.at.text,
    under: [[bothForms(start), edgeWords(start)].filter((text) => text !== "").join(" · "), ...notes(known)],
    zones: [
      { ...kToMark, act: { do: "face", face: "mark" } },
      ...(start.kind === "far-jamb" ? [found] : []),
      kUndo,
      kMore,
    ],
  };
}

function markScreen(known: Known, course: CourseAtWall, mark: Mark): Screen {
  const { nm } = mark.at;
  const what = [bothForms(mark), w.endOfUnit(mark.unit ?? 0), edgeWords(edgeAt(course, nm))];
  return {
    lead: `${name(known)} · ${w.nextMark} ${w.from(course.from)}`,
    number: mark.at.text,
    under: [what.filter((text) => text !== "").join(" · "), ...notes(known)],
    turn: { label: w.nextJoints, act: { do: "face", face: "joints" } },
    zones: [
      { label: w.short, act: { do: "begin", kind: "mark", way: -1, mark: nm } },
      { label: w.past, act: { do: "begin", kind: "mark", way: 1, mark: nm } },
      { label: w.onIt, act: { do: "begin", kind: "mark", way: 0, mark: nm }, first: true },
      kMore,
    ],
  };
}

/// No mark is on this screen, so none can be read here.
function jointsScreen(known: Known, course: CourseAtWall): Screen {
  const next = course.runs[course.run]?.next;
  const lines = [
    next?.outside_working === true ? w.outside : "",
    next?.instead === undefined ? "" : w.or(next.instead.text),
    ...(next?.loses ?? []).map(w.loses),
  ];
  const lifted: Zone = { label: w.lifted, act: { do: "lifted" } };
  return {
    lead: `${name(known)} · ${w.nextJoints}`,
    number: next?.what === "joints" ? jointsText(next.joints) : (next?.text ?? ""),
    under: [...lines.filter((text) => text !== ""), ...notes(known)],
    turn: { label: w.thisBed, act: { do: "face", face: "bed" } },
    // Units that come up take what was read at their marks with them.
    zones:
      next?.what === "lay-again"
        ? [{ ...lifted, first: true }, kUndo, kMore]
        : [kToMark, ...(next?.instead === undefined ? [] : [lifted]), kUndo, kMore],
  };
}

function bedScreen(known: Known): Screen {
  const gauge = known.answer?.laying?.gauges.find((one) => one.side === known.state.side);
  const bed = gauge?.beds.find((one) => one.course === known.state.course);
  return {
    lead: `${name(known)} · ${w.thisBed}`,
    number: bed?.bed.text ?? known.course?.joints.planned.text ?? "",
    under: [bed === undefined ? w.planned : "", ...notes(known)].filter((text) => text !== ""),
    turn: { label: w.nextMark, act: { do: "face", face: "next" } },
    zones: [kToMark, { label: w.gauge(known.tape), act: { do: "begin", kind: "gauge" } }, kUndo, kMore],
  };
}

function faceScreen(known: Known, face: Face): Screen {
  const course = known.course?.course;
  if (course === undefined && (known.waiting || known.failed)) return waitingScreen(known);
  const mark = nextMark(course);
  if (course === undefined || mark === undefined) return endScreen(known, course);
  if (face === "joints") return jointsScreen(known, course);
  if (face === "bed") return bedScreen(known);
  const start = face === "next" ? startMark(course) : undefined;
  return start === undefined ? markScreen(known, course, mark) : startScreen(known, course, start);
}

function moreScreen(known: Known, page: number): Screen {
  const { state } = known;
  const all: readonly Zone[] = [
    kUndo,
    ...(known.redoable ? [{ label: w.redo, act: { do: "redo" } } as const] : []),
    { label: w.done, act: { do: "laid" } },
    { label: w.courseUp, act: { do: "course", by: 1 } },
    { label: w.nextSide, act: { do: "side" } },
    { label: w.gauge(known.tape), act: { do: "begin", kind: "gauge" } },
    ...(closingGap(known.course?.course) === undefined
      ? []
      : [{ label: w.gap, act: { do: "begin", kind: "gap" } } as const]),
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
    zones: [kUndo, kToMark],
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
