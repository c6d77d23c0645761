// The six hold points along the sheet's upper edge, and what the chosen one asks and still lacks.
import { signal } from "@preact/signals";
import type { HoldPoint } from "../engine/contract";
import { words } from "../words/words";
import { showPlace } from "./actions";
import type { Finding } from "./answer";
import { OneOffer } from "./Offers";
import { offersNow, shown } from "./state";

const opened = signal("");

interface Placed {
  readonly finding: Finding;
  /// Its place in the answer's list.
  readonly index: number;
}

function findingsOf(point: HoldPoint): readonly Placed[] {
  const all = shown.value?.answer.findings.map((finding, index) => ({ finding, index })) ?? [];
  return all.filter(({ finding }) => finding.hold_point === point.code);
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

function Cell(props: { readonly point: HoldPoint; readonly number: number }) {
  const { point } = props;
  const count = point.lacks.length + findingsOf(point).length;
  const open = opened.value === point.code;
  return (
    <li class={count > 0 ? "open" : "clear"}>
      <button
        type="button"
        aria-expanded={open}
        aria-controls="hold-point"
        onClick={() => (opened.value = open ? "" : point.code)}
      >
        <span class="number">{props.number}</span>
        <span>
          <span class="title">{words.holdPoints.short[point.code] ?? point.title}</span>
          <span class="count">{words.holdPoints.lacking(count)}</span>
        </span>
      </button>
    </li>
  );
}

function Entry(props: {
  readonly text: string;
  readonly rule: string;
  readonly place: string;
  readonly index?: number;
}) {
  return (
    <li>
      <span>
        {props.text}
        {props.rule === "" ? null : <small class="rule soft">{props.rule}</small>}
      </span>
      {props.place === "" ? null : (
        <button
          type="button"
          aria-label={`${words.holdPoints.show}: ${props.text}`}
          onClick={() => showPlace(props.place)}
        >
          {words.holdPoints.show}
        </button>
      )}
      {props.index === undefined ? null : <Mending index={props.index} />}
    </li>
  );
}

function Panel(props: { readonly point: HoldPoint }) {
  const { point } = props;
  const findings = findingsOf(point);
  return (
    <section class="hold" id="hold-point" aria-label={point.title}>
      <div>
        <h3>{words.holdPoints.asks}</h3>
        <ul>
          {point.asks.map((ask) => (
            <li key={ask}>
              <span>{ask}</span>
            </li>
          ))}
        </ul>
      </div>
      <div>
        <h3>
          {findings.length > 0 ? `${words.holdPoints.lacks} · ${words.holdPoints.findings}` : words.holdPoints.lacks}
        </h3>
        {findings.length + point.lacks.length === 0 ? <p>{words.holdPoints.none}</p> : null}
        <ul>
          {findings.map(({ finding, index }) => (
            <Entry
              key={finding.code + finding.place}
              text={finding.text}
              rule={finding.rule}
              place={finding.place}
              index={index}
            />
          ))}
          {point.lacks.map((lack) => (
            <Entry key={lack.text} text={lack.text} rule="" place={lack.place} />
          ))}
        </ul>
      </div>
    </section>
  );
}

export function Strip() {
  const points = shown.value?.holdPoints ?? [];
  const open = points.find((point) => point.code === opened.value);
  return (
    <section aria-label={words.holdPoints.label}>
      <ol class="strip">
        {points.map((point, index) => (
          <Cell key={point.code} point={point} number={index + 1} />
        ))}
      </ol>
      {open === undefined ? null : <Panel point={open} />}
    </section>
  );
}
