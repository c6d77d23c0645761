// What the page and its workers say to each other.

export interface Question {
  readonly id: number;
  readonly request: string;
}

export type Told =
  | { readonly id: number; readonly block: Uint8Array<ArrayBuffer> }
  | { readonly id: number; readonly fault: string };
