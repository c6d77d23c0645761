// One line to begin a building of one's own: four sizes, in any notation.
import { useSignal } from "@preact/signals";
import { words } from "../words/words";
import { begin } from "./actions";
import { isExample } from "./state";

function field(form: FormData, name: string): string {
  const value = form.get(name);
  return typeof value === "string" ? value.trim() : "";
}

function Size(props: { readonly name: "length" | "width" | "height"; readonly example: string; readonly bad: boolean }) {
  return (
    <label class="field">
      <span>{words.begin[props.name]}</span>
      <input name={props.name} defaultValue={props.example} required autocomplete="off" spellcheck={false} aria-invalid={props.bad} aria-describedby="begin-note" />
    </label>
  );
}

export function Begin() {
  const refused = useSignal("");
  const metric = useSignal(false);
  const send = async (event: SubmitEvent): Promise<void> => {
    event.preventDefault();
    const form = new FormData(event.currentTarget as HTMLFormElement);
    const sizes = { length: field(form, "length"), width: field(form, "width"), height: field(form, "height"), series: field(form, "series") };
    refused.value = (await begin(sizes)) ?? "";
    if (refused.value === "") document.getElementById("plan")?.scrollIntoView({ block: "nearest" });
  };
  const examples = metric.value
    ? [words.begin.metricLength, words.begin.metricWidth, words.begin.metricHeight]
    : [words.begin.lengthExample, words.begin.widthExample, words.begin.heightExample];
  const key = metric.value ? "metric" : "inches";
  return (
    <details class="begin" open={isExample.value && innerWidth >= 700}>
      <summary>{words.begin.lead}</summary>
      <form onSubmit={(event) => void send(event as unknown as SubmitEvent)} aria-label={words.begin.lead}>
        <Size key={`length ${key}`} name="length" example={examples[0] ?? ""} bad={refused.value !== ""} />
        <Size key={`width ${key}`} name="width" example={examples[1] ?? ""} bad={refused.value !== ""} />
        <Size key={`height ${key}`} name="height" example={examples[2] ?? ""} bad={refused.value !== ""} />
        <label class="field wide">
          <span>{words.begin.units}</span>
          <select name="series" onChange={(event) => (metric.value = !event.currentTarget.value.startsWith("us-"))}>
            {Object.entries(words.series).map(([id, title]) => (
              <option key={id} value={id} selected={id === "us-8"}>
                {title}
              </option>
            ))}
          </select>
        </label>
        <button type="submit" class="filled wide">
          {words.begin.go}
        </button>
        <p class="note small" id="begin-note" role="status">
          {refused.value === "" ? (isExample.value ? words.begin.exampleNote : "") : <span class="danger">{refused.value}</span>}
        </p>
      </form>
    </details>
  );
}
