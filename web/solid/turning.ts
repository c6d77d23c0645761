// Hands on the view in space: the mouse turns; a finger too once the view was tapped, until it scrolls the page elsewhere;
// two fingers or the wheel come nearer, keys do all of it.

export interface Turned {
  readonly turn: (around: number, up: number) => void;
  readonly nearer: (factor: number) => void;
  readonly home: () => void;
  readonly tap: (x: number, y: number) => void;
}

const kPerPixel = 0.008;
const kPerKey = 0.12;
const kTapPixels = 4;

interface Finger {
  x: number;
  y: number;
  travelled: number;
}

function keyActions(to: Turned): Readonly<Record<string, () => void>> {
  return {
    ArrowLeft: () => to.turn(-kPerKey, 0),
    ArrowRight: () => to.turn(kPerKey, 0),
    ArrowUp: () => to.turn(0, kPerKey),
    ArrowDown: () => to.turn(0, -kPerKey),
    "+": () => to.nearer(1.15),
    "=": () => to.nearer(1.15),
    "-": () => to.nearer(1 / 1.15),
    Home: () => to.home(),
  };
}

function spanOf(fingers: ReadonlyMap<number, Finger>): number {
  const [a, b] = [...fingers.values()];
  return a === undefined || b === undefined ? 0 : Math.hypot(a.x - b.x, a.y - b.y);
}

// Fingers live as long as the page: a canvas is drawn anew by each render, a hand is not.
const kFingers = new Map<number, Finger>();

/// A finger that scrolled the page lets the view go.
globalThis.document?.addEventListener(
  "pointercancel",
  (event) => {
    if (event.pointerType !== "mouse" && document.activeElement instanceof HTMLCanvasElement)
      document.activeElement.blur();
  },
  { capture: true },
);

/// Handlers for a canvas.
export function turnedBy(to: Turned) {
  const keys = keyActions(to);
  return {
    onPointerDown(event: PointerEvent): void {
      (event.currentTarget as Element).setPointerCapture(event.pointerId);
      kFingers.set(event.pointerId, { x: event.clientX, y: event.clientY, travelled: 0 });
    },
    onPointerMove(event: PointerEvent): void {
      const finger = kFingers.get(event.pointerId);
      if (finger === undefined) return;
      const held = event.pointerType === "mouse" || document.activeElement === event.currentTarget;
      const before = spanOf(kFingers);
      const dx = event.clientX - finger.x;
      const dy = event.clientY - finger.y;
      finger.x = event.clientX;
      finger.y = event.clientY;
      finger.travelled += Math.abs(dx) + Math.abs(dy);
      if (!held) return;
      if (kFingers.size === 1) to.turn(-dx * kPerPixel, dy * kPerPixel);
      else if (before > 0) to.nearer(spanOf(kFingers) / before);
    },
    onPointerUp(event: PointerEvent): void {
      const finger = kFingers.get(event.pointerId);
      kFingers.delete(event.pointerId);
      if (finger === undefined || finger.travelled > kTapPixels || kFingers.size > 0) return;
      const box = (event.currentTarget as Element).getBoundingClientRect();
      to.tap(event.clientX - box.left, event.clientY - box.top);
    },
    onPointerCancel(event: PointerEvent): void {
      kFingers.delete(event.pointerId);
    },
    // Only where the view has been taken hold of: else the wheel goes on turning the page.
    onWheel(event: WheelEvent): void {
      if (document.activeElement !== event.currentTarget) return;
      event.preventDefault();
      to.nearer(event.deltaY < 0 ? 1.1 : 1 / 1.1);
    },
    onKeyDown(event: KeyboardEvent): void {
      const action = keys[event.key];
      if (action === undefined || event.ctrlKey || event.metaKey) return;
      event.preventDefault();
      action();
    },
  };
}
