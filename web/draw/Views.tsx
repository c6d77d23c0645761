// The plan of a course and the elevation of a side, with what leads through them.
import { SeenFrom } from "../parts/SeenFrom";
import { Stepper } from "../parts/Stepper";
import { saveDrawing } from "../state/printing";
import { seeSide } from "../state/seeing";
import { freeHand, shown, sideIndex, sides } from "../state/signals";
import { words } from "../words/words";
import { Drawing } from "./Drawing";

function SideChoice() {
  return (
    <fieldset class="choice" aria-label={words.drawing.sides}>
      {sides.value.map((side, index) => (
        <button type="button" key={side.place} aria-pressed={index === sideIndex.value} onClick={() => seeSide(index)}>
          {side.name}
        </button>
      ))}
    </fieldset>
  );
}

export function PlanView() {
  const picture = shown.value?.plan;
  if (picture === undefined) return <div class="view skeleton plan" id="plan" />;
  return (
    <Drawing
      picture={picture}
      kind="plan"
      label={`${words.drawing.plan}: ${picture.head.title}`}
      leading={<Stepper at={words.drawing.course} />}
      later={false}
    />
  );
}

/// `later`: it is not the first to be looked at.
export function ElevationView(props: { readonly later?: boolean }) {
  const picture = shown.value?.elevation;
  if (picture === undefined) return <div class="view skeleton elevation" id="elevation" />;
  return (
    <Drawing
      picture={picture}
      kind="elevation"
      label={`${words.drawing.elevation}: ${picture.head.title}`}
      leading={<SideChoice />}
      later={props.later ?? false}
    />
  );
}

/// How a hand moves things, and the drawings as files.
export function DrawingTools() {
  const [plan, elevation] = [shown.value?.plan, shown.value?.elevation];
  return (
    <div class="row drawing-tools">
      <SeenFrom />
      <label class="check">
        <input
          type="checkbox"
          checked={freeHand.value}
          aria-label={words.drawing.free}
          onChange={(event) => (freeHand.value = event.currentTarget.checked)}
        />
        {words.drawing.freeShort}
      </label>
      {plan === undefined ? null : (
        <button type="button" onClick={() => void saveDrawing(plan.svg, plan.head.name)}>
          {words.drawing.keepPlan}
        </button>
      )}
      {elevation === undefined ? null : (
        <button type="button" onClick={() => void saveDrawing(elevation.svg, elevation.head.name)}>
          {words.drawing.keepElevation}
        </button>
      )}
    </div>
  );
}
