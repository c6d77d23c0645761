// A built page handed out on this machine for as long as a measurement takes.
import { spawn } from "node:child_process";
import { once } from "node:events";
import { fileURLToPath } from "node:url";

/// Serves web/dist, or the folder named on the command line, on `port`; hands back the process, to be killed. `slow`: see
/// slow_network.mjs.
export async function served(port, slow = false) {
  const script = fileURLToPath(new URL("./serve_dist.mjs", import.meta.url));
  const server = spawn(process.execPath, [script, String(port), ...process.argv.slice(2, 3)], {
    env: { ...process.env, SLOW: slow ? "1" : "" },
  });
  await once(server.stdout, "data");
  return server;
}
