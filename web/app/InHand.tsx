// What is in hand, with every size that can be typed, in the job's own text.
import { useSignal } from "@preact/signals";
import { type Around, kSideRange, type Meaning, meaningsOf, rangeOf } from "../job/bare";
import { type Field, fieldsAt, type NewOpening } from "../job/fields";
import { textAt, valueAt } from "../job/pointer";
import type { Tape } from "../wall/lengths";
import { words } from "../words/words";
import { chooseSeries, putBars, putIn, takeInHand, takeOut, typed } from "./actions";
import { fieldName } from "./field_name";
import { type FieldTrouble, fieldTrouble, inHand, job, readOnly, shown } from "./state";
import { WhichUnit } from "./WhichUnit";

const kFeet = 304_800_000;

/// What stands around the place of a field: bounds of what was meant by a bare number.
function around(pointer: string): Around {
  const answer = shown.value?.answer;
  const opening = answer?.openings.find((one) => pointer.startsWith(`${one.place}/`));
  const side = answer?.sides.find((one) => one.name === opening?.side);
  return { side: side?.actual.nm ?? 1_000 * kFeet, wall: answer?.height.nm ?? 40 * kFeet };
}

function tapeNow(): Tape {
  return textAt(job.value, "/tape") === "millimetres" ? "millimetres" : "inches";
}

/// What a typed number may mean; none where it says so itself.
function meanings(field: Field, text: string): readonly Meaning[] {
  const range = field.free || field.whole ? undefined : rangeOf(field.name, around(field.pointer), tapeNow());
  return range === undefined ? [] : meaningsOf(text, tapeNow(), range);
}

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

function SeriesLine() {
  const id = textAt(job.value, "/units/series");
  const known = id in words.series;
  return (
    <label class="field">
      <span>{words.inHand.fields.series}</span>
      <select disabled={readOnly.value} onChange={(event) => void chooseSeries(event.currentTarget.value)}>
        {known ? null : (
          <option value={id} selected>
            {id}
          </option>
        )}
        {Object.entries(words.series).map(([one, title]) => (
          <option key={one} value={one} selected={one === id}>
            {title}
          </option>
        ))}
      </select>
    </label>
  );
}

/// Steel is never chosen here: its size and spacing are typed from the user's drawings.
function Bars() {
  const refused = useSignal("");
  const asking = useSignal<{ readonly size: string; readonly spacing: string } | undefined>(undefined);
  if (valueAt(job.value, "/steel/bars") !== undefined) return null;
  const put = async (size: string, spacing: string): Promise<void> => {
    asking.value = undefined;
    refused.value = (await putBars(size, spacing)) ?? "";
  };
  const spacings = (text: string): readonly Meaning[] =>
    meaningsOf(text, tapeNow(), rangeOf("spacing", around(""), tapeNow()) ?? kSideRange[tapeNow()]);
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
  );
}

const kNew: readonly NewOpening[] = ["door", "window", "overhead"];

function PutIn(props: { readonly place: string }) {
  const side = shown.value?.answer.sides.find((one) => one.place === props.place);
  if (side === undefined) return null;
  return (
    <div>
      <p class="small soft">{words.inHand.putIn}</p>
      <div class="row">
        {kNew.map((kind) => (
          <button
            type="button"
            key={kind}
            class="framed"
            disabled={readOnly.value}
            onClick={() => void putIn(side, kind)}
          >
            {words.inHand[kind]}
          </button>
        ))}
      </div>
    </div>
  );
}

function laidText(place: string): string {
  const answer = shown.value?.answer;
  const opening = answer?.openings.find((one) => one.place === place);
  if (opening !== undefined) {
    const asked = `${opening.asked_width.text} × ${opening.asked_height.text}`;
    const built = `${opening.width.text} × ${opening.height.text}`;
    const hole = asked === built ? "" : ` · ${words.inHand.hole(asked, built)}`;
    return `${opening.from.text} – ${opening.to.text}${hole}`;
  }
  const side = answer?.sides.find((one) => one.place === place);
  return side === undefined ? "" : words.inHand.actual(side.actual.text);
}

function titleOf(place: string): string {
  if (place === "") return words.inHand.building;
  const answer = shown.value?.answer;
  const opening = answer?.openings.find((one) => one.place === place);
  if (opening !== undefined) return words.inHand.opening(opening.name);
  const side = answer?.sides.find((one) => one.place === place);
  return words.inHand.side(side?.name ?? "");
}

export function InHand() {
  const place = inHand.value;
  const fields = fieldsAt(job.value, place);
  const opening = place.startsWith("/openings/");
  const name = textAt(job.value, `${place}/name`);
  return (
    <section class={place === "" ? "block hand" : "block hand selected"} id="in-hand" aria-label={words.inHand.label}>
      <h3>
        {words.inHand.label}: {titleOf(place)}
      </h3>
      {place === "" ? <p class="small soft">{words.inHand.nothing}</p> : <p class="laid">{laidText(place)}</p>}
      <div class="sizes">
        {fields.map((field) => (
          <FieldLine key={`${field.pointer} ${field.text}`} field={field} />
        ))}
      </div>
      {place === "" ? <SeriesLine /> : null}
      {place === "" ? <Bars /> : null}
      <p class="small soft">{words.inHand.notation}</p>
      {place !== "" && !opening ? <PutIn place={place} /> : null}
      {place === "" ? null : (
        <div class="row">
          <button type="button" onClick={() => takeInHand("")}>
            {words.inHand.done}
          </button>
          {opening ? (
            <button type="button" class="danger" disabled={readOnly.value} onClick={() => void takeOut(place)}>
              {words.inHand.takeOut(name)}
            </button>
          ) : null}
        </div>
      )}
    </section>
  );
}
