// What has to be there when, on which load, and where pallets stand.
import type { Side, WholeAnswer } from "../engine/contract";
import { Fold } from "../parts/Fold";
import { shown } from "../state/signals";
import { words } from "../words/words";

const w = words.site;
type OnSite = WholeAnswer["site"];
type Drop = OnSite["drops"][number];
type Plan = NonNullable<OnSite["pallets"]>;

const nameOf = (id: string): string =>
  shown.value?.answer.order?.articles.find((article) => article.id === id)?.name ?? id;

const amountOf = (id: string): string =>
  shown.value?.answer.order?.articles.find((article) => article.id === id)?.amount ?? "";

function DropRows(props: { readonly drop: Drop }) {
  const { drop } = props;
  return (
    <tr>
      <th scope="row">
        {words.points.short[drop.point]}
        <div class="small soft">{w.day(drop.day.number, drop.day.date)}</div>
      </th>
      <td>
        {drop.articles.map((id) => (
          <div key={id}>
            {nameOf(id)}: {amountOf(id)}
          </div>
        ))}
        {drop.unweighed.length === 0 ? null : <div class="small soft">{w.unweighed(drop.unweighed.length)}</div>}
        {drop.too_heavy.length === 0 ? null : <div>{w.tooHeavy(drop.too_heavy.map(nameOf).join(", "))}</div>}
      </td>
      <td class="figure">
        {drop.grams === 0 ? "" : drop.weight}
        {w.loads(drop.loads.length)}
      </td>
    </tr>
  );
}

const metres = (nanometres: number): number => nanometres / 1e9;

/// A point of the plan, east and north.
type Point = readonly [number, number];
const point = (of: readonly (number | undefined)[]): Point => [of[0] ?? 0, of[1] ?? 0];

/// Which way the walls of a heading run in plan.
const kWay = { west: [-1, 0], north: [0, 1], east: [1, 0], south: [0, -1] } as const;

function farEnd(side: Side): Point {
  const [x, y] = kWay[side.heading];
  const [east, north] = point(side.start_point);
  return [east + x * side.actual.nm, north + y * side.actual.nm];
}

/// Walls as lines, pallets as squares with the numbers of their rows.
function PalletPicture(props: { readonly plan: Plan }) {
  const { plan } = props;
  const walls = shown.value?.answer.sides ?? [];
  const ends = walls.flatMap((side) => [point(side.start_point), farEnd(side)]);
  const all = [...ends, ...plan.places.map(point)].map(([x, y]) => [metres(x), -metres(y)] as const);
  const left = Math.min(...all.map(([x]) => x)) - 1;
  const top = Math.min(...all.map(([, y]) => y)) - 1;
  const wide = Math.max(...all.map(([x]) => x)) + 1 - left;
  const high = Math.max(...all.map(([, y]) => y)) + 1 - top;
  return (
    <svg class="pallets" viewBox={`${left} ${top} ${wide} ${high}`} role="img" aria-label={w.picture}>
      {walls.map((side) => (
        <line
          key={side.name}
          x1={metres(point(side.start_point)[0])}
          y1={-metres(point(side.start_point)[1])}
          x2={metres(farEnd(side)[0])}
          y2={-metres(farEnd(side)[1])}
          stroke="currentColor"
          stroke-width={0.2}
        />
      ))}
      {plan.pallets.map((pallet, k) => {
        const x = metres(point(pallet.middle)[0]);
        const y = -metres(point(pallet.middle)[1]);
        return (
          <g key={`${x} ${y}`}>
            <rect
              x={x - 0.6}
              y={y - 0.6}
              width={1.2}
              height={1.2}
              fill="none"
              stroke="currentColor"
              stroke-width={0.06}
            />
            <text
              x={x}
              y={y + Math.max(wide, high) / 70}
              font-size={Math.max(wide, high) / 24}
              text-anchor="middle"
              fill="currentColor"
            >
              {k + 1}
            </text>
          </g>
        );
      })}
    </svg>
  );
}

function Pallets(props: { readonly plan: Plan }) {
  const { plan } = props;
  return (
    <>
      <p>
        {w.keepClear(plan.zone.text)} {w.carried(plan.carried_says)}
      </p>
      <PalletPicture plan={plan} />
      <table class="wraps texts">
        <thead>
          <tr>
            <th scope="col">{w.pallet}</th>
            <th scope="col">{w.stands}</th>
            <th scope="col">{w.serves}</th>
          </tr>
        </thead>
        <tbody>
          {plan.pallets.map((pallet, k) => (
            <tr key={`${pallet.middle[0]} ${pallet.middle[1]}`}>
              <th scope="row">
                {k + 1}: {nameOf(pallet.article)}, {pallet.units}
              </th>
              <td>{w.standsAt(pallet.beside, pallet.along.text, pallet.out.text)}</td>
              <td>
                {pallet.from_side === undefined
                  ? w.spare
                  : w.servesFrom(pallet.from_side, pallet.from.text, pallet.to_side ?? "", pallet.to.text)}
              </td>
            </tr>
          ))}
        </tbody>
      </table>
    </>
  );
}

export function Site() {
  const site = shown.value?.answer.site;
  if (site === undefined || site.drops.length === 0) return null;
  const { drops, pallets } = site;
  return (
    <>
      <Fold name="drops" title={w.label} said={w.count(drops.length)}>
        {() => (
          <section class="result" aria-label={w.label}>
            <table class="wraps texts">
              <thead>
                <tr>
                  <th scope="col">{w.for}</th>
                  <th scope="col">{w.what}</th>
                  <th class="figure" scope="col">
                    {w.weight}
                  </th>
                </tr>
              </thead>
              <tbody>
                {drops.map((drop) => (
                  <DropRows key={drop.point} drop={drop} />
                ))}
              </tbody>
            </table>
          </section>
        )}
      </Fold>
      {pallets === undefined ? null : (
        <Fold name="pallets" title={w.pallets} said={w.palletCount(pallets.pallets.length)}>
          {() => (
            <section class="result" aria-label={w.pallets}>
              <Pallets plan={pallets} />
            </section>
          )}
        </Fold>
      )}
    </>
  );
}
