// What was measured on site: entering it, and what it comes to.
import { computed, signal, useSignalEffect } from "@preact/signals";
import { Ink } from "../draw/Ink";
import { Keys } from "../draw/Keys";
import type { DrawingHead } from "../engine/contract";
import { settingOutFields } from "../job/fields";
import { valueAt } from "../job/pointer";
import { type Listed, readingsOf } from "../job/readings";
import { words } from "../words/words";
import { bringBack, keepDowels, strike } from "./actions";
import type { Answer } from "./answer";
import { FieldLine } from "./InHand";
import { EntryForm } from "./ReadingForm";
import { askWhole } from "./solving";
import { history, job, readOnly, shown, sides } from "./state";

/// A reading off by more than twice its standard doubt is one in twenty, in thousandths of it; from 3.29 on it is left out.
const kWell = 2_000;

type Ground = NonNullable<Answer["ground"]>;

const bedSide = signal(0);
interface Drawn {
  readonly svg: string;
  readonly head: DrawingHead | undefined;
}
const kNone: Drawn = { svg: "", head: undefined };
const drawings = signal<{ readonly job: string; readonly pegs: Drawn; readonly bed: Drawn }>({
  job: "",
  pegs: kNone,
  bed: kNone,
});

const readings = computed(() => readingsOf(job.value));
const ground = computed<Ground | undefined>(() => shown.value?.answer.ground);
/// Bars stand where dowels were found.
const kept = computed(() => Array.isArray(valueAt(job.value, "/steel/kept_dowels")));

function outcomeOf(one: Listed): string {
  if (one.struck) return words.ground.struck;
  const dowel = ground.value?.dowels.find((found) => found.reading === one.index);
  if (dowel !== undefined) return dowel.text;
  const line = ground.value?.tape.lines.find((taped) => taped.reading === one.index);
  if (line === undefined) return "";
  if (line.use === "slip") return words.ground.slip(line.meant?.text ?? "");
  if (line.use === "blunder") return words.ground.blunder;
  const times = line.times_its_doubt_thousandths ?? 0;
  const second =
    line.agrees_with_first === undefined ? "" : line.agrees_with_first ? words.ground.agrees : words.ground.agreesNot;
  const fits = Math.abs(times) <= kWell ? words.ground.fitsWell : words.ground.fitsPoorly;
  return [second, times === 0 ? "" : fits].filter((text) => text !== "").join(" · ");
}

function Log() {
  if (readings.value.length === 0) return <p class="log">{words.ground.none}</p>;
  return (
    <ul class="log" aria-label={words.ground.log}>
      {readings.value.map((one) => (
        <li key={one.id} class={one.struck ? "struck" : ""}>
          <span class="what">{`${words.ground.short[one.kind]} ${one.what}`}</span>
          <span class="value">{one.value}</span>
          <span class="small soft">{[outcomeOf(one), one.by].filter((text) => text !== "").join(" · ")}</span>
          {readOnly.value ? null : one.struck ? (
            <button
              type="button"
              aria-label={words.ground.countWhat(one.what, one.value)}
              onClick={() => void bringBack("/readings", one.id, one.what)}
            >
              {words.ground.count}
            </button>
          ) : (
            <button
              type="button"
              aria-label={words.ground.strikeWhat(one.what, one.value)}
              onClick={() => void strike(one.id, one.what)}
            >
              {words.ground.strike}
            </button>
          )}
        </li>
      ))}
    </ul>
  );
}

function Pegs(props: { readonly tape: Ground["tape"] }) {
  const { tape } = props;
  return (
    <div class="result whole">
      <h3>{words.ground.pegs}</h3>
      <p>
        {tape.state === "adjusted"
          ? words.ground.agreement[tape.agreement ?? "unchecked"]
          : tape.state === "not-determinate"
            ? words.ground.missing(tape.missing.map((pair) => pair.join(" – ")).join(", "))
            : words.ground.impossible}
      </p>
      {tape.state !== "adjusted" || tape.missing.length === 0 ? null : (
        <p>{words.ground.tapeToo(tape.missing.map((pair) => pair.join(" – ")).join(", "))}</p>
      )}
      {tape.tape_again === undefined || tape.tape_again.length === 0 ? null : (
        <p>{words.ground.again(tape.tape_again.map((pair) => pair.join(" – ")).join(", "))}</p>
      )}
      <ul class="moves">
        {(tape.moves ?? []).map((move) => (
          <li key={move.corner}>
            <strong>{move.corner}</strong>
            <span>
              {move.corner === tape.held ? words.ground.held : move.within_doubt ? words.ground.withinDoubt : move.text}
            </span>
          </li>
        ))}
      </ul>
      {drawings.value.pegs.svg === "" ? null : (
        <div class="paper-box">
          <Ink svg={drawings.value.pegs.svg} chosen={undefined} later={false} />
          <Keys head={drawings.value.pegs.head} />
        </div>
      )}
    </div>
  );
}

function Fit(props: { readonly fit: NonNullable<Ground["fit"]> }) {
  const { fit } = props;
  return (
    <p class="result">
      <strong>{words.ground.fit}</strong> {words.ground.fitText(fit.text, fit.room.text, fit.room_before.text)}
    </p>
  );
}

function Bed(props: { readonly bed: NonNullable<NonNullable<Ground["levels"]>["bed"]> }) {
  const { bed } = props;
  return (
    <div class="result whole">
      <h3>{words.ground.bed}</h3>
      <p>
        <strong>{words.ground.verdicts[bed.verdict]}</strong>{" "}
        {bed.verdict === "not-read"
          ? null
          : words.ground.bedRange(bed.thinnest.text, bed.thickest.text, bed.least.text, bed.most.text)}{" "}
        {bed.lacks.length === 0 ? null : words.ground.bedLacks(bed.lacks.join(", "))}
      </p>
      <ul class="moves">
        {bed.choices.map((choice) => (
          <li key={choice.what}>
            <span>{choice.text}</span>
            <span class="small soft">{words.ground.mortar(choice.mortar, choice.concrete)}</span>
          </li>
        ))}
      </ul>
      <fieldset class="choice" aria-label={words.drawing.sides}>
        {sides.value.map((side, index) => (
          <button
            type="button"
            key={side.place}
            aria-pressed={index === bedSide.value}
            onClick={() => (bedSide.value = index)}
          >
            {side.name}
          </button>
        ))}
      </fieldset>
      {drawings.value.bed.svg === "" ? (
        <p class="small soft">{words.ground.noBedHere}</p>
      ) : (
        <div class="paper-box wide">
          <Ink svg={drawings.value.bed.svg} chosen={undefined} later={false} />
          <Keys head={drawings.value.bed.head} />
        </div>
      )}
    </div>
  );
}

/// What the rod says besides the bed: doorways' floors and the instrument itself.
function Levels(props: { readonly levels: NonNullable<Ground["levels"]> }) {
  const { doors, instrument } = props.levels;
  if (doors.length === 0 && instrument === undefined) return null;
  return (
    <div class="result">
      <ul class="moves">
        {instrument === undefined ? null : (
          <li>
            <strong>{words.ground.instrument}</strong>
            <span>
              {instrument.level
                ? words.ground.instrumentLevel
                : words.ground.instrumentOff(instrument.over.text, instrument.sight.text, instrument.doubt.text)}
            </span>
          </li>
        )}
        {doors.map((door) => (
          <li key={door.opening}>
            <strong>{door.opening}</strong>
            <span>
              {words.ground.door(door.tall_least.text, door.tall_most.text, door.planned.text)}{" "}
              {words.ground.doorVerdicts[door.verdict]}
            </span>
          </li>
        ))}
      </ul>
    </div>
  );
}

/// Layouts that save dowels, each taken with one tap.
function Saving(props: { readonly layouts: Ground["dowel_layouts"]; readonly kept: boolean }) {
  return (
    <div class="result">
      <h3>{words.ground.otherLayouts}</h3>
      <ul class="moves">
        {props.layouts.map((layout) => (
          <li key={layout.text}>
            <span>{layout.text}</span>
            <button
              type="button"
              disabled={readOnly.value}
              aria-label={words.ground.keepLong(layout.text)}
              onClick={() => void keepDowels(layout.kept)}
            >
              {words.ground.keep}
            </button>
          </li>
        ))}
        {props.kept ? (
          <li>
            <span>{words.ground.keptNow}</span>
            <button type="button" disabled={readOnly.value} onClick={() => void keepDowels([])}>
              {words.ground.keepNone}
            </button>
          </li>
        ) : null}
      </ul>
    </div>
  );
}

async function draw(text: string, side: number): Promise<void> {
  const names = ["pegs", `bed-${side + 1}`];
  const solved = await askWhole({ job: text, drawings: names });
  if (solved === undefined || history.value.now.text !== text) return;
  const drawn = (name: string): Drawn => ({
    svg: solved.svg(name) ?? "",
    head: solved.head.drawings?.find((one) => one.name === name),
  });
  drawings.value = { job: text, pegs: drawn("pegs"), bed: drawn(`bed-${side + 1}`) };
}

export function Ground() {
  useSignalEffect(() => {
    const side = bedSide.value;
    if (shown.value?.stage !== "whole") return;
    const { text } = shown.value;
    if (readings.value.length > 0) void draw(text, side);
    else drawings.value = { job: text, pegs: kNone, bed: kNone };
  });
  const now = ground.value;
  return (
    <section class="sheet" id="ground" aria-labelledby="ground-title">
      <div class="frame inner">
        <h2 id="ground-title">{words.ground.label}</h2>
        <p class="lead small soft">{words.ground.lead}</p>
        <details class="setting-out">
          <summary>{words.ground.settingOut}</summary>
          <p class="small soft">{words.ground.settingOutLead}</p>
          <div class="fields">
            {settingOutFields(job.value).map((one) => (
              <FieldLine key={`${one.pointer} ${one.text}`} field={one} />
            ))}
          </div>
        </details>
        <div class="ground">
          <EntryForm />
          <div class="results">
            {now !== undefined && now.tape.lines.length > 0 ? <Pegs tape={now.tape} /> : null}
            {now?.levels?.bed === undefined ? null : <Bed bed={now.levels.bed} />}
            {now?.levels === undefined ? null : <Levels levels={now.levels} />}
            {now?.fit === undefined ? null : <Fit fit={now.fit} />}
            {now?.fit_lacks === undefined ? null : (
              <p class="result">
                <strong>{words.ground.fit}</strong> {words.ground.fitLacks(now.fit_lacks.join(", "))}
              </p>
            )}
            {now !== undefined && (kept.value || now.dowel_layouts.length > 0) ? (
              <Saving layouts={now.dowel_layouts} kept={kept.value} />
            ) : null}
          </div>
          <Log />
        </div>
      </div>
    </section>
  );
}
