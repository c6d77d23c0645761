// Hands on a drawing's frame that change nothing of the job: a wheel with Ctrl held, two fingers, a mouse that takes hold
// of bare paper, arrow keys. One finger and the plain wheel are the page's own.
import type { Spot } from "./frame";

export interface Framed {
  readonly frame: HTMLElement;
  /// How large the drawing stands now, 1 at rest.
  zoom(): number;
  /// Makes it so large; what lies under this spot of the frame stays there, moved on by as much as the hand moved.
  zoomTo(zoom: number, under: Spot, movedBy?: Spot): void;
}

/// A mouse that trembles by so much still only taps.
const kTapPixels = 4;
/// One notch of a wheel (100 px in the browsers' count) makes a drawing 1.2 times as large.
const kNotch = 1.2 ** (1 / 100);
/// What an arrow key moves a frame by, CSS pixels.
const kArrow = 48;

const kArrows: Readonly<Record<string, readonly [number, number]>> = {
  ArrowLeft: [-kArrow, 0],
  ArrowRight: [kArrow, 0],
  ArrowUp: [0, -kArrow],
  ArrowDown: [0, kArrow],
};

function spotIn(frame: HTMLElement, at: { readonly clientX: number; readonly clientY: number }): Spot {
  const box = frame.getBoundingClientRect();
  return { x: at.clientX - box.left - frame.clientLeft, y: at.clientY - box.top - frame.clientTop };
}

function listenForWheel(framed: Framed): void {
  framed.frame.addEventListener(
    "wheel",
    (event) => {
      if (!event.ctrlKey) return;
      event.preventDefault();
      const lines = event.deltaMode === WheelEvent.DOM_DELTA_PIXEL ? 1 : 33;
      framed.zoomTo(framed.zoom() * kNotch ** (-event.deltaY * lines), spotIn(framed.frame, event));
    },
    { passive: false },
  );
}

interface Pinch {
  readonly apart: number;
  readonly middle: Spot;
}

function pinchOf(frame: HTMLElement, touches: TouchList): Pinch | undefined {
  const [one, other] = [touches[0], touches[1]];
  if (touches.length !== 2 || one === undefined || other === undefined) return undefined;
  const [a, b] = [spotIn(frame, one), spotIn(frame, other)];
  return { apart: Math.hypot(a.x - b.x, a.y - b.y), middle: { x: (a.x + b.x) / 2, y: (a.y + b.y) / 2 } };
}

function listenForFingers(framed: Framed): void {
  const { frame } = framed;
  let last: Pinch | undefined;
  const begin = (event: TouchEvent): void => {
    last = pinchOf(frame, event.touches);
    if (last !== undefined && event.cancelable) event.preventDefault();
  };
  const move = (event: TouchEvent): void => {
    const now = pinchOf(frame, event.touches);
    if (now === undefined || last === undefined || last.apart === 0) return;
    if (event.cancelable) event.preventDefault();
    const by = { x: now.middle.x - last.middle.x, y: now.middle.y - last.middle.y };
    framed.zoomTo((framed.zoom() * now.apart) / last.apart, last.middle, by);
    last = now;
  };
  frame.addEventListener("touchstart", begin, { passive: false });
  frame.addEventListener("touchmove", move, { passive: false });
  for (const end of ["touchend", "touchcancel"] as const)
    frame.addEventListener(end, (event) => (last = pinchOf(frame, event.touches)));
}

/// The tap that a mouse ends its move with is none.
function swallowNextTap(frame: HTMLElement): void {
  const swallow = (event: MouseEvent): void => event.stopPropagation();
  frame.addEventListener("click", swallow, { capture: true, once: true });
  setTimeout(() => frame.removeEventListener("click", swallow, { capture: true }), 0);
}

function listenForMouse({ frame }: Framed): void {
  let from: { readonly x: number; readonly y: number; readonly left: number; readonly top: number } | undefined;
  let moved = false;
  frame.addEventListener("pointerdown", (event) => {
    const part = event.target instanceof Element && event.target.closest(".handle") !== null;
    const moves = frame.scrollWidth > frame.clientWidth || frame.scrollHeight > frame.clientHeight;
    if (event.pointerType !== "mouse" || event.button !== 0 || part || !moves) return;
    from = { x: event.clientX, y: event.clientY, left: frame.scrollLeft, top: frame.scrollTop };
    moved = false;
  });
  frame.addEventListener("pointermove", (event) => {
    if (from === undefined) return;
    const [dx, dy] = [event.clientX - from.x, event.clientY - from.y];
    if (!moved && Math.hypot(dx, dy) < kTapPixels) return;
    if (!moved) frame.setPointerCapture(event.pointerId);
    moved = true;
    frame.scrollTo({ left: from.left - dx, top: from.top - dy, behavior: "instant" });
  });
  const end = (): void => {
    if (moved) swallowNextTap(frame);
    from = undefined;
    moved = false;
  };
  frame.addEventListener("pointerup", end);
  frame.addEventListener("pointercancel", end);
}

function listenForKeys(framed: Framed): void {
  const { frame } = framed;
  frame.addEventListener("keydown", (event) => {
    if (event.target !== frame || event.ctrlKey || event.metaKey || event.altKey) return;
    const [left, top] = kArrows[event.key] ?? [0, 0];
    const before = [frame.scrollLeft, frame.scrollTop];
    frame.scrollBy({ left, top, behavior: "instant" });
    if (before[0] !== frame.scrollLeft || before[1] !== frame.scrollTop) event.preventDefault();
  });
}

/// For as long as the frame stands on the page.
export function listenForHands(framed: Framed): void {
  listenForWheel(framed);
  listenForFingers(framed);
  listenForMouse(framed);
  listenForKeys(framed);
}
