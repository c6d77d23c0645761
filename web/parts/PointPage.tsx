// One hold point: its questions, its drawing with its fields beside it, what else it shows, what was found, its sheets.
import type { ComponentChildren } from "preact";
import { kPoints, type Point } from "../state/point";
import { brief, shown } from "../state/signals";
import { words } from "../words/words";
import { Findings } from "./Findings";
import { Questions } from "./Questions";
import { SeenFrom } from "./SeenFrom";
import { Sheets } from "./Sheets";

export function PointPage(props: {
  readonly point: Point;
  readonly drawing: ComponentChildren;
  /// The drawing is long and low: it lies above its fields.
  readonly long?: boolean;
  /// Beside the drawing, which stays in view while they are filled in.
  readonly fields: ComponentChildren;
  /// Below both, as wide as the sheet; of a brief answer only what is `early`.
  readonly more?: ComponentChildren;
  readonly early?: boolean;
}) {
  const { point } = props;
  const told = shown.value?.holdPoints.find((one) => one.code === point);
  const number = kPoints.indexOf(point) + 1;
  const wall = point === "at-the-wall";
  return (
    <article class="sheet point" id={`point-${point}`} aria-labelledby="point-title">
      <div class="frame">
        <header class="point-head">
          <h2 id="point-title" tabIndex={-1}>
            {wall ? null : <span class="number">{number}</span>}
            {words.points.short[point]}
          </h2>
          <p>{words.points.lead[point]}</p>
        </header>
        <div class={props.long ? "bench long" : "bench"}>
          <div class="board">{props.drawing}</div>
          <div class="fields-column">
            {told === undefined ? null : <Questions point={told} />}
            {brief.value ? (
              <section class="block">
                <p class="soft" role="status">
                  {words.points.coming}
                </p>
              </section>
            ) : null}
            {props.long === true ? (
              <div class="row">
                <SeenFrom />
              </div>
            ) : null}
            {props.fields}
          </div>
        </div>
        {props.more === undefined || (brief.value && props.early !== true) ? null : (
          <div class="more">{props.more}</div>
        )}
        <Findings point={point} />
        <Sheets point={point} />
      </div>
    </article>
  );
}
