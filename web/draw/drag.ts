// A drag in figures: from pointer pixels to nanometres along a wall, to the place snapped to, to the engine's edit.
// Pure. The only arithmetic on lengths in the page: viewBox micrometres x scale x 1000 = nanometres.
import type { Edit, Handle } from "../engine/contract";

export type HandlePart = "body" | "from" | "to" | "side";

/// What a hand has hold of, fixed when the drag begins.
export interface Hold {
  readonly handle: Handle;
  readonly part: HandlePart;
  /// 1 : scale, of the drawing held.
  readonly scale: number;
  /// CSS pixels for one micrometre of the drawing, as shown.
  readonly pixels: number;
  /// Places that lay without a cut, nanometres of the handle, ascending.
  readonly free: readonly number[];
  /// Half unit and joint, nanometres: the step by which free places follow one another.
  readonly pitch: number;
}

export interface Wanted {
  /// Nanometres: of the near jamb, of the edge, or outward from where the side stood.
  readonly nm: number;
  readonly snapped: boolean;
}

/// So near to a free place the hand is taken to mean it.
export const kSnapPixels = 10;

/// Where the handle stood at the start: a distance along the wall, or 0 for a side.
export function startOf(hold: Hold): number {
  if (hold.handle.kind === "side") return 0;
  return hold.part === "to" ? hold.handle.to_nm : hold.handle.from_nm;
}

function direction(hold: Hold): readonly [number, number] {
  return hold.handle.kind === "side" ? hold.handle.outward : hold.handle.along;
}

/// Nanometres that a movement of the pointer means along the handle's own direction.
export function movedBy(hold: Hold, dx: number, dy: number): number {
  const [x, y] = direction(hold);
  const micrometres = (dx * x + dy * y) / hold.pixels;
  return Math.round(micrometres * hold.scale * 1000);
}

/// Free places near `nm`: those that the engine named, and beyond them the pitch carried on.
export function placesAround(hold: Hold, nm: number): readonly number[] {
  const first = hold.free[0];
  const last = hold.free.at(-1);
  if (first === undefined || last === undefined || hold.pitch <= 0) return hold.free;
  if (nm >= first && nm <= last) return hold.free;
  const anchor = nm < first ? first : last;
  const steps = Math.round((nm - anchor) / hold.pitch);
  return [steps - 1, steps, steps + 1].map((step) => anchor + step * hold.pitch);
}

function nearest(places: readonly number[], nm: number): number | undefined {
  let best: number | undefined;
  for (const place of places) if (best === undefined || Math.abs(place - nm) < Math.abs(best - nm)) best = place;
  return best;
}

/// The place wanted by a pointer that has moved by (dx, dy) pixels; snapped unless the hand is free.
export function wantedBy(hold: Hold, dx: number, dy: number, freeHand: boolean): Wanted {
  const nm = startOf(hold) + movedBy(hold, dx, dy);
  const place = freeHand ? undefined : nearest(placesAround(hold, nm), nm);
  if (place === undefined) return { nm, snapped: false };
  const pixels = (Math.abs(place - nm) / (hold.scale * 1000)) * hold.pixels;
  return pixels <= kSnapPixels ? { nm: place, snapped: true } : { nm, snapped: false };
}

/// The next free place in the direction of `sign`, or one pitch on when the engine named none.
export function nextFree(hold: Hold, nm: number, sign: 1 | -1): number {
  const ahead = (place: number): boolean => (place - nm) * sign > 0;
  const named = hold.free.filter(ahead);
  const next = sign > 0 ? named[0] : named.at(-1);
  if (next !== undefined) return next;
  const edge = sign > 0 ? hold.free.at(-1) : hold.free[0];
  const from = edge === undefined ? nm : edge;
  const steps = Math.floor(Math.abs(nm - from) / Math.max(1, hold.pitch)) + 1;
  return hold.pitch > 0 ? from + sign * steps * hold.pitch : nm;
}

/// The engine edit that asks for the place.
export function editFor(hold: Hold, nm: number): Edit {
  const { handle } = hold;
  if (handle.kind === "side") return { do: "move-side", side: handle.index, by_nm: nm };
  if (hold.part === "body" || hold.part === "side") return { do: "move-opening", opening: handle.index, to_nm: nm };
  return { do: "resize-opening", opening: handle.index, edge: hold.part, to_nm: nm };
}
