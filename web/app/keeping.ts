// The job on the table and the device's store: every change is kept, and whatever cannot be kept is said.
import { effect, signal, untracked } from "@preact/signals";
import { type Keep, type OpenJob, openKeep, pickFile, readFile, saveBytes, type Trouble as KeepTrouble } from "../keep";
import { readJson, textAt } from "../job/pointer";
import { words } from "../words/words";
import { kOpening, mergeLog, putOnTable } from "./actions";
import { engine } from "./engine_port";
import { history, isExample, readOnly, said, tried, trouble } from "./state";

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

/// Whether a job of one's own lay on the table in this browser; else the example need not wait for the store.
const kHint = "stringcourse-own-job";
function hint(): boolean {
  try {
    return localStorage.getItem(kHint) !== null;
  } catch {
    return true;
  }
}
function leaveHint(): void {
  try {
    localStorage.setItem(kHint, "1");
  } catch {
    // The example then waits for the store, as always.
  }
}

/// A job that was being opened when the page stopped for good, and was left alone for that.
export const notOpened = signal<{ readonly id: string; readonly name: string } | undefined>(undefined);

/// The job that is being opened, kept until the page has outlived it. A page that is left in the usual way clears it.
const kBeingOpened = "stringcourse-being-opened";
function noteOpening(id: string | undefined): void {
  try {
    if (id === undefined) localStorage.removeItem(kBeingOpened);
    else localStorage.setItem(kBeingOpened, id);
  } catch {
    // Without a store nothing is opened by itself either.
  }
}
function neverOpened(): string | undefined {
  try {
    return localStorage.getItem(kBeingOpened) ?? undefined;
  } catch {
    return undefined;
  }
}

/// What the list calls this job: its own name, else that of its file.
export function jobName(): string {
  const own = textAt(readJson(history.value.now.text) ?? {}, "/name");
  return own !== "" ? own : (openJob.value?.head.value.name ?? "") || words.untitled;
}

function say(kept: KeepTrouble): void {
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

async function leave(): Promise<void> {
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

async function lay(open: OpenJob): Promise<void> {
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
    say(opened.trouble);
    if (history.value.now.text === "") await openExample();
  }
}

export async function openExample(): Promise<void> {
  await leave();
  await putOnTable(exampleText, true);
}

async function takeIn(text: string, name: string): Promise<void> {
  const taken = await keep.value?.takeIn(text, name);
  if (taken?.ok) {
    await leave();
    await lay(taken.value);
  } else if (taken?.trouble.kind === "not-a-job")
    trouble.value = { kind: "message", lead: words.trouble.notAJob, text: await whyNoJob(text) };
  else if (taken !== undefined) say(taken.trouble);
  if (taken?.ok === false && history.value.now.text === "") await openExample();
}

/// Why a text is no job, with the line and column where it goes wrong: the engine's words.
async function whyNoJob(text: string): Promise<string> {
  try {
    const solved = await engine().solve({ border: 1, job: text, budget: 0 });
    const first = solved === "superseded" ? undefined : solved.refusals?.refusals[0];
    return first === undefined ? "" : `${first.reason} ${first.remedy}`;
  } catch {
    return "";
  }
}

export async function openFile(): Promise<void> {
  const picked = await pickFile();
  if (picked.ok) await takeIn(picked.value.text, picked.value.name);
  else say(picked.trouble);
}

export async function dropFile(file: File): Promise<void> {
  const read = await readFile(file);
  if (read.ok) await takeIn(read.value.text, read.value.name);
  else say(read.trouble);
}

/// Another phone's copy of this job, from a file: its logs are taken in.
export async function takeInLog(): Promise<void> {
  const picked = await pickFile();
  if (!picked.ok) return say(picked.trouble);
  const refused = await mergeLog(picked.value.text);
  if (refused !== undefined && refused !== "")
    trouble.value = { kind: "message", lead: words.wall.notMerged, text: refused };
}

function fileName(called = textAt(readJson(history.value.now.text) ?? {}, "/name")): string {
  const name = called.replaceAll(/[^\p{L}\p{N} _-]+/gu, " ").trim();
  return `${name === "" ? "job" : name}.json`;
}

/// To a file: through the store, which then counts anew; or straight from the page when the store cannot hold it.
export async function toFile(): Promise<void> {
  await queue;
  const open = openJob.value;
  const whole = open !== undefined && open.text.value === history.value.now.text;
  const done = whole
    ? await open.saveToFile()
    : await saveBytes(history.value.now.text, fileName(), "application/json");
  if (!done.ok) return say(done.trouble);
  said.value = words.state.filed(done.value.name);
}

/// The file of a job that is not open.
export async function saveKept(id: string): Promise<void> {
  const text = await keep.value?.read(id);
  if (text === undefined) return;
  if (!text.ok) return say(text.trouble);
  const heads = [...(keep.value?.jobs.value ?? []), ...(keep.value?.trash.value ?? [])];
  const name = heads.find((head) => head.id === id)?.name;
  const done = await saveBytes(text.value, fileName(name), "application/json");
  if (!done.ok) say(done.trouble);
  else said.value = words.state.filed(done.value.name);
}

export async function removeJob(id: string, name: string): Promise<void> {
  if (openJob.value?.id === id) await openExample();
  const gone = await keep.value?.remove(id);
  if (gone?.ok) removed.value = { id, name };
  else if (gone !== undefined) say(gone.trouble);
}

export async function bringBack(): Promise<void> {
  const { value } = removed;
  if (value !== undefined) await restoreJob(value.id);
}

export async function restoreJob(id: string): Promise<void> {
  const back = await keep.value?.restore(id);
  if (removed.value?.id === id) removed.value = undefined;
  if (back !== undefined && !back.ok) say(back.trouble);
}

/// Ends a job in the trash.
export async function destroyJob(id: string): Promise<void> {
  const done = await keep.value?.destroy(id);
  if (removed.value?.id === id) removed.value = undefined;
  if (done !== undefined && !done.ok) say(done.trouble);
}

export async function duplicateJob(id: string, name: string): Promise<void> {
  const made = await keep.value?.duplicate(id, words.jobs.copyOf(name));
  if (made !== undefined && !made.ok) say(made.trouble);
}

export async function renameJob(id: string, name: string): Promise<void> {
  const done = await keep.value?.rename(id, name);
  if (done !== undefined && !done.ok) say(done.trouble);
}

async function beginKept(text: string): Promise<void> {
  await leave();
  await putOnTable(text, false);
  keepText(text);
}

/// Opens the store, then the job that was open last, else the example.
export async function startKeeping(example: string): Promise<void> {
  exampleText = example;
  kOpening.begun = beginKept;
  if (!hint()) void putOnTable(example, true);
  queue = openStore();
  addEventListener("pagehide", () => noteOpening(undefined));
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
  else if (history.value.now.text === "") await putOnTable(example, true);
}

async function openStore(): Promise<void> {
  keep.value = await openKeep();
}

/// All texts that were on their way are in the store, or their trouble is shown.
export function allStored(): Promise<void> {
  return queue;
}

export async function saveStranded(): Promise<void> {
  const { value } = stranded;
  if (value === undefined) return;
  const done = await saveBytes(value.text, value.name, "application/json");
  if (done.ok) stranded.value = undefined;
  else say(done.trouble);
}
