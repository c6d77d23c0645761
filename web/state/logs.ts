// What is entered into the job's logs: readings, what was laid, and strikes of either. Nothing is ever taken out.
import type { Refusals } from "../engine/contract";
import { type LaidBody, withLaid } from "../job/laid";
import { type Json, textAt, without, withValue } from "../job/pointer";
import { type Entry, type Stamp, withReading } from "../job/readings";
import { isStanding, withCounting } from "../job/strikes";
import { words } from "../words/words";
import { change, inTurn, step, whyNot } from "./changing";
import { history, readOnly, trouble } from "./signals";
import { seekRest, trial } from "./solving";
import { stamp } from "./stamp";

/// A reading added to the log; hands back what was refused.
export async function enter(entry: Entry, by: string, what: string, note = ""): Promise<string | undefined> {
  if (readOnly.value) return words.wall.readOnly;
  const label = entry.kind === "strike" ? words.steps.struck(what) : words.steps.reading(what);
  const struckAlready = (now: Json): boolean => entry.kind === "strike" && !isStanding(now, "/readings", entry.id);
  return whyNot(
    await change((now) => (struckAlready(now) ? now : withReading(now, entry, { ...stamp(by), note })), label),
  );
}

/// The entry added; a strike of what is struck already adds nothing.
function withOneLaid(log: Json, { body, signs }: { readonly body: LaidBody; readonly signs: Stamp }): Json {
  const strikes = textAt(body, "/strike");
  return strikes !== "" && !isStanding(log, "/laid", strikes) ? log : withLaid(log, body, signs);
}

/// An entry of the laid log; its id, or what was refused.
export async function enterLaid(body: LaidBody, by: string, what: string): Promise<{ id?: string; refused?: string }> {
  return enterAllLaid([body], by, "strike" in body ? words.steps.unlaid(what) : words.steps.laid(what));
}

/// Several entries in one step; the id of the last one, or what was refused.
export async function enterAllLaid(
  bodies: readonly LaidBody[],
  by: string,
  label: string,
): Promise<{ id?: string; refused?: string }> {
  if (readOnly.value) return { refused: words.wall.readOnly };
  const entries = bodies.map((body) => ({ body, signs: stamp(by) }));
  const made = await change((now) => entries.reduce(withOneLaid, now), label);
  const refused = whyNot(made);
  return refused === undefined ? { id: entries.at(-1)?.signs.id ?? "" } : { refused };
}

/// An entry that was typed as a whole; what was refused of it.
export async function enterTyped(body: LaidBody, by: string, what: string): Promise<Refusals | undefined> {
  if (readOnly.value) return undefined;
  const made = await change((now) => withLaid(now, body, stamp(by)), words.steps.laid(what));
  return made.kind === "refused" ? made.refusals : undefined;
}

async function merged(other: string): Promise<string | undefined> {
  const outcome = await trial({ job: history.value.now.text, merge: other });
  if (outcome.kind === "refused") return whyNot(outcome);
  if (outcome.kind === "failed") return trouble.value?.kind === "message" ? trouble.value.text : words.trouble.fault;
  if (outcome.job !== undefined) step(outcome.job, words.wall.merged);
  void seekRest();
  return undefined;
}

/// The logs of another copy of this job come to this one's. Hands back what was refused.
export async function mergeLog(other: string): Promise<string | undefined> {
  return inTurn(() => merged(other), undefined);
}

/// A reading that no longer counts: a later entry says so, and it stays to be seen.
export async function strike(id: string, what: string): Promise<void> {
  await enter({ kind: "strike", id }, "", what);
}

/// A struck entry of a log counts again: the strikes against it are struck.
export async function bringBack(log: "/readings" | "/laid", id: string, what: string): Promise<void> {
  if (readOnly.value) return;
  await change((now) => withCounting(now, log, id, () => stamp("")), words.steps.counted(what));
}

/// The bars of these dowel readings stand where the dowels were found; none: as before.
export async function keepDowels(ids: readonly string[]): Promise<void> {
  if (readOnly.value) return;
  const place = "/steel/kept_dowels";
  await (ids.length === 0
    ? change((now) => without(now, place), words.steps.keptNone)
    : change((now) => withValue(now, place, ids), words.steps.kept));
}
