// Owns kitchen.html: the built index.html with the second page's program in the place of the first one's. Trunk runs
// it when a build is done, with the folder of the build in TRUNK_STAGING_DIR.

import { readFileSync, writeFileSync } from "node:fs";
import { join } from "node:path";

const folder = process.env.TRUNK_STAGING_DIR;
const first = readFileSync(join(folder, "index.html"), "utf8");
const second = first.replace(/app-[0-9a-f]+(_bg\.wasm|\.js)/g, "kitchen$1");
if (second === first) throw new Error("index.html names no app-HASH.js: kitchen.html cannot be made");
writeFileSync(join(folder, "kitchen.html"), second);
