// Outcomes as values: what went well, and what went wrong with the text that must not be lost.
import type { Kept, Trouble } from "./types";

export function well<T>(value: T): Kept<T> {
  return { ok: true, value };
}

export function trouble<T>(kind: Trouble["kind"], text = "", detail = ""): Kept<T> {
  return { ok: false, trouble: { kind, text, detail } };
}

function nameOf(error: unknown): string {
  return error instanceof Error || error instanceof DOMException ? error.name : "";
}

/// What a failed write to the browser's storage means.
export function storageTrouble<T>(error: unknown, text: string): Kept<T> {
  return trouble(nameOf(error) === "QuotaExceededError" ? "storage-full" : "storage-failed", text, String(error));
}

/// What a failed file dialog means: closing it is no failure.
export function fileTrouble<T>(error: unknown, text: string): Kept<T> {
  return nameOf(error) === "AbortError" ? trouble("cancelled", text) : trouble("file-failed", text, String(error));
}
