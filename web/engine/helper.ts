// A worker whose end is noticed. A browser that ends a worker (for want of memory, say) tells nobody: but the lock that
// the worker holds becomes free.
import type { Compiled, Holding, Told } from "./messages";

/// The little of a worker that a client uses; a test gives its own.
export interface Helper {
  postMessage(message: unknown): void;
  terminate(): void;
  onmessage: ((told: Told) => void) | null;
  /// What the browser says of a worker that is fit for nothing any more.
  onend: ((detail: string) => void) | null;
}

let made = 0;
/// Compiled once: a worker that takes the place of an ended one starts at once.
let code: WebAssembly.Module | undefined;

function lockName(): string {
  made += 1;
  return `stringcourse-engine-${made}-${crypto.getRandomValues(new Uint32Array(2)).join("-")}`;
}

export function browserHelper(): Helper {
  const worker = new Worker(new URL("./worker.ts", import.meta.url), { type: "module" });
  const name = lockName();
  const watching = new AbortController();
  const helper: Helper = {
    onmessage: null,
    onend: null,
    postMessage: (message) => worker.postMessage(message),
    terminate() {
      watching.abort();
      worker.terminate();
    },
  };
  const watch = (): void => {
    const end = (): void => helper.onend?.("the browser ended the engine");
    void navigator.locks.request(name, { signal: watching.signal }, end).catch(() => undefined);
  };
  worker.onmessage = (event: MessageEvent<Told | Holding | Compiled>) => {
    if ("holding" in event.data) watch();
    else if ("compiled" in event.data) code = event.data.compiled;
    else helper.onmessage?.(event.data);
  };
  worker.onerror = (event) => helper.onend?.(event.message);
  worker.postMessage({ hold: name, code });
  return helper;
}
