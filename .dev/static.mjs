// Owns serving a folder on this machine, as a plain static host would: node .dev/static.mjs FOLDER PORT
// Nothing is kept by the browser without asking, so that what is seen is always what was built last.

import { readFileSync, statSync } from "node:fs";
import { createServer } from "node:http";
import { extname, join, normalize, resolve } from "node:path";
import { pathToFileURL } from "node:url";
import { brotliCompressSync } from "node:zlib";

const CONTENT_TYPES = {
  ".css": "text/css; charset=utf-8",
  ".html": "text/html; charset=utf-8",
  ".ico": "image/x-icon",
  ".js": "text/javascript; charset=utf-8",
  ".json": "application/json",
  ".png": "image/png",
  ".svg": "image/svg+xml",
  ".txt": "text/plain; charset=utf-8",
  ".wasm": "application/wasm",
  ".webmanifest": "application/manifest+json",
};

/**
 * Starts serving `folder`; port 0 takes any free one. Resolves to the server and its address once it answers.
 * With `brotli` every file is sent in Brotli, as a host would; `own` has texts by the name under which they are served, too.
 */
export function serve(folder, port, { brotli = false, own = new Map() } = {}) {
  const root = resolve(folder);
  const packed = new Map();
  const server = createServer((request, response) => {
    const name = nameOf(request.url);
    const body = name === undefined ? undefined : own.get(name) ?? contents(root, name);
    if (body === undefined) {
      response.writeHead(404, { "content-type": "text/plain" }).end("not found\n");
      return;
    }
    if (brotli && !packed.has(name)) packed.set(name, brotliCompressSync(body));
    response.writeHead(200, {
      "content-type": CONTENT_TYPES[extname(name)] ?? "application/octet-stream",
      "cache-control": "no-cache",
      ...(brotli && { "content-encoding": "br" }),
    });
    response.end(request.method === "HEAD" ? undefined : packed.get(name) ?? body);
  });
  return new Promise((ready, failed) => {
    server.once("error", failed);
    server.listen(port, "127.0.0.1", () => {
      ready({ server, address: `http://localhost:${server.address().port}/` });
    });
  });
}

/** The name of the file that a request means, from the folder on; nothing if it cannot be read. */
function nameOf(url) {
  try {
    const path = decodeURIComponent(new URL(url, "http://localhost").pathname);
    return normalize(path.endsWith("/") ? `${path}index.html` : path).slice(1);
  } catch {
    return undefined;
  }
}

/** What is in a file; nothing if there is none inside `root`. */
function contents(root, name) {
  const file = join(root, name);
  const inside = file.startsWith(`${root}/`) && statSync(file, { throwIfNoEntry: false })?.isFile();
  return inside ? readFileSync(file) : undefined;
}

if (import.meta.url === pathToFileURL(process.argv[1]).href) {
  const [folder, port] = process.argv.slice(2);
  try {
    const { address } = await serve(folder, Number(port));
    console.log(`      The page is ready: ${address}`);
    console.log("      Stop it with Ctrl-C.");
  } catch (error) {
    const reason = error.code === "EADDRINUSE" ? `port ${port} is taken; choose another with --port N` : error.message;
    console.error(`stopped: ${reason}`);
    process.exitCode = 1;
  }
}
