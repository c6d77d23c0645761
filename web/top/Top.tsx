// The sixth hold point: the wall's top, before the plate goes on.
import { useSignalEffect } from "@preact/signals";
import { PaperBox } from "../draw/PaperBox";
import { ElevationView } from "../draw/Views";
import { Zone } from "../draw/Zone";
import { Fold } from "../parts/Fold";
import { PointFields } from "../parts/PointFields";
import { PointPage } from "../parts/PointPage";
import { shown } from "../state/signals";
import { plateAsked, plateDrawn, plateSide, seekPlateDrawing, sidesWithPlate } from "../state/top";
import { words } from "../words/words";

const w = words.top;

function Height() {
  const answer = shown.value?.answer;
  if (answer === undefined) return null;
  return (
    <section class="result" aria-label={w.label}>
      <h3>{w.label}</h3>
      <p class="laid">{answer.height.text}</p>
      <p class="small soft">{w.over(answer.courses.length)}</p>
    </section>
  );
}

/// One side's plate and bolts from above.
function FromAbove() {
  const drawn = plateDrawn.value;
  return (
    <figure class="plate-drawn" aria-label={w.fromAbove}>
      {sidesWithPlate.value.length < 2 ? null : (
        <fieldset class="choice" aria-label={words.drawing.sides}>
          {sidesWithPlate.value.map((side) => (
            <button
              type="button"
              key={side.index}
              aria-pressed={side.index === plateSide.value}
              onClick={() => (plateAsked.value = side.index)}
            >
              {side.name}
            </button>
          ))}
        </fieldset>
      )}
      <PaperBox {...drawn} label={w.fromAbove} />
    </figure>
  );
}

/// The plate's bolts, piece by piece, from one corner of each side.
function Bolts() {
  const answer = shown.value?.answer;
  const plates = answer?.plates ?? [];
  const codes = (answer?.cards ?? []).filter((card) => card.id.endsWith("-bolts"));
  return (
    <section class={plates.length === 0 ? "result" : "result whole"} aria-label={w.bolts}>
      <h3>{w.bolts}</h3>
      {plates.length === 0 ? <p class="small soft">{w.noBolts}</p> : <FromAbove />}
      {plates.length === 0 ? null : (
        <table>
          <thead>
            <tr>
              <th scope="col">{w.plate}</th>
              <th scope="col">{w.count}</th>
              <th scope="col">{w.at}</th>
            </tr>
          </thead>
          <tbody>
            {plates.map((piece) => (
              <tr key={`${piece.side} ${piece.from.nm}`}>
                <th scope="row">{w.pieceOf(piece.side, piece.from.text, piece.to.text)}</th>
                <td>{piece.bolts.length}</td>
                <td>
                  {piece.bolts.map((bolt) => bolt.at.text).join("; ")}
                  {piece.without.map((gap) => (
                    <p class="small" key={gap.after.nm}>
                      {w.none(gap.after.text, gap.by.text)}
                    </p>
                  ))}
                </td>
              </tr>
            ))}
          </tbody>
        </table>
      )}
      {plates.length === 0 ? null : <p class="small soft">{w.boltsNote}</p>}
      {codes.length === 0 ? null : (
        <Fold name="bolt-codes" title={w.codes}>
          {() => (
            <ul>
              {codes.map((card) => (
                <li key={card.id}>
                  {card.says}. <span class="small soft">{card.source}</span>
                </li>
              ))}
            </ul>
          )}
        </Fold>
      )}
    </section>
  );
}

/// The top as read, against a level line that the plate bears on.
function AsRead() {
  const top = shown.value?.answer.ground?.levels?.top;
  const off = (one: { readonly nm: number; readonly text: string }): string =>
    one.nm === 0 ? w.offRight : one.nm < 0 ? w.offUnder(one.text.replace("-", "")) : w.offOver(one.text);
  return (
    <section class="result" aria-label={w.read}>
      <h3>{w.read}</h3>
      {top === undefined ? (
        <p class="small soft">{w.readNone}</p>
      ) : (
        <>
          <table class="wraps">
            <thead>
              <tr>
                <th scope="col">{w.point}</th>
                <th scope="col">{w.isOff}</th>
                <th scope="col">{w.does}</th>
              </tr>
            </thead>
            <tbody>
              {top.points.map((point) => (
                <tr key={point.station}>
                  <th scope="row">{`${point.side}, ${point.at.text}`}</th>
                  <td>{`${off(point.off)}; ${w.verdicts[point.verdict] ?? ""}`}</td>
                  <td>{w.works[point.work]?.(point.by.text) ?? ""}</td>
                </tr>
              ))}
            </tbody>
          </table>
          <p class="small soft">{w.bears(off(top.bearing), top.doubt.text)}</p>
        </>
      )}
    </section>
  );
}

function More() {
  return (
    <div class="results" id="results">
      <Height />
      <AsRead />
      <Bolts />
      <Zone />
    </div>
  );
}

export function Top() {
  useSignalEffect(seekPlateDrawing);
  return (
    <PointPage
      point="top"
      long
      drawing={<ElevationView />}
      fields={<PointFields point="top" caution={words.caution} />}
      more={<More />}
    />
  );
}
