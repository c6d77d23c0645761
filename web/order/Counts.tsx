// What to buy and what to cut.
import { shown } from "../state/signals";
import { words } from "../words/words";

export function Counts() {
  const answer = shown.value?.answer;
  if (answer === undefined) return null;
  return (
    <section class="block" aria-label={words.tallies.byKind}>
      <table>
        <caption class="hidden-words">{words.tallies.byKind}</caption>
        <thead>
          <tr>
            <th scope="col">{words.tallies.byKind}</th>
            <th scope="col">{words.tallies.buy}</th>
          </tr>
        </thead>
        <tbody>
          {answer.counts.to_buy.map((unit) => (
            <tr key={unit.series + unit.kind}>
              <th scope="row">{words.kinds[unit.kind] ?? unit.kind}</th>
              <td>{unit.total}</td>
            </tr>
          ))}
          {answer.counts.bars.count === 0 ? null : (
            <tr>
              <th scope="row">
                {words.tallies.bars} {answer.counts.bars.size}
              </th>
              <td>{answer.counts.bars.total.text}</td>
            </tr>
          )}
        </tbody>
      </table>
      <p class="soft">{words.tallies.breakage(answer.counts.breakage.percent, answer.counts.breakage.stated)}</p>
    </section>
  );
}

/// Dust, where units are cut.
export function SawCaution() {
  return (shown.value?.answer.cost.cuts ?? 0) > 0 ? <p>{words.tallies.sawCaution}</p> : null;
}
