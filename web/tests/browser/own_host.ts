// A static host of a test's own: a copy of the build in a folder that the test may change, on a port that it may leave.
import { type ChildProcess, spawn } from "node:child_process";
import { cp, mkdtemp, rm, writeFile } from "node:fs/promises";
import { createServer } from "node:net";
import { tmpdir } from "node:os";
import { join } from "node:path";
import { fileURLToPath } from "node:url";
import { workerText } from "../../offline/precache_plugin.ts";

const kDist = fileURLToPath(new URL("../../dist", import.meta.url));
const kServer = fileURLToPath(new URL("../../tools/serve_dist.mjs", import.meta.url));

function freePort(): Promise<number> {
  return new Promise((resolve, reject) => {
    const probe = createServer();
    probe.on("error", reject);
    probe.listen(0, "127.0.0.1", () => {
      const address = probe.address();
      probe.close(() => (typeof address === "object" && address !== null ? resolve(address.port) : reject(address)));
    });
  });
}

export class OwnHost {
  readonly folder: string;
  readonly address: string;
  private readonly port: number;
  private server: ChildProcess | undefined;

  private constructor(folder: string, port: number) {
    this.folder = folder;
    this.port = port;
    this.address = `http://127.0.0.1:${port}/`;
  }

  /// Of the built page, or of another built folder.
  static async begin(built = kDist): Promise<OwnHost> {
    const folder = await mkdtemp(join(tmpdir(), "stringcourse-host-"));
    await cp(built, folder, { recursive: true });
    const host = new OwnHost(folder, await freePort());
    await host.start();
    return host;
  }

  /// Returns when the page can be had.
  start(): Promise<void> {
    const server = spawn(process.execPath, [kServer, String(this.port), this.folder]);
    this.server = server;
    return new Promise((resolve, reject) => {
      server.once("error", reject);
      server.once("exit", (code) => reject(new Error(`the server ended with ${code}`)));
      server.stdout.once("data", () => resolve());
    });
  }

  /// Returns when the port is left: no request is answered any more.
  async stop(): Promise<void> {
    const { server } = this;
    this.server = undefined;
    if (server === undefined) return;
    const ended = new Promise((resolve) => server.once("exit", resolve));
    server.kill();
    await ended;
  }

  /// Hands out what the folder holds now as a new version of the page.
  async publish(): Promise<void> {
    await writeFile(join(this.folder, "sw.js"), await workerText(this.folder));
  }

  async end(): Promise<void> {
    await this.stop();
    await rm(this.folder, { recursive: true, force: true });
  }
}
