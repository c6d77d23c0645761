// The second hold point: dowels and lines, before concrete is poured.
import { useSignalEffect } from "@preact/signals";
import { PlanView } from "../draw/Views";
import { Forms } from "../parts/form/Forms";
import { InHand } from "../parts/InHand";
import { PointPage } from "../parts/PointPage";
import { Pegs } from "../reading/Pegs";
import { ReadingForm } from "../reading/ReadingForm";
import { ReadingLog } from "../reading/ReadingLog";
import { ground, seekGroundDrawings } from "../state/ground";
import { inHand } from "../state/signals";
import { Bars } from "./Bars";
import { Dowels } from "./Dowels";

const kKinds = ["tape"] as const;

function Fields() {
  return (
    <>
      {inHand.value === "" ? null : <InHand />}
      <Bars />
      <section class="block">
        <ReadingForm kinds={kKinds} />
        <ReadingLog kinds={kKinds} />
      </section>
      <Forms point="pour" />
    </>
  );
}

function Results() {
  const tape = ground.value?.tape;
  return (
    <div class="results" id="results">
      <Dowels />
      {tape !== undefined && tape.lines.length > 0 ? <Pegs tape={tape} /> : null}
    </div>
  );
}

export function Pour() {
  useSignalEffect(seekGroundDrawings);
  return <PointPage point="pour" drawing={<PlanView />} fields={<Fields />} more={<Results />} />;
}
