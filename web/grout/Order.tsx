// The order in which grout goes in, lift by lift; joint reinforcement.
import { Fold } from "../parts/Fold";
import { shown } from "../state/signals";
import { words } from "../words/words";

const w = words.grout;

export function Order() {
  const answer = shown.value?.answer;
  const cards = answer?.pour_cards ?? [];
  if (cards.length === 0) return null;
  return (
    <section class="result" aria-label={w.order}>
      <h3>{w.order}</h3>
      {cards.map((card) => (
        <Fold
          key={`${card.pour} ${card.lift}`}
          name={`lift ${card.pour} ${card.lift}`}
          title={w.orderOf(card.pour, card.lift, card.first_course, card.last_course, card.all)}
        >
          {() => (
            <>
              <table class="wraps">
                <thead>
                  <tr>
                    <th scope="col">{w.cell}</th>
                    <th class="figure" scope="col">
                      {w.thisLift}
                    </th>
                    <th class="figure" scope="col">
                      {w.soFar}
                    </th>
                    <th scope="col">{w.state}</th>
                  </tr>
                </thead>
                <tbody>
                  {card.steps.map((step) => (
                    <tr key={`${step.into} ${step.side} ${step.at.nm} ${step.name}`}>
                      <th scope="row">{w.stepName(step.into, step.side, step.name)}</th>
                      <td class="figure">{step.volume.text}</td>
                      <td class="figure">{step.total.text}</td>
                      <td>{[step.filled_by, step.again_by].map((by) => (by === undefined ? "" : "✓")).join("")}</td>
                    </tr>
                  ))}
                </tbody>
              </table>
              <p class="small soft">{w.orderNote(answer?.sides[0]?.start ?? "", card.walk.text)}</p>
              {card.again ? (
                <p class="small soft">{w.orderAgain(card.again_from_minutes, card.again_by_minutes)}</p>
              ) : null}
            </>
          )}
        </Fold>
      ))}
    </section>
  );
}

export function Wire() {
  const wire = shown.value?.answer.joint_reinforcement;
  if (wire === undefined || (wire.stretches.length === 0 && wire.unsaid.length === 0)) return null;
  return (
    <section class="result" aria-label={w.wire}>
      <h3>{w.wire}</h3>
      {wire.unsaid.map((one) => (
        <p key={one.place}>{one.text}</p>
      ))}
      {wire.stretches.length === 0 ? null : (
        <>
          <table>
            <tbody>
              <tr>
                <th scope="row">{w.wirePieces}</th>
                <td>{wire.pieces}</td>
              </tr>
              <tr>
                <th scope="row">{w.wireCorners}</th>
                <td>{wire.corner_count}</td>
              </tr>
              {wire.tee_count === 0 ? null : (
                <tr>
                  <th scope="row">{w.wireTees}</th>
                  <td>{wire.tee_count}</td>
                </tr>
              )}
              <tr>
                <th scope="row">{w.wireToBuy(wire.stock.text)}</th>
                <td>{wire.to_buy}</td>
              </tr>
            </tbody>
          </table>
          <p class="small soft">{w.wireBeds(wire.courses.join(", "))}</p>
          <p class="small soft">{w.wireLap(wire.lap.text, wire.lap_stated)}</p>
        </>
      )}
    </section>
  );
}
