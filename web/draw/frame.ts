// How large a drawing stands in its frame. Never smaller than its smallest lettering can be read: a drawing that is then
// larger than the frame is moved in it, with the corner that everything is measured from seen first.

/// The least height of letters on the screen, CSS pixels: the size of the font, not of its capitals.
export const kLeastLettering = 12;

/// How much larger than at rest a drawing can be made.
export const kZooms = [1, 1.5, 2.2, 3.2, 4.6, 6.5] as const;
const kLargest = kZooms[kZooms.length - 1] ?? 1;

export interface Size {
  readonly width: number;
  readonly height: number;
}

export interface Spot {
  readonly x: number;
  readonly y: number;
}

/// The smallest size of letters in a drawing, in its own units (micrometres on paper); 0 of a drawing without any.
export function smallestLettering(svg: string): number {
  let least = Number.POSITIVE_INFINITY;
  for (const [, size] of svg.matchAll(/<text[^>]*? font-size="([\d.]+)"/g)) least = Math.min(least, Number(size));
  return Number.isFinite(least) ? least : 0;
}

/// CSS pixels per micrometre at which the whole drawing fits its frame.
export function fitting(frame: Size, paper: Size): number {
  return Math.min(frame.width / paper.width, frame.height / paper.height);
}

/// CSS pixels per micrometre of a drawing at rest: the whole of it, or as little of it as keeps its lettering legible.
export function resting(frame: Size, paper: Size, lettering: number): number {
  const whole = fitting(frame, paper);
  return lettering > 0 ? Math.max(whole, kLeastLettering / lettering) : whole;
}

/// A zoom that can be had.
export function within(zoom: number): number {
  return Math.max(1, Math.min(kLargest, zoom));
}

/// One press larger or smaller.
export function stepped(zoom: number, by: 1 | -1): number {
  const near = 1e-3;
  const next = by > 0 ? kZooms.find((one) => one > zoom + near) : kZooms.findLast((one) => one < zoom - near);
  return next ?? within(zoom);
}

/// Where the frame must be moved so that a spot of the drawing (a share of its size) stays under a spot of the frame.
export function keepingUnder(share: Spot, paper: Size, under: Spot): Spot {
  return { x: share.x * paper.width - under.x, y: share.y * paper.height - under.y };
}

/// The corner that a drawing's figures are measured from, on paper in micrometres: there the engine writes its name, bold and
/// in blue, and nothing else so. The upper left of a drawing without one.
export function startCorner(svg: string): Spot {
  const [, x, y] = /<text class="ink-blue" x="(\d+)" y="(\d+)"[^>]* font-weight="bold"/.exec(svg) ?? [];
  return { x: Number(x ?? 0), y: Number(y ?? 0) };
}

/// Where the frame stands first: a quarter of it lies beyond the start corner.
export function first(corner: Spot, pixels: number, paper: Size, frame: Size): Spot {
  const along = (at: number, whole: number, seen: number): number =>
    at * pixels - seen * (at * pixels > whole / 2 ? 0.75 : 0.25);
  return { x: along(corner.x, paper.width, frame.width), y: along(corner.y, paper.height, frame.height) };
}

/// Whether a spot of the drawing is seen in its frame.
export function isSeen(spot: Spot, moved: Spot, frame: Size): boolean {
  const inside = (at: number, from: number, size: number): boolean => at >= from - 1 && at <= from + size + 1;
  return inside(spot.x, moved.x, frame.width) && inside(spot.y, moved.y, frame.height);
}
