// The job on the table and the device's store: every change is kept, and whatever cannot be kept is said.
import { effect, signal, untracked } from "@preact/signals";
import { readJson, textAt } from "../job/pointer";
import { type Keep, type OpenJob, openKeep, type Trouble as KeepTrouble } from "../keep";
import { words } from "../words/words";
import { hint, leaveHint, neverOpened, noteOpening, noteUnkept, takeUnkept, type Unkept } from "./opening_note";
import { history, isExample, readOnly, tried, trouble } from "./signals";
import { kOpening, putOnTable } from "./table";

export const keep = signal<Keep | undefined>(undefined);
export const openJob = signal<OpenJob | undefined>(undefined);
/// What the store said last about this job; undefined: all is kept.
export const keepTrouble = signal<KeepTrouble | undefined>(undefined);
/// Changes that are on their way into the store.
export const keeping = signal(0);
/// A job just deleted, to be brought back.
export const removed = signal<{ readonly id: string; readonly name: string } | undefined>(undefined);

let stop: (() => void) | undefined;
/// Texts go to the store one after another, also while the job's first entry is still being made.
let queue: Promise<void> = Promise.resolve();
let exampleText = "";

/// A text that the store did not take, of a job that was left since: in this page only, to be saved to a file.
export const stranded = signal<{ readonly name: string; readonly text: string } | undefined>(undefined);

/// A job that was being opened when the page stopped for good, and was left alone for that.
export const notOpened = signal<{ readonly id: string; readonly name: string } | undefined>(undefined);

/// What the list calls this job: its own name, else that of its file.
export function jobName(): string {
  const own = textAt(readJson(history.value.now.text) ?? {}, "/name");
  return own !== "" ? own : (openJob.value?.head.value.name ?? "") || words.untitled;
}

/// Names a job's file.
export function fileName(called = textAt(readJson(history.value.now.text) ?? {}, "/name")): string {
  const name = called.replaceAll(/[^\p{L}\p{N} _-]+/gu, " ").trim();
  return `${name === "" ? "job" : name}.json`;
}

export function tellTrouble(kept: KeepTrouble): void {
  if (kept.kind === "cancelled") return;
  if (kept.kind === "newer") trouble.value = { kind: "message", lead: words.trouble.newer, text: "" };
  else if (kept.kind === "not-a-job" || kept.kind === "damaged")
    trouble.value = { kind: "message", lead: words.trouble.notAJob, text: "" };
  else if (kept.kind === "too-large") trouble.value = { kind: "message", lead: words.trouble.fileTooLarge, text: "" };
  else if (kept.kind === "file-failed") trouble.value = { kind: "message", lead: words.trouble.fileFailed, text: "" };
  else if (kept.kind === "not-found") trouble.value = { kind: "message", lead: words.trouble.notFound, text: "" };
  else keepTrouble.value = kept;
}

async function storeText(text: string): Promise<void> {
  const store = keep.value;
  if (store === undefined) return;
  const open = openJob.value;
  if (open === undefined) {
    const made = await store.create(text);
    if (made.ok) follow(made.value);
    keepTrouble.value = made.ok ? undefined : made.trouble;
    if (made.ok) void store.askPersistence();
    return;
  }
  if (open.access.value === "reader" || open.text.value === text) return;
  const stored = await open.store(text);
  keepTrouble.value = stored.ok ? undefined : stored.trouble;
}

function keepText(text: string): void {
  keeping.value += 1;
  queue = queue
    .then(() => storeText(text))
    .finally(() => {
      keeping.value -= 1;
    });
}

/// The open job's own news: another tab's changes are shown while this one only looks on.
function follow(open: OpenJob): void {
  stop?.();
  openJob.value = open;
  leaveHint();
  stop = effect(() => {
    const reader = open.access.value === "reader";
    const text = open.text.value;
    const was = untracked(() => readOnly.value);
    readOnly.value = reader;
    if ((reader || was) && text !== untracked(() => history.value.now.text)) void putOnTable(text, false);
  });
}

export async function leave(): Promise<void> {
  await queue;
  const unkept = keepTrouble.value;
  if (unkept !== undefined && unkept.kind !== "read-only" && !isExample.value) {
    stranded.value = { name: fileName(), text: history.value.now.text };
  }
  stop?.();
  stop = undefined;
  const open = openJob.value;
  openJob.value = undefined;
  notOpened.value = undefined;
  keepTrouble.value = undefined;
  readOnly.value = false;
  await open?.close();
}

export async function lay(open: OpenJob): Promise<void> {
  noteOpening(open.id);
  follow(open);
  await putOnTable(open.text.value, false);
}

/// The job on the table is left only once the other one is there.
export async function openKept(id: string): Promise<void> {
  if (openJob.value?.id === id) return;
  const opened = await keep.value?.open(id);
  if (opened === undefined) return;
  if (opened.ok) {
    await leave();
    await lay(opened.value);
  } else {
    tellTrouble(opened.trouble);
    if (history.value.now.text === "") await openExample();
  }
}

export async function openExample(): Promise<void> {
  await leave();
  await putOnTable(exampleText, true);
}

async function beginKept(text: string): Promise<void> {
  await leave();
  await putOnTable(text, false);
  keepText(text);
}

/// The page is left in the usual way, perhaps before the last change reached the store.
function left(): void {
  noteOpening(undefined);
  const open = openJob.value;
  const { text } = history.value.now;
  if (keeping.value === 0 || isExample.value || readOnly.value) return;
  noteUnkept({ id: open?.id, was: open?.text.value, text });
}

/// What did not reach the store when the page was left is the job still, unless another page went on with it since.
async function takeUp(unkept: Unkept): Promise<void> {
  const open = openJob.value;
  if (open?.text.value === unkept.text) return;
  if (unkept.id === undefined) await beginKept(unkept.text);
  else if (open?.id === unkept.id && open.text.value === unkept.was) await putOnTable(unkept.text, false);
}

/// Opens the store, then the job that was open last, else the example.
export async function startKeeping(example: string): Promise<void> {
  exampleText = example;
  kOpening.begun = beginKept;
  const unkept = takeUnkept();
  if (!hint() && unkept === undefined) void putOnTable(example, true);
  queue = openStore();
  addEventListener("pagehide", left);
  addEventListener("pageshow", () => noteUnkept(undefined));
  effect(() => {
    if (tried.value !== "" && tried.value === history.value.now.text) noteOpening(undefined);
  });
  effect(() => {
    const { text } = history.value.now;
    if (text !== "" && !isExample.value) untracked(() => keepText(text));
  });
  await queue;
  const store = keep.value;
  const last = await store?.lastOpened();
  const head = store?.jobs.value.find((one) => one.id === last && !one.newer);
  if (!isExample.value) return;
  const stopped = head !== undefined && neverOpened() === head.id;
  noteOpening(undefined);
  if (stopped) notOpened.value = { id: head.id, name: head.name };
  if (head !== undefined && !stopped) await openKept(head.id);
  if (unkept !== undefined && !stopped) await takeUp(unkept);
  if (history.value.now.text === "") await putOnTable(example, true);
}

async function openStore(): Promise<void> {
  keep.value = await openKeep();
}

/// All texts that were on their way are in the store, or their trouble is shown.
export function allStored(): Promise<void> {
  return queue;
}
