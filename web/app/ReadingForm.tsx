// Entering one reading: what was read, where, by whom.
import { computed, signal } from "@preact/signals";
import { kPegFields, type PegField } from "../job/readings";
import { words } from "../words/words";
import { enter } from "./actions";
import { onceAtATime } from "./changing";
import { readOnly, shown, sides } from "./state";

type Kind = "tape" | "rod" | "two_peg" | "dowel" | "edge";
const kKinds = ["tape", "rod", "two_peg", "dowel", "edge"] as const;

const kind = signal<Kind>("tape");
const refused = signal("");
const by = signal("");

/// What dowels stand in from the face by plan: where the next one is likely to be.
const dowelOff = computed(() => shown.value?.answer.dowels[0]?.off_face.text ?? "");
const corners = computed(() => shown.value?.answer.corners.map((corner) => corner.name) ?? []);

function pegReadings(typed: (name: string) => string): Readonly<Record<PegField, string>> {
  return Object.fromEntries(kPegFields.map((name) => [name, typed(name)])) as Record<PegField, string>;
}

const send = onceAtATime(async (form: HTMLFormElement): Promise<void> => {
  const typed = (name: string): string => String(new FormData(form).get(name) ?? "");
  const entry =
    kind.value === "edge"
      ? ({ kind: "edge", on: typed("on"), at: typed("value"), beyond: typed("off") } as const)
      : kind.value === "dowel"
        ? ({ kind: "dowel", on: typed("on"), at: typed("value"), offFace: typed("off") } as const)
        : kind.value === "tape"
          ? ({ kind: "tape", from: typed("from"), to: typed("to"), length: typed("value") } as const)
          : kind.value === "two_peg"
            ? ({ kind: "two_peg", readings: pegReadings(typed) } as const)
            : ({
                kind: "rod",
                setup: typed("setup"),
                station: typed("station"),
                rod: typed("value"),
                on: typed("on"),
                at: typed("at"),
                surface: typed("surface"),
                sight: typed("sight"),
              } as const);
  const whats = {
    tape: `${typed("from")} – ${typed("to")}`,
    rod: typed("station"),
    two_peg: words.ground.kinds.two_peg,
    dowel: `${typed("on")} ${typed("value")}`,
    edge: `${typed("on")} ${typed("value")}`,
  };
  const what = whats[kind.value];
  refused.value = (await enter(entry, by.value, what)) ?? "";
  if (refused.value !== "") return;
  const value = form.elements.namedItem("value");
  if (value instanceof HTMLInputElement) {
    value.value = "";
    value.focus();
  }
});

function submit(event: Event): void {
  event.preventDefault();
  void send(event.currentTarget as HTMLFormElement);
}

function Field(props: {
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

function Choice(props: {
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

export function EntryForm() {
  const names = corners.value;
  return (
    <form class="entry" onSubmit={submit} aria-label={words.ground.enter}>
      <fieldset class="choice" aria-label={words.ground.kind}>
        {kKinds.map((one) => (
          <button type="button" key={one} aria-pressed={kind.value === one} onClick={() => (kind.value = one)}>
            {words.ground.kinds[one]}
          </button>
        ))}
      </fieldset>
      {kind.value === "edge" ? (
        <div class="fields" key="edge">
          <Choice name="on" label={words.ground.on} options={sides.value.map((side) => side.name)} chosen="" />
          <Field name="value" label={words.ground.at} required />
          <Field name="off" label={words.ground.beyond} required />
        </div>
      ) : kind.value === "dowel" ? (
        <div class="fields" key="dowel">
          <Choice name="on" label={words.ground.on} options={sides.value.map((side) => side.name)} chosen="" />
          <Field name="value" label={words.ground.dowelAt} required />
          <Field name="off" label={words.ground.offFace} start={dowelOff.value} required />
        </div>
      ) : kind.value === "two_peg" ? (
        <div class="fields" key="two_peg">
          {kPegFields.map((name) => (
            <Field key={name} name={name} label={words.ground.pegFields[name] ?? name} required />
          ))}
        </div>
      ) : kind.value === "tape" ? (
        <div class="fields" key="tape">
          <Choice name="from" label={words.ground.from} options={names} chosen={names[0] ?? ""} />
          <Choice name="to" label={words.ground.to} options={names} chosen={names[1] ?? ""} />
          <Field name="value" label={words.ground.tapeReads} required />
        </div>
      ) : (
        <div class="fields" key="rod">
          <Field name="setup" label={words.ground.setup} start="1" required />
          <Field name="station" label={words.ground.station} list="stations" required />
          <Field name="value" label={words.ground.rodReads} required />
          <Choice
            name="on"
            label={words.ground.on}
            options={sides.value.map((side) => side.name)}
            chosen=""
            none={words.ground.atCorner}
          />
          <Field name="at" label={words.ground.at} />
          <Choice
            name="surface"
            label={words.ground.surface}
            options={["floor", "other"]}
            chosen=""
            none={words.ground.bearing}
          />
          <Field name="sight" label={words.ground.sight} />
          <datalist id="stations">
            {["datum", ...names].map((one) => (
              <option key={one} value={one} />
            ))}
          </datalist>
        </div>
      )}
      <div class="row">
        <label class="field by">
          <span>{words.ground.by}</span>
          <input
            value={by.value}
            maxLength={20}
            autocomplete="off"
            onInput={(event) => (by.value = event.currentTarget.value)}
          />
        </label>
        <button type="submit" class="filled" disabled={readOnly.value}>
          {words.ground.add}
        </button>
      </div>
      {refused.value === "" ? null : (
        <p class="trouble" role="alert">
          {refused.value}
        </p>
      )}
      <p class="small soft">{words.ground.rules[kind.value]}</p>
    </form>
  );
}
