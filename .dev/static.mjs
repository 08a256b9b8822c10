// Owns serving a folder on this machine, as a plain static host would: node .dev/static.mjs FOLDER PORT
// Nothing is kept by the browser without asking, so that what is seen is always what was built last.

import { createReadStream, statSync } from "node:fs";
import { createServer } from "node:http";
import { extname, join, normalize, resolve } from "node:path";
import { pathToFileURL } from "node:url";

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

/** Starts serving `folder`; port 0 takes any free one. Resolves to the server and its address once it answers. */
export function serve(folder, port) {
  const root = resolve(folder);
  const server = createServer((request, response) => {
    const file = fileOf(root, request.url);
    if (!file) {
      response.writeHead(404, { "content-type": "text/plain" }).end("not found\n");
      return;
    }
    response.writeHead(200, {
      "content-type": CONTENT_TYPES[extname(file)] ?? "application/octet-stream",
      "content-length": statSync(file).size,
      "cache-control": "no-cache",
    });
    if (request.method === "HEAD") response.end();
    else createReadStream(file).pipe(response);
  });
  return new Promise((ready, failed) => {
    server.once("error", failed);
    server.listen(port, "127.0.0.1", () => {
      ready({ server, address: `http://localhost:${server.address().port}/` });
    });
  });
}

/** The file that a request means, or nothing if there is none inside `root`. */
function fileOf(root, url) {
  let path;
  try {
    path = decodeURIComponent(new URL(url, "http://localhost").pathname);
  } catch {
    return undefined;
  }
  const file = join(root, normalize(path.endsWith("/") ? `${path}index.html` : path));
  const inside = file.startsWith(`${root}/`) && statSync(file, { throwIfNoEntry: false })?.isFile();
  return inside ? file : undefined;
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
