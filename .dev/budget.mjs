// Owns the limits on what is downloaded: node .dev/budget.mjs FOLDER
// Prints every file of the built page with its size raw, gzipped and in Brotli, and fails above the limit.

import { readFileSync } from "node:fs";
import { join } from "node:path";
import { brotliCompressSync, constants, gzipSync } from "node:zlib";
import { filesIn } from "./files.mjs";

// The aim for a first visit is 150,000; this holds what has been reached, so that it is not lost again. 17,000 of it
// are the page as it stands before its program arrives. The other pages are fetched only by who opens them.
// Icons, the list of files to keep and what an installed page is called are fetched after the page can be used.
const isLater = (file) => file.startsWith("icons/icon-") || file.startsWith("icons/maskable") || ["offline.js", "manifest.webmanifest", "single.html"].includes(file);
const PARTS = [
  { name: "a first visit", limit: 242_300, has: (file) => !/^(kitchen|read|ahead|learn|further)|-es-/.test(file) && !isLater(file) },
  { name: "the second page", limit: 238_700, has: (file) => /^(kitchen|further)/.test(file) && !file.includes("-es-") },
  { name: "the third page", limit: 205_000, has: (file) => file.startsWith("ahead") && !file.includes("-es-") },
  { name: "the fourth page", limit: 238_700, has: (file) => file.startsWith("learn") && !file.includes("-es-") },
];

const folder = process.argv[2];
const files = filesIn(folder).map((name) => {
  const bytes = readFileSync(join(folder, name));
  const brotli = brotliCompressSync(bytes, { params: { [constants.BROTLI_PARAM_QUALITY]: 11 } });
  return { name, raw: bytes.length, gzip: gzipSync(bytes, { level: 9 }).length, brotli: brotli.length };
});

const totals = PARTS.map(({ name, limit, has }) => {
  const total = { name, limit, raw: 0, gzip: 0, brotli: 0 };
  for (const file of files.filter((file) => has(file.name))) {
    for (const form of ["raw", "gzip", "brotli"]) total[form] += file[form];
  }
  return total;
});

const line = (name, ...numbers) => name.padEnd(36) + numbers.map((number) => String(number).padStart(9)).join("");
console.log(line("file", "raw", "gzip", "brotli"));
for (const { name, raw, gzip, brotli } of [...files, ...totals]) console.log(line(name, raw, gzip, brotli));

for (const { name, limit, brotli } of totals.filter((total) => total.brotli > total.limit)) {
  console.error(`${name} takes ${brotli} bytes in Brotli; the limit is ${limit}.`);
  process.exitCode = 1;
}
