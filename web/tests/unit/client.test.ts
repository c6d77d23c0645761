// The line to the engine: order, the newest drag, faults. Workers here are played by hand.
import { expect, test, vi } from "vitest";
import { EngineClient, EngineFault, type Superseded } from "../../engine/client";
import type { Reply, Request } from "../../engine/contract";
import type { Helper } from "../../engine/helper";
import type { Question } from "../../engine/messages";

class Played implements Helper {
  onmessage: Helper["onmessage"] = null;
  onend: Helper["onend"] = null;
  readonly asked: Question[] = [];
  ended = false;

  postMessage(message: unknown): void {
    this.asked.push(message as Question);
  }
  terminate(): void {
    this.ended = true;
  }
  /// Answers the question asked last.
  answer(state = "solved"): void {
    const id = this.asked.at(-1)?.id ?? 0;
    this.onmessage?.({ id, block: blockOf(JSON.stringify({ border: 1, state, sections: ["reply.json"] })) });
  }
  trap(): void {
    this.onmessage?.({ id: this.asked.at(-1)?.id ?? 0, fault: "unreachable" });
  }
  names(): string[] {
    return this.asked.map((question) => (JSON.parse(question.request) as Request).job ?? "");
  }
}

function blockOf(text: string): Uint8Array<ArrayBuffer> {
  const bytes = new TextEncoder().encode(text);
  const block = new Uint8Array(8 + bytes.length);
  const view = new DataView(block.buffer);
  view.setUint32(0, 1, true);
  view.setUint32(4, bytes.length, true);
  block.set(bytes, 8);
  return block;
}

function begun(patience?: number): { client: EngineClient; workers: Played[]; last: () => Played } {
  const workers: Played[] = [];
  const make = (): Helper => {
    const worker = new Played();
    workers.push(worker);
    return worker;
  };
  const client = patience === undefined ? new EngineClient(make) : new EngineClient(make, patience);
  return { client, workers, last: () => workers.at(-1) as Played };
}

/// What a reply says of itself; "superseded" where there is none.
const stateOf = (reply: Reply | Superseded): string => (reply === "superseded" ? reply : reply.head.state);

const ask = (job: string): Request => ({ border: 1, job });

test("requests run one at a time, in the order they came", async () => {
  const { client, last } = begun();
  const first = client.solve(ask("a"));
  const second = client.solve(ask("b"));
  expect(last().names()).toEqual(["a"]);
  last().answer();
  expect(stateOf(await first)).toBe("solved");
  expect(last().names()).toEqual(["a", "b"]);
  last().answer("refused");
  expect(stateOf(await second)).toBe("refused");
});

test("of the drags that wait only the newest is asked; the others are superseded at once", async () => {
  const { client, last } = begun();
  const drags = ["1", "2", "3", "4"].map((job) => client.solve(ask(job), { latest: "drag" }));
  expect(await Promise.all(drags.slice(1, 3))).toEqual(["superseded", "superseded"]);
  last().answer();
  last().answer();
  expect(last().names()).toEqual(["1", "4"]);
  expect((await Promise.all([drags[0], drags[3]])).every((reply) => reply !== "superseded")).toBe(true);
});

test("a drag supersedes no request without a key and none of another key", async () => {
  const { client, last } = begun();
  void client.solve(ask("running"));
  void client.solve(ask("plain"));
  void client.solve(ask("view"), { latest: "view" });
  void client.solve(ask("old"), { latest: "drag" });
  void client.solve(ask("new"), { latest: "drag" });
  for (let i = 0; i < 4; ++i) last().answer();
  expect(last().names()).toEqual(["running", "plain", "view", "new"]);
});

test("a trap rejects that request alone; the next one goes to a fresh worker", async () => {
  const { client, workers, last } = begun();
  const struck = client.solve(ask("a"));
  const after = client.solve(ask("b"));
  last().trap();
  await expect(struck).rejects.toBeInstanceOf(EngineFault);
  await expect(struck).rejects.toMatchObject({ detail: "unreachable" });
  expect(workers.map((worker) => worker.ended)).toEqual([true, false]);
  last().answer();
  expect(stateOf(await after)).toBe("solved");
});

test("a worker that the browser ended is a fault, also between two requests", async () => {
  const { client, workers, last } = begun();
  const first = client.solve(ask("a"));
  last().onend?.("gone");
  await expect(first).rejects.toBeInstanceOf(EngineFault);
  const second = client.solve(ask("b"));
  last().answer();
  await second;
  last().onend?.("gone");
  const third = client.solve(ask("c"));
  last().answer();
  expect(stateOf(await third)).toBe("solved");
  expect(workers.length).toBe(3);
});

test("an engine that stays silent is ended", async () => {
  const { client, workers } = begun(5);
  await expect(client.solve(ask("a"))).rejects.toMatchObject({ detail: "no answer in time" });
  expect(workers[0]?.ended).toBe(true);
});

test("a block that is none is a fault, not a promise that never ends", async () => {
  const { client, last } = begun();
  const broken = client.solve(ask("a"));
  last().onmessage?.({ id: last().asked[0]?.id ?? 0, block: blockOf("no json") });
  await expect(broken).rejects.toBeInstanceOf(EngineFault);
});

test("offers run in a worker of their own and are abandoned when newer ones are asked for", async () => {
  const { client, workers } = begun();
  const drag = client.solve(ask("drag"), { latest: "drag" });
  const old = client.solveAside(ask("old"));
  const newer = client.solveAside(ask("newer"));
  expect(await old).toBe("superseded");
  expect(workers.map((worker) => worker.names())).toEqual([["drag"], ["old"], ["newer"]]);
  expect(workers.map((worker) => worker.ended)).toEqual([false, true, false]);
  workers[0]?.answer();
  expect(await drag).not.toBe("superseded");
  client.abandonAside();
  expect(await newer).toBe("superseded");
});

test("a job that is left keeps no other one waiting", async () => {
  vi.useFakeTimers();
  try {
    const { client, workers, last } = begun();
    const long = client.solve(ask("for ever"));
    const behind = client.solve(ask("behind"));
    client.leave();
    expect(await long).toBe("superseded");
    expect(await behind).toBe("superseded");
    const next = client.solve(ask("next"));
    expect(workers.map((worker) => worker.names())).toEqual([["for ever"]]);
    vi.advanceTimersByTime(1_000);
    expect(workers.map((worker) => worker.names())).toEqual([["for ever"], ["next"]]);
    expect(workers[0]?.ended).toBe(true);
    last().answer();
    expect(stateOf(await next)).toBe("solved");
  } finally {
    vi.useRealTimers();
  }
});

test("a job that is left and answers soon leaves its worker to the next one", async () => {
  const { client, workers, last } = begun();
  void client.solve(ask("short"));
  client.leave();
  const next = client.solve(ask("next"));
  last().answer();
  last().answer();
  expect(stateOf(await next)).toBe("solved");
  expect(workers.length).toBe(1);
});

test("a worker that cannot even be made is a fault", async () => {
  const client = new EngineClient(() => {
    throw new Error("no workers here");
  });
  await expect(client.solve(ask("a"))).rejects.toMatchObject({ detail: "Error: no workers here" });
});

test("a search is never in the way of what is asked at once, nor of offers", async () => {
  const { client, workers } = begun();
  const whole = client.search(ask("whole"));
  const quick = client.solve(ask("quick"));
  const offers = client.solveAside(ask("offers"));
  expect(workers.map((worker) => worker.names())).toEqual([["whole"], ["quick"], ["offers"]]);
  for (const worker of [...workers].reverse()) worker.answer();
  expect(await Promise.all([whole, quick, offers].map(async (reply) => stateOf(await reply)))).toEqual([
    "solved",
    "solved",
    "solved",
  ]);
});

test("a search that is given up is ended at once, with what waits behind it; the next one gets a fresh worker", async () => {
  const { client, workers } = begun();
  const old = client.search(ask("old"));
  const sheets = client.search(ask("sheets of old"));
  client.abandonSearch();
  expect(await Promise.all([old, sheets])).toEqual(["superseded", "superseded"]);
  expect(workers[0]?.ended).toBe(true);
  const next = client.search(ask("next"));
  expect(workers.map((worker) => worker.names())).toEqual([["old"], ["next"]]);
  workers[0]?.onmessage?.({ id: 1, block: blockOf("no json") }); // what was on its way from the ended one
  workers[1]?.answer();
  expect(stateOf(await next)).toBe("solved");
});

test("a search that has ended leaves its worker, which knows the answer, to what is asked next", async () => {
  const { client, workers } = begun();
  const whole = client.search(ask("a"));
  workers[0]?.answer();
  await whole;
  client.abandonSearch();
  void client.search(ask("a"));
  expect(workers.map((worker) => worker.names())).toEqual([["a", "a"]]);
});

test("a job that is left takes its search along, and a fault of a search is its own", async () => {
  const { client, workers } = begun();
  const left = client.search(ask("left"));
  client.leave();
  expect(await left).toBe("superseded");
  const struck = client.search(ask("struck"));
  const quick = client.solve(ask("quick"));
  workers[1]?.trap();
  await expect(struck).rejects.toBeInstanceOf(EngineFault);
  workers[2]?.answer();
  expect(stateOf(await quick)).toBe("solved");
});
