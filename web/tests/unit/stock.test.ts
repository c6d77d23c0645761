import { beforeAll, expect, test } from "vitest";
import type { Answer, Solids } from "../../engine/contract";
import { readReply } from "../../engine/glue";
import { exceptionsUpTo, stocked } from "../../solid/stock";
import { kStrokes } from "../../solid/strokes";
import { example, realEngine } from "./real_engine";

let solids: Solids;
let answer: Answer;
beforeAll(async () => {
  const engine = await realEngine();
  const reply = readReply(engine.ask(JSON.stringify({ border: 1, job: example("kiln-house"), solids: true })));
  if (reply.solids === undefined || reply.answer === undefined) throw new Error("the kiln house was not solved");
  solids = reply.solids;
  answer = reply.answer;
});

test("up to each course there are as many units as the engine laid up to it", () => {
  const stock = stocked(solids);
  expect(stock.unitsUpTo.length).toBe(answer.courses.length + 1);
  for (let course = 0; course <= answer.courses.length; ++course) {
    const laid = solids.courses.filter((one) => one <= course).length;
    expect(stock.unitsUpTo[course], `course ${course}`).toBe(laid);
  }
  expect(stock.unitsUpTo.at(-1)).toBe(answer.counts.pieces);
});

test("each unit keeps its name, its kind and its own box", () => {
  const stock = stocked(solids);
  expect([...stock.names].sort()).toEqual([...solids.names].sort());
  stock.names.forEach((name, at) => {
    const from = solids.names.indexOf(name);
    expect(stock.kinds[at]).toBe(solids.kinds[from]);
    // Single precision of a length under 16 m is 2^-20 m, a micrometre; its half-size and start are two such.
    const middle = (solids.boxes[from * 6] ?? 0) * 1e-6 + ((solids.boxes[from * 6 + 3] ?? 0) * 1e-6) / 2;
    expect(Math.abs((stock.middles[at * 3] ?? 0) - middle)).toBeLessThan(2e-6);
  });
});

test("the view stands around all units", () => {
  const stock = stocked(solids);
  stock.names.forEach((_, at) => {
    for (let axis = 0; axis < 3; ++axis) {
      const middle = stock.middles[at * 3 + axis] ?? 0;
      expect(middle).toBeGreaterThan(stock.low[axis] ?? 0);
      expect(middle).toBeLessThan(stock.high[axis] ?? 0);
    }
  });
});

test("exceptions are counted as the answer counts its kinds", () => {
  const stock = stocked(solids);
  const told = exceptionsUpTo(stock, answer.courses.length);
  const kinds = new Set(solids.kinds.filter((kind, at) => solids.cut[at] === 0 && !/^(full|corner)$/.test(kind)));
  expect(kinds.size).toBeGreaterThan(2);
  for (const kind of kinds) {
    const laid = solids.kinds.filter((one, at) => one === kind && solids.cut[at] === 0).length;
    expect(told.get(kind) ?? 0, kind).toBe(laid);
  }
  expect(told.get("cut") ?? 0).toBe(answer.cost.cuts);
  expect(told.has("full")).toBe(false);
});

test("every mark of the glossary can be drawn, and no letter is kept that none has", () => {
  const marks = ["HA", "CU", "BB", "LI", "SA", "OE", "OB", "CO", "CS", "HH", "SO"] as const;
  expect(Object.keys(kStrokes).sort()).toEqual([...new Set(marks.join(""))].sort());
  for (const strokes of Object.values(kStrokes)) {
    expect(strokes.length % 4).toBe(0);
    for (const value of strokes) expect(value).toBeGreaterThanOrEqual(0);
    for (const value of strokes) expect(value).toBeLessThanOrEqual(1);
  }
});

test("a mark stands on its own unit's faces, within them", () => {
  const kUnit = { names: ["AB-1-1"], courses: [1], kinds: ["half"], cut: [0], marks: ["HA"], fills: ["tint"] } as const;
  // A narrow piece: 60 mm long, 194 mm thick and high.
  const { letters } = stocked({ ...kUnit, boxes: [0, 0, 0, 60_000, 194_000, 194_000], bars: [] });
  // Strokes of H and A are three each, two ends, three numbers, on two faces.
  expect(letters.length).toBe(6 * 2 * 3 * 2);
  for (let at = 0; at < letters.length; at += 3) {
    expect(letters[at + 1]).toBeGreaterThan(0);
    expect(letters[at + 1]).toBeLessThan(0.194);
    expect(letters[at + 2]).toBeGreaterThan(0);
    expect(letters[at + 2]).toBeLessThan(0.194);
  }
});

test("each bar is kept with its foot below its head", () => {
  const { bars } = stocked(solids);
  expect(bars.length).toBe((solids.bars.length / 5) * 4);
  expect(bars.length).toBeGreaterThan(0);
  for (let at = 0; at < bars.length; at += 4) expect(bars[at + 3]).toBeGreaterThan(bars[at + 2] ?? 0);
});
