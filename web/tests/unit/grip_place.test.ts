// Where grips lie: a thumb wide, parted at the wall's face, drawn where the engine draws.
import { expect, test } from "vitest";
import { kThumb, openingGrips, sideGrip } from "../../draw/grip_place";
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
};
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

test("every grip is at least a thumb wide and high, at any size of the drawing", () => {
  for (const pixels of kScreens) {
    for (const place of [...openingGrips(opening, pixels), sideGrip(side, pixels), sideGrip(side, pixels, "inside")]) {
      expect(place.touch.width).toBeGreaterThanOrEqual(kThumb);
      expect(place.touch.height).toBeGreaterThanOrEqual(kThumb);
    }
  }
});

test("an opening's grips lie inward of the wall's outer face, its side's grip outward", () => {
  for (const pixels of kScreens) {
    const face = (kWall.y + kWall.height) * pixels;
    for (const { touch } of openingGrips(opening, pixels)) {
      if (kWall.height * pixels + 16 <= kThumb) expect(touch.top + touch.height).toBeLessThanOrEqual(face + 0.01);
    }
    expect(sideGrip(side, pixels).touch.top).toBeGreaterThanOrEqual(face - 0.01);
  }
});

test("the body is drawn exactly on the opening, wherever it is touched", () => {
  for (const pixels of kScreens) {
    const [body] = openingGrips(opening, pixels);
    expect(body.touch.left + body.drawn.left).toBeCloseTo(opening.x * pixels, 6);
    expect(body.touch.top + body.drawn.top).toBeCloseTo(opening.y * pixels, 6);
    expect(body.drawn.width).toBeCloseTo(opening.width * pixels, 6);
  }
});

test("the edges lie beside the opening: the one nearer the start at the right, as the wall is walked to the left", () => {
  const [body, from, to] = openingGrips(opening, 0.003);
  expect(from.touch.left).toBeCloseTo(body.touch.left + body.touch.width, 6);
  expect(to.touch.left + to.touch.width).toBeCloseTo(body.touch.left, 6);
});

test("a dimension is framed where the engine writes it: 12 mm out, the text above its line", () => {
  const { touch, drawn } = sideGrip(side, 0.003);
  const middle = (touch.top + drawn.top + drawn.height / 2) / 0.003;
  // Outer face 147 230, line 12 000 below it, letters 3.5 mm high from 1.17 mm above the line: their middle 2.9 mm above.
  expect(middle).toBeCloseTo(147_230 + 12_000 - 2_900, 0);
});

test("a dimension inside a re-entrant corner is framed inside", () => {
  const { touch, drawn } = sideGrip(side, 0.003, "inside");
  expect((touch.top + drawn.top + drawn.height / 2) / 0.003).toBeCloseTo(143_356 - 7_500 - 2_900, 0);
});
