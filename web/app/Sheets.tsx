// The printed set: made by the engine in the page, looked at, and saved.
import { signal } from "@preact/signals";
import { useEffect } from "preact/hooks";
import { saveBytes } from "../keep";
import { words } from "../words/words";
import { askWhole } from "./solving";
import { history, job, searching, shown } from "./state";
import { textAt } from "../job/pointer";

interface Made {
  readonly job: string;
  readonly paper: "letter" | "a4";
  readonly bytes: Uint8Array<ArrayBuffer>;
  readonly address: string;
}

const paper = signal<"letter" | "a4">("letter");
const made = signal<Made | undefined>(undefined);
const making = signal(false);
/// The building was changed while its set was being made.
const dropped = signal(false);

async function make(): Promise<void> {
  const { text } = history.value.now;
  const size = paper.value;
  making.value = true;
  dropped.value = false;
  // A place where a rule is given up names the offer that would keep it, on paper too.
  const offers = shown.value?.text === text && shown.value.answer.conceded !== undefined;
  const solved = await askWhole({ job: text, set: size, offers });
  making.value = false;
  const bytes = solved?.bytes(`set-${size}.pdf`);
  if (bytes === undefined) {
    dropped.value = history.value.now.text !== text;
    return;
  }
  if (made.value !== undefined) URL.revokeObjectURL(made.value.address);
  const address = URL.createObjectURL(new Blob([bytes], { type: "application/pdf" }));
  made.value = { job: text, paper: size, bytes, address };
}

function nameFor(ending: string): string {
  const name = textAt(job.value, "/name")
    .replaceAll(/[^\p{L}\p{N} _-]+/gu, " ")
    .trim();
  return `${name === "" ? "job" : name}${ending}`;
}

export async function saveDrawing(svg: string, name: string): Promise<void> {
  await saveBytes(svg, nameFor(` ${name}.svg`), "image/svg+xml");
}

/// Whether this browser shows a PDF inside a page.
function showsPdf(): boolean {
  return navigator.pdfViewerEnabled === true && matchMedia("(min-width: 700px)").matches;
}

function Ready(props: { readonly set: Made }) {
  const { set } = props;
  const size = `${Math.round(set.bytes.byteLength / 1024)} KB`;
  return (
    <div>
      <p class="row" role="status">
        {words.sheets.ready(size)}
        {set.job === history.value.now.text ? null : <strong>{words.sheets.stale}</strong>}
      </p>
      <div class="row">
        <button
          type="button"
          class="framed"
          onClick={() => void saveBytes(set.bytes, nameFor(` ${set.paper}.pdf`), "application/pdf")}
        >
          {words.sheets.keep}
        </button>
        <a class="button" href={set.address} target="_blank" rel="noopener">
          {words.sheets.look}
        </a>
        <span class="small soft">{words.sheets.printScale}</span>
      </div>
      {showsPdf() ? (
        <iframe class="preview" title={words.sheets.previewTitle} src={set.address} />
      ) : (
        <p class="small soft">{words.sheets.noPreview}</p>
      )}
    </div>
  );
}

export function Sheets() {
  useEffect(() => {
    if (textAt(job.value, "/tape") === "millimetres") paper.value = "a4";
  }, []);
  return (
    <section class="sheet" id="sheets" aria-labelledby="sheets-title">
      <div class="frame inner">
        <h2 id="sheets-title">{words.sheets.label}</h2>
        <p class="lead small soft">{words.sheets.lead}</p>
        <div class="row">
          <fieldset class="choice" aria-label={words.sheets.paper}>
            {(["letter", "a4"] as const).map((size) => (
              <button type="button" key={size} aria-pressed={paper.value === size} onClick={() => (paper.value = size)}>
                {words.sheets[size]}
              </button>
            ))}
          </fieldset>
          <button type="button" class="filled" disabled={making.value} onClick={() => void make()}>
            {making.value ? words.sheets.making : words.sheets.make}
          </button>
          {making.value && searching.value !== undefined ? (
            <span class="small soft" role="status">
              {words.sheets.searching}
            </span>
          ) : null}
        </div>
        {dropped.value ? (
          <p class="row" role="status">
            {words.sheets.dropped}
          </p>
        ) : null}
        {made.value === undefined ? null : <Ready set={made.value} />}
      </div>
    </section>
  );
}
