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
  /// May be emptied: then it is taken out of the document, and the engine takes its own.
  readonly optional?: true;
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

const kSettingOut = [
  "boards_off",
  "first_kerf",
  "footing_outside",
  "footing_inside",
  "room",
  "datum_over",
  "backsight",
  "boards_over",
  "line_weight",
  "line_pull",
  "line_strength",
  "line_sag",
] as const;

/// What the setting-out card and the instruments need; all of it may be left out.
export function settingOutFields(job: Json): readonly Field[] {
  const optional = (pointer: string, name: string): Field => ({ ...field(job, pointer, name), optional: true });
  return [
    ...kSettingOut.map((name) => optional(`/setting_out/${name}`, name)),
    optional("/steel/dowel_lap", "dowel_lap"),
    optional("/ground/tape_reading", "tape_reading"),
    optional("/ground/rod_reading", "rod_reading"),
    optional("/ground/hold", "hold"),
  ];
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
  if ((field.free || field.optional) && text === "" && field.pointer !== "/name") return without(job, field.pointer);
  if (field.whole && /^\d{1,6}$/.test(text)) return withValue(job, field.pointer, Number(text));
  const opposite = oppositeLength(job, field.pointer);
  const changed = withValue(job, field.pointer, text);
  return opposite === undefined ? changed : withValue(changed, opposite, text);
}

/// In a rectangle the side across has the same length: neither can be changed alone.
function oppositeLength(job: Json, pointer: string): string | undefined {
  const index = /^\/outline\/sides\/([0-3])\/length$/.exec(pointer)?.[1];
  const sides = valueAt(job, "/outline/sides");
  if (index === undefined || valueAt(job, "/outline/closed") !== true) return undefined;
  return Array.isArray(sides) && sides.length === 4 ? `/outline/sides/${(Number(index) + 2) % 4}/length` : undefined;
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

// Common sizes to start from, to be typed over; plain holes, so that nothing is assumed about frames. Places are tried
// from a few feet off the start corner on, then nearer to it, by half a unit and a joint, with a whole unit of wall left at
// both jambs.
const kNanometres = { inch: 25_400_000, millimetre: 1_000_000 } as const;
const kSizes = {
  inches: {
    unit: kNanometres.inch,
    first: 48,
    step: 8,
    pier: 16,
    wide: { door: 40, window: 48, overhead: 112 },
    text: (inches: number): string => `${Math.floor(inches / 12)}'-${inches % 12}"`,
    door: { width: "3'-4\"", height: "7'-4\"" },
    window: { width: "4'-0\"", height: "3'-4\"" },
    overhead: { width: "9'-4\"", height: "7'-4\"" },
  },
  millimetres: {
    unit: kNanometres.millimetre,
    first: 1200,
    step: 200,
    pier: 400,
    wide: { door: 1000, window: 1200, overhead: 2800 },
    text: (millimetres: number): string => `${millimetres} mm`,
    door: { width: "1000 mm", height: "2200 mm" },
    window: { width: "1200 mm", height: "1000 mm" },
    overhead: { width: "2800 mm", height: "2200 mm" },
  },
} as const;

/// A side with what stands in it already, nanometres from its start corner.
export interface Room {
  readonly name: string;
  readonly start: string;
  readonly long: number;
  readonly taken: readonly { readonly from: number; readonly to: number }[];
}

/// The first place with room; the first place of all if there is none, so that the engine says why not.
function placeWithRoom(room: Room, sizes: (typeof kSizes)[keyof typeof kSizes], kind: NewOpening): number {
  const wide = sizes.wide[kind];
  const open = (at: number): boolean => {
    const from = (at - sizes.pier) * sizes.unit;
    const to = (at + wide + sizes.pier) * sizes.unit;
    return to <= room.long && room.taken.every((one) => to <= one.from || from >= one.to);
  };
  for (let at: number = sizes.first; at * sizes.unit < room.long; at += sizes.step) if (open(at)) return at;
  for (let at: number = sizes.pier; at < sizes.first; at += sizes.step) if (open(at)) return at;
  return sizes.first;
}

/// The job with an opening of common size put into a side where there is room, and that opening's place.
export function withOpening(job: Json, room: Room, kind: NewOpening): { job: Json; name: string; place: string } {
  const sizes = textAt(job, "/tape") === "millimetres" ? kSizes.millimetres : kSizes.inches;
  const name = freeName(job, kind === "window" ? "W" : "D");
  const sill = kind === "window" ? { sill_course: 5 } : {};
  const at = sizes.text(placeWithRoom(room, sizes, kind));
  const opening = { name, on: room.name, place: { from: room.start, at }, masonry: sizes[kind], ...sill };
  const list = valueAt(job, "/openings");
  const count = Array.isArray(list) ? list.length : 0;
  const based = Array.isArray(list) ? job : withValue(job, "/openings", []);
  return { job: withValue(based, "/openings/-", opening), name, place: `/openings/${count}` };
}
