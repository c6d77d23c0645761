// Which peg to move how far, from sides and diagonals as taped.
import { PaperBox } from "../draw/PaperBox";
import { type Ground, ground, pegsDrawn } from "../state/ground";
import { words } from "../words/words";
import { type Remedy, Remedies } from "./Remedies";

const w = words.remedies;

function remediesOf(tape: Ground["tape"]): readonly Remedy[] {
  return (tape.choices ?? []).map((one) => ({
    ...one,
    takes: [
      one.what === "move-pegs" ? w.pegs(one.places, one.most.text) : w.lines(one.places, one.most.text),
      w.noCuts,
    ],
  }));
}

export function Pegs(props: { readonly tape: Ground["tape"] }) {
  const { tape } = props;
  return (
    <div class="result whole">
      <h3>{words.ground.pegs}</h3>
      <p>
        {tape.state === "adjusted"
          ? words.ground.agreement[tape.agreement ?? "unchecked"]
          : tape.state === "not-determinate"
            ? words.ground.missing(tape.missing.map((pair) => pair.join(" – ")).join(", "))
            : words.ground.impossible}
      </p>
      {tape.state !== "adjusted" || tape.missing.length === 0 ? null : (
        <p>{words.ground.tapeToo(tape.missing.map((pair) => pair.join(" – ")).join(", "))}</p>
      )}
      {tape.tape_again === undefined || tape.tape_again.length === 0 ? null : (
        <p>{words.ground.again(tape.tape_again.map((pair) => pair.join(" – ")).join(", "))}</p>
      )}
      <ul class="moves">
        {(tape.moves ?? []).map((move) => (
          <li key={move.corner}>
            <strong>{move.corner}</strong>
            <span>
              {move.corner === tape.held ? words.ground.held : move.within_doubt ? words.ground.withinDoubt : move.text}
            </span>
          </li>
        ))}
      </ul>
      <Remedies about="shape" remedies={remediesOf(tape)} now={ground.value?.shape_chosen} />
      <PaperBox {...pegsDrawn.value} label={words.ground.pegs} />
    </div>
  );
}
