// The six hold points and the wall: a rail at a desk's side, a bar under the thumb on a phone.
import type { HoldPoint } from "../engine/contract";
import { openQuestions } from "../state/hold_points";
import { kPoints, place, type Point } from "../state/point";
import { shown } from "../state/signals";
import { words } from "../words/words";

const w = words.points;

type Standing = "stands" | "done" | "open" | "answered" | "unknown";

function standingOf(told: HoldPoint | undefined): Standing {
  if (told === undefined) return "unknown";
  if (told.done) return "done";
  if (told.stands) return "stands";
  if (told.questions.length === 0) return "unknown";
  return openQuestions(told) === 0 ? "answered" : "open";
}

function saidOf(standing: Standing, told: HoldPoint | undefined): string {
  if (standing === "done") return w.done;
  if (standing === "stands") return w.stands;
  if (standing === "answered") return w.answered;
  return standing === "open" && told !== undefined ? w.open(openQuestions(told)) : "";
}

const kMarks: Readonly<Record<Standing, string>> = { done: "✓", stands: "▶", answered: "", open: "", unknown: "" };

function One(props: { readonly point: Point; readonly number: number }) {
  const { point } = props;
  const told = shown.value?.holdPoints.find((one) => one.code === point);
  const standing = standingOf(told);
  const said = saidOf(standing, told);
  return (
    <li data-standing={standing}>
      <a href={`#${point}`} aria-current={place.value === point ? "page" : undefined}>
        <span class="number" aria-hidden="true">
          {kMarks[standing] === "" ? (point === "at-the-wall" ? "–" : props.number) : kMarks[standing]}
        </span>
        <span class="title">{w.short[point]}</span>
        {said === "" ? null : <span class="said">{said}</span>}
      </a>
    </li>
  );
}

export function Spine() {
  return (
    <nav class="spine" aria-label={w.label}>
      <ol>
        {kPoints.map((point, index) => (
          <One key={point} point={point} number={index + 1} />
        ))}
      </ol>
    </nav>
  );
}
