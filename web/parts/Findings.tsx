// What was found at a hold point, worst first as the engine lists it, each with the offers that mend it.
import type { Finding } from "../engine/contract";
import { openField, showPlace } from "../state/seeing";
import { brief, offersNow, shown } from "../state/signals";
import { words } from "../words/words";
import { OneOffer } from "./OneOffer";

interface Placed {
  readonly finding: Finding;
  /// Its place in the answer's list.
  readonly index: number;
}

function findingsOf(point: string): readonly Placed[] {
  const all = shown.value?.answer.findings.map((finding, index) => ({ finding, index })) ?? [];
  return all.filter(({ finding }) => finding.hold_point === point);
}

/// The offers that mend a finding. They were worked out for the whole answer, which lists the same findings.
function Mending(props: { readonly index: number }) {
  const whole = shown.value?.stage === "whole";
  const offers = whole ? (offersNow.value?.filter(({ mends }) => mends.includes(props.index)) ?? []) : [];
  if (offers.length === 0) return null;
  return (
    <div class="mending">
      <p class="small soft">{words.offers.beside}</p>
      <ul>
        {offers.map((offer) => (
          <OneOffer key={offer.text} offer={offer} />
        ))}
      </ul>
    </div>
  );
}

function One(props: Placed) {
  const { finding } = props;
  const { text, place } = finding;
  return (
    <li>
      <span>
        {text}
        {finding.rule === "" ? null : <small class="rule soft">{finding.rule}</small>}
      </span>
      {place === "" ? null : (
        <span class="links">
          <button type="button" aria-label={words.points.seePlaceOf(text)} onClick={() => showPlace(place, "")}>
            {words.points.seePlace}
          </button>
          <button type="button" aria-label={words.points.openFieldOf(text)} onClick={() => openField(place)}>
            {words.points.openField}
          </button>
        </span>
      )}
      <Mending index={props.index} />
    </li>
  );
}

export function Findings(props: { readonly point: string }) {
  const found = findingsOf(props.point);
  if (found.length === 0 && brief.value) return null; // whether anything is found is not known yet
  return (
    <section class="findings" id="findings" aria-label={words.points.found}>
      <h3>{words.points.found}</h3>
      {found.length === 0 ? (
        <p class="small soft">{words.points.noneFound}</p>
      ) : (
        <ul>
          {found.map((one) => (
            <One key={`${one.index} ${one.finding.code}`} {...one} />
          ))}
        </ul>
      )}
    </section>
  );
}
