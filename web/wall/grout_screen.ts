// Grout cell by cell: the next one and how much goes in; what is due to be consolidated again. Pure.
import { type Cell, cellName, cellsLeft, type Due, dueAgain, entryOf } from "../state/wall/grouting";
import { words } from "../words/words";
import { type Known, kUndo, notes, type Screen, type Zone } from "./screen";

const w = words.wall;
/// So many that are to be done again are told of, the oldest first.
const kTold = 2;

function dueLine(due: Due): string {
  const { again_from_minutes: from, again_by_minutes: by } = due.lift;
  const name = cellName(due);
  if (due.minutes < from) return w.groutWait(name, from - due.minutes);
  return due.minutes <= by ? w.groutDue(name, by - due.minutes) : w.groutLate(name, due.minutes - by);
}

function againZone(due: readonly Due[]): readonly Zone[] {
  const oldest = due[0];
  if (oldest === undefined || oldest.minutes < oldest.lift.again_from_minutes) return [];
  const what = cellName(oldest);
  return [{ label: w.groutAgain(what), act: { do: "grouted", entry: entryOf(oldest, "again"), what } }];
}

function cellScreen(known: Known, left: readonly Cell[], skip: number, due: readonly Due[]): Screen {
  const at = skip % left.length;
  const cell = left[at] as Cell;
  const { lift, step } = cell;
  const what = cellName(cell);
  return {
    lead: `${w.grout} · ${w.groutLift(lift.pour, lift.lift, lift.last_course)} · ${w.groutLeft(left.length)}`,
    number: what,
    under: [
      w.groutAt(step.at.text),
      w.groutAmount(step.volume.text, step.total.text),
      ...due.slice(0, kTold).map(dueLine),
      ...notes(known),
    ],
    zones: [
      ...againZone(due),
      { label: w.groutSkip, act: { do: "grout", skip: (at + 1) % left.length } },
      { label: w.groutFilled, act: { do: "grouted", entry: entryOf(cell, "filled"), what }, first: true },
      kUndo,
      { label: w.back, act: { do: "face", face: "next" } },
    ],
  };
}

export function groutScreen(known: Known, skip: number): Screen {
  const left = cellsLeft(known.answer);
  const due = dueAgain(known.answer, known.whens, known.now);
  if (left.length > 0) return cellScreen(known, left, skip, due);
  return {
    lead: w.grout,
    number: "✓",
    under: [due.length > 0 ? w.groutLast : w.groutDone, ...due.slice(0, kTold).map(dueLine), ...notes(known)],
    zones: [...againZone(due), kUndo, { label: w.back, act: { do: "face", face: "next" }, first: true }],
  };
}
