// What is asked for each kind of entry, and what the log then says. Pure.
import type { LaidBody } from "../../job/laid";
import type { Json } from "../../job/pointer";
import type { Tape } from "../../job/tape";
import { words } from "../../words/words";
import type { Entering, EntryKind } from "./step";

/// One question: a length by thumb, perhaps with a way.
export interface Question {
  readonly title: string;
  /// Above and below zero; absent: a plain length.
  readonly ways?: readonly [string, string, string];
  readonly start: number;
}

/// What the questions hang on: lengths in nanometres of the job that is laid.
export interface Site {
  readonly tape: Tape;
  /// The tape's finest step, nanometres.
  readonly step: number;
  readonly side: string;
  readonly course: number;
  readonly unit: number;
  readonly joint: number;
  /// As planned: the place that is looked for, of the pick; of a check in plan how long the side is.
  readonly planned: number;
  /// The same, and the mark, as they are written: in the job's tape.
  readonly plannedText: string;
  readonly markText: string;
}

export const kChecks = ["plumb", "level", "line", "bed-joint", "head-joint", "position"] as const;
/// Ten in a row, or one unit after the other: so many at least, or nothing is known of their spread.
export const kMeasured = ["row", "each"] as const;
export const kFewestUnits = 3;

/// As many steps of the tape as come nearest to a length.
export function stepsOf(nm: number, step: number): number {
  return step === 0 ? 0 : Math.round(nm / step);
}

/// `count`: units measured so far, and the one in hand, where they are measured one by one.
export function questionsOf(kind: EntryKind, pick: string, site: Site, count = 1): readonly Question[] {
  const w = words.wall;
  const ways = [w.high, w.low, w.level] as const;
  const joint = stepsOf(site.joint, site.step);
  switch (kind) {
    case "mark":
      return [{ title: site.markText, ways: [w.past, w.short, w.onIt], start: 0 }];
    case "far":
      return [{ title: site.plannedText, ways: [w.past, w.short, w.onIt], start: 0 }];
    case "gauge":
      return [{ title: w.gauge(site.tape), ways, start: 0 }];
    case "gap":
      return [{ title: w.gapAt(site.markText), start: stepsOf(site.unit + 2 * site.joint, site.step) }];
    case "set":
      return [
        ...w.corners.map((title) => ({ title, ways, start: 0 })),
        { title: w.bed, start: joint },
        { title: w.lineGap, start: site.tape === "inches" ? 1 : 2 },
      ];
    case "check":
      return [
        pick.endsWith("joint")
          ? { title: `${w.checks[pick] ?? pick}: ${w.joint}`, start: joint }
          : { title: `${w.checks[pick] ?? pick}: ${w.off}, ${pick === "position" ? w.overSide : w.over4}`, start: 0 },
      ];
    case "row":
      return pick === "each"
        ? Array.from({ length: count }, (_, index) => ({
            title: w.unit(index + 1),
            start: stepsOf(site.unit, site.step),
          }))
        : [{ title: w.rowOf, start: stepsOf(10 * site.unit, site.step) }];
    case "jamb":
    case "end":
      return [{ title: w.foundAt, start: stepsOf(site.planned, site.step) }];
  }
}

export function begunEntry(kind: EntryKind, pick: string, mark: number, site: Site): Entering {
  const questions = questionsOf(kind, pick, site);
  return {
    kind,
    pick,
    mark,
    at: 0,
    values: questions.map((question) => question.start),
    signs: questions.map((question) => (question.ways === undefined ? 1 : 0)),
  };
}

/// The lengths that were entered, in steps of the tape. A far jamb is logged where it stands.
export function stepsIn(entry: Entering, site: Pick<Site, "planned" | "step">): readonly number[] {
  const from = entry.kind === "far" ? stepsOf(site.planned, site.step) : 0;
  return entry.values.map((value, index) => from + value * ((entry.signs[index] ?? 1) < 0 ? -1 : 1));
}

/// `texts`: the same as they are written.
function bodyOf(entry: Entering, site: Site, texts: readonly string[]): Json {
  const on = { on: site.side, course: site.course };
  const text = (index: number): string => texts[index] ?? "";
  const mark = site.markText;
  switch (entry.kind) {
    case "mark":
      return { ...on, at: mark, past: text(0) };
    case "gauge":
      return { ...on, high: text(0) };
    case "gap":
      return { ...on, at: mark, measured: text(0) };
    case "set":
      return {
        ...on,
        near_outer: text(0),
        near_inner: text(1),
        far_outer: text(2),
        far_inner: text(3),
        bed: text(4),
        line_gap: text(5),
      };
    case "check": {
      const over = entry.pick === "position" ? site.plannedText : site.tape === "inches" ? `48"` : "1200 mm";
      return { ...on, what: entry.pick, ...(entry.pick.endsWith("joint") ? {} : { over }), off: text(0) };
    }
    case "row":
      return entry.pick === "each" ? { singles: texts } : { together: 10, row: text(0) };
    case "far":
    case "jamb": {
      const [what, ...name] = entry.pick.split(" ");
      return { on: site.side, what: what ?? "near-jamb", opening: name.join(" "), at: text(0) };
    }
    case "end":
      return { on: site.side, what: "wall-end", at: text(0) };
  }
}

const kFields: Readonly<Record<EntryKind, string>> = {
  mark: "mark",
  gauge: "gauge",
  gap: "gap",
  set: "set",
  check: "check",
  row: "units",
  jamb: "found",
  far: "found",
  end: "found",
};

/// What the log says when all is answered.
export function entryBody(entry: Entering, site: Site, texts: readonly string[]): LaidBody {
  return { [kFields[entry.kind]]: bodyOf(entry, site, texts) };
}

/// What an entry of the log is called: of a kind of entry, or of a field of the log.
export function kindWords(kind: string, tape: Tape): string {
  const field = (kFields as Readonly<Record<string, string>>)[kind] ?? kind;
  return field === "gauge" ? words.wall.gauge(tape).toLowerCase() : (words.wall.kinds[field] ?? field);
}

/// Nothing is measured before it is said of what.
export function needsPick(entry: Entering): boolean {
  return entry.pick === "" && (entry.kind === "check" || entry.kind === "jamb" || entry.kind === "row");
}
