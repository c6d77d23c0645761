// A drawing of the engine in its own frame: legible at any width, made larger and smaller, with blue handles above it.
import type { ComponentChildren } from "preact";
import { useLayoutEffect, useMemo, useRef } from "preact/hooks";
import type { DrawingHead } from "../engine/contract";
import { showPiece, takeInHand } from "../state/seeing";
import { inHand, type Picture, piece, shown } from "../state/signals";
import { words } from "../words/words";
import { Aim } from "./Aim";
import { FrameMap } from "./FrameMap";
import { isSeen, kZooms, smallestLettering, type Spot, startCorner, stepped } from "./frame";
import { type FrameState, standing, toStart, useFrame, useHands, useKeptPlace, zoomAbout } from "./frame_state";
import { Handles } from "./Handles";
import { held } from "./holding";
import { Ink } from "./Ink";
import { Keys } from "./Keys";

interface Frozen {
  readonly pixels: number;
  readonly larger: boolean;
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

/// The corner that the drawing's figures are measured from, by its name.
function cornerName(head: DrawingHead): string {
  const sides = shown.value?.answer.sides ?? [];
  return (head.side === "" ? sides[0] : sides.find((side) => side.name === head.side))?.start ?? "";
}

function Zoom(props: { readonly state: FrameState }) {
  const { state } = props;
  const zoom = state.zoom.value;
  const press = (by: 1 | -1): void => {
    const { width, height } = state.size.value;
    zoomAbout(state, stepped(zoom, by), { x: width / 2, y: height / 2 });
  };
  return (
    <>
      <button
        type="button"
        class="sign"
        aria-label={words.drawing.smaller}
        disabled={zoom <= 1}
        onClick={() => press(-1)}
      >
        −
      </button>
      <button
        type="button"
        class="sign"
        aria-label={words.drawing.larger}
        disabled={zoom >= (kZooms.at(-1) ?? 1)}
        onClick={() => press(1)}
      >
        +
      </button>
    </>
  );
}

/// Of a drawing that its frame shows a part of: where the figures begin, and the way back there.
function StartCorner(props: { readonly head: DrawingHead; readonly seen: boolean; readonly go: () => void }) {
  const name = cornerName(props.head);
  const seen = props.head.name.endsWith("-inside") ? words.drawing.fromInside : words.drawing.fromOutside;
  const told = props.head.side === "" ? words.drawing.from(name) : seen(name);
  if (props.seen) return <p class="start-corner">{told}</p>;
  return (
    <button type="button" class="start-corner" onClick={props.go}>
      {words.drawing.backTo(name)}
    </button>
  );
}

export function Drawing(props: {
  readonly picture: Picture;
  readonly kind: "plan" | "elevation";
  readonly label: string;
  readonly leading: ComponentChildren;
  /// Drawn after what is looked at first.
  readonly later: boolean;
}) {
  const { picture, kind } = props;
  const { head, svg } = picture;
  const state = useFrame();
  const size = state.size.value;
  const frozen = useRef<Frozen | undefined>(undefined);
  const lettering = useRef(0);
  const mine = held.value?.drawing === kind;
  const letters = useMemo(() => (mine ? lettering.current : smallestLettering(svg)), [svg, mine]);
  lettering.current = letters;
  const corner = useMemo(() => startCorner(svg), [svg]);

  const now = standing(state, head, letters);
  const { pixels, larger } = mine && frozen.current ? frozen.current : now;
  const paper = { width: head.width * pixels, height: head.height * pixels };
  const rest = {
    left: Math.max(0, (size.width - paper.width) / 2),
    top: Math.max(0, (size.height - paper.height) / 2),
  };
  const place = mine && frozen.current ? anchored(frozen.current, head) : rest;
  const aspect = mine && frozen.current ? frozen.current.aspect : head.width / head.height;
  if (!mine) frozen.current = { pixels, larger, ...rest, aspect };

  useHands(state);
  useKeptPlace(state, paper);
  // Another wall, or a frame that has its size: the start corner is seen first.
  const ready = size.width > 0;
  // biome-ignore lint/correctness/useExhaustiveDependencies: it follows what is drawn, not how large
  useLayoutEffect(() => {
    state.zoom.value = 1;
    if (ready) toStart(state, corner, head, standing(state, head, letters).pixels);
  }, [kind, head.side, head.name.endsWith("-inside"), ready]);

  const tap = (event: MouseEvent): void => {
    const name = pieceUnder(event.target);
    if (name !== undefined) void showPiece(name);
    else if (inHand.value !== "") takeInHand("");
  };
  const share = { x: corner.x / head.width, y: corner.y / head.height };
  const goTo = (to: Spot): void =>
    state.frame.current?.scrollTo({
      left: to.x * paper.width - size.width / 2,
      top: to.y * paper.height - size.height / 2,
      behavior: "instant",
    });
  const classes = ["box", kind, larger ? "larger" : "fits"];
  if (state.zoom.value > 1) classes.push("zoomed");

  return (
    <figure class="view" id={kind} aria-label={props.label}>
      <div class="view-head">
        {props.leading}
        <div class="view-tools">
          {larger && ready ? (
            <FrameMap
              svg={svg}
              head={head}
              paper={paper}
              frame={size}
              moved={state.moved.value}
              corner={share}
              go={goTo}
            />
          ) : null}
          <Zoom state={state} />
        </div>
      </div>
      <div class="frame-of-drawing">
        {/* biome-ignore lint/a11y/useKeyWithClickEvents: units are reached by name and neighbour from the keyboard */}
        <section
          class={classes.join(" ")}
          ref={state.frame}
          aria-label={props.label}
          // biome-ignore lint/a11y/noNoninteractiveTabindex: a frame that is moved must be reached by keys
          tabIndex={0}
          onClick={tap}
          style={{ "--aspect": aspect }}
        >
          <div
            class="paper"
            style={{
              "--width": `${paper.width}px`,
              "--height": `${paper.height}px`,
              "--left": `${place.left}px`,
              "--top": `${place.top}px`,
            }}
          >
            {ready ? <Ink svg={svg} chosen={piece.value?.name} later={props.later} /> : null}
            {kind === "plan" ? <Aim head={head} pixels={pixels} /> : null}
            <Handles head={head} drawing={kind} pixels={pixels} />
          </div>
        </section>
        {larger && ready ? (
          <StartCorner
            head={head}
            seen={isSeen({ x: corner.x * pixels, y: corner.y * pixels }, state.moved.value, size)}
            go={() => {
              toStart(state, corner, head, pixels);
              state.frame.current?.focus({ preventScroll: true });
            }}
          />
        ) : null}
      </div>
      <Keys head={head} />
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
