// The sheet's title block: what is drawn, how large, and the tallies that move with the hand.
import { useSignal } from "@preact/signals";
import { useEffect } from "preact/hooks";
import type { Answer } from "../engine/contract";
import { textAt } from "../job/pointer";
import { openField, takeInHand } from "../state/seeing";
import { inHand, job, refusals, searching, type Shown, shown } from "../state/signals";
import { words } from "../words/words";

function Tally(props: { readonly name: string; readonly count: number; readonly matters?: boolean }) {
  return (
    <div class={props.matters && props.count > 0 ? "worse" : ""}>
      <dt>{props.name}</dt>
      <dd>{props.count}</dd>
    </div>
  );
}

function sizesOf(answer: Answer): string {
  const outer = answer.sides.filter((side) => !side.interior);
  return outer
    .slice(0, outer.length === 4 ? 2 : outer.length)
    .map((side) => `${side.name} ${side.nominal.text}`)
    .join(" · ");
}

/// The search goes on: for how long already. What takes no time is not told (the style shows this only after a moment).
function Looking() {
  const seconds = useSignal(0);
  const since = searching.value?.since;
  useEffect(() => {
    const tick = (): void => {
      seconds.value = since === undefined ? 0 : Math.floor((performance.now() - since) / 1_000);
    };
    tick();
    const clock = setInterval(tick, 250);
    return () => clearInterval(clock);
  }, [seconds, since]);
  return (
    <p class="proof soft passing">
      <span role="status">{words.tallies.searching}</span>
      <span aria-hidden="true">{seconds.value > 0 ? `: ${words.tallies.seconds(seconds.value)}` : " ..."}</span>
    </p>
  );
}

function Proof(props: { readonly answer: Answer; readonly stage: Shown["stage"] }) {
  const { proof } = props.answer;
  if (props.stage === "hand") return <p class="proof soft">{words.tallies.looking}</p>;
  if (searching.value !== undefined) return <Looking />;
  if (props.stage === "first") return <p class="proof soft">{words.tallies.ended}</p>;
  if (proof.proven) return <p class="proof">{words.tallies.proven}</p>;
  const least = proof.least_possible;
  // What may still be saved is counted in more than these two; of these two nothing may.
  const none = least.short_laps === props.answer.cost.short_laps && least.cuts === props.answer.cost.cuts;
  return (
    <p class="proof">{none ? words.tallies.lapsAndCuts : words.tallies.notProven(least.short_laps, least.cuts)}</p>
  );
}

function Stops(props: { readonly answer: Answer }) {
  return (
    <div role="status">
      {props.answer.stopped.map((stop) => (
        <div class="trouble" key={`${stop.side} ${stop.first_course} ${stop.from.nm}`}>
          <p>
            <strong>{words.tallies.stopped}</strong> {stop.side}, {words.tallies.courses} {stop.first_course}–
            {stop.last_course}, {stop.from.text} – {stop.to.text}. {stop.rule}
          </p>
          <p class="remedy">{stop.remedy}</p>
        </div>
      ))}
    </div>
  );
}

export function RefusalList() {
  const list = refusals.value;
  return (
    <div role="alert">
      {list === undefined ? null : (
        <div class="trouble">
          <strong>{words.trouble.refused}</strong>
          {list.refusals.slice(0, 4).map((refusal) => (
            <div key={refusal.code + refusal.place}>
              <p>{refusal.reason}</p>
              <p class="remedy">{refusal.remedy}</p>
              {refusal.place === "" ? null : (
                <button type="button" onClick={() => openField(refusal.place)}>
                  {words.trouble.place}
                </button>
              )}
            </div>
          ))}
          {shown.value === undefined ? null : <p class="small">{words.drawing.refusedView}</p>}
        </div>
      )}
    </div>
  );
}

export function TitleBlock() {
  const now = shown.value;
  const name = textAt(job.value, "/name");
  if (now === undefined) {
    return (
      <section class="block title-block" aria-label={words.tallies.label}>
        <h2 class="name">{name === "" ? words.untitled : name}</h2>
        <RefusalList />
      </section>
    );
  }
  const { answer } = now;
  const { cost, counts } = answer;
  return (
    <section class="block title-block" aria-label={words.tallies.label}>
      <h2 class="name">{name === "" ? words.untitled : name}</h2>
      <p class="small">{sizesOf(answer)}</p>
      <p class="small soft">{answer.series.map((series) => series.title).join("; ")}</p>
      {inHand.value === "" ? null : (
        <button type="button" class="small outset" onClick={() => takeInHand("")}>
          {words.inHand.building}
        </button>
      )}
      <dl class="tallies" id="tallies" data-draft={now.stage !== "whole"} data-stage={now.stage}>
        <Tally name={words.tallies.cuts} count={cost.cuts} matters />
        <Tally name={words.tallies.shortLaps} count={cost.short_laps} matters />
        <Tally name={words.tallies.shortPieces} count={cost.short_pieces} matters />
        <Tally name={words.tallies.units} count={counts.pieces} />
        <Tally name={words.tallies.bars} count={counts.bars.count} />
        <Tally name={words.tallies.courses} count={answer.courses.length} />
      </dl>
      {answer.conceded === undefined ? null : <p class="given-up">{words.tallies.givenUp(answer.conceded.length)}</p>}
      <Proof answer={answer} stage={now.stage} />
      <RefusalList />
      <Stops answer={answer} />
    </section>
  );
}
