// A drawing's frame as the page holds it: its size, how large the drawing stands in it, and where it has been moved.
import { type Signal, useSignal } from "@preact/signals";
import type { RefObject } from "preact";
import { useLayoutEffect, useRef } from "preact/hooks";
import type { DrawingHead } from "../engine/contract";
import { first, fitting, keepingUnder, resting, type Size, type Spot, within } from "./frame";
import { listenForHands } from "./gestures";

interface Kept {
  /// A share of the drawing's size.
  readonly share: Spot;
  /// Of the frame, CSS pixels.
  readonly under: Spot;
}

export interface FrameState {
  readonly frame: RefObject<HTMLElement | null>;
  readonly size: Signal<Size>;
  readonly zoom: Signal<number>;
  /// How far the frame has been moved over its drawing, CSS pixels.
  readonly moved: Signal<Spot>;
  /// What must be under which spot of the frame once the drawing has its next size.
  readonly keep: RefObject<Kept | null>;
}

export function useFrame(): FrameState {
  const frame = useRef<HTMLElement>(null);
  const size = useSignal<Size>({ width: 0, height: 0 });
  const zoom = useSignal(1);
  const moved = useSignal<Spot>({ x: 0, y: 0 });
  const keep = useRef<Kept | null>(null);
  useLayoutEffect(() => {
    const element = frame.current;
    if (element === null) return;
    const measure = (): void => {
      size.value = { width: element.clientWidth, height: element.clientHeight };
    };
    const follow = (): void => {
      moved.value = { x: element.scrollLeft, y: element.scrollTop };
    };
    measure();
    const watch = new ResizeObserver(measure);
    watch.observe(element);
    element.addEventListener("scroll", follow, { passive: true });
    return () => {
      watch.disconnect();
      element.removeEventListener("scroll", follow);
    };
  }, [size, moved]);
  return { frame, size, zoom, moved, keep };
}

/// CSS pixels per micrometre at which a drawing stands in its frame, and whether there it is larger than it.
export function standing(state: FrameState, head: DrawingHead, lettering: number): { pixels: number; larger: boolean } {
  const size = state.size.value;
  const pixels = resting(size, head, lettering) * state.zoom.value;
  return { pixels, larger: pixels > fitting(size, head) * 1.001 };
}

/// Moves the frame so that the start corner is seen in it.
export function toStart(state: FrameState, corner: Spot, head: DrawingHead, pixels: number): void {
  const element = state.frame.current;
  if (element === null) return;
  const paper = { width: head.width * pixels, height: head.height * pixels };
  const spot = first(corner, pixels, paper, state.size.value);
  element.scrollTo({ left: spot.x, top: spot.y, behavior: "instant" });
  state.moved.value = { x: element.scrollLeft, y: element.scrollTop };
}

/// Makes the drawing larger or smaller; what lies under a spot of the frame stays there.
export function zoomAbout(state: FrameState, zoom: number, under: Spot, movedBy: Spot = { x: 0, y: 0 }): void {
  const element = state.frame.current;
  const paper = element?.querySelector<HTMLElement>(":scope > .paper");
  if (element === null || paper === null || paper === undefined) return;
  const share = {
    x: (element.scrollLeft + under.x - paper.offsetLeft) / paper.offsetWidth,
    y: (element.scrollTop + under.y - paper.offsetTop) / paper.offsetHeight,
  };
  const spot = { x: under.x + movedBy.x, y: under.y + movedBy.y };
  const next = within(zoom);
  if (next === state.zoom.value) {
    element.scrollBy({ left: -movedBy.x, top: -movedBy.y, behavior: "instant" });
    return;
  }
  state.keep.current = { share, under: spot };
  state.zoom.value = next;
}

/// After the drawing has its size: what was under the hand is brought back under it.
export function useKeptPlace(state: FrameState, paper: Size): void {
  const { width, height } = paper;
  useLayoutEffect(() => {
    const [element, kept] = [state.frame.current, state.keep.current];
    if (element === null || kept === null) return;
    state.keep.current = null;
    const { x, y } = keepingUnder(kept.share, { width, height }, kept.under);
    element.scrollTo({ left: x, top: y, behavior: "instant" });
  }, [state, width, height]);
}

/// Wheel, fingers, mouse and arrow keys on the frame.
export function useHands(state: FrameState): void {
  const latest = useRef(state);
  latest.current = state;
  useLayoutEffect(() => {
    const frame = latest.current.frame.current;
    if (frame === null) return;
    listenForHands({
      frame,
      zoom: () => latest.current.zoom.value,
      zoomTo: (zoom, under, movedBy) => zoomAbout(latest.current, zoom, under, movedBy),
    });
  }, []);
}
