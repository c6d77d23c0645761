// The log of what was read on site, and what each reading came to.
import type { Listed } from "../job/readings";
import { ground, readings } from "../state/ground";
import { bringBack, strike } from "../state/logs";
import { readOnly } from "../state/signals";
import { words } from "../words/words";
import type { Kind } from "./ReadingForm";

/// A reading off by more than twice its standard doubt is one in twenty, in thousandths of it; from 3.29 on it is left out.
const kWell = 2_000;

function outcomeOf(one: Listed): string {
  if (one.struck) return words.ground.struck;
  const dowel = ground.value?.dowels.find((found) => found.reading === one.index);
  if (dowel !== undefined) return dowel.text;
  const said = ground.value?.said.find((single) => single.reading === one.index)?.text ?? "";
  const line = ground.value?.tape.lines.find((taped) => taped.reading === one.index);
  if (line === undefined) return said;
  if (line.use === "slip") return words.ground.slip(line.meant?.text ?? "");
  if (line.use === "blunder") return words.ground.blunder;
  const times = line.times_its_doubt_thousandths ?? 0;
  const second =
    line.agrees_with_first === undefined ? "" : line.agrees_with_first ? words.ground.agrees : words.ground.agreesNot;
  const fits = Math.abs(times) <= kWell ? words.ground.fitsWell : words.ground.fitsPoorly;
  return [said, second, times === 0 ? "" : fits].filter((text) => text !== "").join(" · ");
}

/// `kinds`: what is read at this hold point.
export function ReadingLog(props: { readonly kinds: readonly Kind[] }) {
  const log = readings.value.filter((one) => props.kinds.includes(one.kind));
  if (log.length === 0) return <p class="log">{words.ground.none}</p>;
  return (
    <ul class="log" aria-label={words.ground.log}>
      {log.map((one) => (
        <li key={one.id} class={one.struck ? "struck" : ""}>
          <span class="what">{`${words.ground.short[one.kind]} ${one.what}`}</span>
          <span class="value">{one.value}</span>
          <span class="small soft">{[outcomeOf(one), one.by].filter((text) => text !== "").join(" · ")}</span>
          {readOnly.value ? null : one.struck ? (
            <button
              type="button"
              aria-label={words.ground.countWhat(one.what, one.value)}
              onClick={() => void bringBack("/readings", one.id, one.what)}
            >
              {words.ground.count}
            </button>
          ) : (
            <button
              type="button"
              aria-label={words.ground.strikeWhat(one.what, one.value)}
              onClick={() => void strike(one.id, one.what)}
            >
              {words.ground.strike}
            </button>
          )}
        </li>
      ))}
    </ul>
  );
}
