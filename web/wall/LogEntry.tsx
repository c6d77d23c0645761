// An entry of the laid log that is typed: whatever the phone view has no button for.
import { useSignal } from "@preact/signals";
import { emptyPart, partNamed, takenPart } from "../job/form";
import { type Json, valueAt } from "../job/pointer";
import { Fold } from "../parts/Fold";
import { Draft } from "../parts/form/Draft";
import { labelOf } from "../parts/form/names";
import { enterTyped } from "../state/logs";
import { job } from "../state/signals";
import { kindWords } from "../state/wall/entries";
import { wallState } from "../state/wall/step";
import { formWords } from "../words/form_words";

const kKinds = partNamed("laid_entry").one.filter((kind) => kind !== "strike");
export const kEntryFields = [...kKinds, "photos", "note"] as const;

export function LogEntry() {
  const count = useSignal(0);
  const log = valueAt(job.value, "/laid");
  const at = Array.isArray(log) ? log.length : 0;
  const send = async (typed: Json) => {
    const entry = takenPart("laid_entry", typed);
    const kind = kKinds.find((one) => entry[one] !== undefined) ?? "";
    const { id: _, ...body } = entry;
    const refused = await enterTyped(body, wallState.value.by, kindWords(kind, "inches"));
    if (refused === undefined) count.value += 1;
    return refused;
  };
  return (
    <Fold name="log entry" title={formWords.entry}>
      {() => (
        <>
          <p class="small soft">{formWords.entryLead}</p>
          <Draft
            key={count.value}
            part="laid_entry"
            names={kEntryFields}
            place={`/laid/${at}`}
            label={labelOf("job", "laid")}
            start={emptyPart("laid_entry")}
            fresh
            send={send}
          />
        </>
      )}
    </Fold>
  );
}
