// The fourth hold point: jambs, heads and bearings agree before lintels close.
import { ElevationView } from "../draw/Views";
import type { WholeAnswer } from "../engine/contract";
import { PointFields } from "../parts/PointFields";
import { PointPage } from "../parts/PointPage";
import { shown } from "../state/signals";
import { words } from "../words/words";
import { LintelCaution } from "./LintelCaution";

function Schedule() {
  const lintels = shown.value?.answer.lintels ?? [];
  if (lintels.length === 0) return <p class="small soft">{words.lintels.none}</p>;
  return (
    <section class="result" aria-label={words.lintels.label}>
      <h3>{words.lintels.label}</h3>
      <table class="wraps">
        <thead>
          <tr>
            <th scope="col">{words.lintels.opening}</th>
            <th scope="col">{words.lintels.asked}</th>
            <th scope="col">{words.lintels.start}</th>
            <th scope="col">{words.lintels.end}</th>
            <th scope="col">{words.lintels.under}</th>
          </tr>
        </thead>
        <tbody>
          {lintels.map((lintel) => (
            <tr key={`${lintel.side} ${lintel.opening}`}>
              <th scope="row">{lintel.opening}</th>
              <td class="length">{lintel.asked_bearing.text}</td>
              <td class="length">{lintel.start_bearing.text}</td>
              <td class="length">{lintel.end_bearing.text}</td>
              <td>{words.lintels.soffits[lintel.soffit] ?? lintel.soffit}</td>
            </tr>
          ))}
        </tbody>
      </table>
    </section>
  );
}

type Over = WholeAnswer["bridged"][number];

function held(over: Over): string {
  const w = words.lintels;
  if (over.start === undefined) return w.noLintel;
  if (over.before_course === undefined) return w.notShored;
  return over.shores === undefined ? w.shoresUnsaid(over.before_course) : w.shores(over.shores, over.before_course);
}

function beams(over: Over): string {
  const w = words.lintels;
  const all = [...over.beams_cut.map(w.beamCut), ...over.beams_in.map(w.beamIn)];
  if (over.beam_over !== undefined) all.push(w.beamOver(over.beam_over));
  return all.length === 0 ? w.noBeam : all.join("; ");
}

/// What goes over each opening, how high its head is, and what holds it up.
function Bridged() {
  const overs = shown.value?.answer.bridged ?? [];
  const w = words.lintels;
  if (overs.length === 0) return null;
  return (
    <section class="result" aria-label={w.over}>
      <h3>{w.over}</h3>
      <table class="wraps">
        <thead>
          <tr>
            <th scope="col">{w.opening}</th>
            <th scope="col">{w.overFoot}</th>
            <th scope="col">{w.overBearing}</th>
            <th scope="col">{w.held}</th>
            <th scope="col">{w.beams}</th>
          </tr>
        </thead>
        <tbody>
          {overs.map((over) => (
            <tr key={over.opening}>
              <th scope="row">{over.opening}</th>
              <td class="length">{over.over_foot.text}</td>
              <td class="length">{over.over_bearing.text}</td>
              <td>{held(over)}</td>
              <td>{beams(over)}</td>
            </tr>
          ))}
        </tbody>
      </table>
      <p class="small soft">{w.stay}</p>
    </section>
  );
}

/// Heads that do not come to a course line, and what each thing that can be done takes.
function OffCourse() {
  const heads = shown.value?.answer.heads ?? [];
  const w = words.lintels;
  if (heads.length === 0) return null;
  return (
    <section class="result" aria-label={w.heads}>
      <h3>{w.heads}</h3>
      <table class="wraps">
        <thead>
          <tr>
            <th scope="col">{w.opening}</th>
            <th scope="col">{w.headWay}</th>
            <th scope="col">{w.headUnits}</th>
            <th scope="col">{w.headCuts}</th>
          </tr>
        </thead>
        <tbody>
          {heads.flatMap((head) =>
            head.choices.map((choice) => (
              <tr key={`${head.opening} ${choice.way}`}>
                <th scope="row">{head.opening}</th>
                <td>{w.headWays[choice.way](choice.by.text)}</td>
                <td>{choice.units}</td>
                <td>{choice.cuts}</td>
              </tr>
            )),
          )}
        </tbody>
      </table>
      <p class="small soft">{w.headsNote}</p>
    </section>
  );
}

function More() {
  return (
    <div class="results" id="results">
      <Schedule />
      <OffCourse />
      <Bridged />
    </div>
  );
}

export function Lintels() {
  return (
    <PointPage
      point="lintels"
      long
      drawing={<ElevationView />}
      fields={
        <PointFields point="lintels" caution={words.caution}>
          <LintelCaution />
        </PointFields>
      }
      more={<More />}
    />
  );
}
