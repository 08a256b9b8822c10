// Owns a look at the built page, for whoever changes it: opens dist/ in a headless browser and saves a picture.
//   node .dev/look.mjs OUT.png [--at '#LINK'] [--size 360x740] [--theme light|dark|forced] [--language es] [--full]
//                      [--press 'BUTTON NAME'] [--run 'JAVASCRIPT'] [--print]
// --press and --run may be repeated and happen in their order; what --run returns is shown.
// --full takes the whole page instead of one screen. --print saves the pages on paper: OUT.pdf, and a PNG of each.
// Whatever the page logged is shown at the end.

import { execFileSync } from "node:child_process";
import { writeFileSync } from "node:fs";
import { start } from "./browser.mjs";
import { serve } from "./static.mjs";

const wanted = read(process.argv.slice(2));
const { server, address } = await serve(new URL("../dist", import.meta.url).pathname, 0);
let browser;
try {
  browser = await start();
  await take(wanted);
} catch (error) {
  console.error(`stopped: ${error.message}`);
  process.exitCode = 1;
} finally {
  await browser?.close();
  server.close();
  server.closeAllConnections();
}

/** What the command line asks for. */
function read(words) {
  const wanted = { out: undefined, at: "", width: 360, height: 740, theme: "light", language: undefined, full: false, print: false, acts: [] };
  while (words.length > 0) {
    const word = words.shift();
    if (word === "--at") wanted.at = words.shift();
    else if (word === "--size") [wanted.width, wanted.height] = words.shift().split("x").map(Number);
    else if (word === "--theme") wanted.theme = words.shift();
    else if (word === "--press") wanted.acts.push({ press: words.shift() });
    else if (word === "--run") wanted.acts.push({ run: words.shift() });
    else if (word === "--language") wanted.language = words.shift();
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

function settle() {
  return browser.run("new Promise((drawn) => requestAnimationFrame(() => requestAnimationFrame(() => drawn(0))))");
}

/** Clicks the middle of the button, link or the like that has this name, or a name that begins so. */
async function press(name) {
  const { root } = await browser.devtools("DOM.getDocument", { depth: 0 });
  const { nodes } = await browser.devtools("Accessibility.queryAXTree", { backendNodeId: root.backendNodeId });
  const pressable = ["button", "link", "radio", "checkbox", "tab", "DisclosureTriangle"];
  const fitting = nodes.filter((node) => !node.ignored && pressable.includes(node.role.value));
  const found =
    fitting.find((node) => node.name?.value === name) ?? fitting.find((node) => node.name?.value.startsWith(name));
  if (!found) throw new Error(`nothing to press is named ${name}; there is: ${fitting.map((node) => node.name?.value).join(" | ")}`);
  const backendNodeId = found.backendDOMNodeId;
  await browser.devtools("DOM.scrollIntoViewIfNeeded", { backendNodeId });
  const { quads } = await browser.devtools("DOM.getContentQuads", { backendNodeId });
  const [x1, y1, , , x2, y2] = quads[0];
  const at = { x: (x1 + x2) / 2, y: (y1 + y2) / 2, button: "left", clickCount: 1 };
  await browser.devtools("Input.dispatchMouseEvent", { type: "mousePressed", ...at });
  await browser.devtools("Input.dispatchMouseEvent", { type: "mouseReleased", ...at });
}

async function take({ out, at, width, height, theme, language, full, print, acts }) {
  await browser.devtools("Emulation.setDeviceMetricsOverride", { width, height, deviceScaleFactor: 1, mobile: width < 700 });
  const features = theme === "forced" ? [{ name: "forced-colors", value: "active" }] : [{ name: "prefers-color-scheme", value: theme }];
  await browser.devtools("Emulation.setEmulatedMedia", { features });
  if (language) {
    const userAgent = await browser.run("navigator.userAgent");
    await browser.devtools("Emulation.setUserAgentOverride", { userAgent, acceptLanguage: language });
  }
  await browser.visit(address + at);
  // The starting note goes away when the page has started.
  await browser.run("new Promise((started) => (function look() { document.getElementById('start') ? requestAnimationFrame(look) : started(0); })())");
  for (const act of acts) {
    if (act.press !== undefined) await press(act.press);
    else console.log(JSON.stringify(await browser.run(act.run)));
    await settle();
  }
  await settle();
  if (print) {
    const { data } = await browser.devtools("Page.printToPDF", { paperWidth: 8.27, paperHeight: 11.69, printBackground: true, preferCSSPageSize: true });
    const pdf = out.replace(/png$/, "pdf");
    writeFileSync(pdf, Buffer.from(data, "base64"));
    // From Debian's poppler-utils.
    execFileSync("pdftoppm", ["-png", "-r", "80", pdf, out.replace(/\.png$/, "")]);
  } else {
    const { data } = await browser.devtools("Page.captureScreenshot", { format: "png", captureBeyondViewport: full, ...(full && { clip: await whole() }) });
    writeFileSync(out, Buffer.from(data, "base64"));
  }
  for (const { level, message } of await browser.log()) console.log(`${level}: ${message}`);
}

async function whole() {
  const { cssContentSize } = await browser.devtools("Page.getLayoutMetrics", {});
  return { x: 0, y: 0, width: cssContentSize.width, height: cssContentSize.height, scale: 1 };
}
