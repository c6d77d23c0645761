// The upright bars that the drawings ask for: where they stand, dowels stand before the pour.
import { useSignal } from "@preact/signals";
import { kSideRange, type Meaning, meaningsOf, rangeOf } from "../job/bare";
import { valueAt } from "../job/pointer";
import { WhichUnit } from "../parts/WhichUnit";
import { putBars } from "../state/building";
import { around } from "../state/meaning";
import { job, readOnly, tape } from "../state/signals";
import { words } from "../words/words";

/// Steel is never chosen here: its size and spacing are typed from the user's drawings.
export function Bars() {
  const refused = useSignal("");
  const asking = useSignal<{ readonly size: string; readonly spacing: string } | undefined>(undefined);
  if (valueAt(job.value, "/steel/bars") !== undefined) return null;
  const put = async (size: string, spacing: string): Promise<void> => {
    asking.value = undefined;
    refused.value = (await putBars(size, spacing)) ?? "";
  };
  const spacings = (text: string): readonly Meaning[] =>
    meaningsOf(text, tape.value, rangeOf("spacing", around(""), tape.value) ?? kSideRange[tape.value]);
  const send = (event: SubmitEvent): void => {
    event.preventDefault();
    const form = new FormData(event.currentTarget as HTMLFormElement);
    const [size, spacing] = [String(form.get("size") ?? ""), String(form.get("spacing") ?? "").trim()];
    const [first, second] = spacings(spacing);
    if (second === undefined) void put(size, first?.text ?? spacing);
    else asking.value = { size, spacing };
  };
  const asked = asking.value;
  return (
    <section class="block hand">
      <form class="bars" onSubmit={(event) => send(event as unknown as SubmitEvent)} aria-label={words.inHand.bars}>
        <p class="small soft">{words.inHand.bars}</p>
        <label class="field">
          <span>{words.inHand.fields.size}</span>
          <input name="size" required maxLength={20} autocomplete="off" />
        </label>
        <label class="field">
          <span>{words.inHand.fields.spacing}</span>
          <input name="spacing" required maxLength={60} autocomplete="off" />
        </label>
        <button type="submit" class="framed" disabled={readOnly.value}>
          {words.inHand.putBars}
        </button>
        {asked === undefined ? null : (
          <WhichUnit
            numbers={[asked.spacing]}
            units={spacings(asked.spacing).map((one) => one.unit)}
            choose={(unit) =>
              void put(asked.size, spacings(asked.spacing).find((one) => one.unit === unit)?.text ?? asked.spacing)
            }
          />
        )}
        <p class="small danger" role="status">
          {refused.value}
        </p>
      </form>
    </section>
  );
}
