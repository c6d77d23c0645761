// Grout cell by cell: what is filled next, what is due to be consolidated again. Pure but for what is entered.
import type { Answer } from "../../engine/contract";
import { laidOf } from "../../job/laid";
import { words } from "../../words/words";
import { enterLaid } from "../logs";
import { job } from "../signals";
import { timeOf } from "./clock";
import { said } from "./hearing";
import { alone } from "./logging";
import { wallState } from "./step";

export type Lift = NonNullable<Answer["pour_cards"]>[number];
export type Step = Lift["steps"][number];
export interface Cell {
  readonly lift: Lift;
  readonly step: Step;
}

const w = words.wall;

export function cellName({ step }: Cell): string {
  if (step.into === "cell") return w.groutCell(step.side, step.name);
  return step.into === "beam" ? w.groutBeam(step.side, step.name) : w.groutLintel(step.name);
}

/// Of the lowest lift that is not full, what is still to be filled, in its order.
export function cellsLeft(answer: Answer | undefined): readonly Cell[] {
  for (const lift of answer?.pour_cards ?? []) {
    const left = lift.steps.filter((step) => step.filled_by === undefined);
    if (left.length > 0) return left.map((step) => ({ lift, step }));
  }
  return [];
}

/// A cell that is full and is to be consolidated again: so many whole minutes after it was filled.
export interface Due extends Cell {
  readonly minutes: number;
}

/// Oldest first. `whens`: the times of the log's entries. What has no time that can be read is not told of.
export function dueAgain(answer: Answer | undefined, whens: readonly string[], now: number): readonly Due[] {
  const due: Due[] = [];
  for (const lift of answer?.pour_cards ?? []) {
    if (!lift.again) continue;
    for (const step of lift.steps) {
      if (step.filled_by === undefined || step.again_by !== undefined) continue;
      const filled = timeOf(whens[step.filled_by] ?? "");
      if (filled !== undefined) due.push({ lift, step, minutes: Math.floor((now - filled) / 60_000) });
    }
  }
  return due.sort((one, other) => other.minutes - one.minutes);
}

/// By the log's own places, strikes included.
export function whensOf(): readonly string[] {
  const whens: string[] = [];
  for (const one of laidOf(job.value)) whens[one.index] = one.when;
  return whens;
}

export interface GroutEntry {
  readonly on: string;
  readonly course: number;
  readonly at: string;
  readonly work: "filled" | "again";
}

export function entryOf({ step }: Cell, work: GroutEntry["work"]): GroutEntry {
  return { on: step.side, course: step.course, at: step.at.text, work };
}

export async function logGrout(entry: GroutEntry, what: string): Promise<void> {
  const { by } = wallState.value;
  const done = await alone(() => enterLaid({ grouted: { ...entry } }, by, `${what} ${w.groutSaid[entry.work] ?? ""}`));
  said.value = done.id === undefined ? (done.refused ?? words.trouble.fault) : "";
}
