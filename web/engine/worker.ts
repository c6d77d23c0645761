// A worker that holds one engine. After a fault it answers no more: the client ends it and starts another.
import boldUrl from "../../engine/paper/fonts/B612-Bold.otf?url";
import regularUrl from "../../engine/paper/fonts/B612-Regular.otf?url";
import wasmUrl from "../../build/wasm/stringcourse.wasm?url";
import type { Request } from "./contract";
import { base64, Engine } from "./glue";
import type { Compiled, Hold, Holding, Question, Told } from "./messages";

async function compiled(): Promise<WebAssembly.Module> {
  const response = await fetch(wasmUrl);
  if (!response.ok) throw new Error(`the engine's file could not be read: ${response.status}`);
  // Not every static host names the type that streaming asks for.
  const code = await WebAssembly.compile(await response.arrayBuffer());
  tell({ compiled: code }, []);
  return code;
}

let engine: Promise<Engine> | undefined;

function begin(code: WebAssembly.Module | undefined): void {
  engine = (code === undefined ? compiled() : Promise.resolve(code)).then((known) => Engine.make(known));
  engine.catch(() => undefined); // said when something is asked
}

async function fontFile(url: string): Promise<string> {
  const response = await fetch(url);
  if (!response.ok) throw new Error(`a font's file could not be read: ${response.status}`);
  return base64(new Uint8Array(await response.arrayBuffer()));
}

/// A set embeds whole fonts; the engine's own are without outlines.
async function withFonts(text: string): Promise<string> {
  if (!text.includes('"set":')) return text;
  const request = JSON.parse(text) as Request;
  if (request.set === undefined) return text;
  const [regular, bold] = await Promise.all([fontFile(regularUrl), fontFile(boldUrl)]);
  return JSON.stringify({ ...request, fonts: { regular, bold } });
}

function tell(told: Told | Holding | Compiled, transfer: Transferable[]): void {
  (self as unknown as Worker).postMessage(told, transfer);
}

function hold(name: string): void {
  void navigator.locks?.request(name, () => {
    tell({ holding: true }, []);
    return new Promise<never>(() => undefined);
  });
}

async function answer({ id, request }: Question, ready: Promise<Engine>): Promise<void> {
  try {
    const block = (await ready).ask(await withFonts(request));
    tell({ id, block }, [block.buffer]);
  } catch (error) {
    const heard = await ready.then((one) => one.heard).catch(() => []);
    tell({ id, fault: [...heard, String(error)].join(" · ") }, []);
  }
}

self.addEventListener("message", (event: MessageEvent<Hold | Question>) => {
  if (engine === undefined) begin("hold" in event.data ? event.data.code : undefined);
  if ("hold" in event.data) hold(event.data.hold);
  else if (engine !== undefined) void answer(event.data, engine);
});
