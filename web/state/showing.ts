// The example shown from point to point. The job that lay on the table is put aside for as long and comes back as it was,
// with its steps; while the example is shown nothing can be changed.
import { batch, signal } from "@preact/signals";
import type { History } from "../job/history";
import { turnsOver } from "./changing";
import { openExample, openJob, openKept, stranded } from "./keeping";
import { goTo, place, type Point } from "./point";
import { history, isExample, readOnly, shown } from "./signals";
import { putOnTable } from "./table";

/// One stop: a point, and what of it is looked at (the id of an element).
export interface Stop {
  readonly at: Point;
  readonly look: string;
}

export const kStops = [
  { at: "order", look: "plan" },
  { at: "order", look: "tallies" },
  { at: "pour", look: "results" },
  { at: "first-course", look: "questions" },
  { at: "lintels", look: "results" },
  { at: "grout", look: "results" },
  { at: "top", look: "questions" },
  { at: "top", look: "sheets" },
] as const satisfies readonly Stop[];

/// So long a stop lasts by itself: milliseconds. All of them together take less than two minutes.
export const kStopLasts = 12_000;

/// Which stop is shown; undefined: nothing is.
export const showing = signal<number | undefined>(undefined);

interface Aside {
  /// Its place in the store; undefined: it is in this page only, or is the example.
  readonly id: string | undefined;
  readonly example: boolean;
  readonly history: History;
}
let aside: Aside | undefined;

function put(stop: number): void {
  const { at } = kStops[stop] ?? kStops[0];
  batch(() => {
    showing.value = stop;
    place.value = at;
  });
  globalThis.history?.replaceState(null, "", `#${at}`);
}

/// Lays the example on the table and shows its first stop. "Back" leads to where one was.
export async function beginShow(): Promise<void> {
  if (showing.value !== undefined) return;
  await turnsOver();
  if (showing.value !== undefined) return;
  aside = { id: openJob.value?.id, example: isExample.value, history: history.value };
  goTo(kStops[0].at);
  showing.value = 0;
  if (!aside.example) await openExample();
  if (showing.value === undefined) return;
  readOnly.value = true;
  put(showing.value);
}

export function step(by: 1 | -1): void {
  const next = (showing.value ?? 0) + by;
  if (showing.value !== undefined && next >= 0 && next < kStops.length) put(next);
}

/// Ends what is shown; whoever left by a link stays where it led.
export async function endShow(): Promise<void> {
  if (showing.value === undefined) return;
  const before = aside;
  aside = undefined;
  batch(() => {
    showing.value = undefined;
    readOnly.value = false;
  });
  if (before === undefined || before.example) return;
  const { text } = before.history.now;
  if (before.id === undefined) await putOnTable(text, false);
  else await openKept(before.id);
  if (history.value.now.text !== text) return;
  history.value = before.history;
  if (stranded.value?.text === text) stranded.value = undefined;
}

/// Back to where one was when it began.
export function leaveShow(): void {
  if (showing.value !== undefined) globalThis.history?.back();
}

/// Whether the place on the page is no longer the stop's own: somebody went elsewhere.
export function strayed(): boolean {
  const stop = showing.value;
  return stop !== undefined && place.value !== kStops[stop]?.at;
}

/// The drawing of the stop is there.
export const exampleStands = (): boolean => isExample.value && shown.value !== undefined;
