// Pages in little are the pages of the set itself.
import { readFileSync } from "node:fs";
import { describe, expect, it } from "vitest";
import { base64, type Reply, readReply } from "../../engine/glue";
import { drawPage, type Inks, pagesOf } from "../../parts/sheet_picture";
import { example, realEngine } from "./real_engine";

const font = (weight: string): string =>
  base64(readFileSync(new URL(`../../../engine/paper/fonts/B612-${weight}.otf`, import.meta.url)));

async function setOf(name: string, of: string): Promise<Reply> {
  const engine = await realEngine();
  const fonts = { regular: font("Regular"), bold: font("Bold") };
  return readReply(
    engine.ask(JSON.stringify({ border: 1, job: example(name), set: "letter", sheets: "letter", of, fonts })),
  );
}

/// A canvas that keeps the boxes of what is drawn, in its own pixels.
function recorder() {
  const bars: { readonly x: number; readonly y: number; readonly width: number }[] = [];
  const points: { readonly x: number; readonly y: number }[] = [];
  const stack: number[][] = [];
  let now = [1, 0, 0, 1, 0, 0];
  const at = (x: number, y: number) => {
    const [a = 1, b = 0, c = 0, d = 1, e = 0, f = 0] = now;
    return { x: a * x + c * y + e, y: b * x + d * y + f };
  };
  const put = (x: number, y: number): void => void points.push(at(x, y));
  const none = (): void => undefined;
  const inks = {
    lineWidth: 1,
    fillStyle: "",
    strokeStyle: "",
    globalAlpha: 1,
    save: () => void stack.push([...now]),
    restore: () => (now = stack.pop() ?? now),
    transform: (...by: number[]) => {
      const [a = 1, b = 0, c = 0, d = 1] = now;
      const [g = 1, h = 0, i = 0, j = 1, k = 0, l = 0] = by;
      const to = at(k, l);
      now = [a * g + c * h, b * g + d * h, a * i + c * j, b * i + d * j, to.x, to.y];
    },
    fillRect: (x: number, y: number, width: number) => void bars.push({ ...at(x, y), width }),
    moveTo: put,
    lineTo: put,
    bezierCurveTo: (...of: number[]) => put(of[4] ?? 0, of[5] ?? 0),
    beginPath: none,
    closePath: none,
    clip: none,
    fill: none,
    stroke: none,
    setLineDash: none,
  };
  return { inks: inks as unknown as Inks, bars, points, depth: () => stack.length };
}

describe("a set's pages in little", () => {
  for (const [name, of] of [
    ["kiln-house", "order"],
    ["clay-store", "first-course"],
  ] as const) {
    it(`${name}, ${of}: as many as are listed, each of the paper's size, everything on it and nothing beside it`, {
      timeout: 30_000,
    }, async () => {
      const reply = await setOf(name, of);
      const bytes = reply.bytes("set-letter.pdf");
      if (bytes === undefined) throw new Error("no set was made");
      const pages = pagesOf(bytes);
      expect(pages.length).toBe(reply.head.sheets?.filter((sheet) => sheet.hold_point === of).length);
      for (const page of pages) {
        expect([page.width, page.height].map(Math.round).sort()).toEqual([612, 792]); // 8.5 x 11 in
        const made = recorder();
        drawPage(page, made.inks, 0.25);
        expect(made.depth()).toBe(0);
        expect(made.points.length).toBeGreaterThan(20);
        expect(made.bars.length).toBe(page.content.match(/Tj/g)?.length);
        const drawn = [...made.points, ...made.bars];
        const [wide, high] = [page.width * 0.25 + 1, page.height * 0.25 + 1];
        expect(drawn.filter(({ x, y }) => x < -1 || x > wide || y < -1 || y > high)).toEqual([]);
        // Letters stand the right way up: the title block's name lies in the page's upper or lower band, never mirrored.
        expect(made.bars.every((bar) => bar.width > 0)).toBe(true);
      }
    });
  }
  it("every hold point's own pages are made, and all together they are the whole set", {
    timeout: 60_000,
  }, async () => {
    const engine = await realEngine();
    const fonts = { regular: font("Regular"), bold: font("Bold") };
    const ask = (of: object) =>
      readReply(engine.ask(JSON.stringify({ border: 1, job: example("kiln-house"), set: "letter", fonts, ...of })));
    const count = (reply: Reply): number => pagesOf(reply.bytes("set-letter.pdf") ?? new Uint8Array()).length;
    const printed = new Set<string>();
    for (const of of ["order", "pour", "first-course", "lintels", "grout", "top"]) {
      const reply = ask({ of, sheets: "letter" });
      expect(reply.head.state, of).toBe("solved");
      const own = reply.head.sheets?.filter((sheet) => sheet.hold_point === of || sheet.also === of) ?? [];
      expect(own.length, of).toBeGreaterThan(0);
      expect(count(reply), of).toBe(own.length);
      for (const sheet of own) printed.add(sheet.name);
    }
    // A sheet with the lists of two points is printed at both.
    expect(printed.size).toBe(count(ask({})));
  });
  it("finds no page in what is no set", () => {
    expect(pagesOf(new TextEncoder().encode("%PDF-1.7\nnothing"))).toEqual([]);
  });
});
