// The plan of a course and the elevation of a side, with what leads through them.
import { Drawing } from "../draw/Drawing";
import { words } from "../words/words";
import { seeSide, stepCourse } from "./actions";
import { saveDrawing } from "./Sheets";
import { course, courses, freeHand, shown, sideIndex, sides } from "./state";

function CourseStepper() {
  const number = course.value;
  const of = courses.value;
  return (
    <div class="stepper" role="group" aria-label={words.drawing.courseLabel}>
      <button
        type="button"
        class="signs"
        aria-label={words.drawing.lower}
        disabled={number <= 1}
        onClick={() => stepCourse(-1)}
      >
        ‹
      </button>
      <output class="at">{words.drawing.course(number, of)}</output>
      <button
        type="button"
        class="signs"
        aria-label={words.drawing.higher}
        disabled={number >= of}
        onClick={() => stepCourse(1)}
      >
        ›
      </button>
    </div>
  );
}

function SideChoice() {
  return (
    <div class="choice" role="group" aria-label={words.drawing.sides}>
      {sides.value.map((side, index) => (
        <button type="button" key={side.place} aria-pressed={index === sideIndex.value} onClick={() => seeSide(index)}>
          {side.name}
        </button>
      ))}
    </div>
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
      leading={<CourseStepper />}
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
