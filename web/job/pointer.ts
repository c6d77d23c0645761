// Reading and changing a job document at a JSON pointer (RFC 6901). Values go in and come out; nothing is changed in place.

export type Json = null | boolean | number | string | readonly Json[] | { readonly [key: string]: Json };

/// The parts of a pointer: "/openings/0/place" -> ["openings", "0", "place"]. "" is the whole document.
export function pointerParts(pointer: string): readonly string[] {
  if (pointer === "") return [];
  return pointer
    .slice(1)
    .split("/")
    .map((part) => part.replaceAll("~1", "/").replaceAll("~0", "~"));
}

export function isObject(value: Json | undefined): value is { readonly [key: string]: Json } {
  return typeof value === "object" && value !== null && !Array.isArray(value);
}

function child(value: Json | undefined, part: string): Json | undefined {
  if (Array.isArray(value)) return /^(0|[1-9]\d*)$/.test(part) ? (value as readonly Json[])[Number(part)] : undefined;
  if (isObject(value)) return Object.hasOwn(value, part) ? value[part] : undefined;
  return undefined;
}

/// What stands at the pointer; undefined where nothing does.
export function valueAt(document: Json, pointer: string): Json | undefined {
  let value: Json | undefined = document;
  for (const part of pointerParts(pointer)) value = child(value, part);
  return value;
}

/// The text at the pointer, or "" where there is none. Numbers come as their digits.
export function textAt(document: Json, pointer: string): string {
  const value = valueAt(document, pointer);
  if (typeof value === "string") return value;
  return typeof value === "number" ? String(value) : "";
}

type Change = { readonly put: Json } | "take-out";

function changedObject(value: { readonly [key: string]: Json }, part: string, next: Json | undefined): Json {
  const entries = Object.entries(value).filter(([key]) => key !== part || next !== undefined);
  const at = entries.findIndex(([key]) => key === part);
  if (next === undefined) return Object.fromEntries(entries);
  if (at < 0) return Object.fromEntries([...entries, [part, next]]);
  return Object.fromEntries(entries.map(([key, old]) => [key, key === part ? next : old]));
}

function changedList(list: readonly Json[], part: string, next: Json | undefined): Json {
  const at = part === "-" ? list.length : Number(part);
  if (next === undefined) return list.filter((_, index) => index !== at);
  return at >= list.length ? [...list, next] : list.map((old, index) => (index === at ? next : old));
}

function changed(value: Json, parts: readonly string[], change: Change): Json {
  const [part, ...rest] = parts;
  if (part === undefined) return change === "take-out" ? value : change.put;
  const last = rest.length === 0;
  const inner = last
    ? change === "take-out"
      ? undefined
      : change.put
    : changed(child(value, part) ?? {}, rest, change);
  if (Array.isArray(value)) return changedList(value as readonly Json[], part, inner);
  return changedObject(isObject(value) ? value : {}, part, inner);
}

/// A document with `put` at the pointer ("-" appends to a list).
export function withValue(document: Json, pointer: string, put: Json): Json {
  return changed(document, pointerParts(pointer), { put });
}

/// A document without what stood at the pointer.
export function without(document: Json, pointer: string): Json {
  return changed(document, pointerParts(pointer), "take-out");
}

/// The text of a job file, in the form that the engine writes.
export function jobText(document: Json): string {
  return `${JSON.stringify(document, null, 2)}\n`;
}

/// The document in a job file's text; undefined when it is not JSON.
export function readJson(text: string): Json | undefined {
  try {
    return JSON.parse(text) as Json;
  } catch {
    return undefined;
  }
}
