// The view at the wall: one number for the eye, zones for the thumb. No typing, no drag, nothing that a glove cannot hit.
import { useSignal, useSignalEffect } from "@preact/signals";
import { useEffect, useLayoutEffect } from "preact/hooks";
import { history, shown } from "../state/signals";
import type { Act } from "../state/wall/acts";
import { runClock } from "../state/wall/clock";
import { settleState } from "../state/wall/going";
import { look } from "../state/wall/hearing";
import { wallState } from "../state/wall/step";
import { isReady } from "../state/wall/touch";
import { seekTexts } from "../state/wall/written";
import { words } from "../words/words";
import { wakeVoices } from "./aloud";
import { keepAwake, letSleep } from "./awake";
import { screen, touch } from "./now";
import type { Screen } from "./screen";

/// A second tap that follows so soon on a new screen was meant for the one before: milliseconds. Fingers in gloves tap
/// twice within 300 ms or so (the time that phones allow a double tap).
const kSettle = 450;

/// Long numbers are written smaller; they still stand on one or two lines. One that is still being written takes the
/// room of a length.
function sizeOf(text: string): string {
  if (text.startsWith("…") && text.length > 1) return "middle";
  return text.length <= 6 ? "large" : text.length <= 11 ? "middle" : text.length <= 22 ? "small" : "least";
}

/// What a touch would do on this screen; steps of a length that is counted leave it as it is.
function touchesOf({ zones, turn }: Screen): string {
  return JSON.stringify([turn?.act, ...zones.map((zone) => zone.act), wallState.value.place.screen, entryStep()]);
}

function entryStep(): readonly (string | number | undefined)[] {
  const { place } = wallState.value;
  if (place.screen !== "enter") return [];
  return [place.entry.kind, place.entry.pick, place.entry.at, place.entry.signs[place.entry.at]];
}

/// One step back: from the day's card to the page, from an entry to the question before it, from anything else to the
/// mark, from the mark to the page.
function stepBack(): void {
  const { place } = wallState.value;
  const home = place.screen === "day" || (place.screen === "face" && place.face === "next");
  touch(home ? { do: "leave" } : place.screen === "enter" || place.screen === "question" ? { do: "back" } : kHome);
}
const kHome: Act = { do: "face", face: "next" };

/// The phone's own way back, and Escape, go one step back, and leave the view only from its first screen.
function followBack(): () => void {
  const stay = (): void => globalThis.history.pushState({ wall: true }, "");
  const back = (): void => {
    stepBack();
    if (wallState.value.open) stay();
  };
  const key = (event: KeyboardEvent): void => {
    if (event.key === "Escape") stepBack();
  };
  stay();
  addEventListener("popstate", back);
  addEventListener("keydown", key);
  return () => {
    removeEventListener("popstate", back);
    removeEventListener("keydown", key);
    if ((globalThis.history.state as { wall?: boolean } | null)?.wall === true) globalThis.history.back();
  };
}

/// True once the screen has stood for a moment.
function useSettled(touches: string): boolean {
  const settled = useSignal("");
  useEffect(() => {
    const clock = setTimeout(() => (settled.value = touches), kSettle);
    return () => clearTimeout(clock);
  }, [touches, settled]);
  return settled.value === touches;
}

export function AtWall() {
  useEffect(() => {
    keepAwake();
    wakeVoices();
    return letSleep;
  }, []);
  useSignalEffect(() => {
    // The building is there, or another step or state of the job: the course is looked at again.
    if (shown.value === undefined || history.value.now.text === "") return;
    settleState();
    void look();
  });
  useSignalEffect(() => void seekTexts());
  useLayoutEffect(followBack, []); // before it is seen: an Escape that comes with the first picture is heard
  const grouting = wallState.value.place.screen === "grout";
  useEffect(() => (grouting ? runClock() : undefined), [grouting]);
  const { lead, number, under, turn, zones, passing } = screen.value;
  const settled = useSettled(touchesOf(screen.value));
  const { hand, light } = wallState.value;
  const live = (what: Act): boolean => settled && isReady(what);
  const press = (what: Act): void => {
    if (live(what)) touch(what);
  };
  const figure = (
    <>
      <span class="wall-lead">{lead}</span>
      <span class={`wall-number ${sizeOf(number)}`}>{number}</span>
      {under.map((line) => (
        <span class="wall-line" key={line}>
          {line}
        </span>
      ))}
    </>
  );
  return (
    <main class="at-wall" data-hand={hand} data-light={light} aria-label={words.wall.label}>
      <h1 class="hidden-words">{words.wall.label}</h1>
      <div class="wall-figure" aria-live="polite">
        {turn === undefined ? (
          figure
        ) : (
          <button type="button" class="wall-turn" aria-disabled={!live(turn.act)} onClick={() => press(turn.act)}>
            {figure}
            <span class="wall-line next">{`${turn.label} →`}</span>
          </button>
        )}
      </div>
      <div class={passing === true && !settled ? "wall-zones to-come" : "wall-zones"}>
        {zones.map((zone) => (
          <button
            type="button"
            key={zone.label}
            class={zone.first === true ? "wall-zone first" : "wall-zone"}
            aria-disabled={!live(zone.act)}
            onClick={() => press(zone.act)}
          >
            {zone.label}
          </button>
        ))}
      </div>
    </main>
  );
}
