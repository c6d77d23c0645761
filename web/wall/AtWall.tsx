// The view at the wall: one number for the eye, zones for the thumb. No typing, no drag, nothing that a glove cannot hit.
import { useSignalEffect } from "@preact/signals";
import { useEffect } from "preact/hooks";
import { history, shown } from "../app/state";
import { words } from "../words/words";
import { wakeVoices } from "./aloud";
import { act, keepAwake, letSleep, look, screen, settleState } from "./controller";
import { wallState } from "./state";

/// Long numbers are written smaller; they still stand on one or two lines.
function sizeOf(text: string): string {
  return text.length <= 6 ? "large" : text.length <= 11 ? "middle" : text.length <= 22 ? "small" : "least";
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
  const { lead, number, under, turn, zones } = screen.value;
  const { hand, light } = wallState.value;
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
          <button type="button" class="wall-turn" onClick={() => act(turn.act)}>
            {figure}
            <span class="wall-line next">{`${turn.label} →`}</span>
          </button>
        )}
      </div>
      <div class="wall-zones">
        {zones.map((zone) => (
          <button
            type="button"
            key={zone.label}
            class={zone.first === true ? "wall-zone first" : "wall-zone"}
            onClick={() => act(zone.act)}
          >
            {zone.label}
          </button>
        ))}
      </div>
    </main>
  );
}
