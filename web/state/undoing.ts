// Undo and redo: a step back or forth, in which nothing that was entered into a log is lost.
import { batch } from "@preact/signals";
import { type History, redoable, redone, undoable, undone } from "../job/history";
import { jobText, readJson } from "../job/pointer";
import { withLogsOf } from "../job/strikes";
import { words } from "../words/words";
import { inTurn } from "./changing";
import { history, readOnly, said } from "./signals";
import { forgetFieldTrouble, solveNow } from "./solving";
import { stamp } from "./stamp";

/// A state of the job with all that the logs hold by now: what counted in it counts again, and nothing else.
function withLogsKept(wanted: string, left: string): string {
  const plain = readJson(wanted) ?? {};
  const kept = jobText(withLogsOf(plain, readJson(left) ?? {}, () => stamp("")));
  return kept === jobText(plain) ? wanted : kept;
}

function goTo(next: History, say: string): void {
  batch(() => {
    history.value = next;
    forgetFieldTrouble();
    said.value = say;
  });
}

/// One step back, readings and strikes too. What was entered into a log since is not taken out: it is struck.
export async function undo(): Promise<void> {
  await inTurn(async () => {
    const what = undoable(history.value);
    if (what !== undefined && !readOnly.value) goTo(undone(history.value, withLogsKept), words.say.undone(what));
  }, undefined);
  await solveNow();
}

export async function redo(): Promise<void> {
  await inTurn(async () => {
    const what = redoable(history.value);
    if (what !== undefined && !readOnly.value) goTo(redone(history.value, withLogsKept), words.say.redone(what));
  }, undefined);
  await solveNow();
}
