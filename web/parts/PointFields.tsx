// What stands beside a point's drawing: the unit in hand, the point's caution, its forms.
import type { ComponentChildren } from "preact";
import { inHand } from "../state/signals";
import type { Point } from "../state/point";
import { words } from "../words/words";
import { Forms } from "./form/Forms";
import { InHand } from "./InHand";

export function PointFields(props: {
  readonly point: Point;
  readonly caution: string;
  readonly children?: ComponentChildren;
}) {
  return (
    <>
      {inHand.value === "" ? null : <InHand />}
      <section class="block caution">
        <h3>{words.cautionWord}</h3>
        <p>{props.caution}</p>
        {props.children}
      </section>
      <Forms point={props.point} />
    </>
  );
}
