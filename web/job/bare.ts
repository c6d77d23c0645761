// A number that was typed without a unit: which lengths it may mean, told by what a length of its kind can be and by the job's
// tape. The engine would take it in the tape's small unit, and 24 for 24 feet would become a hut two feet long. Pure.
import type { Tape } from "./tape";

export type LengthUnit = "feet" | "inches" | "metres" | "millimetres";

/// What a length can be, in nanometres.
export interface Range {
  readonly least: number;
  readonly most: number;
}

export interface Meaning {
  readonly unit: LengthUnit;
  /// As it is then typed: 24', 24", 7.2 m, 7200 mm.
  readonly text: string;
}

const kInch = 25_400_000;
const kNm: Readonly<Record<LengthUnit, number>> = {
  feet: 12 * kInch,
  inches: kInch,
  metres: 1_000_000_000,
  millimetres: 1_000_000,
};
const kUnits: Readonly<Record<Tape, readonly LengthUnit[]>> = {
  inches: ["feet", "inches"],
  millimetres: ["metres", "millimetres"],
};
const kWritten: Readonly<Record<LengthUnit, (number: string) => string>> = {
  feet: (number) => `${number}'`,
  inches: (number) => `${number}"`,
  metres: (number) => `${number} m`,
  millimetres: (number) => `${number} mm`,
};

/// From one block, or one metre, to a long side; from one course, or a kerb, to a hall's wall. This program's own bounds of
/// what is likely (the command line's begin has the same upper ones): what lies beyond is the engine's to read.
export const kSideRange: Readonly<Record<Tape, Range>> = {
  inches: { least: 16 * kInch, most: 120 * kNm.feet },
  millimetres: { least: kNm.metres, most: 36 * kNm.metres },
};
export const kHeightRange: Readonly<Record<Tape, Range>> = {
  inches: { least: 8 * kInch, most: 20 * kNm.feet },
  millimetres: { least: 600 * kNm.millimetres, most: 12 * kNm.metres },
};

/// What stands around a length: how long its side is, how high the walls are; nanometres.
export interface Around {
  readonly side: number;
  readonly wall: number;
}

const kSmall: Range = { least: 0, most: 11 * kInch };
const kOpening = 8 * kInch;
const kAcross: ReadonlySet<string> = new Set(["width", "leaf_width", "frame_width"]);
const kUpright: ReadonlySet<string> = new Set(["height", "leaf_height", "frame_height"]);
const kAllowances: ReadonlySet<string> = new Set([
  ...["frame_jamb", "frame_head", "buck", "jamb_buck", "head_buck", "shim"],
  ...["side_room", "head_room", "each_side", "above", "below"],
]);

/// What the length of a field (job/fields.ts) can be; undefined where a bare number is the engine's to read.
export function rangeOf(name: string, around: Around, tape: Tape): Range | undefined {
  if (name === "length") return kSideRange[tape];
  if (name === "wallHeight") return kHeightRange[tape];
  if (name === "at") return { least: 0, most: around.side };
  if (kAcross.has(name)) return { least: kOpening, most: around.side };
  if (kUpright.has(name)) return { least: kOpening, most: around.wall };
  if (name === "sill" || name === "floor") return { least: 0, most: around.wall };
  if (kAllowances.has(name)) return kSmall;
  return name === "spacing" ? { least: kOpening, most: 12 * kNm.feet } : undefined;
}

/// A plain number, whole or decimal; fractions of an inch (335 5/8) are inches and are not asked about.
export function isBare(text: string): boolean {
  return /^\d{1,9}(\.\d{1,6})?$/.test(text.trim());
}

/// What a bare number may mean, the more usual unit first; none for a text that is not one.
export function meaningsOf(text: string, tape: Tape, range: Range): readonly Meaning[] {
  const number = text.trim();
  if (!isBare(number) || Number(number) === 0) return []; // nothing is nothing in any unit
  return kUnits[tape]
    .filter((unit) => {
      const nm = Number(number) * kNm[unit];
      return nm >= range.least && nm <= range.most;
    })
    .map((unit) => ({ unit, text: kWritten[unit](number) }));
}

/// The text with the unit that it must have meant: the only possible one, or the one that was chosen; undefined if it may
/// mean two and none of them was chosen. A text that says its unit, or that can mean nothing, stays as it is.
export function withUnit(text: string, tape: Tape, range: Range, chosen: LengthUnit | undefined): string | undefined {
  const meanings = meaningsOf(text, tape, range);
  if (meanings.length === 0) return text.trim();
  const only = meanings.length === 1 ? meanings[0] : meanings.find((one) => one.unit === chosen);
  return only?.text;
}
