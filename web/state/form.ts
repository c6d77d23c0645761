// What a form puts into the job, as one step.
import type { Refusals } from "../engine/contract";
import { type FormField, takenPart, withPart } from "../job/form";
import { type Json, valueAt, without } from "../job/pointer";
import { entriesOf, withEntry } from "../job/strikes";
import { words } from "../words/words";
import { change, type Change, changeSeen } from "./changing";
import { inHand, job, readOnly } from "./signals";

/// What was refused of what was sent; undefined where it was taken.
export type Sent = Promise<Refusals | undefined>;

const kFault: Refusals = {
  stringcourse_refusals: 1,
  refusals: [{ code: "", place: "", reason: words.trouble.fault, remedy: "" }],
  beyond: 0,
};

function refusedOf(made: Change): Refusals | undefined {
  if (made.kind === "refused") return made.refusals;
  return made.kind === "failed" ? kFault : undefined;
}

/// The changed fields of the part at a place.
export async function sendPart(place: string, fields: readonly FormField[], typed: Json, what: string): Sent {
  if (readOnly.value) return undefined;
  return refusedOf(await change((now) => withPart(now, place, fields, typed), words.steps.typed(what)));
}

/// One entry more in a list of the job.
export async function sendEntry(list: string, part: string, typed: Json, what: string): Sent {
  if (readOnly.value) return undefined;
  return refusedOf(await change((now) => withEntry(now, list, takenPart(part, typed)), words.steps.added(what)));
}

/// An entry of a list is taken out.
export async function dropEntry(place: string, what: string): Sent {
  if (readOnly.value) return undefined;
  const made = await changeSeen((now) => without(now, place), words.steps.removed(what));
  if (made.kind === "done" && inHand.value.startsWith(place.replace(/\/\d+$/, ""))) inHand.value = "";
  return refusedOf(made);
}

export function entriesAt(place: string): readonly Json[] {
  return entriesOf(job.value, place);
}

export function partAt(place: string): Json {
  return valueAt(job.value, place) ?? {};
}
