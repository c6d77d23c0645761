// What the user changes of the building: each is one step of undo, or nothing.
import type { Edit, NewPart, Offer, Side } from "../engine/contract";
import { type Field, withBars, withTyped } from "../job/fields";
import { readJson, textAt, without, withValue } from "../job/pointer";
import { entriesOf, withEntry } from "../job/strikes";
import { words } from "../words/words";
import { change, changed, changeSeen, inTurn, step, whyNot } from "./changing";
import { fieldName } from "./field_name";
import { fieldTrouble, history, inHand, job, readOnly, refusals, shown, tape, trouble } from "./signals";
import { askAtOnce, redraw, seekRest, showNow, solveNow, trial } from "./solving";

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

/// A side of an outline of more than four: the engine makes it longer, and with it the side that runs the other way.
async function typedSide(field: Field, text: string): Promise<boolean> {
  const place = field.pointer.replace(/\/length$/, "");
  const side = shown.value?.answer.sides.find((one) => one.place === place);
  const read = (await askAtOnce({ lengths: { tape: tape.value, read: text } }))?.head.lengths?.read;
  if (side === undefined || read === undefined) return false;
  const base = history.value.now.text;
  const edited = await askAtOnce({
    job: base,
    edits: [{ do: "accept", what: "change-side", place, by_nm: read.nm - side[read.basis].nm }],
  });
  const taken = edited?.answer === undefined ? undefined : readJson(edited.job ?? "");
  if (taken === undefined || history.value.now.text !== base) return false;
  const what = words.steps.typed(fieldName(field));
  const asTyped = await changed(() => withValue(taken, field.pointer, text.trim()), what);
  return asTyped.kind === "done" || (await changed(() => taken, what)).kind === "done";
}

async function typedNow(field: Field, text: string): Promise<void> {
  const across = shown.value?.answer.sides.find((one) => `${one.place}/length` === field.pointer)?.across;
  const made = await changed((now) => withTyped(now, field, text, across), words.steps.typed(fieldName(field)));
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

/// What the engine makes of an edit of the job as it is seen, within a turn: one step, or what was refused. Asked twice in one
/// tap too many, the second finds another job and does nothing.
async function editedNow(seen: string, edit: Edit, what: string): Promise<boolean> {
  if (readOnly.value || history.value.now.text !== seen) return false;
  const solved = await askAtOnce({ job: seen, edits: [edit] });
  if (history.value.now.text !== seen) return false; // another job was laid on the table meanwhile
  const next = solved?.answer === undefined ? undefined : readJson(solved.job ?? "");
  if (next === undefined) {
    if (solved?.refusals !== undefined) refusals.value = solved.refusals;
    return false;
  }
  const made = await changed(() => next, what);
  if (made.kind === "refused") refusals.value = made.refusals;
  return made.kind === "done";
}

function edited(edit: Edit, what: string): Promise<boolean> {
  const seen = history.value.now.text;
  return inTurn(() => editedNow(seen, edit, what), false);
}

async function putInNow(seen: string, side: Side, what: NewPart): Promise<void> {
  if (readOnly.value || history.value.now.text !== seen) return;
  const list = what === "inner-wall" ? "/interior_walls" : "/openings";
  const solved = await askAtOnce({ job: seen, edits: [{ do: "put-in", what, place: side.place }] });
  if (history.value.now.text !== seen) return; // another job was laid on the table meanwhile
  const entries = entriesOf(readJson(solved?.job ?? "") ?? {}, list);
  const entry = entries.at(-1);
  if (entry === undefined || entries.length <= entriesOf(job.value, list).length) {
    refusals.value = solved?.refusals ?? refusals.value; // the building could not be made as it was
    return;
  }
  const put = await changed((now) => withEntry(now, list, entry), words.steps.added(textAt(entry, "/name")));
  if (put.kind === "refused") refusals.value = put.refusals;
  if (put.kind === "done") inHand.value = `${list}/${entries.length - 1}`;
}

/// The engine says how large it is and where there is room for it.
export function putIn(side: Side, what: NewPart): Promise<void> {
  const seen = history.value.now.text;
  return inTurn(() => putInNow(seen, side, what), undefined);
}

/// Over the openings, on top, or both: which courses these are says the engine.
export async function putBeams(overOpenings: boolean, onTop: boolean): Promise<void> {
  await edited({ do: "put-beams", over_openings: overOpenings, on_top: onTop }, words.steps.beams);
}

async function readNm(text: string): Promise<number | undefined> {
  return (await askAtOnce({ lengths: { tape: tape.value, read: text } }))?.head.lengths?.read?.nm;
}

/// The corner at the end of a side is stepped in; false where it could not be.
export function stepCorner(index: number, corner: string, along: string, across: string): Promise<boolean> {
  const seen = history.value.now.text;
  return inTurn(async () => {
    const [alongNm, acrossNm] = [await readNm(along), await readNm(across)];
    if (alongNm === undefined || acrossNm === undefined) return false;
    const edit: Edit = { do: "step-corner", side: index, along_nm: alongNm, across_nm: acrossNm };
    return editedNow(seen, edit, words.steps.stepped(corner));
  }, false);
}

export async function fillCorner(index: number): Promise<void> {
  if (await edited({ do: "fill-corner", side: index }, words.steps.filled)) inHand.value = "";
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
