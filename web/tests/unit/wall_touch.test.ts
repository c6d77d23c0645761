// Touches at the wall, with the engine itself behind them: what is counted by thumb is logged as the engine writes it.
import { beforeEach, expect, test } from "vitest";
import type { Request } from "../../engine/contract";
import { laidOf } from "../../job/laid";
import { textAt } from "../../job/pointer";
import { job } from "../../state/signals";
import { putOnTable } from "../../state/table";
import { openWall } from "../../state/wall/going";
import { look, said } from "../../state/wall/hearing";
import { wallState } from "../../state/wall/step";
import { act } from "../../state/wall/touch";
import { seekTexts, textOf } from "../../state/wall/written";
import { screen } from "../../wall/now";
import { words } from "../../words/words";
import { client, onTheTable, still } from "./on_the_table";
import { example } from "./real_engine";

onTheTable();
beforeEach(async () => {
  said.value = "";
  openWall();
  await look();
});

/// A gauge reading three sixteenths low, not yet taken.
function countThree(): void {
  act({ do: "begin", kind: "gauge" });
  act({ do: "way", way: -1 });
  act({ do: "step", by: 1 });
  act({ do: "step", by: 1 });
}

test("what is counted stands on the screen as the engine writes it, and so does what the next touches come to", async () => {
  countThree();
  await seekTexts();
  expect(screen.value.number).toBe(`3/16" low`);
  const asked = client.asked.length;
  act({ do: "step", by: 10 });
  await seekTexts();
  // 13 sixteenths; ten more are known already, so that nothing is waited for.
  expect(screen.value.number).toBe(`13/16" low`);
  expect(textOf(23)).toBe(`1 7/16"`);
  expect(client.asked.length).toBe(asked);
});

test("a question for them that was given up is asked again: a job was just put on the table", async () => {
  const { solve } = client;
  let given = 0;
  Object.assign(client, {
    solve: (request: Request) => {
      if (request.lengths === undefined || given > 0) return solve.call(client, request);
      given += 1;
      return Promise.resolve("superseded");
    },
  });
  act({ do: "begin", kind: "end" });
  await seekTexts();
  expect(given).toBe(1);
  // AB is 27'-11 5/8" long, as a tape reads it: 335 5/8".
  expect(screen.value.number).toBe(`335 5/8"`);
});

test("it is logged in those words, with its sign", async () => {
  countThree();
  act({ do: "take" });
  await still();
  const [entry] = laidOf(job.value);
  expect(entry?.kind).toBe("gauge");
  expect(textAt(entry?.body ?? null, "/high")).toBe(`-3/16"`);
  expect(wallState.value.place.screen).toBe("told");
});

test("an engine that does not answer loses no entry: it is told, and taken the next time", async () => {
  act({ do: "begin", kind: "gauge" });
  act({ do: "way", way: -1 });
  for (let count = 0; count < 20; ++count) act({ do: "step", by: 10 });
  client.fail = true;
  act({ do: "take" });
  await still();
  expect(laidOf(job.value)).toEqual([]);
  expect(said.value).toBe(words.trouble.fault);
  expect(wallState.value.place.screen).toBe("enter");
  act({ do: "take" });
  await still();
  // 1 + 20 x 10 sixteenths are 12 9/16 in.
  expect(laidOf(job.value).map((one) => textAt(one.body, "/high"))).toEqual([`-12 9/16"`]);
});

test("what is entered while another job takes this one's place is entered into neither", async () => {
  act({ do: "begin", kind: "gauge" });
  act({ do: "way", way: 1 });
  for (let count = 0; count < 90; ++count) act({ do: "step", by: 10 });
  act({ do: "take" });
  await putOnTable(example("clay-store"), false);
  await still();
  expect(laidOf(job.value)).toEqual([]);
});
