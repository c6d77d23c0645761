// What the user does to the building, with the engine itself behind it and no browser: jobs, refusals, offers, faults.
import { expect, test } from "vitest";
import { readJson, textAt } from "../../job/pointer";
import { putIn, settle, takeOffer, takeOut, typed } from "../../state/building";
import {
  course,
  fieldTrouble,
  history,
  inHand,
  isExample,
  job,
  offersNow,
  readOnly,
  refusals,
  shown,
  trouble,
} from "../../state/signals";
import { turns, turnsOver } from "../../state/changing";
import { beginDrafts, draft, endDrafts } from "../../state/solving";
import { begin, putOnTable } from "../../state/table";
import { redo, undo } from "../../state/undoing";
import { client, fieldOf, kInch, kKiln, onTheTable, still } from "./on_the_table";
import { example } from "./real_engine";

onTheTable();

test("a job put on the table is drawn; of whole units already, it has no offers", () => {
  expect(shown.value?.answer.sides.map((side) => side.name)).toEqual(["AB", "BC", "CD", "DA"]);
  expect(shown.value?.plan?.svg).toContain("<svg");
  expect(offersNow.value).toEqual([]);
  expect(isExample.value).toBe(true);
});

test("an offer taken is one step, changes what it said, and undo brings the very text back", async () => {
  await putOnTable(example("hillside-shed"), false);
  await still();
  const text = history.value.now.text;
  const offer = offersNow.value?.[0];
  if (offer === undefined) throw new Error("no offer");
  const before = shown.value?.answer;
  await takeOffer(offer);
  expect(history.value.past.length).toBe(1);
  expect(shown.value?.answer.cost).not.toEqual(before?.cost);
  undo();
  await still();
  expect(history.value.now.text).toBe(text);
  expect(shown.value?.answer).toEqual(before);
  redo();
  await still();
  expect(shown.value?.answer.cost).not.toEqual(before?.cost);
}, 60_000); // a building off the module, whose offers are looked for three times

test("a change counts as asked for from the tap until it is made; two taps on one seen building are one change", async () => {
  const before = shown.value?.answer.sides[0];
  if (before === undefined) throw new Error("no side");
  const openings = () => (readJson(history.value.now.text) as { openings: unknown[] }).openings.length;
  const had = openings();
  void putIn(before, "window");
  void putIn(before, "window");
  expect(turns.value).toBe(2);
  await turnsOver();
  expect(turns.value).toBe(0);
  expect(openings()).toBe(had + 1);
});

test("a side of a rectangle is typed in any form, the side across goes with it, and the text stays as typed", async () => {
  await typed(fieldOf("/outline/sides/0", "length"), "26 ft");
  await still();
  expect(fieldTrouble.value).toBeUndefined();
  expect(textAt(job.value, "/outline/sides/0/length")).toBe("26 ft");
  // 26 ft is 312 in, nominal: as written between the middles of joints.
  expect(shown.value?.answer.sides.map((side) => side.nominal.nm / kInch)).toEqual([312, 240, 312, 240]);
  expect(history.value.now.what).toBe("length changed");
});

test("a side of an L is typed, nominal or actual, and the side that runs the other way goes with it", async () => {
  await putOnTable(example("glaze-store"), false);
  const inches = () => shown.value?.answer.sides.map((side) => side.nominal.nm / kInch);
  // 32, 24, 16, 8, 16 and 16 ft; EF's nominal and actual differ by nothing, DE's too: a convex and a re-entrant end.
  expect(inches()?.slice(0, 6)).toEqual([384, 288, 192, 96, 192, 192]);
  await typed(fieldOf("/outline/sides/0", "length"), "33'-4\"");
  // AB runs west, CD is the first side that runs east: it gets as much longer, 16 in.
  expect(inches()?.slice(0, 6)).toEqual([400, 288, 208, 96, 192, 192]);
  expect(textAt(job.value, "/outline/sides/0/length")).toBe("33'-4\"");
  // AB ends in two outer corners: actual it is a joint of 3/8 in shorter.
  await typed(fieldOf("/outline/sides/0", "length"), `391 5/8" actual`);
  expect(inches()?.slice(0, 3)).toEqual([392, 288, 200]);
  expect(textAt(job.value, "/outline/sides/0/length")).toBe(`391 5/8" actual`);
  expect(client.asked.some((request) => request.begin !== undefined)).toBe(false);
});

test("undo says in words what it takes back, also for a place measured from a corner", async () => {
  await typed(fieldOf("/openings/0", "at"), "8'-0\"");
  expect(history.value.now.what).toBe("from corner A changed");
});

test("a text that is no length is refused beside its field; job and drawing stay", async () => {
  const before = shown.value?.answer;
  const field = fieldOf("/openings/0", "at");
  await typed(field, "nine feet");
  expect(fieldTrouble.value).toMatchObject({ pointer: field.pointer, typed: "nine feet" });
  expect(fieldTrouble.value?.refusals.refusals[0]?.reason).not.toBe("");
  expect(refusals.value).toBeUndefined();
  expect(history.value.now.text).toBe(kKiln);
  expect(shown.value?.answer).toBe(before);
});

test("an opening beyond its wall is refused, and the next good size clears the refusal", async () => {
  const field = fieldOf("/openings/0", "at");
  await typed(field, "27'-0\"");
  expect(fieldTrouble.value?.pointer).toBe(field.pointer);
  await typed(field, "8'-0\"");
  await still();
  expect(fieldTrouble.value).toBeUndefined();
  expect(textAt(job.value, field.pointer)).toBe("8'-0\"");
});

test("of the frames of a drag the newest is shown, those overtaken are never asked for", async () => {
  beginDrafts();
  const asked = client.asked.length;
  for (let step = 1; step <= 30; ++step) {
    draft(kKiln, { do: "move-opening", opening: 0, to_nm: 112 * kInch + step * kInch }, () => "");
  }
  await still();
  const frames = client.asked.slice(asked);
  expect(frames.length).toBe(2);
  expect(frames.every((frame) => frame.budget === 0)).toBe(true);
  expect(frames[1]?.edits).toEqual([{ do: "move-opening", opening: 0, to_nm: 142 * kInch }]);
  expect(shown.value?.stage).toBe("hand");
  expect(shown.value?.answer.openings[0]?.from.nm).toBe(142 * kInch);
  expect(history.value.now.text).toBe(kKiln);
  endDrafts();
});

test("a frame that cannot be built leaves the last good drawing and says why", async () => {
  beginDrafts();
  const before = shown.value?.answer;
  draft(kKiln, { do: "move-opening", opening: 0, to_nm: 330 * kInch }, () => "");
  await still();
  expect(refusals.value?.refusals.length).toBeGreaterThan(0);
  expect(shown.value?.answer).toBe(before);
  endDrafts();
});

test("a hand that lets go makes one step of the whole drag", async () => {
  await settle(kKiln, { do: "move-opening", opening: 0, to_nm: 96 * kInch }, "D1 moved");
  expect(history.value.past.length).toBe(1);
  expect(history.value.now.what).toBe("D1 moved");
  expect(shown.value?.stage).toBe("first");
});

test("a hand that lets go where nothing can be built leaves the job as it was, and says why", async () => {
  await settle(kKiln, { do: "move-opening", opening: 0, to_nm: 330 * kInch }, "D1 moved");
  expect(history.value.now.text).toBe(kKiln);
  expect(refusals.value?.refusals.length).toBeGreaterThan(0);
});

test("four sizes begin a building of one's own", async () => {
  expect(await begin({ length: "24'", width: "16'", height: "8'", series: "us-8" })).toBeUndefined();
  await still();
  expect(isExample.value).toBe(false);
  // 24 x 16 ft of 8 in courses to 8 ft: 12 courses.
  expect(shown.value?.answer.courses.length).toBe(12);
  expect(shown.value?.answer.sides.map((side) => side.nominal.nm / kInch)).toEqual([288, 192, 288, 192]);
});

test("sizes that are none are told back and nothing is begun", async () => {
  const told = await begin({ length: "long", width: "16'", height: "8'", series: "us-8" });
  expect(told).not.toBe("");
  expect(told).toBeDefined();
  expect(history.value.now.text).toBe(kKiln);
  expect(trouble.value).toBeUndefined();
});

test("an opening put in is in hand, and taken back by undo", async () => {
  const side = shown.value?.answer.sides.find((one) => one.name === "DA");
  if (side === undefined) throw new Error("no side DA");
  await typed(fieldOf("/outline/sides/0", "length"), "28 ft");
  await putIn(side, "door");
  // The rest of the job's text stays as it was typed.
  expect(textAt(job.value, "/outline/sides/0/length")).toBe("28 ft");
  expect(textAt(job.value, "/openings/4/on")).toBe("DA");
  expect(inHand.value).toBe("/openings/4");
  expect(shown.value?.answer.openings.length).toBe(5);
  undo();
  await still();
  expect(shown.value?.answer.openings.length).toBe(4);
});

test("a fault of the engine leaves the job, says so, and the next change is made all the same", async () => {
  const field = fieldOf("/openings/0", "at");
  client.fail = true;
  await typed(field, "8'-0\"");
  expect(trouble.value).toEqual({ kind: "fault" });
  expect(history.value.now.text).toBe(kKiln);
  expect(shown.value?.answer.openings.length).toBe(4);
  await typed(field, "8'-0\"");
  await still();
  expect(trouble.value).toBeUndefined();
  expect(textAt(job.value, field.pointer)).toBe("8'-0\"");
});

test("a fault in the middle of a drag leaves the job, and the next frame is asked for", async () => {
  beginDrafts();
  client.fail = true;
  draft(kKiln, { do: "move-opening", opening: 0, to_nm: 100 * kInch }, () => "");
  await still();
  expect(trouble.value).toEqual({ kind: "fault" });
  draft(kKiln, { do: "move-opening", opening: 0, to_nm: 104 * kInch }, () => "");
  await still();
  expect(shown.value?.answer.openings[0]?.from.nm).toBe(104 * kInch);
  expect(history.value.now.text).toBe(kKiln);
  endDrafts();
});

test("a page that only looks on changes nothing", async () => {
  readOnly.value = true;
  const offer = offersNow.value?.[0];
  if (offer !== undefined) await takeOffer(offer);
  await typed(fieldOf("/openings/0", "at"), "8'-0\"");
  undo();
  expect(history.value.now.text).toBe(kKiln);
});

test("a course that the building lost is left for its highest", async () => {
  await putOnTable(example("wash-stand"), false);
  course.value = 7;
  await typed(fieldOf("", "courses"), "6");
  await still();
  expect(fieldTrouble.value).toBeUndefined();
  expect(course.value).toBe(6);
  expect(shown.value?.plan?.head.course).toBe(6);
});

test("an opening taken out with one tap too many is the only one that goes; a door put in so is one door", async () => {
  const before = shown.value?.answer.openings.map((one) => one.name);
  await Promise.all([takeOut("/openings/0"), takeOut("/openings/0")]);
  await still();
  expect(shown.value?.answer.openings.map((one) => one.name)).toEqual(before?.slice(1));
  const side = shown.value?.answer.sides.find((one) => one.name === "DA");
  if (side === undefined) throw new Error("no side DA");
  await Promise.all([putIn(side, "door"), putIn(side, "door")]);
  await still();
  expect(shown.value?.answer.openings.length).toBe(before?.length);
});
