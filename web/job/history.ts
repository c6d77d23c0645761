// One job with its undo and redo: a value, and pure functions from value to value.

/// A state of the job and what led to it, in words for the undo button.
export interface Step {
  readonly text: string;
  readonly what: string;
}

export interface History {
  readonly past: readonly Step[];
  readonly now: Step;
  readonly future: readonly Step[];
}

/// As many steps as are kept: enough for a day, small enough for a phone (a job is a few kilobytes).
export const kStepsKept = 200;

export function begun(text: string, what = ""): History {
  return { past: [], now: { text, what }, future: [] };
}

/// One step further; the same text is no step.
export function done(history: History, text: string, what: string): History {
  if (text === history.now.text) return history;
  const past = [...history.past, history.now].slice(-kStepsKept);
  return { past, now: { text, what }, future: [] };
}

/// What a state has to keep of the one that is left for it: its text is made anew from the two. Here: nothing.
export type Keeping = (wanted: string, left: string) => string;
const kKeepNothing: Keeping = (wanted) => wanted;

export function undone(history: History, keeping = kKeepNothing): History {
  const before = history.past.at(-1);
  if (before === undefined) return history;
  const now = { text: keeping(before.text, history.now.text), what: before.what };
  return { past: history.past.slice(0, -1), now, future: [history.now, ...history.future] };
}

export function redone(history: History, keeping = kKeepNothing): History {
  const [next, ...future] = history.future;
  if (next === undefined) return history;
  const now = { text: keeping(next.text, history.now.text), what: next.what };
  return { past: [...history.past, history.now], now, future };
}

/// What undo would take back, in words; undefined when there is nothing.
export function undoable(history: History): string | undefined {
  return history.past.length > 0 ? history.now.what : undefined;
}

export function redoable(history: History): string | undefined {
  return history.future[0]?.what;
}
