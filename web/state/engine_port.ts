// The engine that the actions ask; given once when the page starts, or by a test.
import type { EngineClientShape } from "../engine/client";

let client: EngineClientShape | undefined;

export function useEngine(given: EngineClientShape): void {
  client = given;
}

export function engine(): EngineClientShape {
  if (client === undefined) throw new Error("no engine was given");
  return client;
}
