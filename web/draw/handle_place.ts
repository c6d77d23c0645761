// Where the parts of a handle that a hand takes lie over the drawing, in CSS pixels. Each is at least a thumb wide. At a
// wall's outer face they part: an opening is taken from there inwards, the side's dimension from there outwards.
import type { Handle, OpeningHandle, SideHandle } from "../engine/contract";
import type { HandlePart } from "./drag";

export interface Area {
  readonly left: number;
  readonly top: number;
  readonly width: number;
  readonly height: number;
}

export interface HandlePlace {
  readonly part: HandlePart;
  /// What a finger may touch.
  readonly touch: Area;
  /// What is drawn, measured from the touched area's corner.
  readonly drawn: Area;
  /// Along the paper's width, or up and down it.
  readonly lies: "lying" | "standing";
}

export const kThumb = 44;
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

function made(part: HandlePart, x: Span, y: Span, drawnX: Span, drawnY: Span, lies: HandlePlace["lies"]): HandlePlace {
  const touch = { left: x.from, top: y.from, width: x.size, height: y.size };
  const drawn = { left: drawnX.from - x.from, top: drawnY.from - y.from, width: drawnX.size, height: drawnY.size };
  return { part, touch, drawn, lies };
}

function spansOf(handle: Pick<Handle, "x" | "y" | "width" | "height">, pixels: number): readonly [Span, Span] {
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
function edge(part: "from" | "to", handle: OpeningHandle, pixels: number): HandlePlace {
  const [x, y] = spansOf(handle, pixels);
  const lying = handle.along[0] !== 0;
  const along = lying ? x : y;
  const across = lying ? y : x;
  const after = handle.along[0] + handle.along[1] > 0 === (part === "to");
  const end = after ? along.from + along.size : along.from;
  const masonry = { from: after ? end : end - kThumb, size: kThumb };
  const mark = { from: after ? end : end - kMark.thick, size: kMark.thick };
  const [outX, outY] = outwardOf(handle);
  const wide =
    across.size > kThumb ? { from: markOf(across).from, size: kThumb } : touchable(across, lying ? outY : outX);
  return lying
    ? made(part, masonry, wide, mark, markOf(across), "lying")
    : made(part, wide, masonry, markOf(across), mark, "standing");
}

/// The body of an opening, then its two edges.
export function openingHandles(
  handle: OpeningHandle,
  pixels: number,
): readonly [HandlePlace, HandlePlace, HandlePlace] {
  const [x, y] = spansOf(handle, pixels);
  const [outX, outY] = outwardOf(handle);
  const lies = handle.along[0] !== 0 ? "lying" : "standing";
  const body = made("body", touchable(x, outX), touchable(y, outY), x, y, lies);
  return [body, edge("from", handle, pixels), edge("to", handle, pixels)];
}

/// A dimension's text across its wall: touched from the wall's face on, or around the text where that is farther away.
function beside(wall: Span, text: Span): Span {
  const around = touchable(text, 0);
  const beyond = text.from + text.size / 2 > wall.from + wall.size / 2;
  if (beyond) return { from: Math.max(around.from, wall.from + wall.size), size: around.size };
  return { from: Math.min(around.from, wall.from - around.size), size: around.size };
}

/// A side is taken by its dimension, where the engine wrote it.
export function handleOfSide(handle: SideHandle, pixels: number): HandlePlace {
  const [x, y] = spansOf(handle, pixels);
  const [textX, textY] = spansOf(handle.length, pixels);
  return handle.outward[0] === 0
    ? made("side", touchable(textX, 0), beside(y, textY), textX, textY, "lying")
    : made("side", beside(x, textX), touchable(textY, 0), textX, textY, "standing");
}
