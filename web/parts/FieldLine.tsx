// One size of the job that can be typed, in the job's own text; refused beside its field.
import { useSignal } from "@preact/signals";
import type { Field } from "../job/fields";
import { typed } from "../state/building";
import { fieldName } from "../state/field_name";
import { meanings } from "../state/meaning";
import { type FieldTrouble, fieldTrouble, readOnly, shown } from "../state/signals";
import { words } from "../words/words";
import { WhichUnit } from "./WhichUnit";

function Refused(props: { readonly trouble: FieldTrouble; readonly id: string }) {
  return (
    <div class="trouble across" role="alert" id={props.id}>
      {props.trouble.refusals.refusals.slice(0, 3).map((refusal) => (
        <div key={refusal.code + refusal.place}>
          <p>{refusal.reason}</p>
          <p class="remedy">{refusal.remedy}</p>
        </div>
      ))}
      <p class="small">{words.inHand.notTaken}</p>
    </div>
  );
}

/// What is built where it is another than what was typed.
function builtText(field: Field): string {
  const built = field.name === "wallHeight" ? shown.value?.answer.height.text : undefined;
  return built === undefined || built === field.text ? "" : words.inHand.built(built);
}

export function FieldLine(props: { readonly field: Field }) {
  const { field } = props;
  const text = useSignal(field.text);
  const asking = useSignal("");
  const refused = fieldTrouble.value?.pointer === field.pointer ? fieldTrouble.value : undefined;
  const note = `refused${field.pointer.replaceAll("/", "-")}`;
  const changed = text.value.trim() !== field.text;
  const take = (meant: string): void => {
    asking.value = "";
    text.value = meant;
    if (meant.trim() !== field.text) void typed(field, meant);
  };
  /// What may mean two lengths is asked about first.
  const enter = (): void => {
    if (!changed) return;
    const [first, second] = meanings(field, text.value);
    if (second === undefined) take(first?.text ?? text.value);
    else asking.value = text.value.trim();
  };
  const asked = asking.value === "" ? [] : meanings(field, asking.value);
  const built = builtText(field);
  return (
    <form
      onSubmit={(event) => {
        event.preventDefault();
        enter();
      }}
      data-pointer={field.pointer}
      class={field.free || refused !== undefined || asked.length > 0 ? "whole" : ""}
    >
      <label class="field">
        <span>{fieldName(field)}</span>
        <input
          value={text.value}
          data-length={field.free ? undefined : ""}
          autocomplete="off"
          spellcheck={false}
          maxLength={field.free ? 200 : 60}
          disabled={readOnly.value}
          aria-invalid={refused !== undefined}
          aria-describedby={refused === undefined ? undefined : note}
          onInput={(event) => {
            text.value = event.currentTarget.value;
            asking.value = "";
          }}
          onBlur={() => text.value !== refused?.typed && enter()}
        />
        {built === "" ? null : <span class="built">{built}</span>}
      </label>
      {changed && !readOnly.value ? <button type="submit">{words.inHand.set}</button> : null}
      {asked.length === 0 ? null : (
        <WhichUnit
          numbers={[asking.value]}
          units={asked.map((one) => one.unit)}
          choose={(unit) => take(asked.find((one) => one.unit === unit)?.text ?? asking.value)}
        />
      )}
      {refused === undefined ? null : <Refused trouble={refused} id={note} />}
    </form>
  );
}
