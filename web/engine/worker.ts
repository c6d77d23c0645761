// A worker that holds one engine: the brief one until the whole one is given to it. After a fault it answers no more: the
// client ends it and starts another.
import boldUrl from "../../engine/paper/fonts/B612-Bold.otf?url";
import regularUrl from "../../engine/paper/fonts/B612-Regular.otf?url";
import type { Request } from "./contract";
import { base64, Engine } from "./glue";
import type { Given, Hold, Holding, Question, Told } from "./messages";

/// The engine, once it is made, and which.
let engine: Promise<Engine> | undefined;
let which: Given["which"] = "brief";

function take(given: Given): void {
  engine = Engine.make(given.code);
  which = given.which;
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

/// The brief engine answers what says that it is to be answered so. Lengths alone are told by both.
function asBrief(text: string): string {
  return text.includes('"lengths":') ? text : `{"brief":true,${text.slice(1)}`;
}

function tell(told: Told | Holding, transfer: Transferable[]): void {
  (self as unknown as Worker).postMessage(told, transfer);
}

function hold(name: string): void {
  void navigator.locks?.request(name, () => {
    tell({ holding: true }, []);
    return new Promise<never>(() => undefined);
  });
}

async function answer({ id, request }: Question, ready: Promise<Engine>, brief: boolean): Promise<void> {
  try {
    const asked = brief ? asBrief(request) : await withFonts(request);
    const block = (await ready).ask(asked);
    tell({ id, block }, [block.buffer]);
  } catch (error) {
    const heard = await ready.then((one) => one.heard).catch(() => []);
    tell({ id, fault: [...heard, String(error)].join(" · ") }, []);
  }
}

self.addEventListener("message", (event: MessageEvent<Hold | Given | Question>) => {
  if ("hold" in event.data) hold(event.data.hold);
  else if ("code" in event.data) take(event.data);
  else if (engine !== undefined) void answer(event.data, engine, which === "brief");
});
