// The pages of a printed set in little: the engine's own PDF read as it writes it (engine/ink/pdf_strokes.cpp), outlines,
// hatches and grounds drawn, each line of lettering as a bar, for it would be too small to read.

export interface SetPage {
  /// Points, 1/72 in.
  readonly width: number;
  readonly height: number;
  readonly content: string;
}

/// What of a canvas is needed; a test gives its own.
export type Inks = Pick<
  CanvasRenderingContext2D,
  | "save"
  | "restore"
  | "beginPath"
  | "moveTo"
  | "lineTo"
  | "bezierCurveTo"
  | "closePath"
  | "clip"
  | "fill"
  | "stroke"
  | "fillRect"
  | "setLineDash"
  | "transform"
> & { lineWidth: number; fillStyle: unknown; strokeStyle: unknown; globalAlpha: number };

/// One byte, one character: a PDF is no text.
function lettersOf(bytes: Uint8Array): string {
  let text = "";
  for (let at = 0; at < bytes.length; at += 0x8000) text += String.fromCharCode(...bytes.subarray(at, at + 0x8000));
  return text;
}

/// The pages of a set, in order.
export function pagesOf(bytes: Uint8Array): readonly SetPage[] {
  const text = lettersOf(bytes);
  const pages: SetPage[] = [];
  for (const found of text.matchAll(
    /<< \/Type \/Page \/Parent [^>]*?\/MediaBox \[0 0 ([\d.]+) ([\d.]+)\][^>]*?\/Contents (\d+) 0 R/g,
  )) {
    const [, width = "", height = "", number = ""] = found;
    const stream = new RegExp(`\\n${number} 0 obj\\n<<[^>]*?/Length (\\d+) >>\\nstream\\n`).exec(text);
    if (stream === null) continue;
    const from = stream.index + stream[0].length;
    pages.push({
      width: Number(width),
      height: Number(height),
      content: text.slice(from, from + Number(stream[1])),
    });
  }
  return pages;
}

/// A line of lettering is so much of its size high, and each letter so wide, near enough for a bar.
const kBar = { high: 0.55, wide: 0.56 } as const;
/// A line is not drawn thinner than this, in CSS pixels: it would fade away.
const kThinnest = 0.35;

function grey(level: number): string {
  const part = Math.round(255 * level);
  return `rgb(${part} ${part} ${part})`;
}

function colour(parts: readonly number[]): string {
  return `rgb(${parts.map((part) => Math.round(255 * part)).join(" ")})`;
}

/// Draws what the operators of a page say.
class Painter {
  private readonly inks: Inks;
  private readonly thinnest: number;
  private begun = false;
  private clips = false;
  private size = 0;
  private place: readonly number[] = [1, 0, 0, 1, 0, 0];
  private letters = 0;

  constructor(inks: Inks, scale: number) {
    this.inks = inks;
    this.thinnest = kThinnest / scale;
  }

  /// The letters of the line that is written next: four digits for each.
  hear(digits: string): void {
    this.letters = (digits.length - 2) / 4;
  }

  act(operator: string, of: readonly number[]): void {
    const { inks } = this;
    const [a = 0, b = 0, c = 0, d = 0, x = 0, y = 0] = of;
    if (operator === "m") this.begin(a, b);
    else if (operator === "l") inks.lineTo(a, b);
    else if (operator === "c") inks.bezierCurveTo(a, b, c, d, x, y);
    else if (operator === "h") inks.closePath();
    else if (operator === "W") this.clips = true;
    else if (operator === "q") inks.save();
    else if (operator === "Q") inks.restore();
    else if (operator === "Tj") this.bar();
    else if (operator === "f" || operator === "S" || operator === "B" || operator === "n") this.paint(operator);
    else this.set(operator, of);
  }

  private begin(x: number, y: number): void {
    if (!this.begun) this.inks.beginPath();
    this.begun = true;
    this.inks.moveTo(x, y);
  }

  private paint(how: "f" | "S" | "B" | "n"): void {
    if (how === "f" || how === "B") this.inks.fill();
    if (how === "S" || how === "B") this.inks.stroke();
    if (this.clips) this.inks.clip();
    this.begun = false;
    this.clips = false;
  }

  private set(operator: string, of: readonly number[]): void {
    const { inks } = this;
    const [first = 0] = of;
    if (operator === "w") inks.lineWidth = Math.max(first, this.thinnest);
    else if (operator === "d") inks.setLineDash(of.slice(0, -1));
    else if (operator === "G") inks.strokeStyle = grey(first);
    else if (operator === "g") inks.fillStyle = grey(first);
    else if (operator === "RG") inks.strokeStyle = colour(of);
    else if (operator === "rg") inks.fillStyle = colour(of);
    else if (operator === "Tf") this.size = first;
    else if (operator === "Tm") this.place = of;
  }

  private bar(): void {
    const { inks, size } = this;
    const [a = 1, b = 0, c = 0, d = 1, x = 0, y = 0] = this.place;
    inks.save();
    inks.transform(a, b, c, d, x, y);
    inks.globalAlpha = 0.55;
    inks.fillRect(0, 0.05 * size, this.letters * size * kBar.wide, size * kBar.high);
    inks.restore();
  }
}

/// Numbers, operators, letters as digits, and what tags a stretch of the page.
const kWords = /\(([^\\)]|\\.)*\)|<[0-9A-F]*>|<<|>>|[^\s[\]<>()]+/g;

/// Draws a page at so many CSS pixels to the point, its upper left corner at the canvas's own.
export function drawPage(page: SetPage, inks: Inks, scale: number): void {
  const painter = new Painter(inks, scale);
  inks.save();
  inks.transform(scale, 0, 0, -scale, 0, page.height * scale);
  inks.fillStyle = grey(0);
  inks.strokeStyle = grey(0);
  let numbers: number[] = [];
  for (const [word] of page.content.matchAll(kWords)) {
    const number = Number(word);
    if (!Number.isNaN(number)) numbers.push(number);
    else if (word.startsWith("<") && word !== "<<") painter.hear(word);
    else if (/^[A-Za-z]/.test(word)) {
      painter.act(word, numbers);
      numbers = [];
    }
  }
  inks.restore();
}
