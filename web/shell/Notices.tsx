// What has to be said across the whole page: a fault, a file that is no job, a newer page.
import { useSignal } from "@preact/signals";
import type { Offline } from "../offline";
import { saveKept, saveStranded, toFile } from "../state/job_files";
import { allStored, jobName, notOpened, openKept, stranded } from "../state/keeping";
import { tryAgain } from "../state/seeing";
import { shown, trouble } from "../state/signals";
import { words } from "../words/words";

/// Which job it was, and its file: whatever fails, the others are at hand.
function FaultNotice() {
  const whose = shown.value === undefined ? words.trouble.faultOf(jobName()) : words.trouble.fault;
  return (
    <div class="notice bad">
      <span>{whose}</span>
      <button type="button" class="framed" onClick={() => void tryAgain()}>
        {words.trouble.again}
      </button>
      <button type="button" onClick={() => void toFile()}>
        {words.jobs.toFile}
      </button>
      <a class="button" href="#jobs">
        {words.jobs.others}
      </a>
    </div>
  );
}

function TroubleNotice() {
  const now = trouble.value;
  if (now === undefined) return null;
  if (now.kind === "fault") return <FaultNotice />;
  return (
    <div class="notice bad">
      <span>{`${now.lead} ${now.text}`.trim()}</span>
      <button type="button" onClick={() => (trouble.value = undefined)}>
        {words.close}
      </button>
    </div>
  );
}

/// A job that was being opened when the page stopped: it is left alone until it is asked for.
function NotOpenedNotice() {
  const now = notOpened.value;
  if (now === undefined) return null;
  return (
    <div class="notice bad">
      <span>{words.jobs.notOpened(now.name === "" ? words.untitled : now.name)}</span>
      <button type="button" class="framed" onClick={() => void saveKept(now.id)}>
        {words.jobs.toFile}
      </button>
      <button type="button" onClick={() => void openKept(now.id)}>
        {words.jobs.openAll}
      </button>
      <a class="button" href="#jobs">
        {words.jobs.others}
      </a>
    </div>
  );
}

function StrandedNotice() {
  const now = stranded.value;
  if (now === undefined) return null;
  return (
    <div class="notice bad">
      <span>{words.state.stranded(now.name)}</span>
      <button type="button" class="framed" onClick={() => void saveStranded()}>
        {words.jobs.toFile}
      </button>
      <button type="button" class="danger" onClick={() => (stranded.value = undefined)}>
        {words.state.letGo}
      </button>
    </div>
  );
}

export function Notices(props: { readonly offline: Offline | undefined }) {
  const later = useSignal(false);
  const newer = props.offline?.newer.value === true && !later.value;
  return (
    <>
      <div role="alert">
        <TroubleNotice />
        <NotOpenedNotice />
        <StrandedNotice />
      </div>
      <div role="status">
        {newer ? (
          <div class="notice">
            <span>{words.trouble.update}</span>
            <button
              type="button"
              class="framed"
              onClick={() => void allStored().then(() => props.offline?.takeNewer())}
            >
              {words.trouble.useUpdate}
            </button>
            <button type="button" onClick={() => (later.value = true)}>
              {words.trouble.later}
            </button>
          </div>
        ) : null}
      </div>
    </>
  );
}
