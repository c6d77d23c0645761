// Where the job lies, and how much of it is not yet outside the browser; what must not be missed stays in view.
import { toFile } from "../state/job_files";
import { keep, keeping, keepTrouble, openJob } from "../state/keeping";
import { isExample, readOnly } from "../state/signals";
import { showing } from "../state/showing";
import { words } from "../words/words";

function loudText(): string | undefined {
  const kind = keepTrouble.value?.kind;
  if (kind === undefined) return undefined;
  if (kind === "storage-full") return words.state.storageFull;
  if (kind === "read-only") return words.state.readOnly;
  return kind === "changed-elsewhere" ? words.state.changedElsewhere : words.state.storageTrouble;
}

function filedText(): string {
  const head = openJob.value?.head.value;
  if (head === undefined) return "";
  return head.unfiled === 0 && head.filedAt !== undefined ? words.state.inFile : words.state.notInFile(head.unfiled);
}

function keptText(): string {
  const promised = keep.value?.persistence.value;
  if (promised === "granted") return words.state.persisted;
  return promised === "refused" || promised === "unsupported" ? words.state.notPersisted : "";
}

export function StateLine() {
  const loud = loudText();
  const store = keep.value;
  const unasked = store?.persistence.value === "unknown";
  return (
    <section class="state" aria-label={words.state.label}>
      {loud !== undefined ? (
        <p class="loud" role="alert">
          {loud}
        </p>
      ) : showing.value !== undefined ? (
        <p>{words.show.readOnly}</p>
      ) : readOnly.value ? (
        <p class="loud" role="status">
          {words.state.readOnly}
        </p>
      ) : isExample.value ? (
        <p>{words.state.example}</p>
      ) : (
        <p id="where">
          {keeping.value > 0
            ? words.state.keeping
            : [words.state.onlyHere, filedText(), keptText()].filter((text) => text !== "").join(" · ")}
        </p>
      )}
      {unasked && !isExample.value ? (
        <button type="button" onClick={() => void store?.askPersistence()}>
          {words.state.askKeep}
        </button>
      ) : null}
      <button type="button" class="push" onClick={() => void toFile()}>
        {words.jobs.toFile}
      </button>
    </section>
  );
}
