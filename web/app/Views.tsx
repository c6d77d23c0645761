// The plan of a course and the elevation of a side, with what leads through them.
import { Drawing } from "../draw/Drawing";
import { words } from "../words/words";
import { seeSide } from "./actions";
import { saveDrawing } from "./Sheets";
import { freeHand, shown, sideIndex, sides } from "./state";
import { Stepper } from "./Stepper";

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
  const tools = (
    <>
      <label class="check">
        <input
          type="checkbox"
          checked={freeHand.value}
          aria-label={words.drawing.free}
          onChange={(event) => (freeHand.value = event.currentTarget.checked)}
        />
        {words.drawing.freeShort}
      </label>
      <button
        type="button"
        aria-label={words.drawing.keepPlan}
        onClick={() => void saveDrawing(picture.svg, picture.head.name)}
      >
        {words.drawing.keepSvg}
      </button>
    </>
  );
  return (
    <Drawing
      picture={picture}
      kind="plan"
      label={`${words.drawing.plan}: ${picture.head.title}`}
      leading={<Stepper at={words.drawing.course} />}
      tools={tools}
    />
  );
}

export function ElevationView() {
  const picture = shown.value?.elevation;
  if (picture === undefined) return <div class="view skeleton elevation" id="elevation" />;
  const tools = (
    <button
      type="button"
      aria-label={words.drawing.keepElevation}
      onClick={() => void saveDrawing(picture.svg, picture.head.name)}
    >
      {words.drawing.keepSvg}
    </button>
  );
  return (
    <Drawing
      picture={picture}
      kind="elevation"
      label={`${words.drawing.elevation}: ${picture.head.title}`}
      leading={<SideChoice />}
      tools={tools}
    />
  );
}
