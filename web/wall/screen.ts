// A screen of the view at the wall: one number, what it is, and two columns of large zones; and what all screens have.
import type { Answer, CourseReply } from "../engine/contract";
import type { Tape } from "../job/tape";
import type { Act } from "../state/wall/acts";
import type { Question } from "../state/wall/entries";
import type { WallState } from "../state/wall/step";
import { words } from "../words/words";

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
  /// A length in steps of the tape, as it is written.
  readonly written: (steps: number) => string;
  /// Jambs of this side, for what is found: pick and name.
  readonly jambs: readonly { readonly pick: string; readonly name: string }[];
  /// Times of the log's entries, by their places in it; and the time now.
  readonly whens: readonly string[];
  readonly now: number;
  /// The device's day, "2027-05-03".
  readonly today: string;
  readonly undoable: boolean;
  /// What was struck last may be brought back.
  readonly redoable: boolean;
  readonly awake: boolean;
  readonly readOnly: boolean;
  readonly said: string;
}

const w = words.wall;

export function name(known: Known): string {
  return `${known.state.side}, ${w.course(known.state.course)}`;
}

export function notes(known: Known): string[] {
  return [known.readOnly ? w.readOnly : "", known.said, known.awake ? "" : w.maySleep].filter((text) => text !== "");
}

export const kMore: Zone = { label: w.more, act: { do: "more", page: 0 } };
export const kUndo: Zone = { label: w.undo, act: { do: "undo" } };
export const kToMark: Zone = { label: w.nextMark, act: { do: "face", face: "next" }, first: true };

const kZones = 6;

/// As many as there is room for, and the way to the others.
export function paged(all: readonly Zone[], page: number, further: (page: number) => Act): readonly Zone[] {
  const back: Zone = { label: w.back, act: { do: "back" } };
  if (all.length < kZones) return [...all, back];
  const each = kZones - 2;
  const next = (page + 1) * each < all.length ? page + 1 : 0;
  return [...all.slice(page * each, (page + 1) * each), { label: w.nextPage, act: further(next) }, back];
}
