// A form over one part of the job: typed together, sent together, one step of undo. Refused, what was typed stays.
import { useSignal } from "@preact/signals";
import { useLayoutEffect, useRef } from "preact/hooks";
import type { Refusals } from "../../engine/contract";
import type { LengthUnit } from "../../job/bare";
import { changedFields, type FormField, leavesOf, type LengthAt, withLengths } from "../../job/form";
import type { Json } from "../../job/pointer";
import type { Sent } from "../../state/form";
import { meaningsIn } from "../../state/meaning";
import { readOnly } from "../../state/signals";
import { formWords } from "../../words/form_words";
import { words } from "../../words/words";
import { WhichUnit } from "../WhichUnit";
import { PartFields } from "./PartFields";

interface Props {
  readonly part: string;
  readonly names?: readonly string[] | undefined;
  readonly place: string;
  readonly label: string;
  /// As the job has it.
  readonly start: Json;
  /// An entry that is not in the job yet.
  readonly fresh?: boolean;
  readonly send: (typed: Json, changed: readonly FormField[]) => Sent;
}

/// What was refused and stands beside no field of this form.
function Rest(props: { readonly refused: Refusals; readonly beside: readonly string[] }) {
  const rest = props.refused.refusals.filter((one) => !props.beside.includes(one.place));
  if (rest.length === 0) return null;
  return (
    <div class="trouble" role="alert">
      {rest.slice(0, 4).map((one) => (
        <div key={one.code + one.place}>
          <p>{one.reason}</p>
          <p class="remedy">{one.remedy}</p>
        </div>
      ))}
      <p class="small">{words.inHand.notTaken}</p>
    </div>
  );
}

/// Lengths that were typed as bare numbers and may mean two.
function doubtful(props: Props, typed: Json, old: Json): readonly LengthAt[] {
  const before = new Map<string, string>();
  const found: LengthAt[] = [];
  const each = (put: (length: LengthAt) => void, value: Json): void => {
    withLengths(props.part, props.names, props.place, value, (length) => {
      put(length);
      return length.text;
    });
  };
  each((length) => before.set(length.pointer, length.text), old);
  each((length) => {
    if (before.get(length.pointer) !== length.text && meaningsIn(length).length > 1) found.push(length);
  }, typed);
  return found;
}

/// The same with every bare number in the unit that it must mean, or that was chosen.
function meant(props: Props, typed: Json, unit: LengthUnit | undefined): Json {
  return withLengths(props.part, props.names, props.place, typed, (length) => {
    const may = meaningsIn(length);
    return (may.length === 1 ? may[0] : may.find((one) => one.unit === unit))?.text ?? length.text;
  });
}

export function Draft(props: Props) {
  const typed = useSignal<Json>(props.start);
  const refused = useSignal<Refusals | undefined>(undefined);
  const asking = useSignal<readonly LengthAt[]>([]);
  const base = useRef<Json>(props.start);
  const latest = useRef<Json>(props.start);
  latest.current = props.start;
  const sending = useRef(false);
  const again = useRef(false);
  const changed = changedFields(props.part, props.names, base.current, typed.value);
  const startText = JSON.stringify(props.start);
  // biome-ignore lint/correctness/useExhaustiveDependencies: only another start is a new one
  useLayoutEffect(() => {
    // at once: what is typed meanwhile would be taken away
    if (props.fresh || changed.length > 0 || sending.current) return;
    base.current = props.start;
    typed.value = props.start;
  }, [startText]);

  const send = async (unit: LengthUnit | undefined): Promise<void> => {
    const asked = unit === undefined ? doubtful(props, typed.value, base.current) : [];
    asking.value = asked;
    if (asked.length > 0) return;
    if (sending.current) {
      again.current = true;
      return;
    }
    const asTyped = typed.value;
    const before = latest.current;
    const sent = meant(props, asTyped, unit);
    sending.current = true;
    refused.value = await props.send(sent, changedFields(props.part, props.names, base.current, sent));
    sending.current = false;
    // What was typed while the answer was on its way stays, and is a change of the job as it is now.
    const typedOn = typed.value !== asTyped;
    if (refused.value === undefined) {
      const start = latest.current === before ? sent : latest.current;
      if (!props.fresh) base.current = start;
      if (!typedOn) typed.value = props.fresh ? props.start : start;
    }
    if (again.current) {
      again.current = false;
      if (typedOn) void send(undefined);
    }
  };
  const units = [...new Set(asking.value.flatMap((length) => meaningsIn(length).map((one) => one.unit)))];
  return (
    <form
      class="draft"
      aria-label={props.label}
      noValidate
      onSubmit={(event) => {
        event.preventDefault();
        void send(undefined);
      }}
    >
      <PartFields
        part={props.part}
        names={props.names}
        place={props.place}
        value={typed.value}
        refused={refused.value}
        put={(next) => {
          typed.value = next;
          asking.value = [];
        }}
      />
      {asking.value.length === 0 ? null : (
        <WhichUnit
          numbers={asking.value.map((length) => length.text.trim())}
          units={units}
          choose={(unit) => void send(unit)}
        />
      )}
      {refused.value === undefined ? null : (
        <Rest refused={refused.value} beside={leavesOf(props.part, props.names, props.place, typed.value)} />
      )}
      {changed.length > 0 ? (
        <div class="row draft-send">
          <button type="submit" class="filled" disabled={readOnly.value}>
            {props.fresh ? formWords.putIn : formWords.set}
          </button>
          <button
            type="button"
            onClick={() => {
              typed.value = base.current;
              refused.value = undefined;
              asking.value = [];
            }}
          >
            {formWords.giveUp}
          </button>
        </div>
      ) : null}
    </form>
  );
}
