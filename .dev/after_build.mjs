// Owns what is made of a build when Trunk is done with it: smaller programs, files named by what is in them,
// kitchen.html, read.html, ahead.html and learn.html, which are index.html with other programs, what index.html shows
// before its program arrives, and the list of files in offline.js. Trunk runs it with the folder of the build in
// TRUNK_STAGING_DIR.

import { execFile, execFileSync } from "node:child_process";
import { createHash } from "node:crypto";
import { readdirSync, readFileSync, rmSync, writeFileSync } from "node:fs";
import { cpus } from "node:os";
import { join } from "node:path";
import { promisify } from "node:util";
import { filesIn } from "./files.mjs";
import { shortened } from "./short_names.mjs";
import { single } from "./single.mjs";

const folder = process.env.TRUNK_STAGING_DIR;

const LANGUAGES = ["en", "es"];
// A plan that was received is read on a page of its own, by the program that has the work order.
const PAGES = { index: "app", kitchen: "kitchen", read: "kitchen", ahead: "ahead", learn: "learn" };
// Style that not every page has, and the pages that fetch it.
const STYLES = { further: ["kitchen", "read", "ahead", "learn"], learn: ["learn"] };
// The features are those that Rust compiles for.
const WASM_OPT = [
  "-Os", "--converge", "--low-memory-unused", "--reorder-functions-by-name", "--enable-bulk-memory", "--enable-mutable-globals",
  "--enable-multivalue", "--enable-nontrapping-float-to-int", "--enable-reference-types", "--enable-sign-ext",
];
// Programs that are finished: the name of its JavaScript, by its own. Two pages may share one.
const done = new Map();
const waiting = [...new Set(Object.values(PAGES))].flatMap((program) => LANGUAGES.map((language) => named(program, language)));
const programs = [...waiting];
// As many at a time as the machine has cores.
await Promise.all(Array.from({ length: cpus().length }, async () => {
  for (let name = waiting.shift(); name !== undefined; name = waiting.shift()) done.set(name, await finish(name));
}));

// What Trunk wrote for the first program names it with a hash of what it was before; the others have none.
let html = readFileSync(join(folder, "index.html"), "utf8");
html = replaced(html, /<link rel="(modulepreload|preload)"[^>]*>\n?/g, "", "preloads").replace(/\n{2,}/g, "\n");
for (const [page, program] of Object.entries(PAGES)) {
  const links = LANGUAGES.map((language) => {
    const href = done.get(named(program, language));
    return `<link rel="program" hreflang="${language}" href="${href}">`;
  });
  // Before boot.js, which starts one of them.
  let text = replaced(html, "<script", `${links.join("\n")}\n<script`, "script");
  for (const [style, pages] of Object.entries(STYLES)) {
    if (!pages.includes(page)) text = replaced(text, new RegExp(`<link [^>]*href="[^"]*${style}-[0-9a-f]+\\.css"[^>]*>\n`), "", `${style}.css`);
  }
  if (page === "index") text = replaced(text, '<p class="note">Hindsaddle is starting.</p>', firstPaint(), "start");
  writeFileSync(join(folder, `${page}.html`), text);
}

// The one file with everything is for who takes it along: the pages need not keep it.
const files = filesIn(folder).filter((name) => name !== "offline.js" && name !== "single.html");
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
writeFileSync(join(folder, "single.html"), single(folder, files, programs, start));

/** What the first page shows before its program arrives. */
function firstPaint() {
  const run = ["run", "--quiet", "--locked", "--package", "hindsaddle-app", "--features", "first-paint", "--bin", "first_paint"];
  // On this machine, and so without what makes the programs smaller: see `smaller` in .dev/setup.sh.
  const env = Object.fromEntries(Object.entries(process.env).filter(([name]) => !name.startsWith("CARGO_UNSTABLE") && name !== "RUSTC_BOOTSTRAP"));
  return execFileSync("cargo", run, { env, encoding: "utf8", maxBuffer: 1 << 24, stdio: ["ignore", "pipe", "inherit"] }).trim();
}

/** The name of a program in a language. */
function named(program, language) {
  return language === "en" ? program : `${program}-${language}`;
}

/** Makes a program and its JavaScript smaller and names both by what is in them; says the JavaScript's name. */
async function finish(name) {
  const old = readdirSync(folder).find((file) => new RegExp(`^${name}(-[0-9a-f]{8,})?\\.js$`).test(file));
  const [script, program] = [old, old.replace(/\.js$/, "_bg.wasm")].map((file) => join(folder, file));
  // Not while somebody develops: it takes longest of all.
  if (process.env.TRUNK_PROFILE === "release") await promisify(execFile)("wasm-opt", [...WASM_OPT, program, "-o", program]);
  const short = shortened(readFileSync(script, "utf8"), readFileSync(program));
  const hash = createHash("sha256").update(short.script).update(short.program).digest("hex").slice(0, 16);
  rmSync(script);
  rmSync(program);
  writeFileSync(join(folder, `${name}-${hash}.js`), short.script);
  writeFileSync(join(folder, `${name}-${hash}_bg.wasm`), short.program);
  return `${name}-${hash}.js`;
}

/** The text with `from` replaced, which has to be there. */
function replaced(text, from, to, what) {
  // By a function, because a replacement that is text has signs of its own, such as $&.
  const changed = text.replace(from, () => to);
  if (changed === text) throw new Error(`the build has no ${what} to replace`);
  return changed;
}
