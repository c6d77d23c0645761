// All fields of a part, or some of them; of parts of which one is wanted, the one that is chosen.
import { useId } from "preact/hooks";
import type { Refusals } from "../../engine/contract";
import { emptyPart, fieldNamed, fieldsNamed, typedInto } from "../../job/form";
import { isObject, type Json } from "../../job/pointer";
import { readOnly } from "../../state/signals";
import { formWords } from "../../words/form_words";
import { OneField } from "./FormField";
import { kindsOf, labelOf } from "./names";

export interface PartProps {
  readonly part: string;
  readonly names?: readonly string[] | undefined;
  readonly place: string;
  readonly value: Json;
  readonly refused: Refusals | undefined;
  readonly put: (value: Json) => void;
}

function KindChoice(props: PartProps & { readonly kinds: readonly string[]; readonly kind: string }) {
  const id = useId();
  const choose = (name: string): void => {
    const field = fieldNamed(props.part, name);
    if (field !== undefined) props.put(typedInto(props.value, field, emptyPart(field.part ?? "")));
  };
  return (
    <div class="form-field">
      <label for={id}>{formWords.isA}</label>
      <select
        id={id}
        value={props.kind}
        disabled={readOnly.value}
        onChange={(event) => choose(event.currentTarget.value)}
      >
        {props.kind === "" ? <option value="">{formWords.choose}</option> : null}
        {props.kinds.map((one) => (
          <option key={one} value={one}>
            {labelOf(props.part, one)}
          </option>
        ))}
      </select>
    </div>
  );
}

export function PartFields(props: PartProps) {
  const { part, place } = props;
  const value = isObject(props.value) ? props.value : {};
  const named = fieldsNamed(part, props.names);
  const kinds = kindsOf(part).filter((kind) => named.some((field) => field.name === kind));
  const kind = kinds.find((one) => value[one] !== undefined) ?? "";
  return (
    <div class="form-fields">
      {kinds.length === 0 ? null : <KindChoice {...props} kinds={kinds} kind={kind} />}
      {named
        .filter((field) => !kinds.includes(field.name) || field.name === kind)
        .map((field) => (
          <OneField
            key={field.name}
            part={part}
            field={kinds.includes(field.name) ? { ...field, needed: true } : field}
            pointer={`${place}/${field.name}`}
            value={value[field.name]}
            refused={props.refused}
            put={(next) => props.put(typedInto(value, field, next))}
          />
        ))}
    </div>
  );
}
