// What the page counts of the hold points that the engine tells.
import type { HoldPoint } from "../engine/contract";

/// Questions that are not answered with yes, and that no remedy is chosen for.
export function openQuestions(point: HoldPoint): number {
  return point.questions.filter((question) => question.answer !== "yes" && question.chosen === "").length;
}
