// What is in hand, with every size that can be typed, in the job's own text.
import type { NewPart } from "../engine/contract";
import { fieldsAt } from "../job/fields";
import { textAt } from "../job/pointer";
import { kLists } from "../state/fields_home";
import { chooseSeries, putIn, takeOut } from "../state/building";
import { takeInHand } from "../state/seeing";
import { inHand, job, readOnly, shown, tape } from "../state/signals";
import { words } from "../words/words";
import { Beams } from "./Beams";
import { FieldLine } from "./FieldLine";
import { Fold } from "./Fold";
import { OneEntry } from "./form/Forms";
import { Steps } from "./Steps";

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

/// Usual leaves first, then bare holes; an inner wall last.
const kNew: readonly NewPart[] = ["man-door", "single-overhead", "window", "door", "overhead", "inner-wall"];

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
            {words.inHand.parts[kind](tape.value)}
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
    return `${opening.from.text} – ${opening.to.text}${hole}${opening.packing === "" ? "" : `. ${opening.packing}`}`;
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

/// Every field of what is selected, also those that the job does not say yet.
function AllOf(props: { readonly place: string; readonly name: string }) {
  const [, top = "", at = ""] = /^(\/\w+)\/(\d+)$/.exec(props.place) ?? [];
  const list = kLists.find((one) => one.place === top && one.fields === undefined);
  if (list === undefined) return null;
  return (
    <Fold key={props.place} name={`all ${props.place}`} title={words.inHand.all(props.name)}>
      {() => <OneEntry list={list} at={Number(at)} />}
    </Fold>
  );
}

function WholeBuilding() {
  return (
    <>
      <p class="small soft">{words.inHand.nothing}</p>
      <div class="sizes">
        {fieldsAt(job.value, "").map((field) => (
          <FieldLine key={`${field.pointer} ${field.text}`} field={field} />
        ))}
      </div>
      <SeriesLine />
      <Beams />
    </>
  );
}

function Selected(props: { readonly place: string }) {
  const { place } = props;
  const opening = place.startsWith("/openings/");
  const name = textAt(job.value, `${place}/name`);
  return (
    <>
      <p class="laid">{laidText(place)}</p>
      <div class="sizes">
        {fieldsAt(job.value, place).map((field) => (
          <FieldLine key={`${field.pointer} ${field.text}`} field={field} />
        ))}
      </div>
      {opening ? null : <PutIn place={place} />}
      {place.startsWith("/outline/sides/") ? <Steps key={place} index={Number(place.split("/").at(-1))} /> : null}
      <AllOf place={place} name={name} />
      <div class="row">
        <button type="button" onClick={() => takeInHand("")}>
          {words.inHand.done}
        </button>
        {opening || place.startsWith("/interior_walls/") ? (
          <button type="button" class="danger" disabled={readOnly.value} onClick={() => void takeOut(place)}>
            {words.inHand.takeOut(name)}
          </button>
        ) : null}
      </div>
    </>
  );
}

export function InHand() {
  const place = inHand.value;
  return (
    <section
      class={place === "" ? "block hand" : "block hand selected"}
      id="in-hand"
      aria-label={words.inHand.label}
      data-pointer={place === "" ? undefined : place}
    >
      <h3>
        {words.inHand.label}: {titleOf(place)}
      </h3>
      {place === "" ? <WholeBuilding /> : <Selected place={place} />}
      <p class="small soft">{words.inHand.notation}</p>
    </section>
  );
}
