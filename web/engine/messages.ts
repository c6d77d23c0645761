// What the page and its workers say to each other.

/// The first message: hold this lock of the browser for as long as you live. The engine's code, if another worker compiled
/// it already.
export interface Hold {
  readonly hold: string;
  readonly code: WebAssembly.Module | undefined;
}

export interface Question {
  readonly id: number;
  readonly request: string;
}

export type Told =
  | { readonly id: number; readonly block: Uint8Array<ArrayBuffer> }
  | { readonly id: number; readonly fault: string };

/// The engine's code, for the next worker.
export interface Compiled {
  readonly compiled: WebAssembly.Module;
}

/// The lock is held: from now on its becoming free means that the worker is gone.
export interface Holding {
  readonly holding: true;
}
