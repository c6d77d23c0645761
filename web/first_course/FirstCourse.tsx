// The third hold point: what was poured is read before the first block is bedded.
import { useSignalEffect } from "@preact/signals";
import { PlanView } from "../draw/Views";
import { Forms } from "../parts/form/Forms";
import { InHand } from "../parts/InHand";
import { PointPage } from "../parts/PointPage";
import { Pegs } from "../reading/Pegs";
import { kKinds, ReadingForm } from "../reading/ReadingForm";
import { ReadingLog } from "../reading/ReadingLog";
import { ground, seekGroundDrawings } from "../state/ground";
import { inHand } from "../state/signals";
import { words } from "../words/words";
import { Bed } from "./Bed";
import { DowelLayouts } from "./DowelLayouts";
import { Fit, FitLacks } from "./Fit";
import { Levels } from "./Levels";

function Fields() {
  return (
    <>
      {inHand.value === "" ? null : <InHand />}
      <section class="block">
        <p class="small soft">{words.ground.lead}</p>
        <ReadingForm kinds={kKinds} />
        <ReadingLog kinds={kKinds} />
      </section>
      <Forms point="first-course" />
    </>
  );
}

function Results() {
  const now = ground.value;
  const bed = now?.levels?.bed;
  return (
    <div class="results" id="results">
      {now !== undefined && now.tape.lines.length > 0 ? <Pegs tape={now.tape} /> : null}
      {bed === undefined ? null : <Bed bed={bed} />}
      {now?.levels === undefined ? null : <Levels levels={now.levels} />}
      {now?.fit === undefined ? null : <Fit fit={now.fit} />}
      {now?.fit_lacks === undefined ? null : <FitLacks lacks={now.fit_lacks} />}
      {now === undefined ? null : <DowelLayouts layouts={now.dowel_layouts} />}
    </div>
  );
}

export function FirstCourse() {
  useSignalEffect(seekGroundDrawings);
  return <PointPage point="first-course" drawing={<PlanView />} fields={<Fields />} more={<Results />} />;
}
