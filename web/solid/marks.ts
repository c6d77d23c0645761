// Letters and hatches of the exceptions, the same as on the sheets (docs/glossary.md names the kinds).

export type Hatch = 0 | 1 | 2 | 3 | 4;
/// 0 plain, 1 tint, 2 rising hatch, 3 falling hatch, 4 grey.
export interface Mark {
  readonly letter: string;
  readonly hatch: Hatch;
}

const kPlain: Mark = { letter: "", hatch: 0 };
const kMarks: Readonly<Record<string, Mark>> = {
  half: { letter: "H", hatch: 1 },
  "corner-set": { letter: "A", hatch: 0 },
  "open-end": { letter: "O", hatch: 0 },
  "open-both": { letter: "O", hatch: 0 },
  "bond-beam": { letter: "B", hatch: 0 },
  "bond-beam-half": { letter: "B", hatch: 1 },
  lintel: { letter: "L", hatch: 3 },
  "lintel-half": { letter: "L", hatch: 3 },
  sash: { letter: "S", hatch: 0 },
  "sash-half": { letter: "S", hatch: 1 },
  cleanout: { letter: "K", hatch: 0 },
  "cleanout-half": { letter: "K", hatch: 1 },
  "half-high": { letter: "F", hatch: 0 },
  "half-high-half": { letter: "F", hatch: 1 },
  solid: { letter: "M", hatch: 4 },
};

export function markOf(kind: string, cut: boolean): Mark {
  return cut ? { letter: "C", hatch: 2 } : (kMarks[kind] ?? kPlain);
}

/// A letter as strokes in a square from 0 to 1, y up: x0 y0 x1 y1 for each.
export const kStrokes: Readonly<Record<string, readonly number[]>> = {
  A: [0, 0, 0.5, 1, 0.5, 1, 1, 0, 0.2, 0.4, 0.8, 0.4],
  B: [
    0, 0, 0, 1, 0, 1, 0.7, 1, 0.7, 1, 0.8, 0.75, 0.8, 0.75, 0.7, 0.52, 0.7, 0.52, 0, 0.52, 0.7, 0.52, 0.95, 0.25, 0.95,
    0.25, 0.8, 0, 0.8, 0, 0, 0,
  ],
  C: [
    0.95, 0.8, 0.7, 1, 0.7, 1, 0.3, 1, 0.3, 1, 0, 0.7, 0, 0.7, 0, 0.3, 0, 0.3, 0.3, 0, 0.3, 0, 0.7, 0, 0.7, 0, 0.95,
    0.2,
  ],
  F: [0, 0, 0, 1, 0, 1, 0.9, 1, 0, 0.52, 0.7, 0.52],
  H: [0, 0, 0, 1, 1, 0, 1, 1, 0, 0.5, 1, 0.5],
  K: [0, 0, 0, 1, 0.9, 1, 0, 0.4, 0.3, 0.6, 1, 0],
  L: [0, 1, 0, 0, 0, 0, 0.85, 0],
  M: [0, 0, 0, 1, 0, 1, 0.5, 0.4, 0.5, 0.4, 1, 1, 1, 1, 1, 0],
  O: [
    0.3, 0, 0.7, 0, 0.7, 0, 1, 0.3, 1, 0.3, 1, 0.7, 1, 0.7, 0.7, 1, 0.7, 1, 0.3, 1, 0.3, 1, 0, 0.7, 0, 0.7, 0, 0.3, 0,
    0.3, 0.3, 0,
  ],
  S: [
    0.95, 0.8, 0.7, 1, 0.7, 1, 0.3, 1, 0.3, 1, 0.05, 0.8, 0.05, 0.8, 0.15, 0.58, 0.15, 0.58, 0.85, 0.42, 0.85, 0.42,
    0.95, 0.2, 0.95, 0.2, 0.7, 0, 0.7, 0, 0.3, 0, 0.3, 0, 0.05, 0.2,
  ],
};
