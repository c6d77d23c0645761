// The pages of a set in little, each the way to the page itself.
import { useLayoutEffect, useMemo, useRef } from "preact/hooks";
import { words } from "../words/words";
import { drawPage, pagesOf, type SetPage } from "./sheet_picture";

/// As wide as a page is drawn at most, CSS pixels.
const kWide = 168;

function OnePage(props: { readonly page: SetPage; readonly name: string; readonly address: string }) {
  const { page } = props;
  const canvas = useRef<HTMLCanvasElement>(null);
  const fine = Math.min(2, globalThis.devicePixelRatio || 1);
  const scale = (kWide / page.width) * fine;
  useLayoutEffect(() => {
    const inks = canvas.current?.getContext("2d");
    if (inks === null || inks === undefined) return;
    inks.fillStyle = "#ffffff";
    inks.fillRect(0, 0, kWide * fine, page.height * scale);
    drawPage(page, inks, scale);
  }, [page, scale, fine]);
  return (
    <a class="sheet-picture" href={props.address} target="_blank" rel="noopener" aria-label={props.name}>
      <canvas ref={canvas} width={Math.round(kWide * fine)} height={Math.round(page.height * scale)} />
    </a>
  );
}

export function SheetPictures(props: {
  readonly bytes: Uint8Array;
  readonly address: string;
  readonly title: string;
  /// Which pages of the set these are, counted from 0.
  readonly at: readonly number[];
}) {
  const pages = useMemo(() => pagesOf(props.bytes), [props.bytes]);
  return (
    <span class="sheet-pictures">
      {props.at.map((at, number) => {
        const page = pages[at];
        return page === undefined ? null : (
          <OnePage
            key={at}
            page={page}
            name={words.sheets.openPage(props.title, number + 1, props.at.length)}
            address={`${props.address}#page=${at + 1}`}
          />
        );
      })}
    </span>
  );
}
