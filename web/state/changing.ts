// One change of the job after the other: each is worked out from the job as the one before it left it, so that two taps in
// quick succession are two steps, and never one that is lost.
import { batch, signal } from "@preact/signals";
import type { Refusals } from "../engine/contract";
import { done } from "../job/history";
import { jobText, type Json } from "../job/pointer";
import { words } from "../words/words";
import { history, isExample, job, refusals } from "./signals";
import { forgetFieldTrouble, redraw, seekRest, trial } from "./solving";

/// What came of a change that was asked for.
export type Change =
  | { readonly kind: "done" }
  | { readonly kind: "refused"; readonly refusals: Refusals }
  /// The engine did not answer; or another job took this one's place before it could.
  | { readonly kind: "failed" }
  | { readonly kind: "left" };

let queue: Promise<unknown> = Promise.resolve();
let table = 0;
/// How many changes were asked for and are not over.
export const turns = signal(0);

/// Waits for every change that was asked for until now.
export async function turnsOver(): Promise<void> {
  await queue;
}

/// Another job takes this one's place: what waits to be done to the old one is dropped.
export function clearTurns(): void {
  table += 1;
}

/// Whether the job that lies on the table now still does when this is called later.
export function sameTable(): () => boolean {
  const asked = table;
  return () => asked === table;
}

/// Does `act` once everything that was asked for before it is done; `left` if the job was left meanwhile.
export function inTurn<T>(act: () => Promise<T>, left: T): Promise<T> {
  const asked = table;
  const ended = queue.then(() => (asked === table ? act() : left));
  turns.value += 1;
  queue = ended
    .catch(() => undefined)
    .finally(() => {
      turns.value -= 1;
    });
  return ended;
}

/// Makes `text` the job. The engine has shown it already.
export function step(text: string, what: string): void {
  batch(() => {
    history.value = done(history.value, text, what);
    isExample.value = false;
    refusals.value = undefined;
    forgetFieldTrouble();
  });
}

/// Within a turn: the job as `make` changes it is tried, and is the job if the engine takes it.
export async function changed(make: (job: Json) => Json, what: string): Promise<Change> {
  const base = history.value.now.text;
  const text = jobText(make(job.value));
  if (text === base) return { kind: "done" };
  const outcome = await trial({ job: text });
  if (history.value.now.text !== base) return { kind: "left" };
  if (outcome.kind !== "shown") return outcome;
  step(text, what);
  if (outcome.beyond) void redraw();
  void seekRest();
  return { kind: "done" };
}

/// The same in a turn of its own.
export function change(make: (job: Json) => Json, what: string): Promise<Change> {
  return inTurn<Change>(() => changed(make, what), { kind: "left" });
}

/// A change of the job as it is seen now, by places in it: made only if it still is that job when its turn comes. So what is
/// asked twice in one tap too many is done once.
export function changeSeen(
  make: (job: Json) => Json,
  what: string,
  seen: string = history.value.now.text,
): Promise<Change> {
  const left: Change = { kind: "left" };
  return inTurn<Change>(async () => (history.value.now.text === seen ? changed(make, what) : left), left);
}

/// Does `act` unless it is being done already: a form that is sent twice in one tap too many is sent once.
export function onceAtATime<Asked extends readonly unknown[]>(
  act: (...asked: Asked) => Promise<void>,
): (...asked: Asked) => Promise<void> {
  let busy = false;
  return async (...asked) => {
    if (busy) return;
    busy = true;
    try {
      await act(...asked);
    } finally {
      busy = false;
    }
  };
}

/// Why a change was not made, in words; undefined where it was.
export function whyNot(made: Change): string | undefined {
  if (made.kind === "done") return undefined;
  if (made.kind === "left") return "";
  if (made.kind === "failed") return words.trouble.fault;
  const first = made.refusals.refusals[0];
  return first === undefined ? words.trouble.fault : `${first.reason} ${first.remedy}`.trim();
}
