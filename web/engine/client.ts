// The page's side of the engine: requests in, replies out, never a frozen page and never lost work.
//
//   const engine = EngineClient.inBrowser(codesOfThisBuild());
//   const first = await engine.solve({ border: 1, job: text, budget: 0, drawings: ["plan-course-1"] });
//   if (first !== "superseded") show(first);
//   const best = await engine.search({ border: 1, job: text, drawings: ["plan-course-1"] });   // never in the way of the next
//   if (best !== "superseded") show(best);
//   const offered = await engine.solveAside({ border: 1, job: text, offers: true });   // nor is this
//
// Promises:
// - there are three lines, each with a worker of its own: `solve` for what is answered at once (without a search, or with
//   a short one), `search` for whole answers and what is asked of them, `solveAside` for offers;
// - in a line one request runs at a time; requests without `latest` run in the order they came;
// - of the requests with one `latest` key only the newest waits; the older ones resolve as "superseded" at once;
// - a search that nobody wants any more is ended by abandonSearch(), also while it runs: what it and those behind it asked
//   for is "superseded". A worker that only waits stays, and what it knows with it;
// - a newer solveAside, and abandonAside(), end the one before as "superseded";
// - leave() ends all that was asked as "superseded"; an engine that is still at work a second later is ended, so that a
//   job that takes for ever keeps no other one waiting;
// - a trap of the engine or a killed worker rejects with EngineFault; the next request gets a fresh worker; nothing of
//   the user's is in the worker.
import { isBrief } from "./brief";
import type { Codes } from "./code";
import type { Reply, Request } from "./contract";
import { readReply } from "./glue";
import { browserHelpers, type Helper } from "./helper";
import type { Told } from "./messages";

export type Superseded = "superseded";

/// Our own bug, or a worker that the browser ended. `message` is a plain sentence for the user; `detail` for a report.
export class EngineFault extends Error {
  readonly detail: string;
  constructor(detail: string) {
    super("The engine stopped on a fault of its own. Your job is untouched; the next change starts the engine anew.");
    this.name = "EngineFault";
    this.detail = detail;
  }
}

export interface EngineClientShape {
  solve(request: Request, how?: { readonly latest: string } | undefined): Promise<Reply | Superseded>;
  search(request: Request, how?: { readonly latest: string } | undefined): Promise<Reply | Superseded>;
  abandonSearch(): void;
  solveAside(request: Request): Promise<Reply | Superseded>;
  abandonAside(): void;
  leave(): void;
  close(): void;
}

/// Longer than any job takes: a search has its budget. An engine that is silent for so long is ended.
const kPatience = 120_000; // milliseconds
const kPatienceAside = 600_000; // offers of a large building
/// What is left is given so long to end by itself, before its worker is ended: a new one takes its time to start.
const kGrace = 1_000; // milliseconds

interface Asked {
  readonly request: Request;
  readonly latest: string | undefined;
  readonly resolve: (reply: Reply | Superseded) => void;
  readonly reject: (fault: EngineFault) => void;
}

/// One worker and those who wait for it, one at a time.
class Line {
  private worker: Helper | undefined;
  private running: Asked | undefined;
  private waiting: Asked[] = [];
  private id = 0;
  private clock: ReturnType<typeof setTimeout> | undefined;
  private readonly make: () => Helper;
  private readonly patience: number;

  constructor(make: () => Helper, patience: number) {
    this.make = make;
    this.patience = patience;
  }

  ask(asked: Asked): void {
    if (asked.latest !== undefined) this.supersede((other) => other.latest === asked.latest);
    this.waiting.push(asked);
    this.next();
  }

  /// Ends what runs and what waits.
  abandon(): void {
    this.supersede(() => true);
    const { running } = this;
    if (running === undefined) return;
    this.stop();
    running.resolve("superseded");
  }

  /// Nobody waits any more for what runs and what waits.
  leave(): void {
    this.supersede(() => true);
    const { running } = this;
    if (running === undefined) return;
    running.resolve("superseded");
    clearTimeout(this.clock);
    this.clock = setTimeout(() => {
      this.stop();
      this.next();
    }, kGrace);
  }

  close(): void {
    this.abandon();
    this.stop();
  }

  private supersede(which: (asked: Asked) => boolean): void {
    const ended = this.waiting.filter(which);
    this.waiting = this.waiting.filter((asked) => !which(asked));
    for (const asked of ended) asked.resolve("superseded");
  }

  private stop(): void {
    clearTimeout(this.clock);
    this.worker?.terminate();
    this.worker = undefined;
    this.running = undefined;
  }

  private next(): void {
    if (this.running !== undefined) return;
    const asked = this.waiting.shift();
    if (asked === undefined) return;
    this.running = asked;
    this.id += 1;
    try {
      this.worker ??= this.started();
      this.clock = setTimeout(() => this.fail("no answer in time"), this.patience);
      const { request } = asked;
      this.worker.postMessage({ id: this.id, request: JSON.stringify(request), brief: isBrief(request) });
    } catch (error) {
      this.fail(String(error));
    }
  }

  private started(): Helper {
    const worker = this.make();
    worker.onmessage = (told) => this.hear(told);
    worker.onend = (detail) => this.fail(detail);
    return worker;
  }

  private hear(told: Told): void {
    const asked = this.running;
    if (asked === undefined || told.id !== this.id) return;
    if ("fault" in told) {
      this.fail(told.fault);
      return;
    }
    let reply: Reply;
    try {
      reply = readReply(told.block);
    } catch (error) {
      this.fail(String(error));
      return;
    }
    clearTimeout(this.clock);
    this.running = undefined;
    asked.resolve(reply);
    this.next();
  }

  private fail(detail: string): void {
    const asked = this.running;
    this.stop();
    asked?.reject(new EngineFault(detail));
    this.next();
  }
}

export class EngineClient implements EngineClientShape {
  private readonly line: Line;
  private readonly searches: Line;
  private readonly aside: Line;

  constructor(make: () => Helper, patience = kPatience, patienceAside = kPatienceAside) {
    this.line = new Line(make, patience);
    this.searches = new Line(make, patience);
    this.aside = new Line(make, patienceAside);
  }

  static inBrowser(codes: Codes): EngineClient {
    return new EngineClient(browserHelpers(codes));
  }

  solve(request: Request, how?: { readonly latest: string } | undefined): Promise<Reply | Superseded> {
    return new Promise((resolve, reject) => this.line.ask({ request, latest: how?.latest, resolve, reject }));
  }

  search(request: Request, how?: { readonly latest: string } | undefined): Promise<Reply | Superseded> {
    return new Promise((resolve, reject) => this.searches.ask({ request, latest: how?.latest, resolve, reject }));
  }

  abandonSearch(): void {
    this.searches.abandon();
  }

  solveAside(request: Request): Promise<Reply | Superseded> {
    this.aside.abandon();
    return new Promise((resolve, reject) => this.aside.ask({ request, latest: undefined, resolve, reject }));
  }

  abandonAside(): void {
    this.aside.abandon();
  }

  leave(): void {
    this.line.leave();
    this.searches.abandon();
    this.aside.abandon();
  }

  close(): void {
    this.line.close();
    this.searches.close();
    this.aside.close();
  }
}
