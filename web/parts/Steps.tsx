// The corner at the end of a side: stepped in, which makes an L of a rectangle; and a step taken out again.
import { useSignal } from "@preact/signals";
import { textAt } from "../job/pointer";
import { entriesOf } from "../job/strikes";
import { fillCorner, stepCorner } from "../state/building";
import { job, readOnly } from "../state/signals";
import { words } from "../words/words";
import { EntryField } from "./EntryField";
import { Fold } from "./Fold";

const w = words.inHand.step;

/// The side after this one turns back in: a step follows it.
function stepFollows(index: number): boolean {
  const sides = entriesOf(job.value, "/outline/sides");
  const turn = (at: number): string => textAt(sides[at % sides.length] ?? null, "/turn");
  return sides.length >= 6 && turn(index) === turn(index + 2) && turn(index) !== turn(index + 1);
}

function StepIn(props: { readonly index: number; readonly corner: string }) {
  const failed = useSignal(false);
  const send = async (form: HTMLFormElement): Promise<void> => {
    const data = new FormData(form);
    const typed = (name: string): string => String(data.get(name) ?? "").trim();
    failed.value = !(await stepCorner(props.index, props.corner, typed("along"), typed("across")));
  };
  return (
    <form
      aria-label={w.title(props.corner)}
      onSubmit={(event) => {
        event.preventDefault();
        void send(event.currentTarget);
      }}
    >
      <div class="sizes">
        <EntryField name="along" label={w.along} required />
        <EntryField name="across" label={w.across} required />
      </div>
      <button type="submit" class="framed" disabled={readOnly.value}>
        {w.go}
      </button>
      {failed.value ? (
        <p class="small danger" role="alert">
          {w.failed}
        </p>
      ) : null}
    </form>
  );
}

export function Steps(props: { readonly index: number }) {
  const corner = textAt(job.value, `/outline/sides/${props.index}/to`);
  if (stepFollows(props.index))
    return (
      <button type="button" disabled={readOnly.value} onClick={() => void fillCorner(props.index)}>
        {w.fill(textAt(job.value, `/outline/sides/${props.index}/name`) || corner)}
      </button>
    );
  return (
    <Fold name={`step ${props.index}`} title={w.title(corner)}>
      {() => <StepIn index={props.index} corner={corner} />}
    </Fold>
  );
}
