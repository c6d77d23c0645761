// Where the grips of a handle lie over the drawing, in CSS pixels. Each is at least a thumb wide. At a wall's outer face
// they part: an opening is taken from there inwards, the side's dimension from there outwards.
import type { Handle, OpeningHandle, SideHandle } from "../engine/contract";
import type { Grip } from "./drag";

export interface Area {
  readonly left: number;
  readonly top: number;
  readonly width: number;
  readonly height: number;
}

export interface GripPlace {
  readonly grip: Grip;
  /// What a finger may touch.
  readonly touch: Area;
  /// What is drawn, measured from the touched area's corner.
  readonly drawn: Area;
  /// Along the paper's width, or up and down it.
  readonly lies: "lying" | "standing";
}

export const kThumb = 44;
/// A dimension's text on paper, micrometres: so long for a letter, so high, with a rim, clear of the corners. Its line stands so far from the wall's face; the text's middle
/// stands above the line as it is read, from below or from the right.
const kDimension = {
  letter: 2_350,
  rim: 2_500,
  spare: 4_500,
  across: 6_600,
  outside: 12_000,
  inside: 7_500,
  above: 2_900,
} as const;

/// Where a side's dimension stands: outside, but inside where the next corner is re-entrant and its room is taken.
export type Stands = "outside" | "inside";
/// An edge's mark: so thick, and so much longer than the wall is thick, in pixels.
const kMark = { thick: 5, longer: 16 } as const;

interface Span {
  readonly from: number;
  readonly size: number;
}

/// A span made a thumb wide: to both sides, or away from one end that stays.
function touchable(span: Span, keeps: -1 | 0 | 1): Span {
  const grown = Math.max(0, kThumb - span.size);
  const before = keeps < 0 ? 0 : keeps > 0 ? grown : grown / 2;
  return { from: span.from - before, size: span.size + grown };
}

function sign(value: number): -1 | 0 | 1 {
  if (value === 0) return 0;
  return value > 0 ? 1 : -1;
}

function made(grip: Grip, x: Span, y: Span, drawnX: Span, drawnY: Span, lies: GripPlace["lies"]): GripPlace {
  const touch = { left: x.from, top: y.from, width: x.size, height: y.size };
  const drawn = { left: drawnX.from - x.from, top: drawnY.from - y.from, width: drawnX.size, height: drawnY.size };
  return { grip, touch, drawn, lies };
}

function spansOf(handle: Handle, pixels: number): readonly [Span, Span] {
  return [
    { from: handle.x * pixels, size: handle.width * pixels },
    { from: handle.y * pixels, size: handle.height * pixels },
  ];
}

/// The building lies on the walker's right: outward is a quarter turn to the left of the walk.
function outwardOf(handle: OpeningHandle): readonly [-1 | 0 | 1, -1 | 0 | 1] {
  return [sign(handle.along[1]), sign(-handle.along[0])];
}

function markOf(across: Span): Span {
  const size = Math.min(across.size + kMark.longer, kThumb);
  return { from: across.from + across.size / 2 - size / 2, size };
}

/// Touched beside the opening, over the masonry; drawn on the jamb.
function edge(grip: "from" | "to", handle: OpeningHandle, pixels: number): GripPlace {
  const [x, y] = spansOf(handle, pixels);
  const lying = handle.along[0] !== 0;
  const along = lying ? x : y;
  const across = lying ? y : x;
  const after = handle.along[0] + handle.along[1] > 0 === (grip === "to");
  const end = after ? along.from + along.size : along.from;
  const masonry = { from: after ? end : end - kThumb, size: kThumb };
  const mark = { from: after ? end : end - kMark.thick, size: kMark.thick };
  const [outX, outY] = outwardOf(handle);
  const wide =
    across.size > kThumb ? { from: markOf(across).from, size: kThumb } : touchable(across, lying ? outY : outX);
  return lying
    ? made(grip, masonry, wide, mark, markOf(across), "lying")
    : made(grip, wide, masonry, markOf(across), mark, "standing");
}

/// The body of an opening, then its two edges.
export function openingGrips(handle: OpeningHandle, pixels: number): readonly [GripPlace, GripPlace, GripPlace] {
  const [x, y] = spansOf(handle, pixels);
  const [outX, outY] = outwardOf(handle);
  const lies = handle.along[0] !== 0 ? "lying" : "standing";
  const body = made("body", touchable(x, outX), touchable(y, outY), x, y, lies);
  return [body, edge("from", handle, pixels), edge("to", handle, pixels)];
}

/// A dimension's text across its wall, which it leaves in the direction `out`: touched from the wall's face on, or around
/// the text where that is farther away.
function beside(face: number, out: -1 | 1, line: number, pixels: number): readonly [Span, Span] {
  const middle = face + (out * line - kDimension.above) * pixels;
  const size = kDimension.across * pixels;
  const text = { from: middle - size / 2, size };
  const around = touchable(text, 0);
  if (out > 0) return [{ from: Math.max(around.from, face), size: around.size }, text];
  return [{ from: Math.min(around.from, face - around.size), size: around.size }, text];
}

/// Name and both forms of the length, as the engine writes them: about twice the label.
function textLength(handle: SideHandle): number {
  const letters = 2 * handle.label.length - handle.name.length - 1;
  return letters * kDimension.letter + 2 * kDimension.rim;
}

/// A side is taken by its dimension.
export function sideGrip(handle: SideHandle, pixels: number, stands: Stands = "outside"): GripPlace {
  const [x, y] = spansOf(handle, pixels);
  const [outX, outY] = [sign(handle.outward[0]), sign(handle.outward[1])];
  const lying = outX === 0;
  const along = lying ? x : y;
  const across = lying ? y : x;
  const outward = (lying ? outY : outX) > 0 ? 1 : -1;
  const out = stands === "outside" ? outward : outward > 0 ? -1 : 1;
  const size = Math.min(textLength(handle) * pixels, Math.max(kThumb, along.size - 2 * kDimension.spare * pixels));
  const text = { from: along.from + along.size / 2 - size / 2, size };
  const face = out > 0 ? across.from + across.size : across.from;
  const [touched, drawn] = beside(face, out, kDimension[stands], pixels);
  return lying
    ? made("side", touchable(text, 0), touched, text, drawn, "lying")
    : made("side", touched, touchable(text, 0), drawn, text, "standing");
}
