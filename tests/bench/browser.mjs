// Measures the built page in headless Chromium: node tests/bench/browser.mjs FOLDER
// Tables of medians and of the middle half of the runs. Files are sent in Brotli, as a host would.

import { readFileSync } from "node:fs";
import { cpus } from "node:os";
import { start } from "../../.dev/browser.mjs";
import { serve } from "../../.dev/static.mjs";

const LOADS = 9;
const TAPS = 60;
const NETWORKS = {
  "no limit": { latency: 0, downloadThroughput: -1, uploadThroughput: -1 },
  // 1.6 Mbit/s and 150 ms: a slow fourth-generation network as Lighthouse has it.
  "slow 4G": { latency: 150, downloadThroughput: 1.6e6 / 8, uploadThroughput: 750e3 / 8 },
};

const folder = process.argv[2];
const own = new Map();
const { server, address } = await serve(folder, 0, { brotli: true, own });

// Tells when the program has taken over, and was painted.
const USABLE = `new MutationObserver((_, seen) => {
  if (document.getElementById("start") || !document.querySelector("#plate")) return;
  seen.disconnect();
  requestAnimationFrame(() => { const { port1, port2 } = new MessageChannel(); port1.onmessage = () => { window.usable = performance.now(); }; port2.postMessage(0); });
}).observe(document, { childList: true, subtree: true });`;
const WHEN_USABLE = `new Promise((found) => (function look() {
  const painted = performance.getEntriesByName("first-contentful-paint")[0]?.startTime;
  window.usable && painted ? found({ painted, usable: window.usable }) : setTimeout(look, 5);
})())`;

try {
  console.log(`Chromium on ${cpus().length} cores of ${cpus()[0].model}, ${new Date().toISOString().slice(0, 10)}\n`);
  await loads();
  await relaunches();
  await taps();
} finally {
  server.close();
  server.closeAllConnections();
}

/** A first visit. */
async function loads() {
  table("first visit, ms", ["network", "CPU", "plate painted", "usable"]);
  for (const [network, limits] of Object.entries(NETWORKS)) {
    for (const rate of network === "no limit" ? [1, 4, 6] : [1, 4]) {
      const runs = [];
      for (let run = 0; run < LOADS; run += 1) {
        await using(async (browser) => {
          await slow(browser, rate, limits);
          await browser.devtools("Page.addScriptToEvaluateOnNewDocument", { source: USABLE });
          await browser.visit(address);
          runs.push(await browser.run(WHEN_USABLE));
        });
      }
      row([network, `${rate}x`, spread(runs.map(({ painted }) => painted)), spread(runs.map(({ usable }) => usable))]);
    }
  }
}

/** After one visit, without a network. */
async function relaunches() {
  table("offline relaunch, ms", ["CPU", "plate painted", "usable"]);
  await using(async (browser) => {
    await browser.devtools("Page.addScriptToEvaluateOnNewDocument", { source: USABLE });
    await browser.visit(address);
    await browser.run("navigator.serviceWorker.ready.then((kept) => new Promise((active) => { (function look() { kept.active?.state === 'activated' ? active(0) : setTimeout(look, 20); })(); }))");
    await browser.devtools("Network.enable");
    await browser.devtools("Network.emulateNetworkConditions", { offline: true, latency: 0, downloadThroughput: -1, uploadThroughput: -1 });
    for (const rate of [1, 4]) {
      await browser.devtools("Emulation.setCPUThrottlingRate", { rate });
      const runs = [];
      for (let run = 0; run < LOADS; run += 1) {
        await browser.visit(address);
        runs.push(await browser.run(WHEN_USABLE));
      }
      row([`${rate}x`, spread(runs.map(({ painted }) => painted)), spread(runs.map(({ usable }) => usable))]);
    }
  });
}

/** Steaks of the backstrap a step thicker and back: the page's own way, and by hand with the answers given. */
async function taps() {
  table("tap to new knife lines and tally, ms", ["who", "CPU", "work", "painted"]);
  const results = [];
  await using(async (browser) => {
    await browser.visit(address);
    await browser.run("new Promise((found) => (function look() { document.getElementById('start') ? setTimeout(look, 5) : found(0); })())");
    // The sheet of the muscle, opened as by a tap.
    await browser.run("document.querySelector('#plate .touch[aria-label^=\"Backstrap\"]').dispatchEvent(new MouseEvent('click', { bubbles: true })); new Promise((drawn) => setTimeout(drawn, 300))");
    await browser.run("document.querySelectorAll('.sheet .stepper button').forEach((button) => button.setAttribute('data-bench', '')); document.querySelectorAll('[data-bench]').length");
    const before = await browser.run("document.documentElement.outerHTML");
    const changes = await browser.run(`(${record})()`);
    console.log(`(the edit changes ${changes[0].length} places of the document, ${JSON.stringify(changes[0]).length} bytes)`);
    own.set("answers.json", Buffer.from(JSON.stringify(changes)));
    own.set("baseline.js", readFileSync(new URL("baseline.js", import.meta.url)));
    const still = before.replace(/<script.*?<\/script>|<link rel="(program|manifest)"[^>]*>/gs, "").replace("</head>", '<script type="module" src="baseline.js"></script></head>');
    own.set("baseline.html", Buffer.from(`<!doctype html>\n${still}`));
    for (const rate of [1, 4, 6]) {
      await browser.devtools("Emulation.setCPUThrottlingRate", { rate });
      results.push(["page", rate, await browser.run(`(${measure})(${TAPS})`)]);
    }
  });
  await using(async (browser) => {
    await browser.visit(`${address}baseline.html`);
    await browser.run("new Promise((found) => (function look() { document.body.dataset.ready ? found(0) : setTimeout(look, 5); })())");
    for (const rate of [1, 4, 6]) {
      await browser.devtools("Emulation.setCPUThrottlingRate", { rate });
      results.push(["by hand", rate, await browser.run(`(${measure})(${TAPS})`)]);
    }
  });
  results.sort(([, one], [, other]) => one - other);
  for (const [who, rate, { work, painted }] of results) row([who, `${rate}x`, spread(work), spread(painted)]);
}

/** In the page: what an edit and its way back change, as a list that a script can do again. */
async function record() {
  const path = (node) => (node === document.body ? [] : [...path(node.parentNode), [...node.parentNode.childNodes].indexOf(node)]);
  const drawn = () => new Promise((drawn) => setTimeout(drawn, 500));
  const [less, more] = document.querySelectorAll("[data-bench]");
  const turns = [];
  for (const button of [more, less]) {
    const seen = [];
    const observer = new MutationObserver((list) => seen.push(...list));
    observer.observe(document.body, { subtree: true, attributes: true, characterData: true, childList: true });
    button.click();
    await drawn();
    observer.disconnect();
    const rebuilt = new Set(seen.filter(({ type }) => type === "childList").map(({ target }) => target).filter((node) => node.isConnected));
    const inside = (node) => [...rebuilt].some((other) => other !== node && other.contains(node));
    const changes = [...rebuilt].filter((node) => !inside(node)).map((node) => ({ path: path(node), html: node.innerHTML }));
    const done = new Set();
    for (const { type, target, attributeName } of seen) {
      const key = `${type} ${attributeName}`;
      if (type === "childList" || !target.isConnected || rebuilt.has(target) || inside(target)) continue;
      if ([...done].some((one) => one.target === target && one.key === key)) continue;
      done.add({ target, key });
      changes.push(type === "attributes" ? { path: path(target), attribute: attributeName, value: target.getAttribute(attributeName) } : { path: path(target), text: target.data });
    }
    turns.push(changes);
  }
  return turns;
}

/** In the page: taps the two buttons by turns. Work ends when the document is laid out anew, painted after the frame. */
async function measure(taps) {
  const posted = () => new Promise((done) => { const { port1, port2 } = new MessageChannel(); port1.onmessage = done; port2.postMessage(0); });
  const frame = () => new Promise((done) => requestAnimationFrame(done));
  const [less, more] = document.querySelectorAll("[data-bench]");
  const result = { work: [], painted: [] };
  for (let tap = -6; tap < taps; tap += 1) {
    const button = tap % 2 === 0 ? more : less;
    // From the beginning of a frame on, so that waiting for the next one is not counted twice.
    await frame();
    await posted();
    const begun = performance.now();
    button.click();
    await posted();
    document.body.offsetHeight;
    const work = performance.now() - begun;
    await frame();
    await posted();
    if (tap >= 0) {
      result.work.push(work);
      result.painted.push(performance.now() - begun);
    }
    // Longer than the address waits, so that writing it is not part of the next tap.
    await new Promise((waited) => setTimeout(waited, 350));
  }
  return result;
}

async function slow(browser, rate, limits) {
  await browser.devtools("Emulation.setDeviceMetricsOverride", { width: 360, height: 740, deviceScaleFactor: 2, mobile: true });
  await browser.devtools("Emulation.setCPUThrottlingRate", { rate });
  await browser.devtools("Network.enable");
  await browser.devtools("Network.emulateNetworkConditions", { offline: false, ...limits });
}

async function using(work) {
  const browser = await start();
  try {
    await work(browser);
  } finally {
    await browser.close();
  }
}

function table(title, columns) {
  console.log(`\n${title}: median (middle half)\n`);
  row(columns);
  row(columns.map(() => "---"));
}

function row(cells) {
  console.log(`| ${cells.join(" | ")} |`);
}

/** Median and quartiles. */
function spread(values) {
  const sorted = [...values].sort((one, other) => one - other);
  const at = (part) => sorted[Math.round((sorted.length - 1) * part)].toFixed(sorted.at(-1) < 100 ? 1 : 0);
  return `${at(0.5)} (${at(0.25)} to ${at(0.75)})`;
}
