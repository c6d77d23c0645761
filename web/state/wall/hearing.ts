// What is asked of the engine for the view at the wall, and what of its replies may be shown.
import { computed, signal } from "@preact/signals";
import type { CourseReply } from "../../engine/contract";
import { words } from "../../words/words";
import { engine } from "../engine_port";
import { history, tapeStep } from "../signals";
import { type Entering, wallState } from "./step";

/// What the engine said last, and of what: nothing is shown, let alone logged, by what it said of anything else.
interface Heard {
  readonly job: string;
  readonly side: string;
  readonly course: number;
  /// A reading was tried that is not in the log.
  readonly tried: boolean;
  readonly reply: CourseReply | undefined;
}
const heard = signal<Heard | undefined>(undefined);
export const failed = signal(false);

/// Told under the number.
export const said = signal("");

/// Of the course in hand as the log stands. An entry in the making goes on with what was heard of the step before.
const fresh = computed<Heard | undefined>(() => {
  const { side, course: number, place } = wallState.value;
  const last = heard.value;
  if (last === undefined || last.job !== history.value.now.text) return undefined;
  if (last.side !== side || last.course !== number) return undefined;
  return last.tried && place.screen !== "enter" && place.screen !== "question" ? undefined : last;
});
export const course = computed(() => fresh.value?.reply);

/// The course in hand is still asked for.
export const waiting = computed(() => fresh.value === undefined && !failed.value);

/// The entry in the making, if there is one.
export function entryNow(): Entering | undefined {
  const { place } = wallState.value;
  return place.screen === "enter" || place.screen === "question" ? place.entry : undefined;
}

/// Asks for the course in hand; while past or short is stepped, with that reading tried. The newest question wins.
export async function look(): Promise<void> {
  const { side, course: number } = wallState.value;
  const text = history.value.now.text;
  if (side === "" || number < 1 || text === "") return;
  const entry = entryNow();
  const tried =
    entry?.kind === "mark" && (entry.signs[0] ?? 0) !== 0
      ? { at_nm: entry.mark, past_nm: (entry.values[0] ?? 0) * (entry.signs[0] ?? 1) * tapeStep.value }
      : undefined;
  failed.value = false;
  try {
    const reply = await engine().search(
      { border: 1, job: text, course: { side, course: number, ...(tried === undefined ? {} : { trial: tried }) } },
      { latest: "wall" },
    );
    if (reply === "superseded") return;
    heard.value = { job: text, side, course: number, tried: tried !== undefined, reply: reply.course };
  } catch {
    failed.value = true;
    said.value = words.trouble.fault;
  }
}
