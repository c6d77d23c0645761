// Bars as they are cut, and the laps that each rule comes to.
import { Fold } from "../parts/Fold";
import { shown } from "../state/signals";
import { formWords } from "../words/form_words";
import { words } from "../words/words";

const w = words.grout;

/// Bars mark by mark, as the bar schedule lists them.
export function BarsCut() {
  const bars = shown.value?.answer.bar_pieces;
  if (!bars || bars.marks.length === 0) return null;
  return (
    <section class="result" aria-label={w.barsCut}>
      <h3>{w.barsCut}</h3>
      <table class="wraps">
        <thead>
          <tr>
            <th scope="col">{w.mark}</th>
            <th scope="col">{w.bar}</th>
            <th scope="col">{w.count}</th>
            <th scope="col">{w.length}</th>
          </tr>
        </thead>
        <tbody>
          {bars.marks.map((mark, index) => (
            <tr key={`${mark.use} ${mark.size} ${mark.length.nm}`}>
              <th scope="row">{index + 1}</th>
              <td>{`${mark.size} ${w.barUses[mark.use] ?? ""}`}</td>
              <td>{mark.count}</td>
              <td class="figure">{mark.length.text}</td>
            </tr>
          ))}
          {bars.totals.map((total) => (
            <tr key={total.size}>
              <th scope="row" colSpan={2}>
                {w.barTotal(total.size)}
              </th>
              <td>{total.count}</td>
              <td class="figure">{total.length.text}</td>
            </tr>
          ))}
        </tbody>
      </table>
      {(shown.value?.answer.bars_from_stock ?? []).map((one) => (
        <p key={one.size}>{w.toBuy(one.bars, one.size, bars.stock.text)}</p>
      ))}
    </section>
  );
}

/// What each lap rule comes to, so that the one the drawings name can be found.
export function Laps() {
  const laps = shown.value?.answer.bar_pieces?.laps ?? [];
  if (laps.length === 0) return null;
  return (
    <Fold name="lap rules" title={w.laps}>
      {() => (
        <section class="result" aria-label={w.laps}>
          <table class="wraps">
            <tbody>
              {laps.flatMap((table) =>
                table.choices.map((choice) => (
                  <tr key={`${table.use} ${choice.rule} ${choice.steel_psi ?? 0}`}>
                    <th scope="row">{w.lapOf(table.use, table.size)}</th>
                    <td>
                      {[formWords.choices[choice.rule] ?? "", w.lapRule(choice.rule, choice.steel_psi)].join(" ")}
                    </td>
                    <td class="figure">{choice.length.text}</td>
                  </tr>
                )),
              )}
            </tbody>
          </table>
          <p class="small soft">{w.lapsAreYours}</p>
        </section>
      )}
    </Fold>
  );
}
