import { expect, test } from "vitest";
import { type Field, fieldsAt, withTyped } from "../../job/fields";
import { jobForm } from "../../engine/generated/job_form";
import { fieldNamed, whenEmpty } from "../../job/form";
import { helpOf, standsFor } from "../../parts/form/names";
import { jobText, type Json, readJson, valueAt } from "../../job/pointer";
import { words } from "../../words/words";
import { example } from "./real_engine";

const kExamples = ["clay-store", "glaze-store", "hillside-shed", "kiln-house", "pug-mill-shop", "wash-stand"] as const;

function list(job: Json, pointer: string): readonly Json[] {
  const found = valueAt(job, pointer);
  return Array.isArray(found) ? (found as readonly Json[]) : [];
}

function placesOf(job: Json): readonly string[] {
  const openings = list(job, "/openings").map((_, at) => `/openings/${at}`);
  return ["", ...openings, ...list(job, "/outline/sides").map((_, at) => `/outline/sides/${at}`)];
}

test.each(kExamples)("%s: every field has a name in words and its text from the job", (name) => {
  const job = readJson(example(name)) ?? {};
  let seen = 0;
  for (const place of placesOf(job)) {
    for (const field of fieldsAt(job, place)) {
      seen += 1;
      expect(Object.keys(words.inHand.fields), field.pointer).toContain(field.name);
      if (!field.free) expect(field.text, field.pointer).not.toBe("");
    }
  }
  expect(seen).toBeGreaterThan(4);
});

test.each(kExamples)("%s: typing a field's own text anew changes nothing", (name) => {
  const job = readJson(example(name)) ?? {};
  for (const place of placesOf(job)) {
    for (const field of fieldsAt(job, place)) {
      if (field.free && field.text === "") continue;
      expect(jobText(withTyped(job, field, ` ${field.text} `)), field.pointer).toBe(jobText(job));
    }
  }
});

test("a whole number stays a number, other text is left for the engine to judge", () => {
  const job: Json = { heights: { courses: 14 } };
  const field = fieldsAt(job, "").find((one) => one.name === "courses");
  expect(field?.whole).toBe(true);
  if (field === undefined) return;
  expect(valueAt(withTyped(job, field, "12"), "/heights/courses")).toBe(12);
  expect(valueAt(withTyped(job, field, "12'"), "/heights/courses")).toBe("12'");
});

test("an emptied free text is taken out; the name of a job is emptied, not taken out", () => {
  const job: Json = { name: "x", drawn_by: "y" };
  const drawnBy: Field = { pointer: "/drawn_by", name: "drawn_by", text: "y", free: true };
  const name = fieldsAt(job, "").find((one) => one.pointer === "/name");
  if (name === undefined) throw new Error("fields are missing");
  expect(withTyped(job, drawnBy, "")).toEqual({ name: "x" });
  expect(withTyped(job, name, "")).toEqual({ name: "", drawn_by: "y" });
});

test("a length typed goes to the side across too where there is one", () => {
  const kiln = readJson(example("kiln-house")) ?? {};
  const length = fieldsAt(kiln, "/outline/sides/1")[0];
  if (length === undefined) throw new Error("no length");
  const lengths = (job: Json) =>
    list(job, "/outline/sides").map((_, at) => valueAt(job, `/outline/sides/${at}/length`));
  const typed = withTyped(kiln, length, " 22'-0\" ", "/outline/sides/3");
  expect(lengths(typed)).toEqual(["28'-0\"", "22'-0\"", "28'-0\"", "22'-0\""]);
  expect(lengths(withTyped(kiln, length, "22'-0\""))).toEqual(["28'-0\"", "22'-0\"", "28'-0\"", "20'-0\""]);
});

test("what stands where a field is left empty is the schema's own word, for the job's tape", () => {
  const field = (part: string, name: string) => {
    const found = fieldNamed(part, name);
    if (found === undefined) throw new Error(`${part} has no ${name}`);
    return found;
  };
  expect(whenEmpty(field("ground", "tape_reading"), "inches")).toBe("1/16 in");
  expect(whenEmpty(field("ground", "tape_reading"), "millimetres")).toBe("1 mm");
  expect(whenEmpty(field("setting_out", "boards_off"), "inches")).toBe("4 ft");
  expect(whenEmpty(field("ground", "tape"), "inches")).toBe("steel");
  expect(whenEmpty(field("side", "length"), "inches")).toBe("");
  // A form says it as people do.
  expect(helpOf(field("bars", "grout"), "inches")).toBe("Grout of the cells. Left empty: coarse.");
  expect(standsFor(field("bars", "corners"), "inches")).toBe("no");
  for (const part of Object.values(jobForm))
    for (const one of part.fields) expect(helpOf(one, "inches"), one.name).not.toMatch(/[Aa]bsent: /);
});
