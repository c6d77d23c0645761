// A worker whose end is noticed. A browser that ends a worker (for want of memory, say) tells nobody: but the lock that
// the worker holds becomes free.
//
// It is given the engine's code before the first question that needs it: the brief module for what that can answer, as
// long as the whole one is not there; then the whole one, which every worker that lives is given as soon as it has come.
import type { Codes, Which } from "./code";
import { whenIdle } from "./idle";
import type { Given, Holding, Question, Told } from "./messages";

/// The little of a worker that a client uses; a test gives its own.
export interface Helper {
  postMessage(question: Question): void;
  terminate(): void;
  onmessage: ((told: Told) => void) | null;
  /// What the browser says of a worker that is fit for nothing any more.
  onend: ((detail: string) => void) | null;
}

/// The engine's code on its way to one worker.
export class Supply {
  private given: Which | undefined;
  private readonly codes: Codes;
  private readonly send: (given: Given) => void;

  constructor(codes: Codes, send: (given: Given) => void) {
    this.codes = codes;
    this.send = send;
  }

  /// Resolves once the worker has what it needs to answer.
  async before(question: Question): Promise<void> {
    const which = question.brief && !this.codes.whole.known ? this.codes.first : "whole";
    if (this.given === "whole" || this.given === which) return;
    this.give(which, await this.codes[which].get());
  }

  give(which: Which, code: WebAssembly.Module): void {
    if (this.given === "whole" || this.given === which) return;
    this.given = which;
    this.send({ which, code });
  }
}

let made = 0;

function lockName(): string {
  made += 1;
  return `stringcourse-engine-${made}-${crypto.getRandomValues(new Uint32Array(2)).join("-")}`;
}

/// Makes workers that share the code.
export function browserHelpers(codes: Codes): () => Helper {
  const living = new Set<Supply>();
  void codes.whole.there.then((code) => {
    for (const supply of living) supply.give("whole", code);
  });
  return () => browserHelper(codes, living);
}

function browserHelper(codes: Codes, living: Set<Supply>): Helper {
  const worker = new Worker(new URL("./worker.ts", import.meta.url), { type: "module" });
  const name = lockName();
  const watching = new AbortController();
  const supply = new Supply(codes, (given) => worker.postMessage(given));
  living.add(supply);
  const helper: Helper = {
    onmessage: null,
    onend: null,
    postMessage(question) {
      supply.before(question).then(
        () => worker.postMessage(question),
        (error) => helper.onend?.(String(error)),
      );
    },
    terminate() {
      living.delete(supply);
      watching.abort();
      worker.terminate();
    },
  };
  const watch = (): void => {
    const end = (): void => helper.onend?.("the browser ended the engine");
    void navigator.locks.request(name, { signal: watching.signal }, end).catch(() => undefined);
  };
  worker.onmessage = (event: MessageEvent<Told | Holding>) => {
    if ("holding" in event.data) watch();
    else helper.onmessage?.(event.data);
    if ("block" in event.data) whenIdle(() => void codes.whole.get().catch(() => undefined));
  };
  worker.onerror = (event) => helper.onend?.(event.message);
  worker.postMessage({ hold: name });
  return helper;
}
