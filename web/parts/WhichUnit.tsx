// A number without a unit that may mean two lengths: asked about, never guessed.
import type { LengthUnit } from "../job/bare";
import { words } from "../words/words";

export function WhichUnit(props: {
  readonly numbers: readonly string[];
  readonly units: readonly LengthUnit[];
  readonly choose: (unit: LengthUnit) => void;
}) {
  const { numbers, units } = props;
  return (
    <div class="which row" role="alert">
      <strong>
        {words.which.ask(
          numbers.join(", "),
          units.map((unit) => words.which[unit]),
        )}
      </strong>
      {units.map((unit) => (
        <button type="button" class="framed" key={unit} onClick={() => props.choose(unit)}>
          {words.which[unit]}
        </button>
      ))}
    </div>
  );
}
