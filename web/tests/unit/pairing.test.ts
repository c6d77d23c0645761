import fc from "fast-check";
import { expect, test } from "vitest";
import { pairsOf } from "../../draw/pairing";
import { type Drawn, readDrawing } from "../../draw/read_drawing";

/// Small parts of few kinds, words and places, so that many are alike; some have names.
const kPart = fc
  .record({
    tag: fc.constantFrom("text", "path"),
    words: fc.constantFrom("", "1", "2", "C"),
    x: fc.integer({ min: 0, max: 9 }),
    named: fc.boolean(),
  })
  .map(({ tag, words, x, named }) => ({ tag, words, x, named }));

function partsOf(list: readonly { tag: string; words: string; x: number; named: boolean }[]): readonly Drawn[] {
  const inside = list.map(({ tag, words, x, named }, at) => {
    const id = named ? ` id="p${at % 5}-${x}"` : "";
    return `<${tag}${id} x="${x}">${words}</${tag}>`;
  });
  return readDrawing(`<svg>${inside.join("")}</svg>`)?.children ?? [];
}

test("no old part is taken twice, partners are of one kind, nameless ones keep their order", () => {
  fc.assert(
    fc.property(fc.array(kPart, { maxLength: 40 }), fc.array(kPart, { maxLength: 40 }), (before, after) => {
      const [olds, nexts] = [partsOf(before), partsOf(after)];
      const pairs = pairsOf(olds, nexts);
      expect(pairs.length).toBe(nexts.length);
      const taken = pairs.filter((old) => old !== undefined);
      expect(new Set(taken).size).toBe(taken.length);
      pairs.forEach((old, at) => {
        if (old !== undefined) expect([old.tag, old.id]).toEqual([nexts[at]?.tag, nexts[at]?.id]);
      });
      const nameless = taken.filter((old) => old.id === "").map((old) => olds.indexOf(old));
      expect(nameless).toEqual([...nameless].sort((a, b) => a - b));
    }),
    { numRuns: 2000 },
  );
});

test("of a drawing that is the same but for one part more, every old part is kept as it is", () => {
  fc.assert(
    fc.property(fc.array(kPart, { maxLength: 60 }), kPart, fc.nat(), (list, more, place) => {
      const at = place % (list.length + 1);
      const nameless = list.map((part) => ({ ...part, named: false }));
      const olds = partsOf(nameless);
      const nexts = partsOf([...nameless.slice(0, at), { ...more, named: false }, ...nameless.slice(at)]);
      const pairs = pairsOf(olds, nexts);
      expect(pairs.filter((old, k) => old?.whole === nexts[k]?.whole && old !== undefined).length).toBe(olds.length);
    }),
    { numRuns: 2000 },
  );
});
