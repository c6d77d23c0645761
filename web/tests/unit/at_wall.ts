// One course of the kiln house at the wall, with the engine itself behind it.
import type { Tape } from "../../engine/contract";
import { readReply } from "../../engine/glue";
import { jobText, type Json, readJson } from "../../job/pointer";
import type { Site } from "../../state/wall/entries";
import { example, realEngine } from "./real_engine";

export const engine = await realEngine();
export const job = readJson(example("kiln-house")) ?? {};
export const kFirst = 1_412_875_000; // 55 5/8 in

export function courseOf(document: Json, trial?: { at_nm: number; past_nm: number }) {
  const course = { side: "AB", course: 1, ...(trial === undefined ? {} : { trial }) };
  const reply = readReply(engine.ask(JSON.stringify({ border: 1, job: jobText(document), course })));
  return { reply, course: reply.course };
}

/// As the engine writes them, at once.
export function written(steps: readonly number[], tape: Tape): readonly string[] {
  const request = { border: 1, lengths: { tape, write: steps } };
  return readReply(engine.ask(JSON.stringify(request))).head.lengths?.written ?? [];
}

export const site: Site = {
  tape: "inches",
  step: 1_587_500,
  side: "AB",
  course: 1,
  unit: 396_875_000,
  joint: 9_525_000,
  planned: 2_835_275_000,
  plannedText: `9'-3 5/8"`,
  markText: `4'-7 5/8"`,
};

export const stamp = (id: string) => ({ id, when: "", by: "" });
