// Remedies of what was poured: one is chosen with one tap, and then is part of the job.
import { textAt, without, withValue } from "../job/pointer";
import { entriesOf } from "../job/strikes";
import { words } from "../words/words";
import { changeSeen } from "./changing";
import { job, readOnly } from "./signals";

export type About = "bed" | "shape";
const placeOf = (about: About): string => `/ground/${about}_remedy`;

/// What the job has chosen; "" where nothing is.
export function chosenRemedy(about: About): string {
  return textAt(job.value, `${placeOf(about)}/do`);
}

/// Chosen on all that is read by now: whatever is read later is held against it.
export async function chooseRemedy(about: About, what: string): Promise<void> {
  if (readOnly.value) return;
  await changeSeen((now) => {
    const after = textAt(entriesOf(now, "/readings").at(-1) ?? null, "/id");
    return withValue(now, placeOf(about), { do: what, ...(after === "" ? {} : { after }) });
  }, words.steps.remedy);
}

export async function chooseNone(about: About): Promise<void> {
  if (readOnly.value) return;
  await changeSeen((now) => without(now, placeOf(about)), words.steps.noRemedy);
}
