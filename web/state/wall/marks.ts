// Places of a course that the view at the wall speaks of: the next mark, where a run starts, where it closes. Pure.
import type { CourseAtWall } from "../../engine/contract";

export type Mark = CourseAtWall["marks"][number];

function marksOfRun(course: CourseAtWall, run: number): readonly Mark[] {
  return course.marks.filter((mark) => mark.run === run);
}

/// The next mark to be met in the run that is laid now.
export function nextMark(course: CourseAtWall | undefined): Mark | undefined {
  if (course === undefined || course.run < 0) return undefined;
  const laid = course.runs[course.run]?.laid ?? 0;
  return marksOfRun(course, course.run).find((mark, index) => mark.to_read === true && index + 1 > laid);
}

/// Beyond an opening or a control joint a run starts at that one's far edge, before its first unit is laid.
export function startMark(course: CourseAtWall | undefined): Mark | undefined {
  const run = course?.runs[course.run];
  if (course === undefined || run === undefined || run.laid > 0) return undefined;
  return course.marks.find(
    (mark) => (mark.kind === "far-jamb" || mark.kind === "joint-far-edge") && mark.at.nm === run.from.nm,
  );
}

/// What else stands where a unit ends: the near jamb of an opening, the near edge of a control joint.
export function edgeAt(course: CourseAtWall, nm: number): Mark | undefined {
  return course.marks.find(
    (mark) => (mark.kind === "near-jamb" || mark.kind === "joint-near-edge") && mark.at.nm === nm,
  );
}

export interface ClosingGap {
  /// Number of the unit that is laid last, between two that stand.
  readonly unit: number;
  /// Where the gap begins: the end of the unit before it, or the run's own start.
  readonly at: { readonly text: string; readonly nm: number };
}

/// The gap that closes the run in hand, or the last run of a course that is laid; none where no unit of it closes.
export function closingGap(course: CourseAtWall | undefined): ClosingGap | undefined {
  if (course === undefined || course.runs.length === 0) return undefined;
  const run = course.run < 0 ? course.runs.length - 1 : course.run;
  const marks = marksOfRun(course, run);
  const index = marks.findIndex((mark) => mark.closes === true);
  const at = index > 0 ? marks[index - 1]?.at : course.runs[run]?.from;
  return index < 0 || at === undefined ? undefined : { unit: marks[index]?.unit ?? 0, at };
}

/// How a place of this course is written, in the job's tape; "" where nothing is.
export function placeText(course: CourseAtWall | undefined, nm: number): string {
  const mark = course?.marks.find((one) => one.at.nm === nm && one.run !== undefined);
  return mark?.at.text ?? course?.runs.find((run) => run.from.nm === nm)?.from.text ?? "";
}
