// The engine's two modules as compiled code: the brief one, which is small and says where every unit lies, and the whole
// one. Both are of one build: their addresses have the hash of their bytes in them, and stand in this build's script.
import briefUrl from "../../build/wasm/stringcourse-brief.wasm?url";
import wholeUrl from "../../build/wasm/stringcourse.wasm?url";

export type Which = "brief" | "whole";

async function compiled(address: string): Promise<WebAssembly.Module> {
  const response = await fetch(address);
  if (!response.ok) throw new Error(`the engine's file could not be read: ${response.status}`);
  // Not every static host names the type that streaming asks for.
  const streams = response.headers.get("Content-Type") === "application/wasm";
  return streams ? WebAssembly.compileStreaming(response) : WebAssembly.compile(await response.arrayBuffer());
}

/// One module: fetched when it is first asked for, kept for every worker; what failed is fetched anew when asked again.
export class Code {
  private coming: Promise<WebAssembly.Module> | undefined;
  private readonly fetched: () => Promise<WebAssembly.Module>;
  private arrived: (code: WebAssembly.Module) => void = () => undefined;
  known = false;
  /// Resolves once it has come, whoever asked for it.
  readonly there = new Promise<WebAssembly.Module>((resolve) => {
    this.arrived = resolve;
  });

  constructor(fetched: () => Promise<WebAssembly.Module>) {
    this.fetched = fetched;
  }

  get(): Promise<WebAssembly.Module> {
    this.coming ??= this.fetched().then(
      (code) => {
        this.known = true;
        this.arrived(code);
        return code;
      },
      (error) => {
        this.coming = undefined;
        throw error;
      },
    );
    return this.coming;
  }
}

export interface Codes extends Readonly<Record<Which, Code>> {
  /// Which one answers what both can, until the whole one is there: where both are on the device already, the whole one at
  /// once.
  readonly first: Which;
}

/// The first one is on its way from here on.
export function codesOfThisBuild(): Codes {
  const kept = (navigator.serviceWorker as ServiceWorkerContainer | undefined)?.controller ?? null;
  const codes: Codes = {
    brief: new Code(() => compiled(briefUrl)),
    whole: new Code(() => compiled(wholeUrl)),
    first: kept === null ? "brief" : "whole",
  };
  codes[codes.first].get().catch(() => undefined); // said when something is asked
  return codes;
}
