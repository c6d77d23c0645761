// Which hold point a field of the job belongs to, and which forms stand there. What belongs to two points stands at both.
import type { Point } from "./point";

/// A form over some fields of one part of the job (engine/generated/job_form.ts).
export interface FormPlace {
  readonly point: Point;
  /// Key into words.form.titles.
  readonly title: string;
  /// JSON pointer of the part.
  readonly place: string;
  readonly part: string;
  readonly fields: readonly string[];
}

const kJoints = ["joint_least", "joint_most", "least_piece", "cuts", "bond"] as const;
const kBoards = ["boards_off", "first_kerf", "footing_outside", "footing_inside", "room", "boards_over"] as const;
const kLine = ["line_weight", "line_pull", "line_strength", "line_sag"] as const;
const kFlat = [
  "beam_bars",
  "lintel_bars",
  "wire_every",
  "wire_stock",
  "wire_lap",
  "wire_leg",
  "wire_corners",
  "wire_tees",
  "tie_every",
  "beam_steel_in_joints",
] as const;
const kMortar = ["mortar", "type", "mortar_by", "mortar_waste", "sand_waste", "grout_as", "grout_loss"] as const;
const kWaste = ["wire_waste", "lumber_waste", "bolts_spare"] as const;
const kPrices = ["currency", "decimals", "prices", "tax", "delivery"] as const;
const kCrew = ["crew", "pairs", "units_per_hour", "hours", "most_courses", "mortar_minutes", "work"] as const;
const kDates = ["start", "log_until", "weekdays", "days_off", "finish_by", "forecast", "spread", "pace_doubt"] as const;
const kSite = ["brought", "weights", "truck"] as const;
const kLaying = ["rules", "joint_least", "joint_most", "beyond_working", "mark_reading"] as const;

export const kForms: readonly FormPlace[] = [
  { point: "order", title: "job", place: "", part: "job", fields: ["name", "tape", "drawn_by", "issued", "notes"] },
  { point: "order", title: "outline", place: "/outline", part: "outline", fields: ["closed", "building_on", "sides"] },
  {
    point: "order",
    title: "heights",
    place: "/heights",
    part: "heights",
    fields: ["courses", "height", "half_high", "half_high_courses"],
  },
  { point: "order", title: "yard", place: "/units", part: "units", fields: ["series", "stocked", "breakage"] },
  { point: "order", title: "orderUnits", place: "/order", part: "ordering", fields: ["kinds"] },
  { point: "order", title: "mortar", place: "/order", part: "ordering", fields: kMortar },
  { point: "order", title: "waste", place: "/order", part: "ordering", fields: kWaste },
  { point: "order", title: "prices", place: "/order", part: "ordering", fields: kPrices },
  { point: "order", title: "site", place: "/order", part: "ordering", fields: kSite },
  { point: "order", title: "crew", place: "/days", part: "days", fields: kCrew },
  { point: "order", title: "dates", place: "/days", part: "days", fields: kDates },
  { point: "order", title: "own", place: "/units", part: "units", fields: ["own_series"] },
  { point: "order", title: "joints", place: "/units", part: "units", fields: kJoints },
  { point: "order", title: "control", place: "/control_joints", part: "control_joints", fields: ["rule", "placed"] },
  { point: "pour", title: "bars", place: "/steel", part: "steel", fields: ["bars", "dowel_lap"] },
  { point: "pour", title: "boards", place: "/setting_out", part: "setting_out", fields: kBoards },
  {
    point: "pour",
    title: "benchmark",
    place: "/setting_out",
    part: "setting_out",
    fields: ["datum_over", "backsight"],
  },
  { point: "pour", title: "line", place: "/setting_out", part: "setting_out", fields: kLine },
  {
    point: "pour",
    title: "tapeTool",
    place: "/ground",
    part: "ground",
    fields: ["tape", "tape_reading", "hold", "shape_remedy"],
  },
  {
    point: "first-course",
    title: "rodTool",
    place: "/ground",
    part: "ground",
    fields: ["rod_reading", "first_course_grouted", "bed_remedy"],
  },
  { point: "lintels", title: "beams", place: "/steel", part: "steel", fields: ["bond_beams"] },
  { point: "grout", title: "pours", place: "/steel", part: "steel", fields: ["pour_tops"] },
  {
    point: "grout",
    title: "laps",
    place: "/steel",
    part: "steel",
    fields: ["lap", "bar_stock", "bar_kerf", "end_cover"],
  },
  { point: "grout", title: "flat", place: "/steel", part: "steel", fields: kFlat },
  { point: "top", title: "beams", place: "/steel", part: "steel", fields: ["bond_beams"] },
  { point: "top", title: "plate", place: "/top", part: "top", fields: ["plate", "plate_on", "plate_piece"] },
  { point: "top", title: "bolts", place: "/top", part: "top", fields: ["bolts"] },
  { point: "top", title: "trusses", place: "/top", part: "top", fields: ["trusses"] },
  { point: "at-the-wall", title: "laying", place: "/laying", part: "laying", fields: kLaying },
  { point: "at-the-wall", title: "spread", place: "/laying", part: "laying", fields: ["unit_spread", "joint_spread"] },
];

/// Lists whose entries have a form each.
export interface ListPlace {
  readonly point: Point;
  readonly title: string;
  readonly place: string;
  readonly part: string;
  /// Only these fields of an entry; all where none are named. Then nothing is added or taken out here.
  readonly fields?: readonly string[];
}
export const kLists: readonly ListPlace[] = [
  { point: "order", title: "openings", place: "/openings", part: "opening" },
  { point: "order", title: "inner", place: "/interior_walls", part: "interior_wall" },
  { point: "lintels", title: "lintels", place: "/openings", part: "opening", fields: ["lintel"] },
];

export const formKey = (form: FormPlace): string => `${form.point} ${form.title}`;

const under = (place: string, top: string): boolean => place === top || place.startsWith(`${top}/`);

function formsOf(place: string): readonly FormPlace[] {
  return kForms.filter((form) => form.fields.some((field) => under(place, `${form.place}/${field}`)));
}

/// Logs, and where they are read in.
const kLogs: Readonly<Record<string, readonly Point[]>> = {
  "/readings": ["first-course", "pour"],
  "/laid": ["at-the-wall"],
};

/// The point at which the field at a place is filled in; the one where one is, if it is one of them.
export function pointOf(place: string, from: Point): Point {
  const lists = kLists.filter((list) => under(place, list.place));
  const logs = Object.entries(kLogs).flatMap(([log, points]) => (under(place, log) ? points : []));
  const part = kForms.filter((form) => place !== "" && under(form.place, place));
  const named = lists.filter((list) => list.fields?.some((field) => place.includes(`/${field}`)));
  const points = [...formsOf(place), ...named, ...lists, ...part].map((one) => one.point).concat(logs);
  return points.includes(from) ? from : (points[0] ?? "order");
}

/// The forms at a point that hold the field at a place; for a whole part its first one.
export function formsAt(point: Point, place: string): readonly FormPlace[] {
  const here = (form: FormPlace): boolean => form.point === point;
  const exact = formsOf(place).filter(here);
  const whole = kForms.filter((form) => here(form) && form.place !== "" && form.place === place);
  return exact.length > 0 ? exact : whole.slice(0, 1);
}
