// What the rod says besides the bed: doorways' floors and the instrument itself.
import type { Ground } from "../state/ground";
import { words } from "../words/words";

export function Levels(props: { readonly levels: NonNullable<Ground["levels"]> }) {
  const { doors, instrument } = props.levels;
  if (doors.length === 0 && instrument === undefined) return null;
  return (
    <div class="result">
      <ul class="moves">
        {instrument === undefined ? null : (
          <li>
            <strong>{words.ground.instrument}</strong>
            <span>
              {instrument.level
                ? words.ground.instrumentLevel
                : words.ground.instrumentOff(instrument.over.text, instrument.sight.text, instrument.doubt.text)}
            </span>
          </li>
        )}
        {doors.map((door) => (
          <li key={door.opening}>
            <strong>{door.opening}</strong>
            <span>
              {words.ground.door(door.tall_least.text, door.tall_most.text, door.planned.text)}{" "}
              {words.ground.doorVerdicts[door.verdict]}
            </span>
          </li>
        ))}
      </ul>
    </div>
  );
}
