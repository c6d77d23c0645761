// Where handles lie: a thumb wide, parted at the wall's face, drawn where the engine draws.
import { expect, test } from "vitest";
import { kThumb, openingHandles, handleOfSide } from "../../draw/handle_place";
import type { OpeningHandle, SideHandle } from "../../engine/contract";

// The front wall of a plan at 1 : 50, walked to the left, its outer face below: 170 mm long on paper, 3.9 mm thick.
const kWall = { x: 25_500, y: 143_356, width: 170_498, height: 3_874 } as const;
const side: SideHandle = {
  ...kWall,
  kind: "side",
  index: 0,
  name: "AB",
  place: "/outline/sides/0",
  outward: [0, 1],
  length_nm: 8_524_875_000,
  label: "AB, 27'-11 5/8\"",
  // Its text in the middle, the line 12 mm out: as the engine tells it (told.test.ts).
  length: { x: 82_749, y: 153_013, width: 56_000, height: 6_600 },
};
const inside: SideHandle = { ...side, length: { ...side.length, y: 129_656 } };
const opening: OpeningHandle = {
  ...kWall,
  x: 82_206,
  width: 57_086,
  kind: "opening",
  index: 0,
  name: "D1",
  place: "/openings/0",
  side: "AB",
  along: [-1, 0],
  from_nm: 2_835_275_000,
  to_nm: 5_689_600_000,
  label: "D1",
};
const kScreens = [0.0006, 0.0016, 0.003, 0.01] as const; // pixels for a micrometre: a far view, a phone, a desk, close up

test("every handle is at least a thumb wide and high, at any size of the drawing", () => {
  for (const pixels of kScreens) {
    for (const place of [
      ...openingHandles(opening, pixels),
      handleOfSide(side, pixels),
      handleOfSide(inside, pixels),
    ]) {
      expect(place.touch.width).toBeGreaterThanOrEqual(kThumb);
      expect(place.touch.height).toBeGreaterThanOrEqual(kThumb);
    }
  }
});

test("an opening's handles lie inward of the wall's outer face, its side's handle outward", () => {
  for (const pixels of kScreens) {
    const face = (kWall.y + kWall.height) * pixels;
    for (const { touch } of openingHandles(opening, pixels)) {
      if (kWall.height * pixels + 16 <= kThumb) expect(touch.top + touch.height).toBeLessThanOrEqual(face + 0.01);
    }
    expect(handleOfSide(side, pixels).touch.top).toBeGreaterThanOrEqual(face - 0.01);
  }
});

test("the body is drawn exactly on the opening, wherever it is touched", () => {
  for (const pixels of kScreens) {
    const [body] = openingHandles(opening, pixels);
    expect(body.touch.left + body.drawn.left).toBeCloseTo(opening.x * pixels, 6);
    expect(body.touch.top + body.drawn.top).toBeCloseTo(opening.y * pixels, 6);
    expect(body.drawn.width).toBeCloseTo(opening.width * pixels, 6);
  }
});

test("the edges lie beside the opening: the one nearer the start at the right, as the wall is walked to the left", () => {
  const [body, from, to] = openingHandles(opening, 0.003);
  expect(from.touch.left).toBeCloseTo(body.touch.left + body.touch.width, 6);
  expect(to.touch.left + to.touch.width).toBeCloseTo(body.touch.left, 6);
});

test("a dimension is framed where the engine wrote it, outside or inside", () => {
  for (const handle of [side, inside]) {
    for (const pixels of kScreens) {
      const { touch, drawn } = handleOfSide(handle, pixels);
      expect((touch.left + drawn.left) / pixels).toBeCloseTo(handle.length.x, 3);
      expect((touch.top + drawn.top) / pixels).toBeCloseTo(handle.length.y, 3);
      expect([drawn.width / pixels, drawn.height / pixels]).toEqual([
        expect.closeTo(handle.length.width, 3),
        expect.closeTo(handle.length.height, 3),
      ]);
    }
  }
});

test("a dimension inside a re-entrant corner is touched inward of the wall's inner face", () => {
  for (const pixels of kScreens) {
    const { touch } = handleOfSide(inside, pixels);
    expect(touch.top + touch.height).toBeLessThanOrEqual(kWall.y * pixels + 0.01);
  }
});
