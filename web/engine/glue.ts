// The engine's module: made from its bytes, asked with a text, answering with a block of sections. Runs in a worker, and
// in Node for tests.
import type { Answer, CourseReply, PieceCard, Refusals, Reply, ReplyHead, Request, Solids } from "./contract";

interface Exports {
  readonly memory: WebAssembly.Memory;
  _initialize(): void;
  stringcourse_allocate(size: number): number;
  stringcourse_solve(request: number, size: number): number;
  stringcourse_free(block: number): void;
}

const kDone = 0;
const kBadStream = 8; // WASI preview 1: EBADF

/// What the module asks of its host: only that words of a fault go somewhere.
function host(memory: () => WebAssembly.Memory, hear: (words: string) => void): WebAssembly.ModuleImports {
  return {
    fd_write(_stream: number, lists: number, count: number, written: number): number {
      const view = new DataView(memory().buffer);
      let total = 0;
      for (let i = 0; i < count; ++i) {
        const start = view.getUint32(lists + 8 * i, true);
        const size = view.getUint32(lists + 8 * i + 4, true);
        hear(new TextDecoder().decode(new Uint8Array(memory().buffer, start, size)));
        total += size;
      }
      view.setUint32(written, total, true);
      return kDone;
    },
    fd_seek: () => kBadStream,
    fd_close: () => kBadStream,
  };
}

/// Bytes as text, for a request.
export function base64(bytes: Uint8Array): string {
  let text = "";
  for (let at = 0; at < bytes.length; at += 0x8000) text += String.fromCharCode(...bytes.subarray(at, at + 0x8000));
  return btoa(text);
}

/// The module, ready to be asked. A trap leaves it unfit: throw it away.
export class Engine {
  private readonly module: Exports;
  /// Words of the last fault, for a report.
  readonly heard: readonly string[];

  private constructor(module: Exports, heard: readonly string[]) {
    this.module = module;
    this.heard = heard;
  }

  static async make(code: WebAssembly.Module): Promise<Engine> {
    const heard: string[] = [];
    let memory: WebAssembly.Memory | undefined;
    const imports = host(
      () => memory as WebAssembly.Memory,
      (words) => heard.push(words),
    );
    const instance = await WebAssembly.instantiate(code, { wasi_snapshot_preview1: imports });
    const module = instance.exports as unknown as Exports;
    memory = module.memory;
    module._initialize();
    return new Engine(module, heard);
  }

  /// One request as JSON; the reply block, copied out of the module's memory.
  ask(request: string): Uint8Array<ArrayBuffer> {
    const bytes = new TextEncoder().encode(request);
    const place = this.module.stringcourse_allocate(bytes.length);
    if (place === 0) throw new Error("the engine has no memory left");
    new Uint8Array(this.module.memory.buffer, place, bytes.length).set(bytes);
    const reply = this.module.stringcourse_solve(place, bytes.length);
    this.module.stringcourse_free(place);
    if (reply === 0) throw new Error("the engine has no memory left");
    const size = blockSize(new DataView(this.module.memory.buffer, reply));
    const block = this.module.memory.buffer.slice(reply, reply + size) as ArrayBuffer;
    this.module.stringcourse_free(reply);
    return new Uint8Array(block);
  }
}

function blockSize(view: DataView): number {
  const count = view.getUint32(0, true);
  let size = 4 + 4 * count;
  for (let i = 0; i < count; ++i) size += view.getUint32(4 + 4 * i, true);
  return size;
}

/// The sections of a block, in order.
export function sectionsOf(block: Uint8Array<ArrayBuffer>): Uint8Array<ArrayBuffer>[] {
  const view = new DataView(block.buffer, block.byteOffset, block.byteLength);
  const count = view.getUint32(0, true);
  const sections: Uint8Array<ArrayBuffer>[] = [];
  let at = 4 + 4 * count;
  for (let i = 0; i < count; ++i) {
    const size = view.getUint32(4 + 4 * i, true);
    sections.push(block.subarray(at, at + size));
    at += size;
  }
  return sections;
}

function textOf(bytes: Uint8Array | undefined): string | undefined {
  return bytes === undefined ? undefined : new TextDecoder().decode(bytes);
}

/// A reply block read: the head at once, the larger parts when they are first asked for.
export function readReply(block: Uint8Array<ArrayBuffer>): Reply {
  const sections = sectionsOf(block);
  const head = JSON.parse(textOf(sections[0]) ?? "{}") as ReplyHead;
  const bytes = (name: string): Uint8Array<ArrayBuffer> | undefined => {
    const place = head.sections.indexOf(name);
    return place < 0 ? undefined : sections[place];
  };
  const json = <T>(name: string): (() => T | undefined) => {
    let known: { readonly value: T | undefined } | undefined;
    return () => {
      if (known === undefined) {
        const text = textOf(bytes(name));
        known = { value: text === undefined ? undefined : (JSON.parse(text) as T) };
      }
      return known.value;
    };
  };
  const answer = json<Answer>("answer.json");
  const refusals = json<Refusals>("refusals.json");
  const solids = json<Solids>("solids.json");
  const course = json<CourseReply>("course.json");
  return {
    head,
    get answer() {
      return answer();
    },
    get refusals() {
      return refusals();
    },
    get job() {
      return textOf(bytes("job.json"));
    },
    get solids() {
      return solids();
    },
    get course() {
      return course();
    },
    svg: (name) => textOf(bytes(`${name}.svg`)),
    bytes,
  };
}

export type { PieceCard, Reply, Request };
