// What was measured on site: entering it, and what it comes to.
import { computed, signal, useSignalEffect } from "@preact/signals";
import { Ink } from "../draw/Ink";
import { settingOutFields } from "../job/fields";
import { valueAt } from "../job/pointer";
import { kPegFields, type Listed, type PegField, readingsOf } from "../job/readings";
import { words } from "../words/words";
import { enter, keepDowels, strike } from "./actions";
import type { Answer } from "./answer";
import { FieldLine } from "./InHand";
import { ask } from "./solving";
import { history, job, readOnly, shown, sides } from "./state";

type Ground = NonNullable<Answer["ground"]>;
type Kind = "tape" | "rod" | "two_peg" | "dowel" | "edge";
const kKinds = ["tape", "rod", "two_peg", "dowel", "edge"] as const;

const kind = signal<Kind>("tape");
const refused = signal("");
const by = signal("");
const bedSide = signal(0);
const drawings = signal<{ readonly job: string; readonly pegs: string; readonly bed: string }>({
  job: "",
  pegs: "",
  bed: "",
});

const readings = computed(() => readingsOf(job.value));
const ground = computed<Ground | undefined>(() => shown.value?.answer.ground);
/// What dowels stand in from the face by plan: where the next one is likely to be.
const dowelOff = computed(() => shown.value?.answer.dowels[0]?.off_face.text ?? "");
/// Bars stand where dowels were found.
const kept = computed(() => Array.isArray(valueAt(job.value, "/steel/kept_dowels")));
const corners = computed(() => shown.value?.answer.corners.map((corner) => corner.name) ?? []);

function pegReadings(typed: (name: string) => string): Readonly<Record<PegField, string>> {
  return Object.fromEntries(kPegFields.map((name) => [name, typed(name)])) as Record<PegField, string>;
}

async function send(event: Event): Promise<void> {
  event.preventDefault();
  const form = event.currentTarget as HTMLFormElement;
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

function EntryForm() {
  const names = corners.value;
  return (
    <form class="entry" onSubmit={(event) => void send(event)} aria-label={words.ground.enter}>
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
  return [second, times === 0 ? "" : words.ground.fits(times / 1000)].filter((text) => text !== "").join(" · ");
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
          {one.struck || readOnly.value ? null : (
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
      {drawings.value.pegs === "" ? null : (
        <div class="paper-box">
          <Ink svg={drawings.value.pegs} chosen={undefined} later={false} />
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
        {words.ground.bedRange(bed.thinnest.text, bed.thickest.text, bed.least.text, bed.most.text)}
      </p>
      <ul class="moves">
        {bed.choices.map((choice) => (
          <li key={choice.what}>
            <span>{choice.text}</span>
            <span class="small soft">
              {words.ground.mortar(
                Math.round(choice.mortar_cubic_centimetres / 1000),
                Math.round(choice.concrete_cubic_centimetres / 1000),
              )}
            </span>
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
      {drawings.value.bed === "" ? (
        <p class="small soft">{words.ground.noBedHere}</p>
      ) : (
        <div class="paper-box wide">
          <Ink svg={drawings.value.bed} chosen={undefined} later={false} />
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
  const solved = await ask({ job: text, drawings: names });
  if (solved === undefined || history.value.now.text !== text) return;
  drawings.value = { job: text, pegs: solved.svg("pegs") ?? "", bed: solved.svg(`bed-${side + 1}`) ?? "" };
}

export function Ground() {
  useSignalEffect(() => {
    const { text } = history.value.now;
    const side = bedSide.value;
    if (shown.value?.draft !== false) return;
    if (readings.value.length > 0) void draw(text, side);
    else drawings.value = { job: text, pegs: "", bed: "" };
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
