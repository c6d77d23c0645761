// What the page and its workers say to each other.
import type { Which } from "./code";

/// The first message: hold this lock of the browser for as long as you live.
export interface Hold {
  readonly hold: string;
}

/// The engine's code. The whole takes the place of the brief between two answers.
export interface Given {
  readonly which: Which;
  readonly code: WebAssembly.Module;
}

export interface Question {
  readonly id: number;
  readonly request: string;
  /// A brief answer to it will do.
  readonly brief: boolean;
}

export type Told =
  | { readonly id: number; readonly block: Uint8Array<ArrayBuffer> }
  | { readonly id: number; readonly fault: string };

/// The lock is held: from now on its becoming free means that the worker is gone.
export interface Holding {
  readonly holding: true;
}
