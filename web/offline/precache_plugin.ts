// Writes sw.js into the build: the service worker with the list of all files and the hash of all bytes.
import { createHash } from "node:crypto";
import { readdir, readFile, writeFile } from "node:fs/promises";
import { join, relative, resolve, sep } from "node:path";
import type { Plugin } from "vite";

const kWorker = "sw.js";

async function filesIn(folder: string): Promise<string[]> {
  const entries = await readdir(folder, { recursive: true, withFileTypes: true });
  const files = entries.filter((entry) => entry.isFile()).map((entry) => join(entry.parentPath, entry.name));
  return files
    .map((file) => relative(folder, file).split(sep).join("/"))
    .filter((file) => file !== kWorker)
    .sort();
}

/// The worker's text for a build in this folder.
export async function workerText(folder: string): Promise<string> {
  const source = await readFile(new URL("./service_worker.js", import.meta.url), "utf8");
  const files = await filesIn(folder);
  const hash = createHash("sha256").update(source);
  for (const file of files) hash.update(`\n${file}\n`).update(await readFile(join(folder, file)));
  const version = hash.digest("hex").slice(0, 16);
  return `const kVersion = ${JSON.stringify(version)};\nconst kFiles = ${JSON.stringify(files)};\n${source}`;
}

export function precache(): Plugin {
  let folder = "";
  return {
    name: "precache",
    apply: "build",
    configResolved(config) {
      folder = resolve(config.root, config.build.outDir);
    },
    async closeBundle() {
      await writeFile(join(folder, kWorker), await workerText(folder));
    },
  };
}
