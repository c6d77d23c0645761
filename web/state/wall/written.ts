// Lengths in whole steps of the tape, as the engine writes them: asked for ahead of the thumb that counts them.
import { signal } from "@preact/signals";
import type { Tape } from "../../engine/contract";
import { words } from "../../words/words";
import { engine } from "../engine_port";
import { tape } from "../signals";
import { entryNow, said } from "./hearing";

/// The farthest that one touch goes, and how far ahead of it is asked.
const kTouch = 10;
const kAhead = 60;
const kTurns = 5;

const texts = signal<ReadonlyMap<string, string>>(new Map());
const keyOf = (steps: number, its: string): string => `${its} ${steps}`;

/// Undefined while it is asked for.
export function textOf(steps: number): string | undefined {
  return texts.value.get(keyOf(steps, tape.value));
}

/// Asked again where it was given up, as it is when a job is put on the table just then: texts are of no job.
async function asked(its: Tape, write: readonly number[]): Promise<readonly string[] | undefined> {
  for (let turn = 0; turn < kTurns; ++turn) {
    const reply = await engine().solve({ border: 1, lengths: { tape: its, write } });
    if (reply !== "superseded") return reply.head.lengths?.written;
  }
  return undefined;
}

/// The texts of all these; undefined where the engine did not answer.
export async function written(steps: readonly number[]): Promise<readonly string[] | undefined> {
  const its = tape.value;
  const write = [...new Set(steps)].filter((one) => !texts.value.has(keyOf(one, its)));
  try {
    if (write.length > 0) {
      const told = await asked(its, write);
      if (told?.length !== write.length) return undefined;
      texts.value = new Map([...texts.value, ...write.map((one, at) => [keyOf(one, its), told[at] ?? ""] as const)]);
    }
  } catch {
    return undefined;
  }
  return steps.map((one) => texts.value.get(keyOf(one, its)) ?? "");
}

function around(steps: number, far: number): readonly number[] {
  return Array.from({ length: 2 * far + 1 }, (_, at) => steps - far + at).filter((one) => one >= 0);
}

/// What the entry in the making shows, and will show after the next touches.
export async function seekTexts(): Promise<void> {
  const entry = entryNow();
  const steps = entry?.values[entry.at];
  if (steps === undefined || around(steps, kTouch).every((one) => textOf(one) !== undefined)) return;
  if ((await written(around(steps, kAhead))) === undefined) said.value = words.trouble.fault;
}
