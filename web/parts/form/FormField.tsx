// One field of a form, made from what the job's schema says of it. Values are held by the form around it.
import { useId } from "preact/hooks";
import type { Refusals } from "../../engine/contract";
import { emptyPart, type FormField, lineOf } from "../../job/form";
import type { Json } from "../../job/pointer";
import { readOnly, tape } from "../../state/signals";
import { formWords } from "../../words/form_words";
import { words } from "../../words/words";
import { choiceName, helpOf, labelOf, namesFor, nameShown, standsFor } from "./names";
import { PartFields } from "./PartFields";

const w = formWords;

export interface FieldProps {
  readonly part: string;
  readonly field: FormField;
  readonly pointer: string;
  readonly value: Json | undefined;
  readonly refused: Refusals | undefined;
  readonly put: (value: Json | undefined) => void;
}

function reasons(props: FieldProps): readonly string[] {
  const here = props.refused?.refusals.filter((one) => one.place === props.pointer) ?? [];
  return here.map((one) => `${one.reason} ${one.remedy}`.trim());
}

const textOf = (value: Json | undefined): string =>
  typeof value === "number" || typeof value === "boolean" ? String(value) : lineOf(value);

function Select(props: FieldProps & { readonly id: string; readonly options: readonly (readonly [string, string])[] }) {
  const { field } = props;
  const now = textOf(props.value);
  const known = now === "" || props.options.some(([one]) => one === now);
  const all = known ? props.options : [[now, now] as const, ...props.options];
  const take = (text: string): void =>
    props.put(text === "" ? (field.needed ? "" : undefined) : field.kind === "truth" ? text === "true" : text);
  return (
    <select
      id={props.id}
      value={now}
      disabled={readOnly.value}
      aria-describedby={`${props.id}-help`}
      aria-invalid={reasons(props).length > 0}
      onChange={(event) => take(event.currentTarget.value)}
    >
      <option value="">{field.needed ? w.choose : w.leftEmpty(standsFor(field, tape.value))}</option>
      {all.map(([one, name]) => (
        <option key={one} value={one}>
          {name}
        </option>
      ))}
    </select>
  );
}

function Text(props: FieldProps & { readonly id: string }) {
  const { field, id } = props;
  const shared = {
    id,
    value: textOf(props.value),
    disabled: readOnly.value,
    placeholder: standsFor(field, tape.value),
    autocomplete: "off",
    spellcheck: false,
    "aria-describedby": `${id}-help`,
    "aria-invalid": reasons(props).length > 0,
    onInput: (event: Event) => props.put((event.currentTarget as HTMLInputElement).value),
  } as const;
  if (field.long) return <textarea rows={3} maxLength={4000} {...shared} />;
  const most = field.list ? 4000 : field.kind === "text" ? 200 : 60;
  return <input maxLength={most} data-length={field.kind === "length" ? "" : undefined} {...shared} />;
}

function Marks(props: FieldProps & { readonly id: string }) {
  const chosen = Array.isArray(props.value) ? (props.value as readonly Json[]) : [];
  const toggle = (one: string, on: boolean): void => {
    const next = (props.field.choices ?? []).filter((each) => (each === one ? on : chosen.includes(each)));
    props.put(next.length === 0 ? undefined : next);
  };
  return (
    <div class="marks">
      {(props.field.choices ?? []).map((one) => (
        <label class="check" key={one}>
          <input
            type="checkbox"
            checked={chosen.includes(one)}
            disabled={readOnly.value}
            onChange={(event) => toggle(one, event.currentTarget.checked)}
          />
          {choiceName(one)}
        </label>
      ))}
    </div>
  );
}

function Control(props: FieldProps & { readonly id: string }) {
  const { field } = props;
  if (field.kind === "choice" && field.list) return <Marks {...props} />;
  if (field.kind === "choice")
    return <Select {...props} options={(field.choices ?? []).map((one) => [one, choiceName(one)] as const)} />;
  if (field.kind === "truth")
    return (
      <Select
        {...props}
        options={[
          ["true", w.yes],
          ["false", w.no],
        ]}
      />
    );
  const names = namesFor(props.part, field.name);
  if (names !== undefined && !field.list)
    return <Select {...props} options={names.map((one) => [one, nameShown(field.name, one)] as const)} />;
  return <Text {...props} />;
}

function Reasons(props: { readonly reasons: readonly string[] }) {
  if (props.reasons.length === 0) return null;
  return (
    <div class="trouble" role="alert">
      {props.reasons.map((one) => (
        <p key={one}>{one}</p>
      ))}
      <p class="small">{words.inHand.notTaken}</p>
    </div>
  );
}

function Plain(props: FieldProps) {
  const id = useId();
  const label = labelOf(props.part, props.field.name);
  const group = props.field.kind === "choice" && props.field.list;
  const why = reasons(props);
  return (
    <div
      class={group || props.field.long || why.length > 0 ? "form-field whole" : "form-field"}
      data-pointer={props.pointer}
    >
      {group ? <span class="label">{label}</span> : <label for={id}>{label}</label>}
      <Control {...props} id={id} />
      <p class="help" id={`${id}-help`}>
        {helpOf(props.field, tape.value)}
      </p>
      <Reasons reasons={why} />
    </div>
  );
}

/// A part within a part; one that may be left out is begun and taken out.
function Inner(props: FieldProps) {
  const { field } = props;
  const part = field.part ?? "";
  const label = labelOf(props.part, field.name);
  const there = props.value !== undefined;
  const plain = !field.needed && Object.keys(emptyPart(part) as object).length === 0;
  return (
    <fieldset class="form-part" data-pointer={props.pointer}>
      <legend>{label}</legend>
      <p class="help">{helpOf(field, tape.value)}</p>
      {there || field.needed || plain ? (
        <PartFields
          part={part}
          place={props.pointer}
          value={props.value ?? {}}
          refused={props.refused}
          put={(next) => props.put(next)}
        />
      ) : (
        <button type="button" disabled={readOnly.value} onClick={() => props.put(emptyPart(part))}>
          {w.begin(label)}
        </button>
      )}
      {there && !field.needed ? (
        <button type="button" class="danger" disabled={readOnly.value} onClick={() => props.put(undefined)}>
          {w.leaveOut(label)}
        </button>
      ) : null}
    </fieldset>
  );
}

/// A list of parts, each with its fields; added to at the end.
function Entries(props: FieldProps) {
  const { field } = props;
  const part = field.part ?? "";
  const label = labelOf(props.part, field.name);
  const entries = Array.isArray(props.value) ? (props.value as readonly Json[]) : [];
  const put = (next: readonly Json[]): void => props.put(next.length === 0 && !field.needed ? undefined : next);
  return (
    <fieldset class="form-part" data-pointer={props.pointer}>
      <legend>{label}</legend>
      <p class="help">{helpOf(field, tape.value)}</p>
      <ol class="form-list">
        {entries.map((one, at) => (
          // biome-ignore lint/suspicious/noArrayIndexKey: an entry is known by its place
          <li key={at}>
            <PartFields
              part={part}
              place={`${props.pointer}/${at}`}
              value={one}
              refused={props.refused}
              put={(next) => put(entries.map((old, index) => (index === at ? next : old)))}
            />
            <div class="row">
              <button
                type="button"
                disabled={readOnly.value}
                aria-label={`${w.putBefore}: ${label} ${at + 1}`}
                onClick={() => put(entries.toSpliced(at, 0, emptyPart(part)))}
              >
                {w.putBefore}
              </button>
              <button
                type="button"
                class="danger"
                disabled={readOnly.value}
                aria-label={`${w.takeOut}: ${label} ${at + 1}`}
                onClick={() => put(entries.filter((_, index) => index !== at))}
              >
                {w.takeOut}
              </button>
            </div>
          </li>
        ))}
      </ol>
      <button
        type="button"
        disabled={readOnly.value}
        aria-label={`${w.add}: ${label}`}
        onClick={() => put([...entries, emptyPart(part)])}
      >
        {w.add}
      </button>
    </fieldset>
  );
}

export function OneField(props: FieldProps) {
  if (props.field.kind !== "part") return <Plain {...props} />;
  return props.field.list ? <Entries {...props} /> : <Inner {...props} />;
}
