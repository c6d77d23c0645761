// The page's side of the engine: requests in, replies out, never a frozen page and never lost work.
//
//   const engine = EngineClient.inBrowser();
//   const reply = await engine.solve({ border: 1, job: text, drawings: ["plan-course-1"] });
//   const live = await engine.solve({ border: 1, job: text, edits: [...], budget: 2000 }, { latest: "drag" });
//   if (live !== "superseded") show(live);
//   const offered = await engine.solveAside({ border: 1, job: text, offers: true });   // never in the way of a drag
//
// Promises:
// - one solve runs at a time; requests without `latest` run in the order they came;
// - of the requests with one `latest` key only the newest waits; the older ones resolve as "superseded" at once;
// - solveAside runs in a worker of its own; a newer solveAside, and abandonAside(), end it as "superseded";
// - a trap of the engine or a killed worker rejects with EngineFault; the next request gets a fresh worker; nothing of
//   the user's is in the worker.
import type { Reply, Request } from "./contract";

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
  solve(request: Request): Promise<Reply>;
  solve(request: Request, how: { readonly latest: string }): Promise<Reply | Superseded>;
  solveAside(request: Request): Promise<Reply | Superseded>;
  abandonAside(): void;
  close(): void;
}
