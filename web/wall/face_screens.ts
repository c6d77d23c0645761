// The course in hand as it stands: the mark to read next, the next joints, the bed; where it starts, where it is done.
import type { CourseAtWall } from "../engine/contract";
import { edgeAt, type Mark, nextMark, startMark } from "../state/wall/marks";
import type { Face } from "../state/wall/step";
import { words } from "../words/words";
import { jointsText } from "./outcomes";
import { kMore, type Known, kToMark, kUndo, name, notes, type Screen, type Zone } from "./screen";

const w = words.wall;

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
  return mark.at.other === undefined ? "" : `= ${mark.at.other}`;
}

function edgeWords(mark: Mark | undefined): string {
  if (mark === undefined) return "";
  const { kind, opening = "" } = mark;
  if (kind === "near-jamb") return w.nearJamb(opening);
  if (kind === "far-jamb") return w.farJamb(opening);
  return kind === "joint-near-edge" ? w.jointNear : w.jointFar;
}

/// Where the run beyond an opening or a control joint starts. A far jamb is read there as a mark is.
function startScreen(known: Known, course: CourseAtWall, start: Mark): Screen {
  const read = (label: string, way: number): Zone => ({
    label,
    act: { do: "begin", kind: "far", way, pick: `far-jamb ${start.opening ?? ""}`, mark: start.at.nm },
  });
  return {
    lead: `${name(known)} · ${w.startsAt} ${w.from(course.from)}`,
    number: start.at.text,
    under: [[bothForms(start), edgeWords(start)].filter((text) => text !== "").join(" · "), ...notes(known)],
    zones:
      start.kind === "far-jamb"
        ? [read(w.short, -1), read(w.past, 1), { ...read(w.onIt, 0), first: true }, kMore]
        : [{ ...kToMark, act: { do: "face", face: "mark" } }, kUndo, kMore],
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

export function faceScreen(known: Known, face: Face): Screen {
  const course = known.course?.course;
  if (course === undefined && (known.waiting || known.failed)) return waitingScreen(known);
  const mark = nextMark(course);
  if (course === undefined || mark === undefined) return endScreen(known, course);
  if (face === "joints") return jointsScreen(known, course);
  if (face === "bed") return bedScreen(known);
  const start = face === "next" ? startMark(course) : undefined;
  return start === undefined ? markScreen(known, course, mark) : startScreen(known, course, start);
}
