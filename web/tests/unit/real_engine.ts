// The engine itself, in Node, behind the same shape that the page asks. Nothing of it is imitated.
import { readFileSync } from "node:fs";
import type { EngineClientShape, Superseded } from "../../engine/client";
import type { Reply, Request } from "../../engine/contract";
import { Engine, readReply } from "../../engine/glue";

const kModule = new URL("../../../build/wasm/stringcourse.wasm", import.meta.url);

export async function realEngine(): Promise<Engine> {
  return Engine.make(await WebAssembly.compile(readFileSync(kModule)));
}

export function example(name: string): string {
  return readFileSync(new URL(`../../../examples/${name}.json`, import.meta.url), "utf8");
}

/// Asks in the order asked, as the page's client does, and remembers what was asked. `fail` makes the next one a fault.
export class HonestClient implements EngineClientShape {
  readonly asked: Request[] = [];
  fail = false;
  private readonly engine: Engine;

  constructor(engine: Engine) {
    this.engine = engine;
  }

  async solve(request: Request): Promise<Reply> {
    this.asked.push(request);
    // A reply never comes within the turn in which it was asked for.
    await new Promise((next) => setTimeout(next, 0));
    if (this.fail) {
      this.fail = false;
      throw new Error("the engine was made to stop");
    }
    return readReply(this.engine.ask(JSON.stringify(request)));
  }

  search(request: Request): Promise<Reply | Superseded> {
    return this.solve(request);
  }

  solveAside(request: Request): Promise<Reply | Superseded> {
    return this.solve(request);
  }

  abandonSearch(): void {}
  abandonAside(): void {}
  leave(): void {}
  close(): void {}
}
