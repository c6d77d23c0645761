// Which dimensions of a job can be typed at a place of it: pointers and names, never values worked out here.
import { isObject, type Json, textAt, valueAt, withValue, without } from "./pointer";

export interface Field {
  readonly pointer: string;
  /// Key into words.inHand.fields.
  readonly name: string;
  readonly text: string;
  /// The corner that a place is measured from.
  readonly corner?: string;
  /// A whole number in the document, not a length.
  readonly whole?: true;
  /// A free text, which may be emptied.
  readonly free?: true;
}

const kKinds = ["masonry", "door", "overhead", "window"] as const;

function field(job: Json, pointer: string, name: string): Field {
  const whole = typeof valueAt(job, pointer) === "number";
  const plain = { pointer, name, text: textAt(job, pointer) };
  return whole ? { ...plain, whole: true } : plain;
}

function openingFields(job: Json, place: string): readonly Field[] {
  const fields: Field[] = [{ ...field(job, `${place}/name`, "name"), free: true }];
  const at = field(job, `${place}/place/at`, "at");
  fields.push({ ...at, corner: textAt(job, `${place}/place/from`) });
  for (const kind of kKinds) {
    const sizes = valueAt(job, `${place}/${kind}`);
    if (!isObject(sizes)) continue;
    for (const key of Object.keys(sizes)) fields.push(field(job, `${place}/${kind}/${key}`, key));
  }
  for (const key of ["sill", "sill_course", "floor"]) {
    if (valueAt(job, `${place}/${key}`) !== undefined) fields.push(field(job, `${place}/${key}`, key));
  }
  return fields;
}

function buildingFields(job: Json): readonly Field[] {
  const fields: Field[] = [{ ...field(job, "/name", "name"), free: true }];
  if (valueAt(job, "/heights/courses") !== undefined) fields.push(field(job, "/heights/courses", "courses"));
  if (valueAt(job, "/heights/height") !== undefined) fields.push(field(job, "/heights/height", "wallHeight"));
  for (const key of ["size", "spacing"]) {
    if (valueAt(job, `/steel/bars/${key}`) !== undefined) fields.push(field(job, `/steel/bars/${key}`, key));
  }
  for (const key of ["drawn_by", "issued"]) fields.push({ ...field(job, `/${key}`, key), free: true });
  return fields;
}

/// The fields at a place: "" is the whole building, else a side or an opening.
export function fieldsAt(job: Json, place: string): readonly Field[] {
  if (place === "") return buildingFields(job);
  if (valueAt(job, place) === undefined) return [];
  if (place.startsWith("/openings/")) return openingFields(job, place);
  return [field(job, `${place}/length`, "length")];
}

/// The job with a field typed anew. An emptied free text is taken out.
export function withTyped(job: Json, field: Field, typed: string): Json {
  const text = typed.trim();
  if (field.free && text === "" && field.pointer !== "/name") return without(job, field.pointer);
  if (field.whole && /^\d{1,6}$/.test(text)) return withValue(job, field.pointer, Number(text));
  return withValue(job, field.pointer, text);
}

/// The job with upright bars of a size and spacing that the user's drawings ask for, at corners and jambs too.
export function withBars(job: Json, size: string, spacing: string): Json {
  return withValue(job, "/steel/bars", { size: size.trim(), corners: true, jambs: true, spacing: spacing.trim() });
}

export type NewOpening = "door" | "window" | "overhead";

function freeName(job: Json, letter: string): string {
  const list = valueAt(job, "/openings");
  const names = new Set(Array.isArray(list) ? list.map((_, index) => textAt(job, `/openings/${index}/name`)) : []);
  for (let number = 1; ; ++number) {
    if (!names.has(`${letter}${number}`)) return `${letter}${number}`;
  }
}

// Common sizes to start from, to be typed over; plain holes, so that nothing is assumed about frames.
const kSizes = {
  inches: {
    at: "4'-0\"",
    door: { width: "3'-4\"", height: "7'-4\"" },
    window: { width: "4'-0\"", height: "3'-4\"" },
    overhead: { width: "9'-4\"", height: "7'-4\"" },
  },
  millimetres: {
    at: "1200 mm",
    door: { width: "1000 mm", height: "2200 mm" },
    window: { width: "1200 mm", height: "1000 mm" },
    overhead: { width: "2800 mm", height: "2200 mm" },
  },
} as const;

/// The job with an opening of common size put into a side, a few feet from its start corner, and that opening's place.
export function withOpening(
  job: Json,
  sideName: string,
  startCorner: string,
  kind: NewOpening,
): { job: Json; name: string; place: string } {
  const sizes = textAt(job, "/tape") === "millimetres" ? kSizes.millimetres : kSizes.inches;
  const name = freeName(job, kind === "window" ? "W" : "D");
  const sill = kind === "window" ? { sill_course: 5 } : {};
  const opening = { name, on: sideName, place: { from: startCorner, at: sizes.at }, masonry: sizes[kind], ...sill };
  const list = valueAt(job, "/openings");
  const count = Array.isArray(list) ? list.length : 0;
  const based = Array.isArray(list) ? job : withValue(job, "/openings", []);
  return { job: withValue(based, "/openings/-", opening), name, place: `/openings/${count}` };
}
