// The working days: what each brings, how high the walls stand at its end.
import type { WorkDay } from "../engine/contract";
import { Fold } from "../parts/Fold";
import { shown } from "../state/signals";
import { saveText } from "../state/printing";
import { words } from "../words/words";

const w = words.days;

/// A card for each day: what is done, how many blocks and batches, what stands tonight.
function Day(props: { readonly day: WorkDay }) {
  const { day } = props;
  return (
    <li class="day">
      <h4>
        {w.day} {day.number}
        {day.date === undefined ? null : <span class="soft"> {day.date}</span>}
        {day.laid === 0 ? null : <span class="laid-today">{w.laid(day.laid, day.batches)}</span>}
      </h4>
      {day.weather === "" ? null : <p class="warned">{day.weather}.</p>}
      <ul>
        {day.works.map((one) => (
          <li key={one}>{one}</li>
        ))}
      </ul>
      <Beside day={day} />
      <p class="small">
        {w.tonight}: {day.stop.map((one) => [one, ". "])}
        {day.brace.length === 0 ? "" : w.brace(day.brace.join(", "), day.zone.text)}
      </p>
    </li>
  );
}

/// Where blocks stand, which steel goes in, what is checked.
function Beside(props: { readonly day: WorkDay }) {
  const { stacked, steel, checks } = props.day;
  const lines = [...stacked, ...steel, ...checks];
  if (lines.length === 0) return null;
  return (
    <ul class="small soft">
      {lines.map((one) => (
        <li key={one}>{one}</li>
      ))}
    </ul>
  );
}

/// A bar for each day: so many of the programmes drawn are done by then.
function Chance() {
  const chance = shown.value?.answer.programme?.chance;
  if (chance === undefined) return null;
  return (
    <>
      <p>
        {chance.says}. <span class="small soft">{chance.unsure}.</span>
      </p>
      <Fold name="chance" title={w.chance} said={w.of(chance.programmes)}>
        {() => (
          <table class="wraps">
            <tbody>
              {chance.days.map((day) => (
                <tr key={day.day}>
                  <th scope="row">
                    {w.doneBy} {day.date}
                  </th>
                  <td class="figure">{day.programmes}</td>
                  <td>
                    <meter min={0} max={chance.programmes} value={day.programmes} aria-label={day.date} />
                  </td>
                </tr>
              ))}
            </tbody>
          </table>
        )}
      </Fold>
    </>
  );
}

export function Days() {
  const programme = shown.value?.answer.programme;
  if (programme === undefined) return null;
  if (programme.days.length === 0) return <p class="result">{programme.done?.says ?? ""}.</p>;
  const { days } = programme;
  return (
    <Fold name="days" title={w.label} said={w.count(days.length, programme.pace_from)}>
      {() => (
        <section class="result" aria-label={w.label}>
          {programme.done === undefined ? null : <p>{programme.done.says}.</p>}
          {programme.own_pace_says === "" ? null : <p>{programme.own_pace_says}.</p>}
          <p>{programme.batch.says}.</p>
          <Chance />
          <ol class="days">
            {days.map((day) => (
              <Day key={day.number} day={day} />
            ))}
          </ol>
          {programme.calendar === "" ? (
            <p class="small soft">{w.noStart}</p>
          ) : (
            <button type="button" onClick={() => void saveText("days.ics", "text/calendar", programme.calendar)}>
              {w.save}
            </button>
          )}
        </section>
      )}
    </Fold>
  );
}
