// Every field of the job can be filled in on the page: each leaf of the schema has a form at a hold point, or a log that
// enters it. Nothing but the schema says which fields there are.
import { readFileSync } from "node:fs";
import { expect, test } from "vitest";
import { emptyPart, leavesOf, partNamed, takenPart, withPart } from "../../job/form";
import { isObject, type Json, valueAt } from "../../job/pointer";
import { type Entry, kPegFields, withReading } from "../../job/readings";
import { labelOf } from "../../parts/form/names";
import { kForms, kLists, pointOf } from "../../state/fields_home";
import type { kPoints } from "../../state/point";
import { kEntryFields } from "../../wall/LogEntry";
import { formWords } from "../../words/form_words";
import { example } from "./real_engine";

interface Schema {
  readonly $ref?: string;
  readonly type?: string;
  readonly description?: string;
  readonly properties?: Readonly<Record<string, Schema>>;
  readonly items?: Schema;
  readonly enum?: readonly string[];
  readonly maximum?: number;
}
const schema = JSON.parse(
  readFileSync(new URL("../../../docs/schema/job.schema.json", import.meta.url), "utf8"),
) as Schema & { readonly $defs: Readonly<Record<string, Schema>> };

function followed(one: Schema): Schema {
  return one.$ref === undefined ? one : (schema.$defs[one.$ref.replace("#/$defs/", "")] ?? {});
}

/// Places of all leaves, an entry of a list standing as *.
function leaves(one: Schema, at: string): readonly string[] {
  const whole = followed(one);
  if (whole.properties !== undefined)
    return Object.entries(whole.properties).flatMap(([name, inner]) => leaves(inner, `${at}/${name}`));
  const items = whole.items === undefined ? undefined : followed(whole.items);
  return items?.properties === undefined ? [at] : leaves(items, `${at}/*`);
}

/// A part with everything in it, each list with one entry: as someone fills it in who leaves nothing out.
function full(part: string): Json {
  return Object.fromEntries(
    partNamed(part).fields.map((field) => {
      const one: Json = field.kind === "part" ? full(field.part ?? "") : field.kind === "truth" ? true : "1";
      return [field.name, field.list ? [one] : one];
    }),
  );
}

const starred = (pointer: string): string => pointer.replaceAll(/\/\d+(?=\/|$)/g, "/*");

/// Entries of the log of readings, everything typed.
const kReadings: readonly Entry[] = [
  { kind: "tape", from: "A", to: "B", length: "1", of: "poured" },
  {
    ...{ kind: "rod", setup: "1", station: "A", rod: "1", on: "AB", from: "B" },
    ...{ at: "1", surface: "floor", sight: "1" },
  } as Entry,
  { kind: "two_peg", readings: Object.fromEntries(kPegFields.map((name) => [name, "1"])) } as Entry,
  { kind: "dowel", on: "AB", from: "B", at: "1", offFace: "1" },
  { kind: "edge", on: "AB", from: "B", at: "1", beyond: "1" },
  { kind: "strike", id: "x" },
];

function pointersIn(value: Json, at: string): readonly string[] {
  if (Array.isArray(value)) return value.flatMap((one) => pointersIn(one as Json, `${at}/*`));
  if (!isObject(value)) return [at];
  return Object.entries(value).flatMap(([name, inner]) => pointersIn(inner, `${at}/${name}`));
}

function reached(): ReadonlySet<string> {
  const forms = kForms.flatMap((form) => leavesOf(form.part, form.fields, form.place, full(form.part)));
  const lists = kLists.flatMap((list) => leavesOf(list.part, list.fields, `${list.place}/0`, full(list.part)));
  const stamp = { id: "1", when: "2", by: "3", note: "4" };
  const readings = kReadings.reduce<Json>((job, entry) => withReading(job, entry, stamp), {});
  const laid = leavesOf("laid_entry", kEntryFields, "/laid/0", full("laid_entry"));
  return new Set([...forms, ...lists, ...laid].map(starred).concat(pointersIn(readings, "")));
}

/// Given by the page itself: the version of the document, who entered something and when; strikes and kept dowels have
/// buttons where the log and the layouts are listed.
const kOwn = ["/stringcourse", "/laid/*/id", "/laid/*/when", "/laid/*/by", "/laid/*/strike", "/steel/kept_dowels"];

test("each field of the schema is reached by a form or an entry, and nothing else is", () => {
  const wanted = leaves(schema, "").filter((at) => !kOwn.includes(at));
  const has = reached();
  expect(wanted.length).toBeGreaterThan(150);
  expect(wanted.filter((at) => !has.has(at))).toEqual([]);
  expect([...has].filter((at) => !wanted.includes(at))).toEqual([]);
});

test("a field that no form has would be told", () => {
  const has = reached();
  const more = leaves({ properties: { name: {}, weather: {} } }, "");
  expect(more.filter((at) => !has.has(at))).toEqual(["/weather"]);
});

test("every field and every form has plain words of its own", () => {
  const parts = ["job", ...Object.keys(schema.$defs)];
  const hidden = ["stringcourse", "id", "when", "by", "strike", "kept_dowels"];
  const logs = ["reading", "tape_reading", "rod_reading", "two_peg_reading", "dowel_reading", "edge_reading"];
  const listed = [
    "interior_walls",
    "heights",
    "openings",
    "steel",
    "setting_out",
    "ground",
    "readings",
    "laying",
    "top",
  ];
  const outside = ["units", "outline", "control_joints", "laid", ...listed];
  for (const part of parts.filter((one) => !logs.includes(one))) {
    for (const { name } of partNamed(part).fields) {
      if (part === "job" && outside.includes(name)) continue;
      if (hidden.includes(name) && part !== "own_series") continue;
      const known = `${part}.${name}` in formWords.labels || name in formWords.labels;
      expect(known, `${part}.${name}: ${labelOf(part, name)}`).toBe(true);
    }
  }
  for (const { title } of [...kForms, ...kLists]) expect(Object.keys(formWords.titles)).toContain(title);
});

test.each(["kiln-house", "glaze-store", "clay-store", "pug-mill-shop"])(
  "%s: a form sent as it stands changes nothing",
  (name) => {
    const job = JSON.parse(example(name)) as Json;
    for (const form of kForms) {
      const part = valueAt(job, form.place) ?? {};
      const fields = partNamed(form.part).fields.filter((field) => form.fields.includes(field.name));
      const there = fields.filter((field) => valueAt(job, `${form.place}/${field.name}`) !== undefined);
      expect(withPart(job, form.place, there, part), `${form.place} ${form.title}`).toEqual(job);
    }
  },
);

test("what is left empty is left out, whole numbers are numbers, a list is typed as one line", () => {
  const typed = { bars: { ...(emptyPart("bars") as object), size: "#5", spacing: " " }, pour_tops: "7, 14; x" };
  expect(takenPart("steel", typed)).toEqual({ bars: { size: "#5" }, pour_tops: [7, 14, "x"] });
});

test("a place in the job leads to the point where it is filled in, and to the one where one is if that has it too", () => {
  const led = (at: string, from: (typeof kPoints)[number] = "order"): string => pointOf(at, from);
  expect(led("/openings/2/place/at", "grout")).toBe("order");
  expect(led("/openings/2/lintel/bearing", "top")).toBe("lintels");
  expect(led("/steel/bond_beams", "top")).toBe("top");
  expect(led("/steel/bond_beams", "order")).toBe("lintels");
  expect(led("/steel/bars/size")).toBe("pour");
  expect(led("/steel", "grout")).toBe("grout");
  expect(led("/steel/pour_tops")).toBe("grout");
  expect(led("/readings", "pour")).toBe("pour");
  expect(led("/readings", "order")).toBe("first-course");
  expect(led("/setting_out/line_pull")).toBe("pour");
  expect(led("/laid/3")).toBe("at-the-wall");
  expect(led("")).toBe("order");
});
