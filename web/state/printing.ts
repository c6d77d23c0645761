// The printed set: which sheets it has, and the set itself, made by the engine in the page.
import { signal } from "@preact/signals";
import type { SheetName } from "../engine/contract";
import { textAt } from "../job/pointer";
import { saveBytes } from "../keep";
import { history, job, shown } from "./signals";
import { askWhole } from "./solving";

export type PaperSize = "letter" | "a4";

export interface MadeSet {
  readonly job: string;
  readonly paper: PaperSize;
  /// What it has besides: see further.
  readonly further: string;
  /// The hold point whose sheets it holds; "" where it is the whole set.
  readonly of: string;
  readonly bytes: Uint8Array<ArrayBuffer>;
  readonly address: string;
}

export const paper = signal<PaperSize>("letter");
/// Sheets that come where they are asked for: templates of the dowels at full size, and the rules used.
export const further = signal<{ readonly templates: boolean; readonly standards: boolean }>({
  templates: false,
  standards: false,
});

function furtherKey(): string {
  return `${further.value.templates}-${further.value.standards}`;
}

export const made = signal<MadeSet | undefined>(undefined);
/// The set whose pages are shown in little.
export const pictured = signal<MadeSet | undefined>(undefined);
/// What is being made: a hold point, "" for the whole set; undefined: nothing.
export const making = signal<string | undefined>(undefined);
/// The building was changed while its set was being made.
export const dropped = signal(false);
export const listed = signal<{ readonly job: string; readonly sheets: readonly SheetName[] } | undefined>(undefined);

/// Asks for the names of the sheets once the whole answer is there.
export function seekSheets(): void {
  const size = paper.value;
  const key = size + furtherKey();
  if (shown.value?.stage !== "whole" || listed.value?.job === shown.value.text + key) return;
  const { text } = shown.value;
  void askWhole({ job: text, sheets: size, ...further.value }).then((solved) => {
    if (solved !== undefined) listed.value = { job: text + key, sheets: solved.head.sheets ?? [] };
  });
}

/// The set of a hold point ("": the whole) of the job as it stands, as bytes.
async function bytesOf(of: string): Promise<Uint8Array<ArrayBuffer> | undefined> {
  const { text } = history.value.now;
  const size = paper.value;
  const known = [pictured.value, made.value].find(
    (one) => one?.job === text && one.paper === size && one.of === of && one.further === furtherKey(),
  );
  if (known !== undefined) return known.bytes;
  // A place where a rule is given up names the offer that would keep it, on paper too.
  const offers = shown.value?.text === text && shown.value.answer.conceded !== undefined;
  const solved = await askWhole({ job: text, set: size, offers, ...further.value, ...(of === "" ? {} : { of }) });
  return solved?.bytes(`set-${size}.pdf`);
}

function withAddress(asked: Omit<MadeSet, "bytes" | "address">, bytes: Uint8Array<ArrayBuffer>): MadeSet {
  return { ...asked, bytes, address: URL.createObjectURL(new Blob([bytes], { type: "application/pdf" })) };
}

/// Makes a set, to be looked at and saved. True once it is there.
export async function makeSet(of: string): Promise<boolean> {
  const { text } = history.value.now;
  const asked = { job: text, paper: paper.value, of, further: furtherKey() };
  making.value = of;
  dropped.value = false;
  const bytes = await bytesOf(of);
  making.value = undefined;
  if (bytes === undefined) {
    dropped.value = history.value.now.text !== text;
    return false;
  }
  if (made.value !== undefined) URL.revokeObjectURL(made.value.address);
  made.value = withAddress(asked, bytes);
  return true;
}

/// The pages of a hold point, for their pictures: made once its sheets are listed, and anew when the job is another.
export async function seekPictures(of: string): Promise<void> {
  const { text } = history.value.now;
  const asked = { job: text, paper: paper.value, of, further: furtherKey() };
  const now = pictured.value;
  const same = (one: MadeSet): boolean =>
    one.job === text && one.paper === asked.paper && one.further === asked.further;
  if (shown.value?.stage !== "whole" || shown.value.text !== text) return;
  if (now !== undefined && same(now) && now.of === of) return;
  const bytes = await bytesOf(of);
  if (bytes === undefined || history.value.now.text !== text || paper.value !== asked.paper) return;
  if (furtherKey() !== asked.further) return;
  if (pictured.value !== undefined) URL.revokeObjectURL(pictured.value.address);
  pictured.value = withAddress(asked, bytes);
}

export function nameFor(ending: string): string {
  const name = textAt(job.value, "/name")
    .replaceAll(/[^\p{L}\p{N} _-]+/gu, " ")
    .trim();
  return `${name === "" ? "job" : name}${ending}`;
}

export async function saveDrawing(svg: string, name: string): Promise<void> {
  await saveBytes(svg, nameFor(` ${name}.svg`), "image/svg+xml");
}

export async function saveSet(set: MadeSet): Promise<void> {
  const of = set.of === "" ? "" : ` ${set.of}`;
  await saveBytes(set.bytes, nameFor(`${of} ${set.paper}.pdf`), "application/pdf");
}

/// A text of the answer as a file of its own.
export async function saveText(name: string, type: string, text: string): Promise<void> {
  await saveBytes(text, nameFor(` ${name}`), type);
}
