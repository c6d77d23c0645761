// Where each dowel stands, measured from the corner that its side starts at.
import { shown } from "../state/signals";
import { words } from "../words/words";

const kFirst = 40;

export function Dowels() {
  const dowels = shown.value?.answer.dowels ?? [];
  if (dowels.length === 0) return <p class="small soft">{words.dowels.none}</p>;
  return (
    <section class="result" aria-label={words.dowels.label}>
      <h3>{words.dowels.label}</h3>
      <table>
        <thead>
          <tr>
            <th scope="col">{words.dowels.dowel}</th>
            <th scope="col">{words.dowels.at}</th>
            <th scope="col">{words.dowels.off}</th>
          </tr>
        </thead>
        <tbody>
          {dowels.slice(0, kFirst).map((dowel) => (
            <tr key={`${dowel.side} ${dowel.number}`}>
              <th scope="row">
                {dowel.side} {dowel.number}
              </th>
              <td>{dowel.at.text}</td>
              <td>{dowel.off_face.text}</td>
            </tr>
          ))}
        </tbody>
      </table>
      {dowels.length > kFirst ? <p class="small soft">{words.dowels.more(dowels.length - kFirst)}</p> : null}
    </section>
  );
}
