import fc from "fast-check";
import { expect, test } from "vitest";
import {
  editFor,
  type HandlePart,
  type Hold,
  kSnapPixels,
  movedBy,
  nextFree,
  placesAround,
  startOf,
  wantedBy,
} from "../../draw/drag";
import type { OpeningHandle, SideHandle } from "../../engine/contract";

const kInch = 25_400_000; // nanometres, exact by definition of the inch
const kPitch = 8 * kInch; // half of a 16 in nominal unit

const door: OpeningHandle = {
  kind: "opening",
  index: 1,
  name: "D2",
  place: "/openings/1",
  side: "BC",
  x: 0,
  y: 0,
  width: 1,
  height: 1,
  along: [1, 0],
  from_nm: 48 * kInch,
  to_nm: 88 * kInch,
  label: "",
};

const wall: SideHandle = {
  kind: "side",
  index: 2,
  name: "CD",
  place: "/outline/sides/2",
  x: 0,
  y: 0,
  width: 1,
  height: 1,
  outward: [0, -1],
  length_nm: 336 * kInch,
  label: "",
  length: { x: 0, y: 0, width: 1, height: 1 },
};

function hold(handle: OpeningHandle | SideHandle, part: HandlePart, free: readonly number[] = []): Hold {
  // 1 : 50 at two thousandths of a pixel for a micrometre: a pixel is 500 um on paper, 25 mm at the wall.
  return { handle, part, scale: 50, pixels: 0.002, free, pitch: kPitch };
}

test("a pixel is its micrometres times the scale, along the handle's own way only", () => {
  expect(movedBy(hold(door, "body"), 1, 0)).toBe(25_000_000);
  expect(movedBy(hold(door, "body"), 0, 40)).toBe(0);
  expect(movedBy(hold({ ...door, along: [-1, 0] }, "body"), 4, 0)).toBe(-100_000_000);
  expect(movedBy(hold(wall, "side"), 0, -2)).toBe(50_000_000);
});

test("a drag starts where the handle stood: near jamb, far jamb, or nothing moved for a side", () => {
  expect(startOf(hold(door, "body"))).toBe(door.from_nm);
  expect(startOf(hold(door, "to"))).toBe(door.to_nm);
  expect(startOf(hold(wall, "side"))).toBe(0);
});

test("a hand within ten pixels of a free place means it, farther off it does not", () => {
  const free = [40 * kInch, 56 * kInch];
  const held = hold(door, "body", free);
  // 56 in is 8 in = 203.2 mm on: 8.128 pixels. At 8 - 10 pixels of movement the place is under 2 pixels away.
  expect(wantedBy(held, 8, 0, false)).toEqual({ nm: 56 * kInch, snapped: true });
  // 18.5 pixels is 10.4 pixels past 56 in, and 2.2 pixels from 64 in, the next by the pitch.
  expect(wantedBy(held, 18.5, 0, false)).toEqual({ nm: 64 * kInch, snapped: true });
  const sparse = { ...held, pitch: 0 };
  expect(wantedBy(sparse, 18.5, 0, false)).toEqual({ nm: door.from_nm + 462_500_000, snapped: false });
});

test("a free hand is never snapped", () => {
  fc.assert(
    fc.property(fc.integer({ min: -500, max: 500 }), (dx) => {
      const held = hold(door, "body", [door.from_nm]);
      expect(wantedBy(held, dx, 0, true)).toEqual({ nm: startOf(held) + movedBy(held, dx, 0), snapped: false });
    }),
  );
});

test("a snapped place is a named one, or whole pitches past the outermost, and no farther than the hand allows", () => {
  const free = [16 * kInch, 32 * kInch, 56 * kInch];
  const held = hold(door, "body", free);
  fc.assert(
    fc.property(fc.integer({ min: -400, max: 400 }), (dx) => {
      const wanted = wantedBy(held, dx, 0, false);
      if (!wanted.snapped) return;
      const beyond = wanted.nm < 16 * kInch ? 16 * kInch : 56 * kInch;
      expect(free.includes(wanted.nm) || (wanted.nm - beyond) % kPitch === 0).toBe(true);
      const pixels = Math.abs(wanted.nm - startOf(held) - movedBy(held, dx, 0)) / 25_000_000;
      expect(pixels).toBeLessThanOrEqual(kSnapPixels);
    }),
  );
});

test("without a named place or a pitch there is nothing to snap to", () => {
  expect(placesAround(hold(door, "body"), 0)).toEqual([]);
});

test("the next free place lies ahead in the way asked, and the way back leads to where one was", () => {
  const free = [16 * kInch, 32 * kInch, 56 * kInch];
  const held = hold(door, "body", free);
  expect(nextFree(held, 32 * kInch, 1)).toBe(56 * kInch);
  expect(nextFree(held, 32 * kInch, -1)).toBe(16 * kInch);
  expect(nextFree(held, 56 * kInch, 1)).toBe(64 * kInch);
  expect(nextFree(held, 16 * kInch, -1)).toBe(8 * kInch);
  fc.assert(
    fc.property(
      fc.integer({ min: -100 * kInch, max: 200 * kInch }),
      fc.constantFrom(1 as const, -1 as const),
      (nm, sign) => {
        expect((nextFree(held, nm, sign) - nm) * sign).toBeGreaterThan(0);
      },
    ),
  );
});

test("each handle asks the engine for its own edit", () => {
  expect(editFor(hold(door, "body"), 7)).toEqual({ do: "move-opening", opening: 1, to_nm: 7 });
  expect(editFor(hold(door, "from"), 7)).toEqual({ do: "resize-opening", opening: 1, edge: "from", to_nm: 7 });
  expect(editFor(hold(door, "to"), 7)).toEqual({ do: "resize-opening", opening: 1, edge: "to", to_nm: 7 });
  expect(editFor(hold(wall, "side"), 7)).toEqual({ do: "move-side", side: 2, by_nm: 7 });
});
