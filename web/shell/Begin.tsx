// One line to begin a building of one's own: four sizes, in any notation.
import { useSignal } from "@preact/signals";
import { kHeightRange, kSideRange, type LengthUnit, meaningsOf, withUnit } from "../job/bare";
import type { Tape } from "../job/tape";
import { WhichUnit } from "../parts/WhichUnit";
import { onceAtATime } from "../state/changing";
import { goTo } from "../state/point";
import { begin } from "../state/table";
import { words } from "../words/words";

const kSizes = ["length", "width", "height"] as const;
type Size = (typeof kSizes)[number];
type Typed = Readonly<Record<Size, string>>;

const kExamples: Readonly<Record<Tape, Typed>> = {
  inches: { length: words.begin.lengthExample, width: words.begin.widthExample, height: words.begin.heightExample },
  millimetres: { length: words.begin.metricLength, width: words.begin.metricWidth, height: words.begin.metricHeight },
};

const rangeOfSize = (size: Size, tape: Tape) => (size === "height" ? kHeightRange : kSideRange)[tape];

/// A block's own tape.
function tapeOf(series: string): Tape {
  return series.startsWith("us-") ? "inches" : "millimetres";
}

function SizeField(props: {
  readonly name: Size;
  readonly value: string;
  readonly refused: boolean;
  readonly put: (text: string) => void;
}) {
  return (
    <label class="field">
      <span>{words.begin[props.name]}</span>
      <input
        name={props.name}
        value={props.value}
        required
        maxLength={60}
        autocomplete="off"
        spellcheck={false}
        aria-invalid={props.refused}
        aria-describedby="begin-note"
        onInput={(event) => props.put(event.currentTarget.value)}
      />
    </label>
  );
}

function Series(props: { readonly chosen: string; readonly choose: (series: string) => void }) {
  return (
    <label class="field wide">
      <span>{words.begin.units}</span>
      <select name="series" onChange={(event) => props.choose(event.currentTarget.value)}>
        {Object.entries(words.series).map(([id, title]) => (
          <option key={id} value={id} selected={id === props.chosen}>
            {title}
          </option>
        ))}
      </select>
    </label>
  );
}

const beginOnce = onceAtATime(async (sizes: Typed, series: string, told: (refused: string) => void) => {
  const refused = (await begin({ ...sizes, series })) ?? "";
  told(refused);
  if (refused === "") goTo("order");
});

function Line() {
  const refused = useSignal("");
  const series = useSignal("us-8");
  // What was typed stays, whatever block is chosen; only examples that nobody touched go with it.
  const typed = useSignal<Partial<Typed>>({});
  const asking = useSignal(false);
  const tape = tapeOf(series.value);
  const sizes: Typed = { ...kExamples[tape], ...typed.value };

  const put = (name: Size, text: string): void => {
    typed.value = { ...typed.value, [name]: text };
    asking.value = false;
  };
  const doubtful = kSizes.filter((name) => meaningsOf(sizes[name], tape, rangeOfSize(name, tape)).length > 1);
  const units = doubtful.flatMap((name) =>
    meaningsOf(sizes[name], tape, rangeOfSize(name, tape)).map((one) => one.unit),
  );
  const send = (chosen: LengthUnit | undefined): void => {
    const meant = kSizes.map((name) => [name, withUnit(sizes[name], tape, rangeOfSize(name, tape), chosen)] as const);
    asking.value = meant.some(([, text]) => text === undefined);
    if (asking.value) return;
    const whole = Object.fromEntries(meant) as unknown as Typed;
    const changed = meant.filter(([name, text]) => text !== sizes[name] || name in typed.value);
    typed.value = Object.fromEntries(changed.map(([name, text]) => [name, text ?? ""]));
    void beginOnce(whole, series.value, (why) => (refused.value = why));
  };
  const bad = refused.value !== "";
  return (
    <form
      onSubmit={(event) => {
        event.preventDefault();
        send(undefined);
      }}
      aria-label={words.begin.lead}
    >
      {kSizes.map((name) => (
        <SizeField key={name} name={name} value={sizes[name]} refused={bad} put={(text) => put(name, text)} />
      ))}
      <Series
        chosen={series.value}
        choose={(to) => {
          series.value = to;
          asking.value = false;
        }}
      />
      <button type="submit" class="filled wide">
        {words.begin.go}
      </button>
      {asking.value ? (
        <WhichUnit
          numbers={doubtful.map((name) => sizes[name].trim())}
          units={[...new Set(units)]}
          choose={(unit) => send(unit)}
        />
      ) : null}
      <p class="note small" id="begin-note" role="status">
        {bad ? <span class="danger">{refused.value}</span> : ""}
      </p>
    </form>
  );
}

export function Begin() {
  return (
    <div class="begin">
      <Line />
    </div>
  );
}
