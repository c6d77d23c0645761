// A worker that holds one engine. After a fault it answers no more: the client ends it and starts another.
import wasmUrl from "../../build/wasm/stringcourse.wasm?url";
import { Engine } from "./glue";
import type { Hold, Holding, Question, Told } from "./messages";

async function compiled(): Promise<WebAssembly.Module> {
  const response = await fetch(wasmUrl);
  if (!response.ok) throw new Error(`the engine's file could not be read: ${response.status}`);
  // Not every static host names the type that streaming asks for.
  return WebAssembly.compile(await response.arrayBuffer());
}

const engine = compiled().then((code) => Engine.make(code));
engine.catch(() => undefined); // said when something is asked

function tell(told: Told | Holding, transfer: Transferable[]): void {
  (self as unknown as Worker).postMessage(told, transfer);
}

function hold(name: string): void {
  void navigator.locks?.request(name, () => {
    tell({ holding: true }, []);
    return new Promise<never>(() => undefined);
  });
}

async function answer({ id, request }: Question): Promise<void> {
  try {
    const block = (await engine).ask(request);
    tell({ id, block }, [block.buffer]);
  } catch (error) {
    const heard = await engine.then((ready) => ready.heard).catch(() => []);
    tell({ id, fault: [...heard, String(error)].join(" · ") }, []);
  }
}

self.addEventListener("message", (event: MessageEvent<Hold | Question>) => {
  if ("hold" in event.data) hold(event.data.hold);
  else void answer(event.data);
});
