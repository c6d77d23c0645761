// Entering readings: led from one to the next as the engine asks for them, or one that is chosen by hand.
import { signal } from "@preact/signals";
import type { FunctionComponent } from "preact";
import { useLayoutEffect, useRef } from "preact/hooks";
import type { NextReading } from "../engine/contract";
import { EntryField } from "../parts/EntryField";
import { Fold } from "../parts/Fold";
import { ground, readings } from "../state/ground";
import { place } from "../state/point";
import { readOnly, shown } from "../state/signals";
import { askAgain, byHand, keyOf, nextReading, putItOff, putOffHere, toRead } from "../state/to_read";
import { words } from "../words/words";
import { LedFields } from "./LedFields";
import { DowelFields, EdgeFields, RodFields, TwoPegFields } from "./SiteFields";
import { by, cameIn, heard, type Kind, kKinds, makeReady, reached, refused, send } from "./send";
import { TapeFields } from "./TapeFields";

export { type Kind, kKinds };

const w = words.ground;
const kind = signal<Kind>("tape");

const kFields: Readonly<Record<Kind, FunctionComponent>> = {
  tape: TapeFields,
  rod: RodFields,
  two_peg: TwoPegFields,
  dowel: DowelFields,
  edge: EdgeFields,
};

/// The questions that each kind of reading answers.
const kAsked: Readonly<Record<Kind, readonly string[]>> = {
  tape: ["ask-poured-square", "ask-lines-square"],
  rod: ["ask-poured-level"],
  two_peg: ["ask-poured-level"],
  edge: ["ask-walls-sit"],
  dowel: ["ask-dowels-in-cells"],
};

/// What all readings of the last one's kind come to: the answer to what they are taken for.
function AnswerNow(props: { readonly of: Kind }) {
  const point = shown.value?.holdPoints.find((one) => one.code === place.value);
  const question = point?.questions.find((one) => kAsked[props.of].includes(one.code));
  if (question === undefined) return null;
  return (
    <span class="small">
      {question.text} <strong>{words.points.answers[question.answer]}</strong> {question.says}
    </span>
  );
}

/// What the last reading says by itself, and what all of its kind come to.
function LastSaid() {
  const last = readings.value[0];
  const found = ground.value;
  const said =
    last === undefined || last.struck
      ? ""
      : (found?.said.find((one) => one.reading === last.index)?.text ??
        found?.dowels.find((one) => one.reading === last.index)?.text ??
        "");
  return (
    <p class="last-said" role="status">
      {said === "" ? null : <span>{said}</span>}
      {last === undefined || last.struck ? null : <AnswerNow of={last.kind} />}
    </p>
  );
}

function Ends(props: { readonly skip?: NextReading }) {
  const { skip } = props;
  return (
    <div class="row ends">
      <button type="submit" class="filled" disabled={readOnly.value}>
        {w.add}
      </button>
      {skip === undefined ? null : (
        <button type="button" aria-label={w.skipWhat(skip.text)} onClick={() => putItOff(skip)}>
          {w.skip}
        </button>
      )}
    </div>
  );
}

function Signed() {
  return (
    <Fold name="reading signed" title={w.signed} said={by.value}>
      {() => (
        <div class="row">
          <label class="field by">
            <span>{w.by}</span>
            <input
              value={by.value}
              maxLength={20}
              autocomplete="off"
              onInput={(event) => (by.value = event.currentTarget.value)}
            />
          </label>
          <EntryField name="note" label={w.note} />
        </div>
      )}
    </Fold>
  );
}

/// A length that is not broken into two lines.
const inOnePiece = (length: string): string => length.replaceAll(" ", "\u00a0");

/// Which reading is next, and how many follow.
function Led(props: { readonly next: NextReading }) {
  const { next } = props;
  const planned = next.what === "tape" || next.what === "dowel" ? next.expected.text : "";
  return (
    <>
      <p class="next-reading">
        <span class="small">{w.nextIs}</span> <strong>{next.text}</strong>{" "}
        <span class="small soft">
          {[next.what === "tape" ? w.planned(inOnePiece(planned)) : "", w.toGo(toRead.value.length - 1)]
            .filter((text) => text !== "")
            .join(" · ")}
        </span>
      </p>
      <LedFields key={keyOf(next)} next={next} />
    </>
  );
}

function ByHand(props: { readonly kinds: readonly Kind[]; readonly now: Kind }) {
  const { kinds, now } = props;
  const Fields = kFields[now];
  return (
    <>
      {kinds.length < 2 ? null : (
        <fieldset class="choice" aria-label={w.kind}>
          {kinds.map((one) => (
            <button type="button" key={one} aria-pressed={now === one} onClick={() => (kind.value = one)}>
              {w.kinds[one]}
            </button>
          ))}
        </fieldset>
      )}
      <Fields key={now} />
    </>
  );
}

/// `kinds`: what is read at this hold point.
export function ReadingForm(props: { readonly kinds: readonly Kind[] }) {
  const next = nextReading.value;
  const form = useRef<HTMLFormElement>(null);
  // Drawn anew and ready in one: no key that is pressed falls between.
  useLayoutEffect(() => makeReady(form.current), [cameIn.value]);
  const now = next?.what ?? (props.kinds.includes(kind.value) ? kind.value : (props.kinds[0] ?? "tape"));
  return (
    <form
      class="entry"
      ref={form}
      onSubmit={(event) => {
        event.preventDefault();
        void send(event.currentTarget, now, next === undefined ? "" : keyOf(next));
      }}
      onInput={(event) => heard(event.target)}
      onFocusIn={reached}
      aria-label={w.enter}
      data-pointer="/readings"
    >
      <h3>{w.enter}</h3>
      {toRead.value.length === 0 && putOffHere.value === 0 && readings.value.length > 0 ? <p>{w.allRead}</p> : null}
      {next === undefined ? <ByHand kinds={props.kinds} now={now} /> : <Led next={next} />}
      <Ends {...(next === undefined ? {} : { skip: next })} />
      {refused.value === "" ? null : (
        <p class="trouble" role="alert">
          {refused.value}
        </p>
      )}
      <LastSaid />
      <div class="row">
        {next !== undefined ? (
          <button type="button" onClick={() => (byHand.value = true)}>
            {w.another}
          </button>
        ) : toRead.value.length > 0 ? (
          <button type="button" onClick={() => (byHand.value = false)}>
            {w.led}
          </button>
        ) : null}
        {putOffHere.value === 0 ? null : (
          <>
            <span class="small soft">{w.putOff(putOffHere.value)}</span>
            <button type="button" onClick={askAgain}>
              {w.askAgain}
            </button>
          </>
        )}
      </div>
      <Signed />
      <p class="small soft">{w.rules[now]}</p>
    </form>
  );
}
