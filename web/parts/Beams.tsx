// Bond beams in one choice: over the openings, on top, or both. Other courses are typed where lintels and top are.
import { valueAt } from "../job/pointer";
import { putBeams } from "../state/building";
import { job, readOnly, shown } from "../state/signals";
import { words } from "../words/words";

const w = words.inHand.beams;
const kChoices = ["none", "openings", "top", "both"] as const;
type Choice = (typeof kChoices)[number];

/// Which choice the job's courses are; undefined where they are others.
function chosenNow(): Choice | undefined {
  const asked = valueAt(job.value, "/steel/bond_beams");
  const courses = Array.isArray(asked) ? asked.map(Number) : [];
  const answer = shown.value?.answer;
  const heads = new Set(answer?.openings.flatMap((one) => (one.lintel === undefined ? [] : [one.lintel.first_course])));
  const top = answer?.courses.length ?? 0;
  const same = (wanted: ReadonlySet<number>): boolean =>
    wanted.size === courses.length && courses.every((one) => wanted.has(one));
  if (courses.length === 0) return "none";
  if (same(new Set([top]))) return "top";
  // A lintel may reach the top: then a beam over the openings is one on top as well.
  if (same(new Set([...heads, top]))) return "both";
  return same(heads) ? "openings" : undefined;
}

export function Beams() {
  const now = chosenNow();
  const put = (choice: string): void =>
    void putBeams(choice === "openings" || choice === "both", choice === "top" || choice === "both");
  return (
    <label class="field">
      <span>{w.label}</span>
      <select value={now ?? ""} disabled={readOnly.value} onChange={(event) => put(event.currentTarget.value)}>
        {now === undefined ? <option value="">{w.others}</option> : null}
        {kChoices.map((one) => (
          <option key={one} value={one} selected={one === now}>
            {w[one]}
          </option>
        ))}
      </select>
    </label>
  );
}
