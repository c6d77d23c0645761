// Grout at the wall, with the engine itself behind it: cell after cell in the card's order, and what is due again.
import { beforeEach, expect, test } from "vitest";
import { laidOf } from "../../job/laid";
import { textAt } from "../../job/pointer";
import { job } from "../../state/signals";
import { now, timeOf } from "../../state/wall/clock";
import { openWall } from "../../state/wall/going";
import { cellsLeft, dueAgain, whensOf } from "../../state/wall/grouting";
import { look, said } from "../../state/wall/hearing";
import { answer } from "../../state/wall/site";
import { readState, wallState } from "../../state/wall/step";
import { act } from "../../state/wall/touch";
import { screen } from "../../wall/now";
import type { Zone } from "../../wall/screen";
import { words } from "../../words/words";
import { onTheTable, still } from "./on_the_table";

const w = words.wall;

onTheTable();
beforeEach(async () => {
  said.value = "";
  openWall();
  await look();
  act({ do: "grout", skip: 0 });
});

function zone(label: string): Zone {
  const found = screen.value.zones.find((one) => one.label === label);
  if (found === undefined) throw new Error(`no zone ${label} in ${screen.value.zones.map((one) => one.label)}`);
  return found;
}
function press(label: string): void {
  const what = zone(label).act;
  if (what.do === "aloud") return;
  act(what);
}
const minutes = (count: number): number => count * 60_000;

test("the first cell of the card comes first, with what goes in; a tap logs it and the next one comes", async () => {
  const steps = answer.value?.pour_cards?.[0]?.steps ?? [];
  expect(screen.value.number).toBe(`${steps[0]?.side} ${steps[0]?.name}`);
  expect(screen.value.under.join(" ")).toContain(steps[0]?.volume.text);
  press(w.groutFilled);
  await still();
  const entry = laidOf(job.value).at(-1);
  expect(entry?.kind).toBe("grouted");
  expect(textAt(entry?.body ?? {}, "/on")).toBe(steps[0]?.side);
  expect(textAt(entry?.body ?? {}, "/at")).toBe(steps[0]?.at.text);
  expect(screen.value.number).toBe(`${steps[1]?.side} ${steps[1]?.name}`);
});

test("a double tap is one entry; what is undone is to be filled again", async () => {
  const before = laidOf(job.value).length;
  const first = screen.value.number;
  press(w.groutFilled);
  press(w.groutFilled);
  await still();
  expect(laidOf(job.value).length).toBe(before + 1);
  act({ do: "undo" });
  await still();
  act({ do: "grout", skip: 0 });
  expect(screen.value.number).toBe(first);
});

test("another one first leaves the one that is passed over for later", () => {
  const [first, second] = cellsLeft(answer.value);
  press(w.groutSkip);
  expect(screen.value.number).toBe(`${second?.step.side} ${second?.step.name}`);
  expect(cellsLeft(answer.value)[0]?.step).toEqual(first?.step);
});

test("a cell is told of until it is due, asked for while it is, and told late behind that", async () => {
  press(w.groutFilled);
  await still();
  const filled = timeOf(laidOf(job.value).at(-1)?.when ?? "") ?? Number.NaN;
  const name = `${answer.value?.pour_cards?.[0]?.steps[0]?.side} ${answer.value?.pour_cards?.[0]?.steps[0]?.name}`;
  now.value = filled + minutes(1);
  expect(screen.value.under).toContain(w.groutWait(name, 2));
  expect(screen.value.zones.map((one) => one.label)).not.toContain(w.groutAgain(name));
  now.value = filled + minutes(4);
  expect(screen.value.under).toContain(w.groutDue(name, 6));
  now.value = filled + minutes(12);
  expect(screen.value.under).toContain(w.groutLate(name, 2));
  press(w.groutAgain(name));
  await still();
  expect(dueAgain(answer.value, whensOf(), filled + minutes(12))).toEqual([]);
  expect(textAt(laidOf(job.value).at(-1)?.body ?? {}, "/work")).toBe("again");
});

test("times that are no clock's are no times, and the screen comes back where it was", () => {
  expect(timeOf("9 May")).toBeUndefined();
  expect(timeOf("2026-05-09 14:20")).toBe(new Date(2026, 4, 9, 14, 20).getTime());
  expect(readState(JSON.stringify(wallState.value)).place.screen).toBe("grout");
});
