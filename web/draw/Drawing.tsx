// A drawing of the engine in its own box: fitted, made larger and smaller, with blue grips above it.
import { useComputed, useSignal } from "@preact/signals";
import type { ComponentChildren } from "preact";
import { useEffect, useLayoutEffect, useRef } from "preact/hooks";
import { showPiece } from "../app/actions";
import { type Picture, piece } from "../app/state";
import type { DrawingHead } from "../engine/contract";
import { words } from "../words/words";
import { Grips } from "./Grips";
import { held } from "./holding";
import { Ink } from "./Ink";

interface Size {
  readonly width: number;
  readonly height: number;
}

/// CSS pixels per micrometre at which a whole drawing fits its box.
function fitting(box: Size, head: DrawingHead): number {
  return Math.min(box.width / head.width, box.height / head.height);
}

const kZooms = [1, 1.5, 2.2, 3.2, 4.6, 6.5] as const;

interface Frozen {
  readonly pixels: number;
  readonly left: number;
  readonly top: number;
  readonly aspect: number;
}

/// While a side is dragged the drawing grows; what does not move must stay where it is on the screen.
function anchored(frozen: Frozen, head: DrawingHead): { left: number; top: number } {
  const hold = held.value;
  const from = hold?.anchor;
  const now = head.handles.find((handle) => handle.kind === "side" && handle.index === from?.index);
  if (from === undefined || now === undefined) return frozen;
  return { left: frozen.left + (from.x - now.x) * frozen.pixels, top: frozen.top + (from.y - now.y) * frozen.pixels };
}

export function Drawing(props: {
  readonly picture: Picture;
  readonly kind: "plan" | "elevation";
  readonly label: string;
  readonly tools: ComponentChildren;
  readonly leading: ComponentChildren;
}) {
  const { picture, kind } = props;
  const { head } = picture;
  const box = useRef<HTMLElement>(null);
  const size = useSignal<Size>({ width: 0, height: 0 });
  const zoom = useSignal(0);
  const frozen = useRef<Frozen | undefined>(undefined);

  useLayoutEffect(() => {
    const element = box.current;
    if (element === null) return;
    const measure = (): void => {
      size.value = { width: element.clientWidth, height: element.clientHeight };
    };
    measure();
    const watch = new ResizeObserver(measure);
    watch.observe(element);
    return () => watch.disconnect();
  }, [size]);

  const mine = held.value?.drawing === kind;
  const pixels = mine && frozen.current ? frozen.current.pixels : fitting(size.value, head) * (kZooms[zoom.value] ?? 1);
  const width = head.width * pixels;
  const height = head.height * pixels;
  const rest = {
    left: Math.max(0, (size.value.width - width) / 2),
    top: Math.max(0, (size.value.height - height) / 2),
  };
  const place = mine && frozen.current ? anchored(frozen.current, head) : rest;
  const aspect = mine && frozen.current ? frozen.current.aspect : head.width / head.height;
  if (!mine) frozen.current = { pixels, ...rest, aspect };

  const changeZoom = (to: number): void => {
    const element = box.current;
    const before = kZooms[zoom.value] ?? 1;
    zoom.value = Math.max(0, Math.min(kZooms.length - 1, to));
    const factor = (kZooms[zoom.value] ?? 1) / before;
    if (element === null) return;
    const middle = { x: element.scrollLeft + element.clientWidth / 2, y: element.scrollTop + element.clientHeight / 2 };
    requestAnimationFrame(() =>
      element.scrollTo(middle.x * factor - element.clientWidth / 2, middle.y * factor - element.clientHeight / 2),
    );
  };

  useEffect(() => {
    zoom.value = 0;
  }, [zoom, kind]);
  const largest = useComputed(() => zoom.value === kZooms.length - 1);

  const tap = (event: MouseEvent): void => {
    const name = pieceUnder(event.target);
    if (name !== undefined) void showPiece(name);
  };

  return (
    <figure class="view" id={kind} aria-label={props.label}>
      <div class="view-head">
        {props.leading}
        <div class="view-tools">
          {props.tools}
          <button
            type="button"
            class="sign"
            aria-label={words.drawing.smaller}
            disabled={zoom.value === 0}
            onClick={() => changeZoom(zoom.value - 1)}
          >
            −
          </button>
          <button
            type="button"
            class="sign"
            aria-label={words.drawing.larger}
            disabled={largest.value}
            onClick={() => changeZoom(zoom.value + 1)}
          >
            +
          </button>
        </div>
      </div>
      {/* biome-ignore lint/a11y/useKeyWithClickEvents: units are reached by name and neighbour from the keyboard */}
      <section
        class={zoom.value === 0 ? `box ${kind} fits` : `box ${kind}`}
        ref={box}
        aria-label={props.label}
        // biome-ignore lint/a11y/noNoninteractiveTabindex: a box that scrolls must be reached by keys
        tabIndex={0}
        onClick={tap}
        style={{ "--aspect": aspect }}
      >
        <div
          class="paper"
          style={{
            "--width": `${width}px`,
            "--height": `${height}px`,
            "--left": `${place.left}px`,
            "--top": `${place.top}px`,
          }}
        >
          {size.value.width === 0 ? null : (
            <Ink svg={picture.svg} chosen={piece.value?.name} later={kind === "elevation"} />
          )}
          <Grips head={head} drawing={kind} pixels={pixels} />
        </div>
      </section>
    </figure>
  );
}

/// The unit whose outline was tapped: the title of its group is its name.
function pieceUnder(target: EventTarget | null): string | undefined {
  if (!(target instanceof Element)) return undefined;
  for (let group = target.closest("g"); group !== null; group = group.parentElement?.closest("g") ?? null) {
    const title = group.querySelector(":scope > title")?.textContent;
    if (title !== undefined && title !== null && /-\d+-\d+$/.test(title)) return title;
  }
  return undefined;
}
