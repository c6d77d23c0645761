// The tape that a job is worked with.
import type { Tape } from "../engine/contract";
import { type Json, textAt } from "./pointer";

export type { Tape };

export function tapeOf(job: Json): Tape {
  return textAt(job, "/tape") === "millimetres" ? "millimetres" : "inches";
}
