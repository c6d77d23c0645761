// What is to be read next, shown on the plan: the line to tape, or the point to hold the rod at.
import type { DrawingHead, SideHandle } from "../engine/contract";
import { nextReading } from "../state/to_read";

interface Point {
  readonly x: number;
  readonly y: number;
}

/// A place on a side's outer face, in CSS pixels of the drawing. The building lies on the walker's right.
export function placeOnSide(handle: SideHandle, at: number, scale: number, pixels: number): Point {
  const [outX, outY] = handle.outward;
  const [alongX, alongY] = [-outY, outX];
  const along = at / 1_000 / scale;
  const face = { x: outX > 0 ? handle.x + handle.width : handle.x, y: outY > 0 ? handle.y + handle.height : handle.y };
  const start = {
    x: alongX === 0 ? face.x : alongX > 0 ? handle.x : handle.x + handle.width,
    y: alongY === 0 ? face.y : alongY > 0 ? handle.y : handle.y + handle.height,
  };
  return { x: (start.x + alongX * along) * pixels, y: (start.y + alongY * along) * pixels };
}

export function Aim(props: { readonly head: DrawingHead; readonly pixels: number }) {
  const { head, pixels } = props;
  const next = nextReading.value;
  if (next === undefined) return null;
  const points = next.spots.flatMap((spot) => {
    const handle = head.handles.find((one) => one.kind === "side" && one.index === spot.side);
    return handle?.kind === "side" ? [placeOnSide(handle, spot.at, head.scale, pixels)] : [];
  });
  const [from, to] = points;
  return (
    <svg class="aim" width={head.width * pixels} height={head.height * pixels} aria-hidden="true">
      {from === undefined || to === undefined ? null : <line x1={from.x} y1={from.y} x2={to.x} y2={to.y} />}
      {points.map((point) => (
        <circle key={`${point.x} ${point.y}`} cx={point.x} cy={point.y} r="9" />
      ))}
    </svg>
  );
}
