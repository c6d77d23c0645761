// Hands out web/dist on this machine alone: the right types, packed with gzip as most static hosts do, nothing outside the
// folder.
// Usage: node serve_dist.mjs [PORT] [FOLDER]     with SLOW=1: as a slow mobile network hands it on (slow_network.mjs)
import { readFileSync, statSync } from "node:fs";
import { createServer } from "node:http";
import { extname, join, normalize, resolve, sep } from "node:path";
import { fileURLToPath } from "node:url";
import { gzipSync } from "node:zlib";
import { slowly } from "./slow_network.mjs";

const port = Number(process.argv[2] ?? 8480);
const folder = resolve(process.argv[3] ?? fileURLToPath(new URL("../dist", import.meta.url)));
const types = {
  ".html": "text/html; charset=utf-8",
  ".js": "text/javascript; charset=utf-8",
  ".css": "text/css; charset=utf-8",
  ".json": "application/json",
  ".webmanifest": "application/manifest+json",
  ".svg": "image/svg+xml",
  ".png": "image/png",
  ".otf": "font/otf",
  ".woff2": "font/woff2",
  ".wasm": "application/wasm",
};

function fileOf(url) {
  let path;
  try {
    path = decodeURIComponent(new URL(url, "http://localhost").pathname);
  } catch {
    return undefined;
  }
  const file = join(folder, normalize(path.endsWith("/") ? `${path}index.html` : path));
  if (file.includes("\0") || !file.startsWith(folder + sep)) return undefined;
  try {
    return statSync(file).isFile() ? file : undefined;
  } catch {
    return undefined;
  }
}

/// The page's own policy, which stands in its head for hosts that send no headers; framing can only be refused in a header.
function policy() {
  const page = readFileSync(join(folder, "index.html"), "utf8");
  const own = /http-equiv="Content-Security-Policy" content="([^"]+)"/.exec(page)?.[1];
  if (own === undefined) throw new Error("the page's head has no policy");
  return `${own}; frame-ancestors 'none'`;
}

/// Packed already: fonts, pictures.
const kPackedTypes = new Set([".woff2", ".png"]);
/// By file and the time of its last change.
const kPacked = new Map();

function packed(file) {
  const key = `${file} ${statSync(file).mtimeMs}`;
  if (!kPacked.has(key)) kPacked.set(key, gzipSync(readFileSync(file)));
  return kPacked.get(key);
}

const server = createServer((request, response) => {
  const file = request.method === "GET" || request.method === "HEAD" ? fileOf(request.url ?? "/") : undefined;
  if (file === undefined) {
    response.writeHead(404, { "Content-Type": "text/plain; charset=utf-8" }).end("not here\n");
    return;
  }
  const packs = /\bgzip\b/.test(request.headers["accept-encoding"] ?? "") && !kPackedTypes.has(extname(file));
  const bytes = packs ? packed(file) : readFileSync(file);
  response.writeHead(200, {
    "Content-Length": bytes.length,
    ...(packs ? { "Content-Encoding": "gzip" } : {}),
    "Content-Type": types[extname(file)] ?? "application/octet-stream",
    "Cache-Control": "no-cache",
    "X-Content-Type-Options": "nosniff",
    "Content-Security-Policy": policy(),
    "Referrer-Policy": "no-referrer",
  });
  if (request.method === "HEAD") response.end();
  else if (process.env.SLOW === "1") void slowly(response, bytes);
  else response.end(bytes);
});
server.listen(port, "127.0.0.1", () => console.log(`the page: http://127.0.0.1:${port}/  (Ctrl-C ends it)`));
