// What holds a lintel up meanwhile is not planned here.
import { shown } from "../state/signals";
import { words } from "../words/words";

export function LintelCaution() {
  const answer = shown.value?.answer;
  if (answer === undefined) return null;
  const none = answer.lintels?.length === 0; // not said yet: it is told all the same
  return !none ? <p>{words.tallies.lintelCaution}</p> : null;
}
