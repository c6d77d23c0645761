// A layout at once, the whole answer when it comes, and never one that nobody waits for any more. The engine is the real
// one; only when it answers a search is played here.
import { beforeAll, beforeEach, expect, test, vi } from "vitest";
import type { Superseded } from "../../engine/client";
import type { Reply, Request, WholeAnswer } from "../../engine/contract";
import { type Engine, readReply } from "../../engine/glue";
import { fieldsAt } from "../../job/fields";
import { typed } from "../../state/building";
import { useEngine } from "../../state/engine_port";
import { enterLaid } from "../../state/logs";
import { showPiece, stepCourse, takeInHand } from "../../state/seeing";
import { history, job, offersNow, piece, readOnly, refusals, searching, shown, trouble } from "../../state/signals";
import { beginDrafts, draft, endDrafts, seekRest } from "../../state/solving";
import { putOnTable } from "../../state/table";
import { undo } from "../../state/undoing";
import { example, HonestClient, realEngine } from "./real_engine";

const kShed = example("hillside-shed"); // off the block grid: laid at once it is not what a search finds

/// Searches wait until they are let go; what is given up is superseded, as the page's client does it.
class Slow extends HonestClient {
  readonly searches: { readonly request: Request; readonly end: (reply: Reply | Superseded | Error) => void }[] = [];
  private readonly whole: Engine;

  constructor(engine: Engine) {
    super(engine);
    this.whole = engine;
  }
  override search(request: Request): Promise<Reply | Superseded> {
    return new Promise((resolve, reject) => {
      const end = (reply: Reply | Superseded | Error): void =>
        reply instanceof Error ? reject(reply) : resolve(reply);
      this.searches.push({ request, end });
    });
  }
  override abandonSearch(): void {
    for (const { end } of this.searches.splice(0)) end("superseded");
  }
  override leave(): void {
    this.abandonSearch();
  }
  /// The search that was asked for first comes to its end.
  answer(): void {
    const first = this.searches.shift();
    if (first === undefined) throw new Error("nothing is searched for");
    first.end(readReply(this.whole.ask(JSON.stringify(first.request))));
  }
  fault(): void {
    this.searches.shift()?.end(new Error("the search was made to stop"));
  }
}

vi.setConfig({ testTimeout: 60_000 }); // whole answers of a building off the grid, while other programs run beside

let engine: Engine;
let client: Slow;
beforeAll(async () => {
  engine = await realEngine();
});
beforeEach(async () => {
  client = new Slow(engine);
  useEngine(client);
  readOnly.value = false;
  shown.value = undefined;
  void putOnTable(kShed, false);
  await turns();
});

async function turns(): Promise<void> {
  for (let turn = 0; turn < 30; ++turn) await new Promise((next) => setTimeout(next, 0));
}

function answerOf(text: string, budget?: number): unknown {
  const request = { border: 1, job: text, ...(budget === undefined ? {} : { budget }) };
  return readReply(engine.ask(JSON.stringify(request))).answer;
}

/// A unit that lies elsewhere in the whole answer than where it is laid at once.
function unitLaidOtherwise(): string {
  const units = (answer: unknown): Map<string, string> =>
    new Map(
      (answer as WholeAnswer).runs.flatMap(({ pieces }) => pieces.map((one) => [String(one[0]), JSON.stringify(one)])),
    );
  const whole = units(answerOf(kShed));
  const moved = [...units(answerOf(kShed, 0))].find(([name, unit]) => whole.has(name) && whole.get(name) !== unit);
  if (moved === undefined) throw new Error("every unit lies where it was laid at once");
  return moved[0];
}

async function typeLength(text: string): Promise<void> {
  const field = fieldsAt(job.value, "/outline/sides/0").find((one) => one.name === "length");
  if (field === undefined) throw new Error("no length");
  await typed(field, text);
}

test("a job is drawn at once, laid without a search; the whole answer takes its place and is the command line's", async () => {
  expect(shown.value?.stage).toBe("first");
  expect(shown.value?.answer).toEqual(answerOf(kShed, 0));
  expect(searching.value).toBeDefined();
  expect(offersNow.value).toBeUndefined();
  client.answer();
  await turns();
  expect(shown.value?.stage).toBe("whole");
  expect(shown.value?.answer).toEqual(answerOf(kShed));
  expect(shown.value?.answer.cost).not.toEqual((answerOf(kShed, 0) as { cost: unknown }).cost);
  expect(searching.value).toBeUndefined();
  expect(offersNow.value).toBeDefined();
});

test("a change is made and drawn while the search goes on, and ends it; only the last job's answer is shown", async () => {
  await typeLength("22'-5\"");
  await typeLength("22'-7\"");
  const text = history.value.now.text;
  expect(history.value.past.length).toBe(2);
  expect(client.searches.map(({ request }) => request.job)).toEqual([text]);
  expect(shown.value).toMatchObject({ text, stage: "first" });
  client.answer();
  await turns();
  expect(shown.value).toMatchObject({ text, stage: "whole" });
  expect(shown.value?.answer).toEqual(answerOf(text));
});

test("the job's text is the same whether its search ends or not", async () => {
  await typeLength("22'-5\"");
  const text = history.value.now.text;
  client.answer();
  await turns();
  expect(history.value.now.text).toBe(text);
});

test("an undo ends the search of what it takes back", async () => {
  await typeLength("22'-5\"");
  void undo();
  await turns();
  expect(client.searches.map(({ request }) => request.job)).toEqual([kShed]);
  expect(shown.value).toMatchObject({ text: kShed, stage: "first" });
});

test("a size that is refused ends no search: the job is still that one", async () => {
  await typeLength("no length at all");
  expect(client.searches.length).toBe(1);
  client.answer();
  await turns();
  expect(shown.value).toMatchObject({ text: kShed, stage: "whole" });
  expect(refusals.value).toBeUndefined();
});

test("a hand that only takes hold ends no search; one that moves does, and lets it begin anew", async () => {
  beginDrafts();
  expect(client.searches.length).toBe(1);
  draft(kShed, { do: "move-side", side: 0, by_nm: 25_400_000 }, () => "");
  expect(client.searches.length).toBe(0);
  await turns();
  expect(shown.value?.stage).toBe("hand");
  endDrafts();
  void seekRest();
  await turns();
  expect(client.searches.length).toBe(1);
});

test("another course is drawn of the layout that is shown, at either stage", async () => {
  stepCourse(1);
  await turns();
  expect(shown.value?.plan?.head.name).toBe("plan-course-2");
  expect(shown.value?.stage).toBe("first");
  client.answer(); // was asked for the course before
  await turns();
  expect(shown.value?.stage).toBe("whole");
  expect(client.searches.map(({ request }) => request.drawings?.[0])).toEqual(["plan-course-2"]);
  client.answer();
  await turns();
  expect(shown.value?.plan?.head.name).toBe("plan-course-2");
});

test("a unit tapped in the first layout has its card at once, and that of the whole answer when it comes", async () => {
  vi.stubGlobal("requestAnimationFrame", () => 0); // nothing is scrolled here
  const other = unitLaidOtherwise();
  await showPiece(other);
  const first = piece.value;
  expect(first?.name).toBe(other);
  client.answer();
  await turns();
  client.answer();
  await turns();
  const { head } = readReply(engine.ask(JSON.stringify({ border: 1, job: kShed, piece: other })));
  expect(piece.value).toEqual(head.piece);
  expect(piece.value).not.toEqual(first);
});

test("what was laid is compared with the whole answer only: the building as it was stays until then", async () => {
  client.answer();
  await turns();
  const before = shown.value;
  const entering = enterLaid({ laid: { on: "AB", course: 1 } }, "", "AB-1");
  await turns();
  expect(shown.value).toBe(before);
  expect(searching.value).toBeDefined();
  client.answer();
  expect(await entering).toMatchObject({ id: expect.any(String) });
  expect(shown.value?.stage).toBe("whole");
  expect(shown.value?.answer.laying).toBeDefined();
});

test("a fault of the search is said; the first layout stands, and the next change begins another", async () => {
  client.fault();
  await turns();
  expect(trouble.value).toEqual({ kind: "fault" });
  expect(shown.value?.stage).toBe("first");
  expect(searching.value).toBeUndefined();
  await typeLength("22'-5\"");
  expect(trouble.value).toBeUndefined();
  expect(client.searches.length).toBe(1);
});

test("a job that is left takes its search along", async () => {
  void putOnTable(example("kiln-house"), false);
  await turns();
  takeInHand("");
  expect(client.searches.map(({ request }) => request.job)).toEqual([example("kiln-house")]);
});
