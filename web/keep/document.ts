// The little of a job document that keeping needs: its version and its name. What is in it is the engine's business.

/// The version of job documents that this page reads (docs/schema/job.schema.json).
export const kKnownVersion = 1;
/// As large as the engine reads, in bytes.
export const kLargestDocument = 8_000_000;

export type Document = { readonly kind: "job" | "newer"; readonly name: string } | { readonly kind: "none" };

function parsed(text: string): unknown {
  try {
    return JSON.parse(text);
  } catch {
    return undefined;
  }
}

function isRecord(value: unknown): value is Record<string, unknown> {
  return typeof value === "object" && value !== null && !Array.isArray(value);
}

export function readDocument(text: string): Document {
  const value = parsed(text);
  if (!isRecord(value)) return { kind: "none" };
  const version = value["stringcourse"];
  if (typeof version !== "number" || !Number.isInteger(version) || version < 1) return { kind: "none" };
  const name = typeof value["name"] === "string" ? value["name"] : "";
  return { kind: version > kKnownVersion ? "newer" : "job", name };
}

/// The document with another name, in the form in which the engine writes it; undefined if it is no document. A name that
/// was there keeps its place, a new one comes behind the version.
export function withName(text: string, name: string): string | undefined {
  const value = parsed(text);
  if (!isRecord(value)) return undefined;
  const { stringcourse, ...rest } = value;
  const named = "name" in rest ? { stringcourse, ...rest, name } : { stringcourse, name, ...rest };
  return `${JSON.stringify(named, null, 2)}\n`;
}
