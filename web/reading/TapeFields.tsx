// A side or a diagonal, as taped between two corners.
import { EntryChoice, EntryField } from "../parts/EntryField";
import { corners } from "../state/signals";
import { words } from "../words/words";

export function TapeFields() {
  const names = corners.value;
  return (
    <div class="fields">
      <EntryChoice name="from" label={words.ground.from} options={names} chosen={names[0] ?? ""} />
      <EntryChoice name="to" label={words.ground.to} options={names} chosen={names[1] ?? ""} />
      <EntryField name="value" label={words.ground.tapeReads} required />
    </div>
  );
}
