// What was read on site, what it comes to, and the two drawings of it that are asked for.
import { batch, computed, signal } from "@preact/signals";
import type { Answer, DrawingHead } from "../engine/contract";
import { readingsOf } from "../job/readings";
import { history, job, shown } from "./signals";
import { askWhole } from "./solving";

export type Ground = NonNullable<Answer["ground"]>;

export const readings = computed(() => readingsOf(job.value));
export const ground = computed<Ground | undefined>(() => shown.value?.answer.ground);

/// The side whose first bed is looked at.
export const bedSide = signal(0);

export interface Drawn {
  readonly svg: string;
  readonly head: DrawingHead | undefined;
}
const kNone: Drawn = { svg: "", head: undefined };
export const pegsDrawn = signal(kNone);
export const bedDrawn = signal(kNone);

async function draw(text: string, side: number): Promise<void> {
  const names = ["pegs", `bed-${side + 1}`] as const;
  const solved = await askWhole({ job: text, drawings: names });
  if (solved === undefined || history.value.now.text !== text) return;
  const drawn = (name: string): Drawn => ({
    svg: solved.svg(name) ?? "",
    head: solved.head.drawings?.find((one) => one.name === name),
  });
  batch(() => {
    pegsDrawn.value = drawn(names[0]);
    bedDrawn.value = drawn(names[1]);
  });
}

/// Asks for both once the whole answer is there.
export function seekGroundDrawings(): void {
  const side = bedSide.value;
  if (shown.value?.stage !== "whole") return;
  if (readings.value.length > 0) return void draw(shown.value.text, side);
  batch(() => {
    pegsDrawn.value = kNone;
    bedDrawn.value = kNone;
  });
}
