// What the user does, with the engine itself behind it and no browser: jobs, refusals, offers, faults.
import { beforeAll, beforeEach, expect, test } from "vitest";
import {
  begin,
  bringBack,
  enter,
  enterLaid,
  putBars,
  putIn,
  putOnTable,
  redo,
  settle,
  strike,
  takeOffer,
  takeOut,
  typed,
  undo,
} from "../../app/actions";
import { useEngine } from "../../app/engine_port";
import { beginDrafts, draft, endDrafts } from "../../app/solving";
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
} from "../../app/state";
import type { Engine } from "../../engine/glue";
import { fieldsAt } from "../../job/fields";
import { redoable } from "../../job/history";
import { laidOf } from "../../job/laid";
import { readingsOf } from "../../job/readings";
import { textAt } from "../../job/pointer";
import { example, HonestClient, realEngine } from "./real_engine";

const kKiln = example("kiln-house");
const kInch = 25_400_000;

let engine: Engine;
let client: HonestClient;
beforeAll(async () => {
  engine = await realEngine();
});
beforeEach(async () => {
  client = new HonestClient(engine);
  useEngine(client);
  readOnly.value = false;
  await putOnTable(kKiln, true);
});

/// Until nothing is asked any more.
async function still(): Promise<void> {
  for (let asked = -1; asked !== client.asked.length; ) {
    asked = client.asked.length;
    for (let turn = 0; turn < 20; ++turn) await new Promise((next) => setTimeout(next, 0));
  }
}

function fieldOf(place: string, name: string) {
  const field = fieldsAt(job.value, place).find((one) => one.name === name);
  if (field === undefined) throw new Error(`no field ${name} at ${place}`);
  return field;
}

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

test("a side of a rectangle is typed in any form, the side across goes with it, and the text stays as typed", async () => {
  await typed(fieldOf("/outline/sides/0", "length"), "26 ft");
  await still();
  expect(fieldTrouble.value).toBeUndefined();
  expect(textAt(job.value, "/outline/sides/0/length")).toBe("26 ft");
  // 26 ft is 312 in, nominal: as written between the middles of joints.
  expect(shown.value?.answer.sides.map((side) => side.nominal.nm / kInch)).toEqual([312, 240, 312, 240]);
  expect(history.value.now.what).toBe("length changed");
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
  await putIn(side, "door");
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
