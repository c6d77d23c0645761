// What is in hand, with every size that can be typed, in the job's own text.
import { useSignal } from "@preact/signals";
import { type Field, fieldsAt, type NewOpening } from "../job/fields";
import { textAt, valueAt } from "../job/pointer";
import { words } from "../words/words";
import { chooseSeries, putBars, putIn, takeInHand, takeOut, typed } from "./actions";
import { fieldName } from "./field_name";
import { fieldTrouble, inHand, job, readOnly, shown } from "./state";

export function FieldLine(props: { readonly field: Field }) {
  const { field } = props;
  const text = useSignal(field.text);
  const refused = fieldTrouble.value?.pointer === field.pointer ? fieldTrouble.value : undefined;
  const note = `refused${field.pointer.replaceAll("/", "-")}`;
  const changed = text.value.trim() !== field.text;
  const send = (event: Event): void => {
    event.preventDefault();
    if (changed) void typed(field, text.value);
  };
  return (
    <form onSubmit={send} class={field.free || refused !== undefined ? "whole" : ""}>
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
          onInput={(event) => (text.value = event.currentTarget.value)}
          onBlur={() => changed && text.value !== refused?.typed && void typed(field, text.value)}
        />
      </label>
      {changed && !readOnly.value ? <button type="submit">{words.inHand.set}</button> : null}
      {refused === undefined ? null : (
        <div class="trouble" role="alert" id={note} style={{ gridColumn: "1 / -1" }}>
          {refused.refusals.refusals.slice(0, 3).map((refusal) => (
            <div key={refusal.code + refusal.place}>
              <p>{refusal.reason}</p>
              <p class="remedy">{refusal.remedy}</p>
            </div>
          ))}
          <p class="small">{words.inHand.notTaken}</p>
        </div>
      )}
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
  if (valueAt(job.value, "/steel/bars") !== undefined) return null;
  const send = async (event: SubmitEvent): Promise<void> => {
    event.preventDefault();
    const form = new FormData(event.currentTarget as HTMLFormElement);
    refused.value = (await putBars(String(form.get("size") ?? ""), String(form.get("spacing") ?? ""))) ?? "";
  };
  return (
    <form class="bars" onSubmit={(event) => void send(event as unknown as SubmitEvent)} aria-label={words.inHand.bars}>
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
  if (opening !== undefined) return `${opening.from.text} – ${opening.to.text}`;
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
    <section class="block hand" id="in-hand" aria-label={words.inHand.label}>
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
