// Each hold point has its own address; one that is not known opens the first.
import { expect, test } from "vitest";
import { kPoints, placeOf } from "../../state/point";
import { openQuestions } from "../../state/hold_points";

test("an address opens its point, an unknown one the first, none the beginning for whoever has no job", () => {
  for (const point of kPoints) expect(placeOf(`#${point}`, false)).toBe(point);
  expect(placeOf("#jobs", true)).toBe("jobs");
  expect(placeOf("#attic", true)).toBe("order");
  expect(placeOf("#attic", false)).toBe("order");
  expect(placeOf("", true)).toBe("order");
  expect(placeOf("", false)).toBe("jobs");
});

test("a question is open unless it is answered with yes", () => {
  const question = { code: "x", text: "y", answer: "yes", says: "z", place: "", drawing: "", chosen: "" } as const;
  const questions = [question, { ...question, answer: "no" }, { ...question, answer: "not-read" }] as const;
  const point = { code: "pour", title: "Pour", lacks: [], to_read: [], stands: true, done: false };
  expect(openQuestions({ ...point, questions })).toBe(2);
  const chosen = { ...question, answer: "no", chosen: "grind high spots" } as const;
  expect(openQuestions({ ...point, questions: [...questions, chosen] })).toBe(2);
});
