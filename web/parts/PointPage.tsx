// What stands in the frame of a hold point: its questions, its drawing with its fields beside it, what else it shows, what
// was found, its sheets.
import type { ComponentChildren } from "preact";
import example from "virtual:example-questions";
import type { Point } from "../state/point";
import { brief, shown } from "../state/signals";
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
  /// Below both, as wide as the sheet.
  readonly more?: ComponentChildren;
  /// A brief answer is enough for the fields and for what stands below them.
  readonly early?: boolean;
}) {
  const { point } = props;
  const coming = brief.value;
  const told = (coming ? example : shown.value?.holdPoints)?.find((one) => one.code === point);
  // Nothing stands under what is still to come: what a finger is on must not move away from it.
  const withheld = coming && props.early !== true;
  return (
    <>
      <div class={props.long ? "bench long" : "bench"}>
        <div class="board">{props.drawing}</div>
        <div class="fields-column">
          {told === undefined ? null : <Questions point={told} coming={coming} />}
          {props.long === true ? (
            <div class="row">
              <SeenFrom />
            </div>
          ) : null}
          {withheld ? <div class="still-room" /> : props.fields}
        </div>
      </div>
      {props.more === undefined || withheld ? null : <div class="more">{props.more}</div>}
      {coming ? (
        <div class="still-room" />
      ) : (
        <>
          <Findings point={point} />
          <Sheets point={point} />
        </>
      )}
    </>
  );
}
