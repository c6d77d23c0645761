// Lengths as whole steps of the tape, for entering by thumb: sixteenths of an inch, or millimetres.
export type Tape = "inches" | "millimetres";

export function stepNm(tape: Tape): number {
  return tape === "inches" ? 1_587_500 : 1_000_000;
}

/// As many steps as come nearest to a length.
export function stepsOf(nm: number, tape: Tape): number {
  return Math.round(nm / stepNm(tape));
}

/// 19 -> 1 3/16"; 0 -> 0"; 40 -> 40 mm. The engine reads it back as it stands.
export function stepsText(steps: number, tape: Tape): string {
  const sign = steps < 0 ? "-" : "";
  const size = Math.abs(steps);
  if (tape === "millimetres") return `${sign}${size} mm`;
  const inches = Math.floor(size / 16);
  let top = size % 16;
  let bottom = 16;
  while (top > 0 && top % 2 === 0) {
    top /= 2;
    bottom /= 2;
  }
  const fraction = top === 0 ? "" : `${top}/${bottom}`;
  const whole = inches === 0 && fraction !== "" ? "" : String(inches);
  return `${sign}${[whole, fraction].filter((part) => part !== "").join(" ")}"`;
}
