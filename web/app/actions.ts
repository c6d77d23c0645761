// What the user does to the job: each is one step of undo, or nothing.
import { batch } from "@preact/signals";
import type { Edit } from "../engine/contract";
import { type Field, type NewOpening, withBars, withOpening, withTyped } from "../job/fields";
import { begun, type History, redoable, redone, undoable, undone } from "../job/history";
import { type LaidBody, withLaid } from "../job/laid";
import { type Entry, type Stamp, withReading } from "../job/readings";
import { type Json, jobText, readJson, textAt, without, withValue } from "../job/pointer";
import { isStanding, withCounting, withLogsOf } from "../job/strikes";
import { words } from "../words/words";
import type { Offer, Side } from "./answer";
import { change, changed, changeSeen, clearTurns, inTurn, step, whyNot } from "./changing";
import { engine } from "./engine_port";
import { fieldName } from "./field_name";
import {
  askAtOnce,
  askShown,
  forgetFieldTrouble,
  redraw,
  seekOffers,
  seekRest,
  seekWhole,
  showNow,
  solveNow,
  trial,
} from "./solving";
import {
  course,
  fieldTrouble,
  history,
  inHand,
  isExample,
  job,
  lit,
  offered,
  piece,
  readOnly,
  refusals,
  said,
  shown,
  sideIndex,
  tried,
  trouble,
  unknownPiece,
} from "./state";

/// So long another job's drawing may stand: milliseconds.
const kOtherDrawing = 1_000;

/// A job takes the place of the one on the table.
export function putOnTable(text: string, example: boolean): Promise<void> {
  clearTurns();
  engine().leave();
  batch(() => {
    history.value = begun(text);
    isExample.value = example;
    offered.value = undefined;
    refusals.value = undefined;
    trouble.value = undefined;
    inHand.value = "";
    lit.value = "";
    piece.value = undefined;
    unknownPiece.value = "";
    course.value = 1;
    sideIndex.value = 0;
    forgetFieldTrouble();
  });
  // Another job's drawing stays for a moment, so that nothing flickers; no longer, for it is not this one's.
  const clock = setTimeout(() => {
    if (history.value.now.text === text) shown.value = undefined;
  }, kOtherDrawing);
  return showNow().then(async (drawn) => {
    clearTimeout(clock);
    if (history.value.now.text !== text) return;
    // The drawing that stands is another job's.
    if (!drawn) shown.value = undefined;
    const whole = drawn && (await seekWhole());
    if (history.value.now.text !== text) return;
    tried.value = text;
    if (whole) await seekOffers();
  });
}

/// A state of the job with all that the logs hold by now: what counted in it counts again, and nothing else.
function withLogsKept(wanted: string, left: string): string {
  const plain = readJson(wanted) ?? {};
  const kept = jobText(withLogsOf(plain, readJson(left) ?? {}, () => stamp("")));
  return kept === jobText(plain) ? wanted : kept;
}

function goTo(next: History, say: string): void {
  batch(() => {
    history.value = next;
    forgetFieldTrouble();
    said.value = say;
  });
}

/// One step back, readings and strikes too. What was entered into a log since is not taken out: it is struck.
export async function undo(): Promise<void> {
  await inTurn(async () => {
    const what = undoable(history.value);
    if (what !== undefined && !readOnly.value) goTo(undone(history.value, withLogsKept), words.say.undone(what));
  }, undefined);
  await solveNow();
}

export async function redo(): Promise<void> {
  await inTurn(async () => {
    const what = redoable(history.value);
    if (what !== undefined && !readOnly.value) goTo(redone(history.value, withLogsKept), words.say.redone(what));
  }, undefined);
  await solveNow();
}

async function settled(base: string, edit: Edit, what: string): Promise<void> {
  if (history.value.now.text !== base) return void solveNow(); // the job is another by now: it is shown as it is
  const outcome = await trial({ job: base, edits: [edit] });
  if (history.value.now.text !== base) return;
  if (outcome.kind === "shown" && outcome.job !== undefined) {
    step(outcome.job, what);
    if (outcome.beyond) void redraw();
    return void seekRest();
  }
  await showNow();
  // The job stands as it was and is drawn again; why the hand was not followed stays to be read.
  if (outcome.kind === "refused" && history.value.now.text === base) refusals.value = outcome.refusals;
  void seekRest();
}

/// The end of a drag or of a run of keys: the engine's changed job becomes the job. Refused, the job stays as it was.
export function settle(base: string, edit: Edit, what: string): Promise<void> {
  return inTurn(() => settled(base, edit, what), undefined);
}

export async function takeOffer(offer: Offer): Promise<void> {
  if (readOnly.value) return;
  const shift = offer.shift === undefined ? {} : { shift_nm: offer.shift.nm };
  const edit: Edit = { do: "accept", what: offer.what, place: offer.place, by_nm: offer.change.nm, ...shift };
  await settle(history.value.now.text, edit, words.steps.offer(offer.text));
}

/// How long a typed text is, nominal, as the engine reads it: it is asked for a building of that length.
async function readLength(text: string): Promise<number | undefined> {
  const series = textAt(job.value, "/units/series");
  const solved = await askAtOnce({ begin: { length: text, width: "10 m", height: "2400 mm", series } });
  return solved?.answer?.sides[0]?.nominal.nm;
}

/// A side of an outline of more than four: the engine makes it longer, and with it the side that runs the other way.
async function typedSide(field: Field, text: string): Promise<boolean> {
  const place = field.pointer.replace(/\/length$/, "");
  const stood = shown.value?.answer.sides.find((side) => side.place === place)?.nominal.nm;
  const wanted = await readLength(text);
  if (stood === undefined || wanted === undefined) return false;
  const base = history.value.now.text;
  const edited = await askAtOnce({
    job: base,
    edits: [{ do: "accept", what: "change-side", place, by_nm: wanted - stood }],
  });
  const taken = edited?.answer === undefined ? undefined : readJson(edited.job ?? "");
  if (taken === undefined || history.value.now.text !== base) return false;
  const what = words.steps.typed(fieldName(field));
  const asTyped = await changed(() => withValue(taken, field.pointer, text.trim()), what);
  return asTyped.kind === "done" || (await changed(() => taken, what)).kind === "done";
}

async function typedNow(field: Field, text: string): Promise<void> {
  const made = await changed((now) => withTyped(now, field, text), words.steps.typed(fieldName(field)));
  if (made.kind !== "refused") return;
  if (/^\/outline\/sides\/\d+\/length$/.test(field.pointer) && (await typedSide(field, text))) return;
  trouble.value = undefined; // what the engine says of its own questions is not the user's
  fieldTrouble.value = { pointer: field.pointer, typed: text, refusals: made.refusals };
}

/// A size typed: taken, or refused beside its field while the last good drawing stays.
export async function typed(field: Field, text: string): Promise<void> {
  if (!readOnly.value) await inTurn(() => typedNow(field, text), undefined);
}

export async function chooseSeries(id: string): Promise<void> {
  if (readOnly.value) return;
  const made = await changeSeen(
    (now) => withValue(now, "/units/series", id),
    words.steps.typed(words.inHand.fields.series),
  );
  if (made.kind === "refused") refusals.value = made.refusals;
}

/// Bars as typed; hands back what was refused.
export async function putBars(size: string, spacing: string): Promise<string | undefined> {
  if (readOnly.value) return words.wall.readOnly;
  return whyNot(await change((now) => withBars(now, size, spacing), words.steps.bars));
}

function stamp(by: string): { readonly id: string; readonly when: string; readonly by: string } {
  const dice = [...crypto.getRandomValues(new Uint32Array(2))].map((part) => part.toString(36)).join("");
  const when = new Date();
  const two = (part: number): string => String(part).padStart(2, "0");
  const day = `${when.getFullYear()}-${two(when.getMonth() + 1)}-${two(when.getDate())}`;
  return { id: dice, when: `${day} ${two(when.getHours())}:${two(when.getMinutes())}`, by };
}

/// A reading added to the log; hands back what was refused.
export async function enter(entry: Entry, by: string, what: string): Promise<string | undefined> {
  if (readOnly.value) return words.wall.readOnly;
  const label = entry.kind === "strike" ? words.steps.struck(what) : words.steps.reading(what);
  const struckAlready = (now: Json): boolean => entry.kind === "strike" && !isStanding(now, "/readings", entry.id);
  return whyNot(await change((now) => (struckAlready(now) ? now : withReading(now, entry, stamp(by))), label));
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

export async function putIn(side: Side, kind: NewOpening): Promise<void> {
  if (readOnly.value) return;
  const openings = shown.value?.answer.openings.filter((one) => one.side === side.name) ?? [];
  const taken = openings.map((one) => ({ from: one.from.nm, to: one.to.nm }));
  const room = { name: side.name, start: side.start, long: side.actual.nm, taken };
  const made = withOpening(job.value, room, kind);
  const put = await changeSeen((now) => withOpening(now, room, kind).job, words.steps.added(made.name));
  if (put.kind === "refused") refusals.value = put.refusals;
  if (put.kind === "done") inHand.value = made.place;
}

export async function takeOut(place: string): Promise<void> {
  if (readOnly.value) return;
  const name = textAt(job.value, `${place}/name`);
  const made = await changeSeen((now) => without(now, place), words.steps.removed(name));
  if (made.kind === "refused") refusals.value = made.refusals;
  if (made.kind === "done") inHand.value = "";
}

export async function rename(name: string): Promise<void> {
  if (!readOnly.value) await change((now) => withValue(now, "/name", name), words.steps.renamed);
}

export interface Sizes {
  readonly length: string;
  readonly width: string;
  readonly height: string;
  readonly series: string;
}

/// A building of one's own from four sizes. Hands back what was refused.
export async function begin(sizes: Sizes): Promise<string | undefined> {
  const solved = await askAtOnce({ begin: { name: words.begin.name, ...sizes } });
  if (solved === undefined) {
    const text = trouble.value?.kind === "message" ? trouble.value.text : words.trouble.fault;
    trouble.value = undefined;
    return text;
  }
  const first = solved.refusals?.refusals[0];
  if (solved.job === undefined || solved.answer === undefined)
    return `${first?.reason ?? ""} ${first?.remedy ?? ""}`.trim();
  await kOpening.begun(solved.job);
  return undefined;
}

/// What keeps jobs hears of new ones here (app/keeping.ts).
export const kOpening: { begun: (text: string) => Promise<void> } = { begun: (text) => putOnTable(text, false) };

export function stepCourse(by: number): void {
  const highest = shown.value?.answer.courses.length ?? 1;
  const next = Math.max(1, Math.min(highest, course.value + by));
  if (next === course.value) return;
  course.value = next;
  said.value = words.say.course(next);
  void redraw();
}

export function seeSide(index: number): void {
  if (index === sideIndex.value) return;
  sideIndex.value = index;
  void redraw();
}

/// Takes a place in hand and shows the side that it is on.
export function takeInHand(place: string): void {
  inHand.value = place;
  const answer = shown.value?.answer;
  const opening = answer?.openings.find((one) => one.place === place);
  const index = answer?.sides.findIndex((side) => side.place === place || side.name === opening?.side) ?? -1;
  if (index >= 0) seeSide(index);
}

/// Shows a place of the job on the drawing. Places inside an opening or a side mean that opening or side.
export function showPlace(place: string): void {
  const match = /^(\/openings\/\d+|\/outline\/sides\/\d+|\/interior_walls\/\d+)/.exec(place);
  lit.value = match?.[1] ?? "";
  if (match?.[1] !== undefined) takeInHand(match[1]);
  else inHand.value = "";
  const seen = /^\/(readings|ground)/.test(place) ? "ground" : match === null ? "in-hand" : "plan";
  document.getElementById(seen)?.scrollIntoView({ block: "nearest" });
}

export async function showPiece(name: string): Promise<void> {
  const solved = await askShown({ job: history.value.now.text, piece: name });
  const card = solved?.head.piece;
  batch(() => {
    if (card !== undefined) piece.value = card;
    unknownPiece.value = card === undefined ? name : "";
  });
  if (card !== undefined)
    requestAnimationFrame(() => document.getElementById("unit")?.scrollIntoView({ block: "nearest" }));
}

export async function tryAgain(): Promise<void> {
  trouble.value = undefined;
  await solveNow();
}
