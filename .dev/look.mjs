// Owns a look at the built page, for whoever changes it: opens dist/ in a headless browser and saves a picture.
//   node .dev/look.mjs OUT.png [--at '#LINK'] [--size 360x740] [--theme light|dark|forced] [--full]
//                      [--press 'BUTTON NAME'] [--run 'JAVASCRIPT'] [--print]
// --press and --run may be repeated and happen in their order; what --run returns is shown.
// --full takes the whole page instead of one screen. --print saves the pages on paper: OUT.pdf, and a PNG of each.
// Whatever the page logged is shown at the end.

import { execFileSync, spawn } from "node:child_process";
import { writeFileSync } from "node:fs";
import { createInterface } from "node:readline";
import { serve } from "./static.mjs";

const CHROMIUM_FLAGS = [
  "--headless=new", "--no-sandbox", "--disable-gpu", "--disable-dev-shm-usage", "--no-first-run", "--disable-quic",
  "--disable-background-networking", "--disable-component-update", "--disable-sync", "--hide-scrollbars",
];

const wanted = read(process.argv.slice(2));
const { server, address } = await serve(new URL("../dist", import.meta.url).pathname, 0);
const driver = spawn(process.env.CHROMEDRIVER ?? "chromedriver", ["--port=0"], { stdio: ["ignore", "pipe", "ignore"] });
let session;
try {
  session = await open(await portOf(driver));
  await take(wanted);
} catch (error) {
  console.error(`stopped: ${error.message}`);
  process.exitCode = 1;
} finally {
  if (session) await fetch(session, { method: "DELETE" });
  driver.kill();
  server.close();
  server.closeAllConnections();
}

/** What the command line asks for. */
function read(words) {
  const wanted = { out: undefined, at: "", width: 360, height: 740, theme: "light", full: false, print: false, acts: [] };
  while (words.length > 0) {
    const word = words.shift();
    if (word === "--at") wanted.at = words.shift();
    else if (word === "--size") [wanted.width, wanted.height] = words.shift().split("x").map(Number);
    else if (word === "--theme") wanted.theme = words.shift();
    else if (word === "--press") wanted.acts.push({ press: words.shift() });
    else if (word === "--run") wanted.acts.push({ run: words.shift() });
    else if (word === "--full") wanted.full = true;
    else if (word === "--print") wanted.print = true;
    else wanted.out = word;
  }
  if (!wanted.out?.endsWith(".png")) {
    console.error("usage: node .dev/look.mjs OUT.png [options]; the options stand at the top of the file");
    process.exit(2);
  }
  return wanted;
}

async function portOf(driver) {
  for await (const line of createInterface({ input: driver.stdout })) {
    const port = line.match(/successfully on port (\d+)/)?.[1];
    if (port) return port;
  }
  throw new Error("chromedriver did not start");
}

async function open(port) {
  const sessions = `http://127.0.0.1:${port}/session`;
  const capabilities = {
    "goog:chromeOptions": { args: CHROMIUM_FLAGS },
    "goog:loggingPrefs": { browser: "ALL" },
  };
  const { sessionId } = await post(sessions, { capabilities: { alwaysMatch: capabilities } });
  return `${sessions}/${sessionId}`;
}

async function post(url, body) {
  const answer = await fetch(url, { method: "POST", body: JSON.stringify(body) });
  const { value } = await answer.json();
  if (value?.error) throw new Error(value.message);
  return value;
}

function devtools(cmd, params) {
  return post(`${session}/goog/cdp/execute`, { cmd, params });
}

async function run(expression) {
  const answer = await devtools("Runtime.evaluate", { expression, returnByValue: true, awaitPromise: true });
  if (answer.exceptionDetails) throw new Error(answer.exceptionDetails.exception.description);
  return answer.result.value;
}

function settle() {
  return run("new Promise((drawn) => requestAnimationFrame(() => requestAnimationFrame(() => drawn(0))))");
}

/** Clicks the middle of the button, link or the like that has this name, or a name that begins so. */
async function press(name) {
  const { root } = await devtools("DOM.getDocument", { depth: 0 });
  const { nodes } = await devtools("Accessibility.queryAXTree", { backendNodeId: root.backendNodeId });
  const pressable = ["button", "link", "radio", "checkbox", "tab", "DisclosureTriangle"];
  const fitting = nodes.filter((node) => !node.ignored && pressable.includes(node.role.value));
  const found =
    fitting.find((node) => node.name?.value === name) ?? fitting.find((node) => node.name?.value.startsWith(name));
  if (!found) throw new Error(`nothing to press is named ${name}; there is: ${fitting.map((node) => node.name?.value).join(" | ")}`);
  const backendNodeId = found.backendDOMNodeId;
  await devtools("DOM.scrollIntoViewIfNeeded", { backendNodeId });
  const { quads } = await devtools("DOM.getContentQuads", { backendNodeId });
  const [x1, y1, , , x2, y2] = quads[0];
  const at = { x: (x1 + x2) / 2, y: (y1 + y2) / 2, button: "left", clickCount: 1 };
  await devtools("Input.dispatchMouseEvent", { type: "mousePressed", ...at });
  await devtools("Input.dispatchMouseEvent", { type: "mouseReleased", ...at });
}

async function take({ out, at, width, height, theme, full, print, acts }) {
  await devtools("Emulation.setDeviceMetricsOverride", { width, height, deviceScaleFactor: 1, mobile: width < 700 });
  const features = theme === "forced" ? [{ name: "forced-colors", value: "active" }] : [{ name: "prefers-color-scheme", value: theme }];
  await devtools("Emulation.setEmulatedMedia", { features });
  await post(`${session}/url`, { url: address + at });
  // The starting note goes away when the page has started.
  await run("new Promise((started) => (function look() { document.getElementById('start') ? requestAnimationFrame(look) : started(0); })())");
  for (const act of acts) {
    if (act.press !== undefined) await press(act.press);
    else console.log(JSON.stringify(await run(act.run)));
    await settle();
  }
  await settle();
  if (print) {
    const { data } = await devtools("Page.printToPDF", { paperWidth: 8.27, paperHeight: 11.69, printBackground: true, preferCSSPageSize: true });
    const pdf = out.replace(/png$/, "pdf");
    writeFileSync(pdf, Buffer.from(data, "base64"));
    // From Debian's poppler-utils.
    execFileSync("pdftoppm", ["-png", "-r", "80", pdf, out.replace(/\.png$/, "")]);
  } else {
    const { data } = await devtools("Page.captureScreenshot", { format: "png", captureBeyondViewport: full, ...(full && { clip: await whole() }) });
    writeFileSync(out, Buffer.from(data, "base64"));
  }
  for (const { level, message } of await post(`${session}/se/log`, { type: "browser" })) console.log(`${level}: ${message}`);
}

async function whole() {
  const { cssContentSize } = await devtools("Page.getLayoutMetrics", {});
  return { x: 0, y: 0, width: cssContentSize.width, height: cssContentSize.height, scale: 1 };
}
