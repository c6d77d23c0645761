// The hand: from the moment a handle is taken, by pointer or by key, until it is let go.
import { signal } from "@preact/signals";
import type { DrawingHead, Handle, SideHandle } from "../engine/contract";
import { settle } from "../state/building";
import { freeHand, history, offered, readOnly, refusals, shown } from "../state/signals";
import { beginDrafts, draft, endDrafts, solveNow } from "../state/solving";
import { words } from "../words/words";
import { editFor, type HandlePart, type Hold, nextFree, startOf, wantedBy } from "./drag";

export interface Held {
  readonly drawing: "plan" | "elevation";
  readonly hold: Hold;
  readonly base: string;
  readonly nm: number;
  readonly snapped: boolean;
  /// A side that does not move: the drawing is kept where this stands.
  readonly anchor: SideHandle | undefined;
  readonly by: "pointer" | "keys";
}

export const held = signal<Held | undefined>(undefined);

function pitchOf(handle: Handle): number {
  const answer = shown.value?.answer;
  const name = handle.kind === "side" ? handle.name : handle.side;
  const side = answer?.sides.find((one) => one.name === name);
  const series = answer?.series.find((one) => one.id === side?.series) ?? answer?.series[0];
  return series?.pitch.nm ?? 0;
}

function freeFor(handle: Handle, part: HandlePart, pitch: number): readonly number[] {
  if (handle.kind === "side") return [-2, -1, 0, 1, 2].map((step) => step * pitch - offModule(handle, pitch));
  const found = offered.value?.freePlaces ?? shown.value?.answer.free_places ?? [];
  const places = found.find((one) => one.opening === handle.name)?.from ?? [];
  const based = places.length > 0 ? places : [handle.from_nm];
  return part === "to" ? based.map((place) => place + handle.to_nm - handle.from_nm) : based;
}

/// How far the neighbour that grows with this side stands past whole modules, nominal.
function offModule(handle: SideHandle, pitch: number): number {
  const sides = shown.value?.answer.sides.filter((side) => !side.interior) ?? [];
  const neighbour = sides[(handle.index + 1) % Math.max(1, sides.length)];
  return neighbour === undefined || pitch === 0 ? 0 : neighbour.nominal.nm % pitch;
}

function anchorFor(head: DrawingHead, handle: Handle): SideHandle | undefined {
  if (handle.kind !== "side") return undefined;
  const [ox, oy] = handle.outward;
  const reach = (side: SideHandle): number => (side.x + side.width / 2) * ox + (side.y + side.height / 2) * oy;
  const sides = head.handles.filter((one): one is SideHandle => one.kind === "side");
  return sides.reduce<SideHandle | undefined>(
    (best, side) => (best === undefined || reach(side) < reach(best) ? side : best),
    undefined,
  );
}

function holdOf(head: DrawingHead, handle: Handle, part: HandlePart, pixels: number): Hold {
  const pitch = pitchOf(handle);
  return {
    handle,
    part,
    scale: head.scale,
    pixels,
    pitch,
    free: [...freeFor(handle, part, pitch)].sort((a, b) => a - b),
  };
}

export function takeHold(
  drawing: Held["drawing"],
  head: DrawingHead,
  handle: Handle,
  part: HandlePart,
  pixels: number,
  by: Held["by"],
): Held | undefined {
  if (readOnly.value) return undefined;
  const hold = holdOf(head, handle, part, pixels);
  const anchor = anchorFor(head, handle);
  held.value = { drawing, hold, base: history.value.now.text, nm: startOf(hold), snapped: false, anchor, by };
  beginDrafts();
  return held.value;
}

/// Where what is held stands now, in the engine's words.
export function heldPlace(): string {
  const now = held.value;
  const answer = shown.value?.answer;
  if (now === undefined || answer === undefined) return "";
  const { handle, part } = now.hold;
  if (handle.kind === "side") return neighbourLengths(handle);
  const opening = answer.openings[handle.index];
  if (opening === undefined) return "";
  if (part === "from") return opening.from.text;
  if (part === "to") return opening.to.text;
  return `${opening.from.text} – ${opening.to.text}`;
}

function neighbourLengths(handle: SideHandle): string {
  const sides = shown.value?.answer.sides.filter((side) => !side.interior) ?? [];
  const neighbour = sides[(handle.index + 1) % Math.max(1, sides.length)];
  return neighbour === undefined ? "" : `${neighbour.name} ${neighbour.nominal.text}`;
}

function bring(nm: number, snapped: boolean): void {
  const now = held.value;
  if (now === undefined || (now.nm === nm && now.snapped === snapped)) return;
  held.value = { ...now, nm, snapped };
  draft(now.base, editFor(now.hold, nm), () => words.say.place(now.hold.handle.name, heldPlace()));
}

/// The pointer has moved by so many pixels since the handle was taken.
export function pull(dx: number, dy: number, shift: boolean): void {
  const now = held.value;
  if (now === undefined) return;
  const wanted = wantedBy(now.hold, dx, dy, shift || freeHand.value);
  bring(wanted.nm, wanted.snapped);
}

/// One step of a key: by the tape's smallest step, or to the next free place.
export function push(sign: 1 | -1, far: boolean, tapeStep: number): void {
  const now = held.value;
  if (now === undefined) return;
  if (far) bring(nextFree(now.hold, now.nm, sign), true);
  else bring(now.nm + sign * tapeStep, false);
}

function whatOf(hold: Hold): string {
  if (hold.handle.kind === "side") return words.steps.sideMoved(hold.handle.name);
  return hold.part === "body" ? words.steps.moved(hold.handle.name) : words.steps.resized(hold.handle.name);
}

/// Lets go: what was wanted becomes the job, as one step. True if anything was moved.
export async function letGo(): Promise<boolean> {
  const now = held.value;
  if (now === undefined) return false;
  endDrafts();
  const moved = now.nm !== startOf(now.hold);
  if (moved) await settle(now.base, editFor(now.hold, now.nm), whatOf(now.hold));
  if (held.value === undefined || held.value.base === now.base) held.value = undefined;
  return moved;
}

/// Lets go and leaves everything as it was.
export async function giveUp(): Promise<void> {
  if (held.value === undefined) return;
  const moved = held.value.nm !== startOf(held.value.hold);
  endDrafts();
  held.value = undefined;
  refusals.value = undefined;
  if (moved) await solveNow();
}
