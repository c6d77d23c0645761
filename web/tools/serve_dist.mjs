// Hands out web/dist on this machine alone: the right types, no Vary, nothing outside the folder.
// Usage: node serve_dist.mjs [PORT] [FOLDER]
import { createReadStream, readFileSync, statSync } from "node:fs";
import { createServer } from "node:http";
import { extname, join, normalize, resolve, sep } from "node:path";
import { fileURLToPath } from "node:url";

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

const server = createServer((request, response) => {
  const file = request.method === "GET" || request.method === "HEAD" ? fileOf(request.url ?? "/") : undefined;
  if (file === undefined) {
    response.writeHead(404, { "Content-Type": "text/plain; charset=utf-8" }).end("not here\n");
    return;
  }
  response.writeHead(200, {
    "Content-Type": types[extname(file)] ?? "application/octet-stream",
    "Cache-Control": "no-cache",
    "X-Content-Type-Options": "nosniff",
    "Content-Security-Policy": policy(),
    "Referrer-Policy": "no-referrer",
  });
  if (request.method === "HEAD") response.end();
  else createReadStream(file).pipe(response);
});
server.listen(port, "127.0.0.1", () => console.log(`the page: http://127.0.0.1:${port}/  (Ctrl-C ends it)`));
