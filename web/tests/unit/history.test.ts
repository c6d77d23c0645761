import fc from "fast-check";
import { expect, test } from "vitest";
import { begun, done, type History, kStepsKept, redoable, redone, undoable, undone } from "../../job/history";

function after(texts: readonly string[]): History {
  return texts.reduce((history, text) => done(history, text, `to ${text}`), begun("start"));
}

test("undo of every step leads back to the start, redo of every step to the end", () => {
  fc.assert(
    fc.property(fc.array(fc.string(), { maxLength: 60 }), (texts) => {
      const whole = after(texts);
      let back = whole;
      while (undoable(back) !== undefined) back = undone(back);
      expect(back.now.text).toBe("start");
      let forth = back;
      while (redoable(forth) !== undefined) forth = redone(forth);
      expect(forth).toEqual(whole);
    }),
  );
});

test("the same text is no step", () => {
  const history = after(["a"]);
  expect(done(history, "a", "again")).toBe(history);
});

test("a step after an undo ends what could be done again", () => {
  const history = done(undone(after(["a", "b"])), "c", "to c");
  expect(redoable(history)).toBeUndefined();
  expect(undone(history).now.text).toBe("a");
});

test("undo and redo with nothing to do change nothing", () => {
  const history = begun("start");
  expect(undone(history)).toBe(history);
  expect(redone(history)).toBe(history);
});

test("undo names the step it takes back, redo the one it brings", () => {
  const history = undone(after(["a", "b"]));
  expect(undoable(history)).toBe("to a");
  expect(redoable(history)).toBe("to b");
});

test("the oldest steps go when more are made than are kept", () => {
  const history = after(Array.from({ length: kStepsKept + 5 }, (_, at) => `step ${at}`));
  expect(history.past.length).toBe(kStepsKept);
  // 205 steps from "start": the past would hold start and steps 0..203; without its five oldest it begins with step 4.
  expect(history.past[0]?.text).toBe("step 4");
});
