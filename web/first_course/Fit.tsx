// Where the walls sit best on what was poured.
import type { Ground } from "../state/ground";
import { words } from "../words/words";

export function Fit(props: { readonly fit: NonNullable<Ground["fit"]> }) {
  const { fit } = props;
  return (
    <p class="result">
      <strong>{words.ground.fit}</strong> {words.ground.fitText(fit.text, fit.room.text, fit.room_before.text)}
    </p>
  );
}

/// Edges that are still to be measured before that is known.
export function FitLacks(props: { readonly lacks: NonNullable<Ground["fit_lacks"]> }) {
  return (
    <p class="result">
      <strong>{words.ground.fit}</strong> {words.ground.fitLacks(props.lacks.join(", "))}
    </p>
  );
}
