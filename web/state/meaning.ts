// What a number without a unit may mean where it is typed into this job.
import { type Around, type Meaning, meaningsOf, rangeOf } from "../job/bare";
import type { Field } from "../job/fields";
import type { LengthAt } from "../job/form";
import { shown, tape } from "./signals";

const kFeet = 304_800_000;

/// What stands around the place of a field: bounds of what was meant by a bare number.
export function around(pointer: string): Around {
  const answer = shown.value?.answer;
  const opening = answer?.openings.find((one) => pointer.startsWith(`${one.place}/`));
  const side = answer?.sides.find((one) => one.name === opening?.side);
  return { side: side?.actual.nm ?? 1_000 * kFeet, wall: answer?.height.nm ?? 40 * kFeet };
}

/// What a typed number may mean; none where it says so itself.
export function meanings(field: Field, text: string): readonly Meaning[] {
  const range = field.free || field.whole ? undefined : rangeOf(field.name, around(field.pointer), tape.value);
  return range === undefined ? [] : meaningsOf(text, tape.value, range);
}

/// Where a bare number may mean feet as well as inches, and by which name its range is known (job/bare.ts).
const kRanges: Readonly<Record<string, Readonly<Record<string, string>>>> = {
  side: { length: "length" },
  heights: { height: "wallHeight" },
  place: { at: "at" },
  interior_wall: { length: "at" },
  opening: { floor: "floor", sill: "sill" },
  masonry: { width: "width", height: "height" },
  door: { leaf_width: "leaf_width", leaf_height: "leaf_height" },
  overhead: { leaf_width: "leaf_width", leaf_height: "leaf_height" },
  window: { width: "width", height: "height" },
  bars: { spacing: "spacing" },
};

/// The same of a length in a form.
export function meaningsIn(length: LengthAt): readonly Meaning[] {
  const name = kRanges[length.part]?.[length.name];
  const range = name === undefined ? undefined : rangeOf(name, around(length.pointer), tape.value);
  return range === undefined ? [] : meaningsOf(length.text, tape.value, range);
}
