// The blue handles over a drawing: dragged by the mouse, by a finger once they were tapped, moved by arrow keys, read out as
// sliders. A finger that scrolls never moves one: the browser takes such a finger away (pointercancel), and handles with it.
import { signal } from "@preact/signals";
import { useRef } from "preact/hooks";
import type { DrawingHead, Handle } from "../engine/contract";
import { takeInHand } from "../state/seeing";
import { history, inHand, lit, readOnly, shown, tapeStep } from "../state/signals";
import { words } from "../words/words";
import type { HandlePart } from "./drag";
import { type Area, type HandlePlace, openingHandles, handleOfSide } from "./handle_place";
import { giveUp, held, heldPlace, letGo, pull, push, takeHold } from "./holding";

/// The drawing and place that a finger tapped last: what is selected there may be moved by one.
const handlesOut = signal("");

const isFinger = (event: PointerEvent): boolean => event.pointerType !== "mouse";

/// A finger that was taken for scrolling, wherever it lay: the handles are put away.
function putHandlesAway(event: PointerEvent): void {
  if (isFinger(event)) handlesOut.value = "";
}
globalThis.document?.addEventListener("pointercancel", putHandlesAway, { capture: true });

interface Props {
  readonly head: DrawingHead;
  readonly drawing: "plan" | "elevation";
  readonly pixels: number;
}

/// A press that trembles by so much is still a tap: of a mouse, of a finger.
const kTapPixels = { mouse: 4, finger: 10 } as const;
/// After so long without a key the place is taken.
const kKeyRest = 700;

function labelOf(handle: Handle, part: HandlePart): string {
  if (handle.kind === "side") return words.drawing.sideHandle(handle.name);
  if (part === "from") return words.drawing.fromEdge(handle.name);
  return part === "to" ? words.drawing.toEdge(handle.name) : words.drawing.openingHandle(handle.name);
}

function selectLabel(handle: Handle): string {
  return handle.kind === "side" ? words.drawing.selectSide(handle.name) : words.drawing.selectOpening(handle.name);
}

function standsAt(handle: Handle, part: HandlePart): number {
  if (handle.kind === "side") return handle.length_nm;
  return part === "to" ? handle.to_nm : handle.from_nm;
}

/// The sign in which a key moves the handle; 0: not at all. Arrows go where they point on the drawing; Page Up goes on
/// from the wall's start (or outward), Page Down back.
function signOf(key: string, handle: Handle): 1 | -1 | 0 {
  if (key === "PageUp") return 1;
  if (key === "PageDown") return -1;
  const [x, y] = handle.kind === "side" ? handle.outward : handle.along;
  const forward = x !== 0 ? "ArrowRight" : "ArrowDown";
  const backward = x !== 0 ? "ArrowLeft" : "ArrowUp";
  if (key === forward) return x + y > 0 ? 1 : -1;
  if (key === backward) return x + y > 0 ? -1 : 1;
  return 0;
}

function outName(drawing: Props["drawing"], handle: Handle): string {
  return `${drawing} ${handle.place}`;
}

function pixelsOf(area: Area) {
  return { left: `${area.left}px`, top: `${area.top}px`, width: `${area.width}px`, height: `${area.height}px` };
}

/// What is selected is told as something that can be moved.
function sliderOf(handle: Handle, place: HandlePlace) {
  return {
    "aria-valuenow": standsAt(handle, place.part),
    "aria-valuetext": handle.label,
    "aria-readonly": readOnly.value,
    "aria-orientation": place.lies === "lying" ? "horizontal" : "vertical",
  } as const;
}

interface Press {
  readonly x: number;
  readonly y: number;
  readonly id: number;
  /// Moves what it lies on; on what is not selected it only taps.
  readonly holds: boolean;
  moved: boolean;
}

function OneHandle(props: Props & { readonly handle: Handle; readonly place: HandlePlace }) {
  const { handle, place, head, drawing, pixels } = props;
  const start = useRef<Press | undefined>(undefined);
  const rest = useRef<ReturnType<typeof setTimeout> | undefined>(undefined);
  const now = held.value;
  const mine =
    now !== undefined &&
    now.drawing === drawing &&
    now.hold.part === place.part &&
    now.hold.handle.place === handle.place;

  const selected = inHand.value === handle.place;
  const out = selected && (finePointer() || handlesOut.value === outName(drawing, handle));

  const down = (event: PointerEvent): void => {
    if (event.button !== 0 || !event.isPrimary || !(event.currentTarget instanceof HTMLElement)) return;
    const holds = selected && (!isFinger(event) || out);
    if (holds) event.currentTarget.setPointerCapture(event.pointerId);
    start.current = { x: event.clientX, y: event.clientY, id: event.pointerId, holds, moved: false };
  };
  const move = (event: PointerEvent): void => {
    const from = start.current;
    if (from === undefined || from.id !== event.pointerId) return;
    const dx = event.clientX - from.x;
    const dy = event.clientY - from.y;
    if (!from.moved && Math.hypot(dx, dy) < kTapPixels[isFinger(event) ? "finger" : "mouse"]) return;
    if (!from.moved && from.holds) takeHold(drawing, head, handle, place.part, pixels, "pointer");
    from.moved = true;
    if (from.holds) pull(dx, dy, event.shiftKey);
  };
  const up = (): void => {
    const from = start.current;
    start.current = undefined;
    if (from === undefined || (from.moved && !from.holds)) return;
    takeInHand(handle.place);
    handlesOut.value = outName(drawing, handle);
    if (from.moved) void letGo();
    else showField();
  };
  const cancel = (): void => {
    const from = start.current;
    start.current = undefined;
    if (from?.holds === true) void giveUp();
  };

  const key = (event: KeyboardEvent): void => {
    if (event.key === "Escape") {
      event.stopPropagation();
      if (held.value === undefined) takeInHand("");
      else void giveUp();
      return;
    }
    if (event.key === "Enter" || event.key === " ") {
      event.preventDefault();
      clearTimeout(rest.current);
      if (!selected) {
        takeInHand(handle.place);
        return;
      }
      void letGo().then((moved) => {
        takeInHand(handle.place);
        if (!moved) showField();
      });
      return;
    }
    const sign = selected ? signOf(event.key, handle) : 0;
    if (sign === 0 || readOnly.value) return;
    event.preventDefault();
    if (!mine) takeHold(drawing, head, handle, place.part, pixels, "keys");
    push(sign, event.shiftKey || event.key.startsWith("Page"), tapeStep.value);
    clearTimeout(rest.current);
    rest.current = setTimeout(() => void letGo(), kKeyRest);
  };
  const blur = (): void => {
    clearTimeout(rest.current);
    if (held.value?.by === "keys") void letGo();
  };

  const classes = ["handle", place.part === "body" || place.part === "side" ? place.part : "edge", place.lies];
  if (selected) classes.push("chosen");
  if (out) classes.push("out");
  if (lit.value === handle.place) classes.push("lit");
  if (mine) classes.push("held");
  if (handle.kind === "opening" && handle.shown === false) classes.push("elsewhere");
  return (
    // biome-ignore lint/a11y/useAriaPropsSupportedByRole: both of its roles have a label
    // biome-ignore lint/a11y/noStaticElementInteractions: its role is always one that is pressed or moved
    <div
      class={classes.join(" ")}
      role={selected ? "slider" : "button"}
      aria-label={selected ? labelOf(handle, place.part) : selectLabel(handle)}
      {...(selected ? sliderOf(handle, place) : {})}
      tabIndex={0}
      data-place={handle.place}
      data-told={handle.label}
      data-part={place.part}
      style={{
        ...pixelsOf(place.touch),
        "--left": `${place.drawn.left}px`,
        "--top": `${place.drawn.top}px`,
        "--width": `${place.drawn.width}px`,
        "--height": `${place.drawn.height}px`,
      }}
      onPointerDown={down}
      onPointerMove={move}
      onPointerUp={up}
      onPointerCancel={cancel}
      onKeyDown={key}
      onBlur={blur}
      onClick={(event) => event.stopPropagation()}
    />
  );
}

/// A mouse or a pen's tip: what is selected keeps its handles, for nothing else scrolls by them.
function finePointer(): boolean {
  return matchMedia("(pointer: fine)").matches;
}

/// Brings the field of what is in hand into view, ready for typing where there is a keyboard.
function showField(): void {
  requestAnimationFrame(() => {
    const field = document.querySelector<HTMLInputElement>("#in-hand input[data-length]");
    if (field === null) return;
    field.scrollIntoView({ block: "nearest", behavior: "instant" });
    if (!finePointer()) return;
    field.select();
    field.focus({ preventScroll: true });
  });
}

function Tag(props: { readonly places: readonly HandlePlace[] }) {
  const now = held.value;
  const place = props.places.find((one) => one.part === now?.hold.part);
  if (now === undefined || place === undefined) return null;
  const below = {
    left: `${place.touch.left + place.drawn.left + place.drawn.width / 2}px`,
    top: `${Math.max(0, place.touch.top + place.drawn.top - 34)}px`,
    transform: "translateX(-50%)",
  };
  return (
    <div class={now.snapped ? "tag" : "tag free"} aria-hidden="true" style={below}>
      {heldPlace()}
    </div>
  );
}

export function Handles(props: Props) {
  const all = props.head.handles.map((handle) => {
    if (handle.kind === "side")
      return { handle, places: [handleOfSide(handle, props.pixels)] as readonly HandlePlace[] };
    const [body, from, to] = openingHandles(handle, props.pixels);
    const edges =
      inHand.value === handle.place && (finePointer() || handlesOut.value === outName(props.drawing, handle));
    return { handle, places: edges ? [body, from, to] : [body] };
  });
  const now = held.value;
  // The places of a hand's building are drawn again with each answer; this reads the signals that bring it.
  void shown.value;
  void history.value;
  return (
    <div class="handles">
      {all.map(({ handle, places }) =>
        places.map((place) => (
          <OneHandle key={`${handle.place} ${place.part}`} {...props} handle={handle} place={place} />
        )),
      )}
      {all.map(({ handle, places }) =>
        now !== undefined && now.drawing === props.drawing && now.hold.handle.place === handle.place ? (
          <Tag key="tag" places={places} />
        ) : null,
      )}
    </div>
  );
}
