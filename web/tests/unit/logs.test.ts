// What the user enters into the logs, with the engine itself behind it and no browser.
import { expect, test } from "vitest";
import { redoable } from "../../job/history";
import { laidOf } from "../../job/laid";
import { readingsOf } from "../../job/readings";
import { putBars } from "../../state/building";
import { bringBack, enter, enterLaid, strike } from "../../state/logs";
import { history, job, readOnly, shown, trouble } from "../../state/signals";
import { putOnTable } from "../../state/table";
import { redo, undo } from "../../state/undoing";
import { onTheTable } from "./on_the_table";
import { example } from "./real_engine";

onTheTable();

test("two entries at once are two entries: neither is lost, neither is told as a fault", async () => {
  const read = (length: string) => ({ kind: "tape", from: "A", to: "B", length }) as const;
  const told = await Promise.all([
    enter(read(`27'-11 5/8"`), "", "A – B"),
    enter(read(`27'-11 3/4"`), "", "A – B"),
    enterLaid({ laid: { on: "AB", course: 1 } }, "", "AB-1"),
  ]);
  expect(told.slice(0, 2)).toEqual([undefined, undefined]);
  expect(told[2]).toMatchObject({ id: expect.any(String) });
  expect(readingsOf(job.value).map((one) => one.value)).toEqual([`27'-11 3/4"`, `27'-11 5/8"`]);
  expect(laidOf(job.value)).toHaveLength(1);
  expect(trouble.value).toBeUndefined();
});

test("undo waits for what was asked before it, and takes that back", async () => {
  const entering = enter({ kind: "tape", from: "A", to: "B", length: "28'" }, "", "A – B");
  const undoing = undo();
  expect(await entering).toBeUndefined();
  await undoing;
  expect(readingsOf(job.value).map((one) => one.struck)).toEqual([true]);
});

test("what is asked of a job that is left is not done to the one that takes its place", async () => {
  const entering = enterLaid({ laid: { on: "AB", course: 1 } }, "", "AB-1");
  const waiting = enterLaid({ laid: { on: "BC", course: 1 } }, "", "BC-1");
  await putOnTable(example("clay-store"), false);
  expect(await Promise.all([entering, waiting])).toEqual([{ refused: "" }, { refused: "" }]);
  expect(history.value.now.text).toBe(example("clay-store"));
});

test("a strike is undone and done again by entries more; nothing is erased", async () => {
  await enter({ kind: "tape", from: "A", to: "B", length: `27'-11 5/8"` }, "", "A – B");
  await enter({ kind: "tape", from: "A", to: "C", length: `412 3/8"` }, "", "A – C");
  const struck = () => readingsOf(job.value).map((one) => one.struck); // newest first
  await strike(readingsOf(job.value)[1]?.id ?? "", "A – B");
  expect(struck()).toEqual([false, true]);
  const counted = () => shown.value?.answer.ground?.tape.lines.length;
  expect(counted()).toBe(1);
  await undo();
  expect(struck()).toEqual([false, false]);
  expect(counted()).toBe(2);
  expect(redoable(history.value)).toBe("reading A – B struck");
  await redo();
  expect(struck()).toEqual([false, true]);
  await undo();
  await undo();
  expect(struck()).toEqual([true, false]);
  await redo();
  await redo();
  expect(struck()).toEqual([false, true]);
  await bringBack("/readings", readingsOf(job.value)[1]?.id ?? "", "A – B");
  expect(struck()).toEqual([false, false]);
});

test("a reading of the page that only looks on is refused, not swallowed", async () => {
  readOnly.value = true;
  expect(await enter({ kind: "tape", from: "A", to: "B", length: "28'" }, "", "A – B")).not.toBe(undefined);
  expect(await putBars("#4", `48"`)).not.toBe(undefined);
});
