// An entry in the making: begun, answered question by question, taken or left.
import { tapeStep } from "../signals";
import type { Act } from "./acts";
import { begunEntry, needsPick, stepsOf } from "./entries";
import { toFace } from "./going";
import { course, entryNow } from "./hearing";
import { log } from "./logging";
import { closingGap, nextMark } from "./marks";
import { questionsFor, siteOf } from "./site";
import { type Entering, putState, wallState } from "./step";

/// The mark that an entry of this kind belongs to: of a reading the one that was on the screen.
function markFor(what: Extract<Act, { readonly do: "begin" }>): number {
  const now = course.value?.course;
  return (what.kind === "gap" ? closingGap(now)?.at.nm : what.mark) ?? nextMark(now)?.at.nm ?? 0;
}

export function begin(what: Extract<Act, { readonly do: "begin" }>): void {
  const { kind, way, pick: picked = "" } = what;
  const mark = markFor(what);
  const entry = begunEntry(kind, picked, mark, siteOf(kind, picked, mark));
  // On its place a far jamb is as planned: nothing is to be logged.
  if (kind === "far" && way === 0) toFace("mark");
  else if (way === undefined) putState({ place: { screen: "enter", entry } });
  else if (way === 0) void log({ ...entry, signs: [1], values: [0] });
  else putState({ place: { screen: "enter", entry: { ...entry, signs: [way], values: [1] } } });
}

function withAt<T>(list: readonly T[], at: number, value: T): readonly T[] {
  return list.map((old, index) => (index === at ? value : old));
}

/// The next question of the entry, or its end.
export function forward(entry: Entering): void {
  if (entry.at + 1 < questionsFor(entry).length) {
    putState({ place: { screen: "enter", entry: { ...entry, at: entry.at + 1, down: false } } });
    return;
  }
  const doubtful =
    entry.kind === "mark" &&
    course.value?.course.marks.some((mark) => mark.at.nm === entry.mark && mark.doubtful !== undefined);
  if (doubtful === true && wallState.value.place.screen !== "question") {
    putState({ place: { screen: "question", entry } });
    return;
  }
  void log(entry);
}

export function takeLikely(entry: Entering): void {
  const doubtful = course.value?.course.marks.find(
    (mark) => mark.at.nm === entry.mark && mark.run !== undefined,
  )?.doubtful;
  if (doubtful?.past === undefined) return;
  const steps = stepsOf(doubtful.past.nm, tapeStep.value);
  void log({ ...entry, mark: doubtful.at?.nm ?? entry.mark, values: [Math.abs(steps)], signs: [steps < 0 ? -1 : 1] });
}

export function back(): void {
  const { place } = wallState.value;
  const entry = entryNow();
  if (place.screen === "question" && entry !== undefined) {
    putState({ place: { screen: "enter", entry } });
    return;
  }
  const ways = entry === undefined ? undefined : questionsFor(entry)[entry.at]?.ways;
  if (
    entry !== undefined &&
    entry.kind !== "mark" &&
    entry.kind !== "far" &&
    ways !== undefined &&
    (entry.signs[entry.at] ?? 0) !== 0
  ) {
    putState({ place: { screen: "enter", entry: { ...entry, signs: withAt(entry.signs, entry.at, 0) } } });
  } else if (entry !== undefined && entry.at > 0) {
    putState({ place: { screen: "enter", entry: { ...entry, at: entry.at - 1 } } });
  } else {
    toFace();
  }
}

function enterAt(entry: Entering, sign: number, value: number): Entering {
  return { ...entry, signs: withAt(entry.signs, entry.at, sign), values: withAt(entry.values, entry.at, value) };
}

export function pick(entry: Entering, what: string): void {
  const begun = begunEntry(entry.kind, what, entry.mark, siteOf(entry.kind, what, entry.mark));
  putState({ place: { screen: "enter", entry: begun } });
}

export function chooseWay(entry: Entering, way: number): void {
  if (way === 0) forward(enterAt(entry, 1, 0));
  else putState({ place: { screen: "enter", entry: enterAt(entry, way, 1) } });
}

export function stepBy(entry: Entering, by: number): void {
  if (needsPick(entry)) return;
  const value = Math.max(0, (entry.values[entry.at] ?? 0) + by);
  putState({ place: { screen: "enter", entry: enterAt(entry, entry.signs[entry.at] ?? 1, value) } });
}

/// The unit in hand is measured; the next one begins as bought.
export function nextUnit(entry: Entering): void {
  const site = siteOf(entry.kind, entry.pick, entry.mark);
  const values = entry.values.slice(0, entry.at + 1);
  const signs = values.map(() => 1);
  const further = {
    ...entry,
    at: entry.at + 1,
    values: [...values, stepsOf(site.unit, site.step)],
    signs: [...signs, 1],
  };
  putState({ place: { screen: "enter", entry: further } });
}

/// Does something with the entry in the making, if there is one.
export function withEntry(what: (entry: Entering) => void): void {
  const entry = entryNow();
  if (entry !== undefined) what(entry);
}
