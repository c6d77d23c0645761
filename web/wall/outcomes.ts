// What an entry came to, in a few lines: for the view at the wall and for the log on the table. Pure.
import type { Answer } from "../engine/contract";
import { words } from "../words/words";

const w = words.wall;

/// "3 x 5/16"" of three equal joints, else one after the other.
export function jointsText(joints: readonly string[]): string {
  const groups: { text: string; count: number }[] = [];
  for (const text of joints) {
    const last = groups.at(-1);
    if (last?.text === text) last.count += 1;
    else groups.push({ text, count: 1 });
  }
  return groups.map((group) => (group.count === 1 ? group.text : `${group.count} × ${group.text}`)).join(", ");
}

/// What an entry came to, in a few lines.
export function outcomeLines(answer: Answer | undefined, entry: number): readonly string[] {
  const laying = answer?.laying;
  if (laying === undefined) return [];
  const check = laying.checks.find((one) => one.entry === entry);
  if (check !== undefined)
    return [w.verdicts[check.verdict] ?? "", w.limits(check.least.text, check.most.text), check.rule];
  const set = laying.sets.find((one) => one.entry === entry);
  if (set !== undefined) {
    const taps = set.taps.map((tap) => w.taps(w.tapCorners[tap.corner] ?? tap.corner, tap.down.text));
    const line = set.from_line?.nm ?? 0;
    const move =
      line === 0
        ? []
        : [line < 0 ? w.in(set.from_line?.text.replace("-", "") ?? "") : w.out(set.from_line?.text ?? "")];
    return [...(set.lift ? [w.lift] : taps.length === 0 ? [w.liesRight] : taps), ...move];
  }
  const gap = laying.gaps.find((one) => one.entry === entry);
  if (gap !== undefined)
    return [gap.opening === undefined ? (gap.closure?.text ?? w.noClosure) : w.gapInOpening(gap.opening)];
  const gauge = laying.gauges.find((one) => one.entry === entry);
  if (gauge !== undefined) {
    const beds = gauge.beds.map((one) => one.bed.text);
    return gauge.to === "" ? [] : [beds.length === 0 ? w.noBeds(gauge.to) : w.beds(gauge.to, jointsText(beds))];
  }
  return [];
}
