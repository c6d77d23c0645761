// The sheets of a hold point: their names, how many pages, and the set of them, made in the page, looked at and saved.
import { type Signal, useSignal, useSignalEffect } from "@preact/signals";
import type { RefObject } from "preact";
import { useEffect, useRef } from "preact/hooks";
import type { SheetName } from "../engine/contract";
import {
  dropped,
  further,
  listed,
  made,
  type MadeSet,
  makeSet,
  making,
  paper,
  pictured,
  saveSet,
  seekPictures,
  seekSheets,
} from "../state/printing";
import { history, searching, tape } from "../state/signals";
import { words } from "../words/words";
import { SheetPictures } from "./SheetPictures";

/// Whether this browser shows a PDF inside a page.
function showsPdf(): boolean {
  return navigator.pdfViewerEnabled === true && matchMedia("(min-width: 700px)").matches;
}

function Ready(props: { readonly set: MadeSet }) {
  const { set } = props;
  const size = `${Math.round(set.bytes.byteLength / 1024)} KB`;
  return (
    <div>
      <p class="row" role="status">
        {words.sheets.ready(size)}
        {set.job === history.value.now.text ? null : <strong>{words.sheets.stale}</strong>}
      </p>
      <div class="row">
        <button type="button" class="framed" onClick={() => void saveSet(set)}>
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

/// The sheets that are printed for this point.
function sheetsOf(point: string): readonly SheetName[] {
  return listed.value?.sheets.filter((sheet) => sheet.hold_point === point || sheet.also === point) ?? [];
}

/// Titles in their order, each with its pages' places in the point's set.
function titlesOf(point: string): readonly (readonly [string, readonly number[]])[] {
  const places = new Map<string, number[]>();
  for (const [at, sheet] of sheetsOf(point).entries()) {
    const title = sheet.title.replace(/ \(\d+ of \d+\)$/, "");
    places.set(title, [...(places.get(title) ?? []), at]);
  }
  return [...places];
}

/// Of a sheet that is another point's, and has this one's list under its own.
function isShared(point: string, place: number): boolean {
  const sheet = sheetsOf(point)[place];
  return sheet !== undefined && sheet.hold_point !== point;
}

/// More pages than these are listed without pictures.
const kPictured = 40;

function Names(props: { readonly point: string }) {
  const titles = titlesOf(props.point);
  if (listed.value === undefined) return <p class="small soft">{words.points.sheetsComing}</p>;
  if (titles.length === 0) return <p class="small soft">{words.points.noSheets}</p>;
  const set = pictured.value?.of === props.point ? pictured.value : undefined;
  return (
    <ul class="sheet-names">
      {titles.map(([title, places]) => (
        <li key={title}>
          {set === undefined || (places[0] ?? 0) >= kPictured ? (
            <span class="sheet-pictures" />
          ) : (
            <SheetPictures bytes={set.bytes} address={set.address} title={title} at={places} />
          )}
          <span>{title}</span>
          {isShared(props.point, places[0] ?? 0) ? <span class="small">{words.points.listUnder}</span> : null}
          <span class="soft">{words.points.pages(places.length)}</span>
        </li>
      ))}
    </ul>
  );
}

/// True from when it is nearly in view.
function useNearlySeen(element: RefObject<HTMLElement | null>): Signal<boolean> {
  const seen = useSignal(false);
  useEffect(() => {
    if (element.current === null) return;
    const watch = new IntersectionObserver(
      (entries) => {
        if (entries.some((entry) => entry.isIntersecting)) seen.value = true;
      },
      { rootMargin: "600px 0px" },
    );
    watch.observe(element.current);
    return () => watch.disconnect();
  }, [element, seen]);
  return seen;
}

/// Made if it is not yet, then printed by the browser; where it shows no PDF inside a page, opened.
async function print(of: string): Promise<void> {
  if (!(await makeSet(of))) return;
  const address = made.value?.address;
  if (address === undefined) return;
  if (!showsPdf()) {
    window.open(address, "_blank", "noopener");
    return;
  }
  document.querySelector(".printing")?.remove();
  const frame = document.createElement("iframe");
  frame.className = "printing";
  frame.title = words.sheets.previewTitle;
  frame.addEventListener("load", () => frame.contentWindow?.print());
  frame.src = address;
  document.body.append(frame);
}

function Make(props: { readonly of: string; readonly label: string; readonly first: boolean }) {
  return (
    <button
      type="button"
      class={props.first ? "filled" : "framed"}
      disabled={making.value !== undefined}
      onClick={() => void makeSet(props.of)}
    >
      {making.value === props.of ? words.sheets.making : props.label}
    </button>
  );
}

/// Sheets that are not everybody's, with the hold point that they stand at: they come where they are ticked.
const kFurther = [
  { what: "standards", at: "order" },
  { what: "templates", at: "pour" },
] as const;

function Further(props: { readonly point: string }) {
  return kFurther
    .filter(({ at }) => at === props.point)
    .map(({ what }) => (
      <label class="check" key={what}>
        <input
          type="checkbox"
          checked={further.value[what]}
          onChange={(event) => (further.value = { ...further.value, [what]: event.currentTarget.checked })}
        />
        {words.sheets[what]}
      </label>
    ));
}

export function Sheets(props: { readonly point: string }) {
  useEffect(() => {
    if (tape.value === "millimetres") paper.value = "a4";
  }, []);
  useSignalEffect(seekSheets);
  const here = useRef<HTMLElement>(null);
  const seen = useNearlySeen(here);
  const titles = titlesOf(props.point);
  const some = titles.length > 0;
  const pages = titles.reduce((sum, [, places]) => sum + places.length, 0);
  useSignalEffect(() => {
    if (seen.value && titlesOf(props.point).length > 0) void seekPictures(props.point);
  });
  const set = made.value;
  return (
    <section class="sheets" id="sheets" aria-label={words.points.sheets} ref={here}>
      <h3>
        {words.points.sheets}
        {some ? `: ${words.points.pages(pages)}` : ""}
      </h3>
      <Names point={props.point} />
      <div class="row">
        <fieldset class="choice" aria-label={words.sheets.paper}>
          {(["letter", "a4"] as const).map((size) => (
            <button type="button" key={size} aria-pressed={paper.value === size} onClick={() => (paper.value = size)}>
              {words.sheets[size]}
            </button>
          ))}
        </fieldset>
        <Further point={props.point} />
        {some ? (
          <button
            type="button"
            class="filled"
            disabled={making.value !== undefined}
            onClick={() => void print(props.point)}
          >
            {words.sheets.print(pages)}
          </button>
        ) : null}
        {some ? <Make of={props.point} label={words.points.toSheets} first={false} /> : null}
        <Make of="" label={words.points.wholeSet} first={!some} />
        {making.value !== undefined && searching.value !== undefined ? (
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
      {set === undefined || (set.of !== "" && set.of !== props.point) ? null : <Ready set={set} />}
    </section>
  );
}
