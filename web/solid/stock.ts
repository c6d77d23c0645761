// From the engine's boxes to numbers for the graphics card: sorted by course, so that a course is a count. Metres.
import type { Solids } from "../engine/contract";
import { kStrokes } from "./strokes";

export interface Stock {
  readonly names: readonly string[];
  /// As on the sheets; "" of ordinary units.
  readonly marks: readonly string[];
  readonly kinds: readonly string[];
  readonly cuts: readonly boolean[];
  /// Middle and size of each unit, three numbers each.
  readonly middles: Float32Array;
  readonly sizes: Float32Array;
  readonly hatches: Float32Array;
  /// Line ends of the marks, three numbers each.
  readonly letters: Float32Array;
  /// For course n: how many units, and how many letter points, up to it (index 0 is course 0).
  readonly unitsUpTo: readonly number[];
  readonly pointsUpTo: readonly number[];
  readonly tops: readonly number[];
  /// x y z0 z1 of each bar.
  readonly bars: Float32Array;
  readonly low: readonly [number, number, number];
  readonly high: readonly [number, number, number];
}

const kMetre = 1e-6;

type Triple = readonly [number, number, number];

const kHatches: Readonly<Record<Solids["fills"][number], number>> = {
  plain: 0,
  tint: 1,
  rising: 2,
  falling: 3,
  grey: 4,
};

/// Line ends of a mark, x and y in turn, written around (0, 0) on a face that is so long and so high.
function inked(mark: string, long: number, high: number): readonly number[] {
  const tall = high * 0.46;
  const gap = 0.3;
  const wide = Math.min(tall * 0.62, (long * 0.8) / Math.max(1, mark.length + gap * (mark.length - 1)));
  const first = -(wide * (mark.length + gap * (mark.length - 1))) / 2;
  return [...mark].flatMap((letter, at) =>
    (kStrokes[letter] ?? []).map((value, k) =>
      k % 2 === 0 ? first + wide * (at * (1 + gap) + value) : (value - 0.5) * tall,
    ),
  );
}

/// A mark on the upright faces of a box: on the two long ones, or on all four of a square one.
function addMark(out: number[], mark: string, middle: Triple, size: Triple): void {
  const lift = 0.004;
  const square = Math.abs(size[0] - size[1]) < 0.002;
  for (const side of [-1, 1]) {
    for (let axis = 0; axis < 2; ++axis) {
      const along = axis === 0 ? size[0] : size[1];
      const across = axis === 0 ? size[1] : size[0];
      if (!square && along < across) continue;
      const turn = axis === 0 ? -side : side;
      const ends = inked(mark, along, size[2]);
      for (let at = 0; at < ends.length; at += 2) {
        const s = (ends[at] ?? 0) * turn;
        const z = middle[2] + (ends[at + 1] ?? 0);
        const face = side * (across / 2 + lift);
        if (axis === 0) out.push(middle[0] + s, middle[1] + face, z);
        else out.push(middle[0] + face, middle[1] + s, z);
      }
    }
  }
}

function order(solids: Solids): readonly number[] {
  return solids.names
    .map((_, index) => index)
    .sort((a, b) => (solids.courses[a] ?? 0) - (solids.courses[b] ?? 0) || a - b);
}

export function stocked(solids: Solids): Stock {
  const sorted = order(solids);
  const middles = new Float32Array(sorted.length * 3);
  const sizes = new Float32Array(sorted.length * 3);
  const hatches = new Float32Array(sorted.length);
  const letters: number[] = [];
  const unitsUpTo: number[] = [0];
  const pointsUpTo: number[] = [0];
  const tops: number[] = [0];
  const low: [number, number, number] = [Infinity, Infinity, Infinity];
  const high: [number, number, number] = [-Infinity, -Infinity, -Infinity];
  sorted.forEach((from, to) => {
    const box = (k: number): number => (solids.boxes[from * 6 + k] ?? 0) * kMetre;
    const size: Triple = [box(3), box(4), box(5)];
    const middle: Triple = [box(0) + size[0] / 2, box(1) + size[1] / 2, box(2) + size[2] / 2];
    middles.set(middle, to * 3);
    sizes.set(size, to * 3);
    for (let k = 0; k < 3; ++k) {
      low[k] = Math.min(low[k] ?? 0, box(k));
      high[k] = Math.max(high[k] ?? 0, box(k) + box(k + 3));
    }
    hatches[to] = kHatches[solids.fills[from] ?? "plain"];
    addMark(letters, solids.marks[from] ?? "", middle, size);
    const course = solids.courses[from] ?? 0;
    unitsUpTo[course] = to + 1;
    pointsUpTo[course] = letters.length / 3;
    tops[course] = middle[2] + size[2] / 2;
  });
  fillGaps(unitsUpTo);
  fillGaps(pointsUpTo);
  fillGaps(tops);
  return {
    names: sorted.map((index) => solids.names[index] ?? ""),
    marks: sorted.map((index) => solids.marks[index] ?? ""),
    kinds: sorted.map((index) => solids.kinds[index] ?? ""),
    cuts: sorted.map((index) => solids.cut[index] === 1),
    middles,
    sizes,
    hatches,
    letters: Float32Array.from(letters),
    unitsUpTo,
    pointsUpTo,
    tops,
    bars: barsOf(solids),
    low,
    high,
  };
}

function fillGaps(counts: number[]): void {
  for (let at = 1; at < counts.length; ++at) counts[at] ??= counts[at - 1] ?? 0;
}

function barsOf(solids: Solids): Float32Array {
  const bars: number[] = [];
  for (let at = 0; at + 4 < solids.bars.length; at += 5) {
    for (let k = 0; k < 4; ++k) bars.push((solids.bars[at + k] ?? 0) * kMetre);
  }
  return Float32Array.from(bars);
}

/// How many of each exception stand up to a course.
export function exceptionsUpTo(stock: Stock, course: number): ReadonlyMap<string, number> {
  const counts = new Map<string, number>();
  const end = stock.unitsUpTo[Math.min(course, stock.unitsUpTo.length - 1)] ?? 0;
  for (let at = 0; at < end; ++at) {
    const cut = stock.cuts[at] === true;
    const kind = stock.kinds[at] ?? "";
    if (stock.marks[at] === "") continue;
    const key = cut ? "cut" : kind;
    counts.set(key, (counts.get(key) ?? 0) + 1);
  }
  return counts;
}
