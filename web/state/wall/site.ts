// What an entry at the wall hangs on: openings and jambs of the side in hand, where they are planned, what is laid.
import { computed } from "@preact/signals";
import { words } from "../../words/words";
import { shown, sides, tape, tapeStep } from "../signals";
import { type Question, questionsOf, type Site } from "./entries";
import { course } from "./hearing";
import { placeText } from "./marks";
import { type Entering, type EntryKind, wallState } from "./step";

export const answer = computed(() => shown.value?.answer);
const openings = computed(
  () => answer.value?.openings.filter((opening) => opening.side === wallState.value.side) ?? [],
);
export const jambs = computed(() =>
  openings.value.flatMap((opening) => [
    { pick: `near-jamb ${opening.name}`, name: `${opening.name}, ${words.wall.near}` },
    { pick: `far-jamb ${opening.name}`, name: `${opening.name}, ${words.wall.far}` },
  ]),
);

const kNowhere = { nm: 0, text: "" } as const;

function plannedPlace(kind: EntryKind, pick: string): { readonly nm: number; readonly text: string } {
  if (kind === "end" || kind === "check")
    return sides.value.find((side) => side.name === wallState.value.side)?.actual ?? kNowhere;
  const opening = openings.value.find((one) => pick.endsWith(` ${one.name}`));
  return (pick.startsWith("near-jamb") ? opening?.from : opening?.to) ?? kNowhere;
}

export function siteOf(kind: EntryKind, pick: string, mark: number): Site {
  const planned = plannedPlace(kind, pick);
  return {
    tape: tape.value,
    step: tapeStep.value,
    side: wallState.value.side,
    course: wallState.value.course,
    unit: answer.value?.series[0]?.full.nm ?? 0,
    joint: course.value?.joints.planned.nm ?? 0,
    planned: planned.nm,
    plannedText: planned.text,
    markText: placeText(course.value?.course, mark),
  };
}

export function questionsFor(entry: Entering): readonly Question[] {
  return questionsOf(entry.kind, entry.pick, siteOf(entry.kind, entry.pick, entry.mark), entry.values.length);
}
