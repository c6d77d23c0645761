// One field of a form that enters a reading: typed, or chosen from a list.
import { readOnly } from "../state/signals";

export function EntryField(props: {
  readonly name: string;
  readonly label: string;
  readonly start?: string;
  readonly list?: string;
  readonly required?: boolean;
}) {
  return (
    <label class="field">
      <span>{props.label}</span>
      <input
        name={props.name}
        defaultValue={props.start ?? ""}
        list={props.list}
        required={props.required ?? false}
        autocomplete="off"
        spellcheck={false}
        maxLength={60}
        disabled={readOnly.value}
      />
    </label>
  );
}

export function EntryChoice(props: {
  readonly name: string;
  readonly label: string;
  readonly options: readonly string[];
  readonly chosen: string;
  readonly none?: string;
}) {
  return (
    <label class="field">
      <span>{props.label}</span>
      <select name={props.name} disabled={readOnly.value}>
        {props.none === undefined ? null : <option value="">{props.none}</option>}
        {props.options.map((one) => (
          <option key={one} value={one} selected={one === props.chosen}>
            {one}
          </option>
        ))}
      </select>
    </label>
  );
}
