// A drawing in its frame: legible at any size, its start corner seen first.
import { describe, expect, it } from "vitest";
import type { DrawingHead } from "../../engine/contract";
import {
  first,
  fitting,
  isSeen,
  keepingUnder,
  resting,
  smallestLettering,
  startCorner,
  stepped,
  within,
} from "../../draw/frame";
import { realEngine, example } from "./real_engine";
import { readReply } from "../../engine/glue";

const kPaper = { width: 200_000, height: 150_000 };

describe("the size at rest", () => {
  it("is the whole drawing where its letters can be read", () => {
    // 1000 px for 200 mm are 5 px/mm: letters of 3.4 mm are 17 px high.
    expect(resting({ width: 1000, height: 1000 }, kPaper, 3_400)).toBe(0.005);
  });
  it("is never so small that the smallest letters are under 12 px", () => {
    for (const width of [320, 360, 768]) {
      const pixels = resting({ width, height: 240 }, kPaper, 3_400);
      expect(pixels * 3_400).toBeGreaterThanOrEqual(12 - 1e-9);
      expect(pixels).toBeGreaterThan(fitting({ width, height: 240 }, kPaper));
    }
  });
  it("of a drawing without letters is the whole of it", () => {
    expect(smallestLettering("<svg><path d='M0 0'/></svg>")).toBe(0);
    expect(resting({ width: 100, height: 100 }, kPaper, 0)).toBe(100 / 200_000);
  });
});

describe("zooming", () => {
  it("goes by steps from wherever a wheel left it, and ends at both ends", () => {
    expect(stepped(1, 1)).toBe(1.5);
    expect(stepped(1.7, 1)).toBe(2.2);
    expect(stepped(1.7, -1)).toBe(1.5);
    expect(stepped(1, -1)).toBe(1);
    expect(stepped(6.5, 1)).toBe(6.5);
    expect(within(0.3)).toBe(1);
    expect(within(99)).toBe(6.5);
  });
  it("keeps what lies under the hand under it", () => {
    // The middle of a paper of 800 px, made 1600 px wide, under x = 100.
    expect(keepingUnder({ x: 0.5, y: 0.25 }, { width: 1600, height: 1200 }, { x: 100, y: 60 })).toEqual({
      x: 700,
      y: 240,
    });
  });
});

async function drawn(job: string, name: string): Promise<readonly [DrawingHead, string]> {
  const engine = await realEngine();
  const asked = { border: 1, job: example(job), drawings: [name], budget: 0 };
  const reply = readReply(engine.ask(JSON.stringify(asked)));
  const [head] = reply.head.drawings ?? [];
  if (head === undefined) throw new Error("no drawing");
  return [head, reply.svg(name) ?? ""];
}

describe("the start corner", () => {
  it("of a plan is the end of the first side at which the walk begins, the building on the right hand", async () => {
    for (const name of ["kiln-house", "glaze-store", "clay-store", "wash-stand"]) {
      const [plan, svg] = await drawn(name, "plan-course-1");
      const side = plan.handles.find((one) => one.kind === "side" && one.index === 0);
      if (side?.kind !== "side") throw new Error("no side");
      // Outward is a quarter turn to the left of the walk; the paper's y goes down.
      const walk = { x: -side.outward[1], y: side.outward[0] };
      const begins = {
        x: walk.x < 0 ? side.x + side.width : side.x,
        y: walk.y < 0 ? side.y + side.height : side.y,
      };
      const corner = startCorner(svg);
      // The name stands beside it: within 15 mm on paper.
      expect(Math.abs(corner.x - begins.x), name).toBeLessThan(15_000);
      expect(Math.abs(corner.y - begins.y), name).toBeLessThan(15_000);
    }
  });
  it("of an elevation lies at the right: a wall is seen from outside", async () => {
    for (const name of ["elevation-1", "elevation-2", "elevation-3", "elevation-4"]) {
      const [side, svg] = await drawn("kiln-house", name);
      expect(startCorner(svg).x).toBeGreaterThan(0.9 * side.width);
    }
  });
  it("of an elevation from inside lies at the left, and its openings go to the right", async () => {
    for (const number of [1, 2, 3, 4]) {
      const [outside] = await drawn("kiln-house", `elevation-${number}`);
      const [head, svg] = await drawn("kiln-house", `elevation-${number}-inside`);
      expect(head.name).toBe(`elevation-${number}-inside`);
      expect(startCorner(svg).x).toBeLessThan(0.3 * head.width);
      expect(head.handles.length).toBe(outside.handles.length);
      for (const handle of head.handles) expect("along" in handle ? handle.along[0] : 0).toBe(1);
    }
  });
  it("is seen when the drawing is first shown, however large", async () => {
    for (const name of ["plan-course-1", "elevation-1"]) {
      const [head, svg] = await drawn("kiln-house", name);
      for (const pixels of [0.004, 0.02]) {
        const paper = { width: head.width * pixels, height: head.height * pixels };
        const frame = { width: 340, height: 240 };
        const corner = startCorner(svg);
        const wanted = first(corner, pixels, paper, frame);
        // As a browser moves a frame: never beyond its paper.
        const moved = {
          x: Math.max(0, Math.min(paper.width - frame.width, wanted.x)),
          y: Math.max(0, Math.min(paper.height - frame.height, wanted.y)),
        };
        expect(isSeen({ x: corner.x * pixels, y: corner.y * pixels }, moved, frame), name).toBe(true);
      }
    }
  });
});

describe("lettering", () => {
  it("is read from the engine's own drawings: no letter under 2.5 mm high", async () => {
    const engine = await realEngine();
    const reply = readReply(
      engine.ask(JSON.stringify({ border: 1, job: example("kiln-house"), drawings: ["plan-course-1"], budget: 0 })),
    );
    // Capitals of B612 are 0.729 of its size; the smallest lettering of a sheet is 2.5 mm (ISO 3098).
    expect(smallestLettering(reply.svg("plan-course-1") ?? "")).toBeGreaterThanOrEqual(2_500);
  });
});
