// A worker that holds one engine. After a fault it answers no more: the client ends it and starts another.
import wasmUrl from "../../build/wasm/stringcourse.wasm?url";
import { Engine } from "./glue";
import type { Question, Told } from "./messages";

async function compiled(): Promise<WebAssembly.Module> {
  const response = await fetch(wasmUrl);
  if (!response.ok) throw new Error(`the engine's file could not be read: ${response.status}`);
  // Not every static host names the type that streaming asks for.
  return WebAssembly.compile(await response.arrayBuffer());
}

const engine = compiled().then((code) => Engine.make(code));

function tell(told: Told, transfer: Transferable[]): void {
  (self as unknown as Worker).postMessage(told, transfer);
}

self.addEventListener("message", (event: MessageEvent<Question>) => {
  const { id, request } = event.data;
  void engine
    .then((ready) => {
      const block = ready.ask(request);
      tell({ id, block }, [block.buffer]);
    })
    .catch(async (error: unknown) => {
      const heard = await engine.then((ready) => ready.heard).catch(() => []);
      tell({ id, fault: [...heard, String(error)].join(" · ") }, []);
    });
});
