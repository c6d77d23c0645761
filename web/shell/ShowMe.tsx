// The strip under the example while it is shown: what is seen here, the next stop, and three ways out: this strip's button,
// Escape, and the browser's way back.
import { useSignal, useSignalEffect } from "@preact/signals";
import { useEffect, useLayoutEffect } from "preact/hooks";
import { hasCome } from "../state/arrival";
import { brief } from "../state/signals";
import { endShow, exampleStands, kStopLasts, kStops, leaveShow, showing, step, strayed } from "../state/showing";
import { words } from "../words/words";

const w = words.show;

const still = (): boolean => matchMedia("(prefers-reduced-motion: reduce)").matches;

/// Brings what the stop is about into view, clear of what sticks to the screen's edges.
function bring(look: string): void {
  const wanted = document.getElementById(look);
  wanted?.scrollIntoView({ block: look === "plan" ? "center" : "start", behavior: still() ? "instant" : "smooth" });
}

function useEnding(): void {
  useSignalEffect(() => {
    if (strayed()) void endShow();
  });
  useLayoutEffect(() => {
    const key = (event: KeyboardEvent): void => {
      if (event.key !== "Escape") return;
      event.stopPropagation();
      leaveShow();
    };
    addEventListener("keydown", key, { capture: true });
    return () => removeEventListener("keydown", key, { capture: true });
  }, []);
}

/// Goes on by itself, until somebody takes hold of the page.
function useWalking(stop: number, held: boolean): void {
  const last = stop === kStops.length - 1;
  const there = exampleStands() && hasCome.value;
  const early = brief.value; // what is looked at may come with the rest
  useEffect(() => {
    if (!there) return;
    const look = setTimeout(() => bring(kStops[stop]?.look ?? ""), 80);
    const next = held || last ? undefined : setTimeout(() => step(1), kStopLasts);
    return () => {
      clearTimeout(look);
      clearTimeout(next);
    };
  }, [stop, held, last, there, early]);
}

function Strip(props: { readonly stop: number }) {
  const { stop } = props;
  const held = useSignal(still());
  useEnding();
  useWalking(stop, held.value);
  const last = stop === kStops.length - 1;
  const at = kStops[stop]?.at ?? "order";
  return (
    <section class="show-me" aria-label={w.label}>
      <p aria-live="polite">
        <b>{words.points.short[at]}</b> {w.stops[stop]}
      </p>
      <div class="row">
        <button type="button" disabled={stop === 0} onClick={() => step(-1)}>
          {w.back}
        </button>
        {last ? (
          <button type="button" class="filled" onClick={leaveShow}>
            {w.begin}
          </button>
        ) : (
          <button type="button" class="filled" onClick={() => step(1)}>
            {w.next}
          </button>
        )}
        {last ? null : (
          <button type="button" aria-pressed={held.value} onClick={() => (held.value = !held.value)}>
            {held.value ? w.goOn : w.pause}
          </button>
        )}
        <button type="button" onClick={leaveShow}>
          {w.leave}
        </button>
        <span class="small soft">{w.at(stop + 1, kStops.length)}</span>
      </div>
    </section>
  );
}

export function ShowMe() {
  const stop = showing.value;
  return stop === undefined ? null : <Strip stop={stop} />;
}
