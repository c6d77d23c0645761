// The jobs on this device: opened, doubled, renamed, deleted (and brought back), from files and into files.
import { useSignal } from "@preact/signals";
import type { JobHead } from "../keep";
import { rename } from "../state/building";
import { saveKept, toFile } from "../state/job_files";
import { bringBack, destroyJob, duplicateJob, removeJob, renameJob, restoreJob } from "../state/job_list";
import { keep, openJob, openKept, removed } from "../state/keeping";
import { goTo } from "../state/point";
import { words } from "../words/words";

let when: Intl.DateTimeFormat | undefined;

/// Made when first needed: it takes its time.
function whenText(time: number): string {
  when ??= new Intl.DateTimeFormat(words.language, { dateStyle: "medium", timeStyle: "short" });
  return when.format(time);
}

function Row(props: { readonly head: JobHead }) {
  const { head } = props;
  const renaming = useSignal(false);
  const open = openJob.value?.id === head.id;
  const name = head.name === "" ? words.untitled : head.name;
  const send = (event: SubmitEvent): void => {
    event.preventDefault();
    const typed = new FormData(event.currentTarget as HTMLFormElement).get("name");
    renaming.value = false;
    if (typeof typed !== "string" || typed === head.name) return;
    void (open ? rename(typed) : renameJob(head.id, typed));
  };
  return (
    <li>
      {renaming.value ? (
        <form class="job-name row" onSubmit={(event) => send(event as unknown as SubmitEvent)}>
          <label class="field">
            <span>{words.jobs.newName}</span>
            <input name="name" defaultValue={head.name} maxLength={200} autocomplete="off" />
          </label>
          <button type="submit" class="framed">
            {words.jobs.rename}
          </button>
        </form>
      ) : (
        <p class="job-name">
          <strong>{name}</strong>
          <small class="soft">
            {[
              open ? words.jobs.opened : "",
              words.jobs.changed(whenText(head.changedAt)),
              head.unfiled > 0 ? words.state.notInFile(head.unfiled) : "",
              head.newer ? words.trouble.newer : "",
            ]
              .filter((text) => text !== "")
              .join(" · ")}
          </small>
        </p>
      )}
      <button
        type="button"
        aria-label={`${words.jobs.open}: ${name}`}
        disabled={open || head.newer}
        onClick={() => {
          void openKept(head.id);
          goTo("order");
        }}
      >
        {words.jobs.open}
      </button>
      <button
        type="button"
        aria-label={`${words.jobs.duplicate}: ${name}`}
        onClick={() => void duplicateJob(head.id, name)}
      >
        {words.jobs.duplicate}
      </button>
      <button
        type="button"
        aria-label={`${words.jobs.rename}: ${name}`}
        disabled={head.newer}
        onClick={() => (renaming.value = !renaming.value)}
      >
        {words.jobs.rename}
      </button>
      <button
        type="button"
        class="danger"
        aria-label={`${words.jobs.remove}: ${name}`}
        onClick={() => void removeJob(head.id, name)}
      >
        {words.jobs.remove}
      </button>
    </li>
  );
}

function Trash() {
  const heads = keep.value?.trash.value ?? [];
  if (heads.length === 0) return null;
  return (
    <details class="trash">
      <summary>{words.jobs.trash(heads.length)}</summary>
      <p class="small soft">{words.jobs.trashLead}</p>
      <ul class="jobs">
        {heads.map((head) => {
          const name = head.name === "" ? words.untitled : head.name;
          return (
            <li key={head.id}>
              <p class="job-name">
                <strong>{name}</strong>
                <small class="soft">
                  {[words.jobs.changed(whenText(head.changedAt)), words.jobs.daysLeft(head.daysLeft)].join(" · ")}
                </small>
              </p>
              <button
                type="button"
                aria-label={`${words.jobs.bringBack}: ${name}`}
                onClick={() => void restoreJob(head.id)}
              >
                {words.jobs.bringBack}
              </button>
              <button type="button" aria-label={`${words.jobs.toFile}: ${name}`} onClick={() => void saveKept(head.id)}>
                {words.jobs.toFile}
              </button>
              <button
                type="button"
                class="danger"
                aria-label={`${words.jobs.destroy}: ${name}`}
                onClick={() => void destroyJob(head.id)}
              >
                {words.jobs.destroy}
              </button>
            </li>
          );
        })}
      </ul>
    </details>
  );
}

export function Jobs() {
  const heads = keep.value?.jobs.value ?? [];
  const gone = removed.value;
  return (
    <section id="job-list" aria-labelledby="jobs-title">
      <div class="inner">
        <h2 id="jobs-title">{words.jobs.label}</h2>
        <p class="lead small soft">{words.jobs.lead}</p>
        <div class="row">
          <button type="button" class="framed" onClick={() => void toFile()}>
            {words.jobs.toFile}
          </button>
        </div>
        <div role="status">
          {gone === undefined ? null : (
            <p class="row">
              {words.jobs.removed(gone.name)}
              <button type="button" onClick={() => void bringBack()}>
                {words.jobs.bringBack}
              </button>
            </p>
          )}
        </div>
        {heads.length === 0 ? <p class="small soft">{words.jobs.none}</p> : null}
        <ul class="jobs">
          {heads.map((head) => (
            <Row key={head.id} head={head} />
          ))}
        </ul>
        <Trash />
      </div>
    </section>
  );
}
