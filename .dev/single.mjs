// Owns single.html: all pages in one file, to be opened from a memory card or a message. Its style and script stand in
// the HTML, so its content security policy names them by their hashes; the programs lie in it packed.

import { createHash } from "node:crypto";
import { readFileSync } from "node:fs";
import { join } from "node:path";
import { gzipSync } from "node:zlib";

/** The one file. `names` are the files of the built folder, `programs` those of every page and language, `start` is
 * what starts a program in it. */
export function single(folder, names, programs, start) {
  const read = (name) => readFileSync(join(folder, name));
  const named = (pattern) => names.find((name) => pattern.test(name)) ?? missing(pattern);
  const style = ["tokens", "further", "app", "learn", "print"]
    .map((name) => ({ name, text: read(named(new RegExp(`^${name}-\\w+\\.css$`))).toString() }))
    .map(({ name, text }) => (name === "print" ? `@media print {\n${text}}\n` : text))
    .join("");
  const scripts = programs.map((program) => `"${program}": () => {\n${asFunction(read(named(new RegExp(`^${program}-[0-9a-f]+\\.js$`))).toString())}}`);
  const script = `const PROGRAMS = {\n${scripts.join(",\n")}};\n${start}`;
  const data = programs.map((program) => {
    const packed = gzipSync(read(named(new RegExp(`^${program}-[0-9a-f]+_bg\\.wasm$`))), { level: 9 });
    return `<script type="application/octet-stream" id="program-${program}">${packed.toString("base64")}</script>`;
  });
  const hash = (text) => `'sha256-${createHash("sha256").update(text).digest("base64")}'`;
  const policy = `default-src 'none'; script-src ${hash(script)} 'wasm-unsafe-eval'; style-src ${hash(style)}; img-src blob: data:; base-uri 'none'; form-action 'none'`;
  return `<!doctype html>
<html lang="en">
<head>
<meta charset="utf-8">
<meta name="viewport" content="width=device-width, initial-scale=1, viewport-fit=cover">
<title>Hindsaddle</title>
<meta http-equiv="Content-Security-Policy" content="${policy}">
<style>${style}</style>
${data.join("\n")}
</head>
<body>
<p id="start">Hindsaddle is starting. If this stays, your browser cannot run it: it needs JavaScript and WebAssembly.</p>
<script type="module">${script}</script>
</body>
</html>
`;
}

/** The body of a function that returns what a module exports as its default. */
function asFunction(module) {
  const body = module.replace(/^export \{.*__wbg_init as default.*\};?\s*$/m, "return __wbg_init;\n");
  if (body === module) throw new Error("the JavaScript of a program exports nothing to start it by");
  return body;
}

function missing(pattern) {
  throw new Error(`the build has no ${pattern}`);
}
