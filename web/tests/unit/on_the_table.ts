// The kiln house on the table, anew for each test, with the engine itself behind it and no browser.
import { beforeAll, beforeEach } from "vitest";
import type { Engine } from "../../engine/glue";
import { fieldsAt } from "../../job/fields";
import { useEngine } from "../../state/engine_port";
import { job, readOnly } from "../../state/signals";
import { putOnTable } from "../../state/table";
import { example, HonestClient, realEngine } from "./real_engine";

export const kKiln = example("kiln-house");
export const kInch = 25_400_000;

let engine: Engine;
export let client: HonestClient;
/// To be called at a test file's head.
export function onTheTable(): void {
  beforeAll(async () => {
    engine = await realEngine();
  });
  beforeEach(async () => {
    client = new HonestClient(engine);
    useEngine(client);
    readOnly.value = false;
    await putOnTable(kKiln, true);
  });
}

/// Until nothing is asked any more.
export async function still(): Promise<void> {
  for (let asked = -1; asked !== client.asked.length; ) {
    asked = client.asked.length;
    for (let turn = 0; turn < 20; ++turn) await new Promise((next) => setTimeout(next, 0));
  }
}

export function fieldOf(place: string, name: string) {
  const field = fieldsAt(job.value, place).find((one) => one.name === name);
  if (field === undefined) throw new Error(`no field ${name} at ${place}`);
  return field;
}
