// Through the courses, one up or one down: for the plan and for the units in space.
import { stepCourse } from "../state/seeing";
import { course, courses } from "../state/signals";
import { words } from "../words/words";

export function Stepper(props: { readonly at: (course: number, of: number) => string }) {
  const number = course.value;
  const of = courses.value;
  return (
    <fieldset class="stepper" aria-label={words.drawing.courseLabel}>
      <button
        type="button"
        class="signs"
        aria-label={words.drawing.lower}
        disabled={number <= 1}
        onClick={() => stepCourse(-1)}
      >
        ‹
      </button>
      <output class="at">{props.at(number, of)}</output>
      <button
        type="button"
        class="signs"
        aria-label={words.drawing.higher}
        disabled={number >= of}
        onClick={() => stepCourse(1)}
      >
        ›
      </button>
    </fieldset>
  );
}
