// Owns what is made of a build when Trunk is done with it: kitchen.html and ahead.html, which are index.html with
// another program in the place of the first one's, and the list of files in offline.js. Trunk runs it with the folder of the
// build in TRUNK_STAGING_DIR.

import { createHash } from "node:crypto";
import { readdirSync, readFileSync, writeFileSync } from "node:fs";
import { join, relative, sep } from "node:path";
import { single } from "./single.mjs";

const folder = process.env.TRUNK_STAGING_DIR;

const first = readFileSync(join(folder, "index.html"), "utf8");
for (const page of ["kitchen", "ahead"]) {
  const other = replaced(first, /app-[0-9a-f]+(_bg\.wasm|\.js)/g, `${page}$1`, "app-HASH.js");
  writeFileSync(join(folder, `${page}.html`), other);
}

const files = readdirSync(folder, { recursive: true, withFileTypes: true })
  .filter((entry) => entry.isFile())
  .map((entry) => relative(folder, join(entry.parentPath ?? entry.path, entry.name)).split(sep).join("/"))
  // The one file with everything is for who takes it along: the pages need not keep it.
  .filter((name) => name !== "offline.js" && name !== "single.html")
  .sort();
// The name of a build says what is in it: the same files have the same name.
const hash = createHash("sha256");
for (const name of files) hash.update(name).update(readFileSync(join(folder, name)));
const build = `hindsaddle-${hash.digest("hex").slice(0, 16)}`;
// A page is asked for by its folder, too.
const list = ["./", ...files];
let offline = readFileSync(join(folder, "offline.js"), "utf8");
offline = replaced(offline, 'const BUILD = "";', `const BUILD = "${build}";`, "const BUILD");
offline = replaced(offline, "const FILES = [];", `const FILES = ${JSON.stringify(list)};`, "const FILES");
writeFileSync(join(folder, "offline.js"), offline);

const start = readFileSync(new URL("../assets/single.js", import.meta.url), "utf8");
writeFileSync(join(folder, "single.html"), single(folder, files, start));

/** The text with `from` replaced, which has to be there. */
function replaced(text, from, to, what) {
  const changed = text.replace(from, to);
  if (changed === text) throw new Error(`the build has no ${what} to replace`);
  return changed;
}
