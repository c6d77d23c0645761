// A part of the job as a form holds it: texts as they are typed, put into the document together when they are sent. Pure.
import { type FormField, type FormPart, jobForm } from "../engine/generated/job_form";
import { isObject, type Json, valueAt, without, withValue } from "./pointer";
import type { Tape } from "./tape";

export type { FormField, FormPart };

const kEmptyPart: FormPart = { help: "", one: [], fields: [] };

export function partNamed(name: string): FormPart {
  return jobForm[name] ?? kEmptyPart;
}

export function fieldNamed(part: string, name: string): FormField | undefined {
  return partNamed(part).fields.find((field) => field.name === name);
}

/// What stands where a field is left empty, as the schema says it: "1/16 in" of "...; absent: 1/16 in or 1 mm.".
export function whenEmpty(field: FormField, tape: Tape): string {
  const said = / absent: ([^.;]+)/.exec(field.help.replace(/^Absent: /, " absent: "))?.[1] ?? "";
  const both = /^(\S+ (?:in|ft)) or (\S+ mm)$/.exec(said);
  return both === null ? said : ((tape === "millimetres" ? both[2] : both[1]) ?? said);
}

/// The fields of a part in the order of `names`; all of them where none are named.
export function fieldsNamed(part: string, names: readonly string[] | undefined): readonly FormField[] {
  if (names === undefined) return partNamed(part).fields;
  return names.map((name) => fieldNamed(part, name)).filter((field) => field !== undefined);
}

const kBlank = (value: Json | undefined): boolean => value === undefined || value === "";

/// Lists of numbers and lengths are typed as one text: 4, 8, 12.
function listed(field: FormField, text: string): Json | undefined {
  const parts = text
    .split(/[,;\n]/)
    .map((part) => part.trim())
    .filter((part) => part !== "");
  if (parts.length === 0) return undefined;
  return field.kind === "whole" ? parts.map((part) => (/^\d{1,6}$/.test(part) ? Number(part) : part)) : parts;
}

/// How a list of numbers, lengths or names is written into one line.
export function lineOf(value: Json | undefined): string {
  if (Array.isArray(value)) return value.map((one) => String(one)).join(", ");
  return typeof value === "string" ? value : "";
}

function plain(field: FormField, value: Json | undefined): Json | undefined {
  if (field.list && typeof value === "string") return listed(field, value);
  if (typeof value !== "string") return value;
  const text = value.trim();
  if (text === "") return field.needed ? "" : undefined;
  return field.kind === "whole" && /^\d{1,6}$/.test(text) ? Number(text) : text;
}

/// What a field comes to in the document; undefined where it is left out.
export function taken(field: FormField, value: Json | undefined): Json | undefined {
  if (field.kind !== "part") return plain(field, value);
  const part = field.part ?? "";
  if (field.list) return Array.isArray(value) ? value.map((one) => takenPart(part, one as Json)) : undefined;
  if (!isObject(value)) return undefined;
  const made = takenPart(part, value);
  return field.needed || Object.keys(made).length > 0 ? made : undefined;
}

/// A part of which every field was typed: without those that were left empty.
export function takenPart(part: string, value: Json): { readonly [key: string]: Json } {
  const object = isObject(value) ? value : {};
  const entries = partNamed(part).fields.flatMap((field) => {
    const put = taken(field, object[field.name]);
    return put === undefined ? [] : [[field.name, put] as const];
  });
  return Object.fromEntries(entries);
}

/// A part with one field typed anew; fields that cannot stand beside it go.
export function typedInto(value: Json, field: FormField, put: Json | undefined): Json {
  const object = isObject(value) ? value : {};
  const gone = kBlank(put) ? [] : (field.instead ?? []);
  const kept = Object.entries(object).filter(([name]) => name !== field.name && !gone.includes(name));
  return Object.fromEntries(put === undefined ? kept : [...kept, [field.name, put]]);
}

/// A part with nothing in it but what it cannot be without.
export function emptyPart(part: string): Json {
  const needed = partNamed(part).fields.filter((field) => field.needed);
  return Object.fromEntries(
    needed.map((field) => [field.name, field.kind === "part" ? (field.list ? [] : emptyPart(field.part ?? "")) : ""]),
  );
}

const same = (one: Json | undefined, other: Json | undefined): boolean => JSON.stringify(one) === JSON.stringify(other);

/// Which of a part's fields were typed anew.
export function changedFields(
  part: string,
  names: readonly string[] | undefined,
  base: Json,
  typed: Json,
): readonly FormField[] {
  const [old, next] = [isObject(base) ? base : {}, isObject(typed) ? typed : {}];
  const shown = fieldsNamed(part, names);
  const beside = shown.flatMap((field) => field.instead ?? []).map((name) => fieldNamed(part, name));
  const all = [...new Set([...shown, ...beside.filter((field) => field !== undefined)])];
  return all.filter((field) => !same(taken(field, next[field.name]), taken(field, old[field.name])));
}

/// The job with the changed fields of the part at a place put in; what was left empty is taken out.
export function withPart(job: Json, place: string, fields: readonly FormField[], typed: Json): Json {
  const values = isObject(typed) ? typed : {};
  return fields.reduce((next, field) => {
    const pointer = `${place}/${field.name}`;
    const put = taken(field, values[field.name]);
    if (put !== undefined) return withValue(next, pointer, put);
    return valueAt(next, pointer) === undefined ? next : without(next, pointer);
  }, job);
}

/// Pointers of everything that can be typed in a part as it stands, deep.
export function leavesOf(
  part: string,
  names: readonly string[] | undefined,
  place: string,
  value: Json,
): readonly string[] {
  const object = isObject(value) ? value : {};
  return fieldsNamed(part, names).flatMap((field) => {
    const pointer = `${place}/${field.name}`;
    if (field.kind !== "part") return [pointer];
    const inner = object[field.name];
    if (!field.list) return leavesOf(field.part ?? "", undefined, pointer, inner ?? {});
    const entries = Array.isArray(inner) ? (inner as readonly Json[]) : [];
    return entries.flatMap((one, at) => leavesOf(field.part ?? "", undefined, `${pointer}/${at}`, one));
  });
}

/// A length where it stands: what a bare number there may mean hangs on it.
export interface LengthAt {
  readonly part: string;
  readonly name: string;
  readonly pointer: string;
  readonly text: string;
}

/// A part with every length in it as `as` has it.
export function withLengths(
  part: string,
  names: readonly string[] | undefined,
  place: string,
  value: Json,
  as: (length: LengthAt) => string,
): Json {
  const object = isObject(value) ? value : {};
  const inner = (field: FormField, at: string, one: Json): Json =>
    withLengths(field.part ?? "", undefined, at, one, as);
  const one = (field: FormField): Json | undefined => {
    const pointer = `${place}/${field.name}`;
    const put = object[field.name];
    if (field.kind === "part" && field.list && Array.isArray(put))
      return put.map((each, at) => inner(field, `${pointer}/${at}`, each as Json));
    if (field.kind === "part" && isObject(put)) return inner(field, pointer, put);
    const length = field.kind === "length" && !field.list && typeof put === "string";
    return length ? as({ part, name: field.name, pointer, text: put }) : put;
  };
  const typed = new Map(fieldsNamed(part, names).map((field) => [field.name, one(field)] as const));
  return Object.fromEntries(Object.entries(object).map(([name, put]) => [name, typed.get(name) ?? put]));
}
