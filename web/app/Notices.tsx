// What has to be said across the whole page: a fault, a file that is no job, a newer page.
import { useSignal } from "@preact/signals";
import type { Offline } from "../offline";
import { words } from "../words/words";
import { tryAgain } from "./actions";
import { allStored, saveStranded, stranded } from "./keeping";
import { trouble } from "./state";

function TroubleNotice() {
  const now = trouble.value;
  if (now === undefined) return null;
  return (
    <div class="notice bad">
      <span>{now.kind === "fault" ? words.trouble.fault : `${now.lead} ${now.text}`.trim()}</span>
      {now.kind === "fault" ? (
        <button type="button" class="framed" onClick={() => void tryAgain()}>
          {words.trouble.again}
        </button>
      ) : (
        <button type="button" onClick={() => (trouble.value = undefined)}>
          {words.holdPoints.close}
        </button>
      )}
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
