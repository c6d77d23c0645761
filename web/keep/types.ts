// What a keep promises: see index.ts.
import type { ReadonlySignal } from "@preact/signals";

export type Kept<T> = { readonly ok: true; readonly value: T } | { readonly ok: false; readonly trouble: Trouble };

export interface Trouble {
  readonly kind:
    | "storage-full" // the browser has no room: offer `text` as a file
    | "storage-failed" // the browser's storage does not work: offer `text` as a file
    | "read-only" // the job is open in another tab, which alone may write
    | "changed-elsewhere" // something else wrote this job since: offer `text` as a file
    | "not-found"
    | "damaged" // no whole copy is left; `text` is the best remainder, or ""
    | "newer" // made by a newer version: kept as it is, not opened
    | "not-a-job" // no JSON object with a version field
    | "too-large"
    | "cancelled" // the user closed a file dialog
    | "file-failed"; // a file could not be read or written
  /// The job's text, whole, if there is one.
  readonly text: string;
  /// What the browser said, for a report. Not for the user.
  readonly detail: string;
}

/// What a list of jobs shows.
export interface JobHead {
  readonly id: string;
  /// The document's own name; the file's name for a text that cannot be read.
  readonly name: string;
  readonly createdAt: number;
  readonly changedAt: number;
  /// Changes since the text was last outside the browser. 0 too if the text is again the one in the file.
  readonly unfiled: number;
  /// When it was last written to a file; undefined: never.
  readonly filedAt: number | undefined;
  /// Made by a newer version: kept, but not opened.
  readonly newer: boolean;
  /// When it was put in the trash; undefined: it is not there.
  readonly trashedAt: number | undefined;
  /// Of a job in the trash: days of use until it ends.
  readonly daysLeft: number;
}

/// A job that is open in this tab.
export interface OpenJob {
  readonly id: string;
  /// The text as it was last stored, by whichever tab writes.
  readonly text: ReadonlySignal<string>;
  readonly head: ReadonlySignal<JobHead>;
  /// "writer": this tab writes. "reader": another tab has the job; becomes "writer" by itself when that one closes it
  /// (the text is then read again first).
  readonly access: ReadonlySignal<"writer" | "reader">;
  /// True: the newest copy was not whole when the job was opened, so that this is the copy before it.
  readonly setBack: boolean;
  /// Keeps a new text: payload first, then the index. Calls are carried out in order.
  store(text: string): Promise<Kept<JobHead>>;
  /// Writes the kept text to a file (again to the same one, where the browser can) and marks it as filed.
  saveToFile(how?: {
    readonly as: "same" | "new";
  }): Promise<Kept<{ readonly to: "file" | "download"; readonly name: string }>>;
  /// Gives up the job in this tab. After the last store() is done.
  close(): Promise<void>;
}

export interface Keep {
  /// All jobs but those in the trash, newest change first. Follows other tabs.
  readonly jobs: ReadonlySignal<readonly JobHead[]>;
  readonly trash: ReadonlySignal<readonly JobHead[]>;
  /// What the browser promised: "granted": it will not clear by itself. "unknown" before it was asked.
  readonly persistence: ReadonlySignal<"unknown" | "granted" | "refused" | "unsupported">;
  /// Bytes used and allowed, as far as the browser tells.
  readonly room: ReadonlySignal<{ readonly used: number; readonly allowed: number } | undefined>;
  /// False: another tab with the same job cannot be noticed before it writes (the browser has no locks here).
  readonly guarded: boolean;
  /// False: the browser's storage does not work, jobs are held in memory and end with the tab. To be said at once.
  readonly lasting: boolean;

  /// A new job of this text, open in this tab.
  create(text: string): Promise<Kept<OpenJob>>;
  open(id: string): Promise<Kept<OpenJob>>;
  /// The text of a job without opening it: for a file of a newer version's job, or for a preview.
  read(id: string): Promise<Kept<string>>;
  /// A text from outside: a job of this version, or one of a newer version (kept, trouble "newer" says so). `fileName`
  /// names it where the document doesn't. It counts as filed: its file is out there.
  takeIn(text: string, fileName: string): Promise<Kept<OpenJob>>;
  duplicate(id: string, newName: string): Promise<Kept<JobHead>>;
  /// Changes the document's own name.
  rename(id: string, newName: string): Promise<Kept<JobHead>>;
  /// Into the trash; restore() is the undo. The trash empties itself after 30 days on which the page was opened.
  remove(id: string): Promise<Kept<JobHead>>;
  restore(id: string): Promise<Kept<JobHead>>;
  /// Ends a job in the trash for good.
  destroy(id: string): Promise<Kept<void>>;
  /// Asks the browser to keep everything. To be called after a user's act.
  askPersistence(): Promise<void>;
  /// The job that was open last in this browser.
  lastOpened(): Promise<string | undefined>;
  close(): void;
}
