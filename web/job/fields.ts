// Which dimensions of a job can be typed at a place of it: pointers and names, never values worked out here.
import { isObject, type Json, textAt, valueAt, without, withValue } from "./pointer";

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

function innerFields(job: Json, place: string): readonly Field[] {
  const at = { ...field(job, `${place}/place/at`, "at"), corner: textAt(job, `${place}/place/from`) };
  const long = valueAt(job, `${place}/length`) === undefined ? [] : [field(job, `${place}/length`, "length")];
  return [{ ...field(job, `${place}/name`, "name"), free: true }, at, ...long];
}

function buildingFields(job: Json): readonly Field[] {
  const fields: Field[] = [{ ...field(job, "/name", "name"), free: true }];
  if (valueAt(job, "/heights/courses") !== undefined) fields.push(field(job, "/heights/courses", "courses"));
  if (valueAt(job, "/heights/height") !== undefined) fields.push(field(job, "/heights/height", "wallHeight"));
  return fields;
}

/// The fields at a place: "" is the whole building, else a side or an opening.
export function fieldsAt(job: Json, place: string): readonly Field[] {
  if (place === "") return buildingFields(job);
  if (valueAt(job, place) === undefined) return [];
  if (place.startsWith("/openings/")) return openingFields(job, place);
  if (place.startsWith("/interior_walls/")) return innerFields(job, place);
  return [field(job, `${place}/length`, "length")];
}

/// The job with a field typed anew. An emptied free text is taken out.
/// `across`: the side that has to be as long, where there is one: neither can be changed alone.
export function withTyped(job: Json, field: Field, typed: string, across?: string): Json {
  const text = typed.trim();
  if (field.free && text === "" && field.pointer !== "/name") return without(job, field.pointer);
  if (field.whole && /^\d{1,6}$/.test(text)) return withValue(job, field.pointer, Number(text));
  const changed = withValue(job, field.pointer, text);
  return across === undefined ? changed : withValue(changed, `${across}/length`, text);
}

/// The job with upright bars of a size and spacing that the user's drawings ask for, at corners and jambs too.
export function withBars(job: Json, size: string, spacing: string): Json {
  return withValue(job, "/steel/bars", { size: size.trim(), corners: true, jambs: true, spacing: spacing.trim() });
}
