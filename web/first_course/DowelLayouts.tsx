// Layouts that save dowels, each taken with one tap.
import { valueAt } from "../job/pointer";
import type { Ground } from "../state/ground";
import { keepDowels } from "../state/logs";
import { job, readOnly } from "../state/signals";
import { words } from "../words/words";

export function DowelLayouts(props: { readonly layouts: Ground["dowel_layouts"] }) {
  // Bars stand where dowels were found.
  const kept = Array.isArray(valueAt(job.value, "/steel/kept_dowels"));
  if (!kept && props.layouts.length === 0) return null;
  return (
    <div class="result">
      <h3>{words.ground.otherLayouts}</h3>
      <ul class="moves">
        {props.layouts.map((layout) => (
          <li key={layout.text}>
            <span>{layout.text}</span>
            <button
              type="button"
              disabled={readOnly.value}
              aria-label={words.ground.keepLong(layout.text)}
              onClick={() => void keepDowels(layout.kept)}
            >
              {words.ground.keep}
            </button>
          </li>
        ))}
        {kept ? (
          <li>
            <span>{words.ground.keptNow}</span>
            <button type="button" disabled={readOnly.value} onClick={() => void keepDowels([])}>
              {words.ground.keepNone}
            </button>
          </li>
        ) : null}
      </ul>
    </div>
  );
}
