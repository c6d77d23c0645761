// Which part of the drawing before becomes which part of the next one, so that little has to be changed.
import type { Drawn } from "./read_drawing";

/// From dearest to least alike: the same text; the same words in another place; the same kind of part.
const kLikeness: readonly ((part: Drawn) => string)[] = [
  (part) => part.whole,
  (part) => `${part.tag} ${part.words}`,
  (part) => part.tag,
];
/// What is farther on in the old drawing is not looked for: jumping over many parts would leave them without a partner.
const kFarthest = [Number.POSITIVE_INFINITY, 8, 4] as const;

interface Span {
  readonly from: number;
  readonly to: number;
}

function placesBy(likeness: (part: Drawn) => string, olds: readonly Drawn[], span: Span): Map<string, number[]> {
  const places = new Map<string, number[]>();
  for (let at = span.to - 1; at >= span.from; --at) {
    const part = olds[at];
    if (part === undefined) continue;
    const key = likeness(part);
    const list = places.get(key);
    if (list === undefined) places.set(key, [at]);
    else list.push(at); // the next one to be taken stands last
  }
  return places;
}

/// Pairs in the same order on both sides; what is left between two pairs is tried again with less likeness.
function pairSpan(
  olds: readonly Drawn[],
  nexts: readonly Drawn[],
  old: Span,
  next: Span,
  level: number,
  found: number[],
) {
  const likeness = kLikeness[level];
  if (likeness === undefined || old.from >= old.to || next.from >= next.to) return;
  const places = placesBy(likeness, olds, old);
  let [lastOld, lastNext] = [old.from, next.from];
  for (let at = next.from; at < next.to; ++at) {
    const part = nexts[at];
    const list = part === undefined ? undefined : places.get(likeness(part));
    while (list !== undefined && (list.at(-1) ?? old.to) < lastOld) list.pop();
    const place = list?.at(-1);
    if (place === undefined || place - lastOld > (kFarthest[level] ?? 0)) continue;
    found[at] = place;
    pairSpan(olds, nexts, { from: lastOld, to: place }, { from: lastNext, to: at }, level + 1, found);
    [lastOld, lastNext] = [place + 1, at + 1];
  }
  pairSpan(olds, nexts, { from: lastOld, to: old.to }, { from: lastNext, to: next.to }, level + 1, found);
}

/// For each of `nexts` the place of its partner in `olds`. What is the same from the start, and from the end, first: a
/// part put in between then costs only itself.
function pairedInOrder(olds: readonly Drawn[], nexts: readonly Drawn[]): readonly (number | undefined)[] {
  const found: number[] = [];
  const least = Math.min(olds.length, nexts.length);
  let [from, end] = [0, 0];
  while (from < least && olds[from]?.whole === nexts[from]?.whole) found[from] = from++;
  const same = (back: number): boolean => olds[olds.length - back]?.whole === nexts[nexts.length - back]?.whole;
  while (end < least - from && same(end + 1)) found[nexts.length - ++end] = olds.length - end;
  pairSpan(olds, nexts, { from, to: olds.length - end }, { from, to: nexts.length - end }, 0, found);
  return found;
}

/// For each part of `nexts` the old part that it is made of, or undefined. Parts with an id are known by it, wherever
/// they stand; nameless ones keep their order. Every old part is taken at most once, by a part of its own kind.
export function pairsOf(olds: readonly Drawn[], nexts: readonly Drawn[]): readonly (Drawn | undefined)[] {
  const named = new Map<string, Drawn>();
  for (const old of olds) if (old.id !== "" && !named.has(old.id)) named.set(old.id, old);
  const namelessOlds = olds.filter((old) => old.id === "");
  const namelessNexts = nexts.filter((next) => next.id === "");
  const found = pairedInOrder(namelessOlds, namelessNexts);
  let nameless = 0;
  return nexts.map((next) => {
    if (next.id === "") {
      const place = found[nameless++];
      return place === undefined ? undefined : namelessOlds[place];
    }
    const old = named.get(next.id);
    if (old?.tag !== next.tag) return undefined;
    named.delete(next.id);
    return old;
  });
}
