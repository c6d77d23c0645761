// The fifth hold point: the right steel in the right cells, and how high each pour goes.
import { ElevationView } from "../draw/Views";
import type { WholeAnswer } from "../engine/contract";
import { Fold } from "../parts/Fold";
import { PointFields } from "../parts/PointFields";
import { PointPage } from "../parts/PointPage";
import { shown } from "../state/signals";
import { words } from "../words/words";
import { BarsCut, Laps } from "./BarsCut";
import { Boxes } from "./Boxes";
import { Order, Wire } from "./Order";

const w = words.grout;

/// Bars by side and what they stand at.
function Bars() {
  const bars = shown.value?.answer.bars ?? [];
  const counts = shown.value?.answer.counts;
  if (bars.length === 0) return <p class="small soft">{w.noBars}</p>;
  const bySide = new Map<string, number>();
  for (const bar of bars) bySide.set(bar.side, (bySide.get(bar.side) ?? 0) + 1);
  return (
    <section class="result" aria-label={w.bars}>
      <h3>{w.bars}</h3>
      <table>
        <tbody>
          {[...bySide].map(([side, count]) => (
            <tr key={side}>
              <th scope="row">{w.inSide(side)}</th>
              <td>{count}</td>
            </tr>
          ))}
          <tr>
            <th scope="row">{w.allOf(counts?.bars.size ?? "")}</th>
            <td>{counts?.bars.total.text ?? ""}</td>
          </tr>
        </tbody>
      </table>
    </section>
  );
}

/// How much goes into each pour.
function Pours() {
  const pours = shown.value?.answer.counts.grout ?? [];
  if (pours.length === 0) return null;
  return (
    <section class="result" aria-label={w.pours}>
      <h3>{w.pours}</h3>
      <table>
        <tbody>
          {pours.map((pour) => (
            <tr key={pour.first_course}>
              <th scope="row">{w.pourOf(pour.first_course, pour.last_course, pour.height.text)}</th>
              <td>{pour.all.text}</td>
            </tr>
          ))}
        </tbody>
      </table>
      <p class="small soft">{w.mostThatGoesIn}</p>
    </section>
  );
}

function Cleanouts() {
  const cleanouts = shown.value?.answer.cleanouts ?? [];
  if (cleanouts.length === 0) return <p class="small soft">{w.noCleanouts}</p>;
  return (
    <section class="result" aria-label={w.cleanouts}>
      <h3>{w.cleanouts}</h3>
      <table>
        <thead>
          <tr>
            <th scope="col">{w.unit}</th>
            <th scope="col">{w.at}</th>
            <th scope="col">{w.opens}</th>
          </tr>
        </thead>
        <tbody>
          {cleanouts.map((one) => (
            <tr key={`${one.side} ${one.course} ${one.unit} ${one.at.nm}`}>
              <th scope="row">{`${one.side}-${one.course}-${one.unit}`}</th>
              <td>{one.at.text}</td>
              <td>{w.ways[one.opens]}</td>
            </tr>
          ))}
        </tbody>
      </table>
    </section>
  );
}

type Look = WholeAnswer["inspection"][number];

/// The sides of one pour: how much is to be looked at, and what its photos are called.
function LookAt(props: { readonly look: Look; readonly number: number }) {
  const { look, number } = props;
  const sides = [...new Set(look.bars.map((bar) => bar.side))];
  return (
    <>
      <h4>{w.lookAt(number, look.first_course, look.last_course)}</h4>
      <ul>
        {sides.map((side) => {
          const bars = look.bars.filter((bar) => bar.side === side);
          const holes = bars.filter((bar) => bar.cleanout).length;
          const floors = bars.reduce((sum, bar) => sum + bar.through.length, 0);
          return (
            <li key={side}>
              {w.inSideBars(side, bars.length, holes, floors)}{" "}
              <span class="small soft">{w.photos(bars[0]?.photo ?? "", bars.at(-1)?.photo ?? "")}</span>
            </li>
          );
        })}
        {look.beams.map((course) => (
          <li key={`beam ${course}`}>{w.beamReady(course)}</li>
        ))}
        {look.lintels.map((opening) => (
          <li key={`lintel ${opening}`}>{w.lintelReady(opening)}</li>
        ))}
      </ul>
      <Boxes look={look} number={number} />
    </>
  );
}

function Looks() {
  const looks = shown.value?.answer.inspection ?? [];
  if (looks.length === 0) return null;
  return (
    <section class="result" aria-label={w.look}>
      <h3>{w.look}</h3>
      {looks.map((look, index) => (
        <LookAt key={look.first_course} look={look} number={index + 1} />
      ))}
      <p class="small soft">{w.hidden}</p>
    </section>
  );
}

type Card = NonNullable<NonNullable<typeof shown.value>["answer"]["cards"]>[number];

function Rules(props: { readonly cards: readonly Card[] }) {
  return (
    <ul>
      {props.cards.map((card) => (
        <li key={card.id}>
          {card.says}.{" "}
          <span class="small soft">
            {card.source}
            {card.unverified && !card.source.includes(w.unverified) ? ` (${w.unverified})` : ""}
          </span>
        </li>
      ))}
    </ul>
  );
}

/// What the forecast brings up of the rules, day by day; nothing where it brings up nothing, which permits nothing.
function Forecast(props: { readonly cards: readonly Card[] }) {
  const days = shown.value?.answer.weather ?? [];
  if (days.length === 0) return null;
  return (
    <section class="result whole" aria-label={w.forecast}>
      <h3>{w.forecast}</h3>
      <ul>
        {days.map((day) => (
          <li key={day.date}>
            {day.date}: {day.says}
            {day.rules.length === 0 ? ` (${w.broughtUpNothing})` : ""}
          </li>
        ))}
      </ul>
      <Rules cards={props.cards} />
      <p class="small soft">{w.forecastNote}</p>
    </section>
  );
}

/// What rules say of cold, heat and wind: first what the forecast brings up, the rest unfolded on wish.
function Weather() {
  const cards = (shown.value?.answer.cards ?? []).filter((card) => !card.id.endsWith("-bolts"));
  const first = new Set((shown.value?.answer.weather ?? []).flatMap((day) => day.rules));
  if (cards.length === 0) return null;
  return (
    <>
      <Forecast cards={cards.filter((card) => first.has(card.id))} />
      <Fold name="weather" title={w.weather}>
        {() => (
          <>
            <Rules cards={cards.filter((card) => !first.has(card.id))} />
            <p class="small soft">{w.weatherNote}</p>
          </>
        )}
      </Fold>
    </>
  );
}

function More() {
  return (
    <div class="results" id="results">
      <Looks />
      <Weather />
      <Pours />
      <Order />
      <Bars />
      <BarsCut />
      <Wire />
      <Laps />
      <Cleanouts />
    </div>
  );
}

export function Grout() {
  return (
    <PointPage
      point="grout"
      long
      drawing={<ElevationView />}
      fields={<PointFields point="grout" caution={w.caution} />}
      more={<More />}
    />
  );
}
