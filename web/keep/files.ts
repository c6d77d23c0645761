// Files: in by a dialog or a drop, out by a dialog where the browser has one, else as a download.
import { kLargestDocument } from "./document";
import { fileTrouble, trouble, well } from "./outcome";
import type { Kept } from "./types";

/// File System Access, not in every browser and not in TypeScript's library.
export interface FileHandle {
  readonly name: string;
  createWritable(): Promise<{ write(data: BlobPart): Promise<void>; close(): Promise<void> }>;
}
interface Dialogs {
  showSaveFilePicker?(options: object): Promise<FileHandle>;
}

const kJobFiles = [{ description: "Job", accept: { "application/json": [".json"] } }];
const kDownloadLife = 60_000; // a download may ask for its bytes a while after it was begun

/// Letters, digits and a few marks of a job's name; never empty.
export function fileNameOf(name: string, ending: string): string {
  const plain = name
    .normalize("NFC")
    .replace(/[^\p{L}\p{N} _-]+/gu, " ")
    .replace(/\s+/g, " ")
    .trim()
    .slice(0, 80)
    .trim();
  return `${plain === "" ? "job" : plain}.${ending}`;
}

export async function readFile(file: File): Promise<Kept<{ readonly text: string; readonly name: string }>> {
  if (file.size > kLargestDocument) return trouble("too-large");
  let bytes: ArrayBuffer;
  try {
    bytes = await file.arrayBuffer();
  } catch (error) {
    return fileTrouble(error, "");
  }
  try {
    return well({ text: new TextDecoder("utf-8", { fatal: true }).decode(bytes), name: file.name });
  } catch {
    return trouble("not-a-job");
  }
}

/// The files that the user picks in a dialog; none: cancelled.
function pickFiles(accept: string, multiple: boolean): Promise<readonly File[]> {
  const input = document.createElement("input");
  input.type = "file";
  input.accept = accept;
  input.multiple = multiple;
  return new Promise((resolve) => {
    input.addEventListener("cancel", () => resolve([]));
    input.addEventListener("change", () => resolve([...(input.files ?? [])]));
    input.click();
  });
}

export async function pickFile(): Promise<Kept<{ readonly text: string; readonly name: string }>> {
  const [file] = await pickFiles(".json,application/json", false);
  return file === undefined ? trouble("cancelled") : readFile(file);
}

/// The names of files that the user picks; their contents are not read. None: cancelled.
export async function pickNames(accept: string): Promise<readonly string[]> {
  return (await pickFiles(accept, true)).map((file) => file.name);
}

async function writeTo(handle: FileHandle, bytes: BlobPart): Promise<void> {
  const stream = await handle.createWritable(); // a file beside, which close() puts in the place of the old one
  await stream.write(bytes);
  await stream.close();
}

function download(bytes: BlobPart, name: string, type: string): void {
  const url = URL.createObjectURL(new Blob([bytes], { type }));
  const link = document.createElement("a");
  link.href = url;
  link.download = name;
  link.click();
  setTimeout(() => URL.revokeObjectURL(url), kDownloadLife);
}

export type Written = { readonly to: "file" | "download"; readonly name: string; readonly handle?: FileHandle };

/// A dialog that the browser does not open here, or not so long after the user's act.
function isRefused(error: unknown): boolean {
  return error instanceof DOMException && (error.name === "SecurityError" || error.name === "NotAllowedError");
}

/// The file that the user picks; undefined: there is no dialog to be had, a download it is.
async function pickTarget(name: string, type: string): Promise<FileHandle | undefined> {
  const dialogs = globalThis as Dialogs;
  const types = type === "application/json" ? { types: kJobFiles } : {};
  try {
    return await dialogs.showSaveFilePicker?.({ suggestedName: name, ...types });
  } catch (error) {
    if (isRefused(error)) return undefined;
    throw error;
  }
}

/// Bytes to a file: `handle`'s, one that the user picks, or a download.
export async function writeFile(
  bytes: BlobPart,
  name: string,
  type: string,
  handle?: FileHandle,
): Promise<Kept<Written>> {
  try {
    const target = handle ?? (await pickTarget(name, type));
    if (target === undefined) {
      download(bytes, name, type);
      return well({ to: "download", name });
    }
    await writeTo(target, bytes);
    return well({ to: "file", name: target.name, handle: target });
  } catch (error) {
    return fileTrouble(error, typeof bytes === "string" ? bytes : "");
  }
}

export function saveBytes(
  bytes: BlobPart,
  name: string,
  type: string,
): Promise<Kept<{ readonly to: "file" | "download"; readonly name: string }>> {
  return writeFile(bytes, name, type);
}
