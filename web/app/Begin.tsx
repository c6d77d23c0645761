// One line to begin a building of one's own: four sizes, in any notation.
import { signal, useSignal } from "@preact/signals";
import { words } from "../words/words";
import { begin } from "./actions";
import { isExample } from "./state";

/// What the user chose; undefined: the line is open beside the example, where there is room.
const opened = signal<boolean | undefined>(undefined);

function field(form: FormData, name: string): string {
  const value = form.get(name);
  return typeof value === "string" ? value.trim() : "";
}

function Size(props: {
  readonly name: "length" | "width" | "height";
  readonly example: string;
  readonly refused: boolean;
}) {
  return (
    <label class="field">
      <span>{words.begin[props.name]}</span>
      <input
        name={props.name}
        defaultValue={props.example}
        required
        maxLength={60}
        autocomplete="off"
        spellcheck={false}
        aria-invalid={props.refused}
        aria-describedby="begin-note"
      />
    </label>
  );
}

function Series(props: { readonly onMetric: (metric: boolean) => void }) {
  return (
    <label class="field wide">
      <span>{words.begin.units}</span>
      <select name="series" onChange={(event) => props.onMetric(!event.currentTarget.value.startsWith("us-"))}>
        {Object.entries(words.series).map(([id, title]) => (
          <option key={id} value={id} selected={id === "us-8"}>
            {title}
          </option>
        ))}
      </select>
    </label>
  );
}

function Line() {
  const refused = useSignal("");
  const metric = useSignal(false);
  const send = async (event: SubmitEvent): Promise<void> => {
    event.preventDefault();
    const form = new FormData(event.currentTarget as HTMLFormElement);
    const sizes = {
      length: field(form, "length"),
      width: field(form, "width"),
      height: field(form, "height"),
      series: field(form, "series"),
    };
    refused.value = (await begin(sizes)) ?? "";
    if (refused.value !== "") return;
    opened.value = undefined;
    document.getElementById("plan")?.scrollIntoView({ block: "nearest" });
  };
  const { begin: text } = words;
  const examples = metric.value
    ? ([text.metricLength, text.metricWidth, text.metricHeight] as const)
    : ([text.lengthExample, text.widthExample, text.heightExample] as const);
  const key = metric.value ? "metric" : "inches";
  const bad = refused.value !== "";
  return (
    <form onSubmit={(event) => void send(event as unknown as SubmitEvent)} aria-label={text.lead}>
      <Size key={`length ${key}`} name="length" example={examples[0]} refused={bad} />
      <Size key={`width ${key}`} name="width" example={examples[1]} refused={bad} />
      <Size key={`height ${key}`} name="height" example={examples[2]} refused={bad} />
      <Series onMetric={(to) => (metric.value = to)} />
      <button type="submit" class="filled wide">
        {text.go}
      </button>
      <p class="note small" id="begin-note" role="status">
        {bad ? <span class="danger">{refused.value}</span> : isExample.value ? text.exampleNote : ""}
      </p>
    </form>
  );
}

export function Begin() {
  const open = opened.value ?? (isExample.value && innerWidth >= 700);
  return (
    <div class="begin">
      <button type="button" aria-expanded={open} onClick={() => (opened.value = !open)}>
        {words.begin.lead}
      </button>
      {open ? <Line /> : null}
    </div>
  );
}
