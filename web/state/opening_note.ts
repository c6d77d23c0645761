// What the browser remembers from one opening of the page to the next, beside the store: three notes.

/// Whether a job of one's own lay on the table in this browser; else the example need not wait for the store.
const kHint = "stringcourse-own-job";
export function hint(): boolean {
  try {
    return localStorage.getItem(kHint) !== null;
  } catch {
    return true;
  }
}
export function leaveHint(): void {
  try {
    localStorage.setItem(kHint, "1");
  } catch {
    // The example then waits for the store, as always.
  }
}

/// The job that is being opened, kept until the page has outlived it. A page that is left in the usual way clears it.
const kBeingOpened = "stringcourse-being-opened";
export function noteOpening(id: string | undefined): void {
  try {
    if (id === undefined) localStorage.removeItem(kBeingOpened);
    else localStorage.setItem(kBeingOpened, id);
  } catch {
    // Without a store nothing is opened by itself either.
  }
}
export function neverOpened(): string | undefined {
  try {
    return localStorage.getItem(kBeingOpened) ?? undefined;
  } catch {
    return undefined;
  }
}

/// What was not yet in the store when the page was left. `id` undefined: its first entry was being made. `was`: what the
/// store held of it.
export interface Unkept {
  readonly id?: string | undefined;
  readonly was?: string | undefined;
  readonly text: string;
}
const kUnkept = "stringcourse-unkept";
export function noteUnkept(unkept: Unkept | undefined): void {
  try {
    if (unkept === undefined) localStorage.removeItem(kUnkept);
    else localStorage.setItem(kUnkept, JSON.stringify(unkept));
  } catch {
    // Too large, or no store: then it is on its way into the job's own store alone.
  }
}
export function takeUnkept(): Unkept | undefined {
  try {
    const noted: unknown = JSON.parse(localStorage.getItem(kUnkept) ?? "null");
    noteUnkept(undefined);
    if (typeof noted !== "object" || noted === null || !("text" in noted) || typeof noted.text !== "string")
      return undefined;
    const id = "id" in noted && typeof noted.id === "string" ? noted.id : undefined;
    const was = "was" in noted && typeof noted.was === "string" ? noted.was : undefined;
    return { id, was, text: noted.text };
  } catch {
    return undefined;
  }
}
