// Owns a headless browser and the wire to it, for whoever looks at the built page or measures it.

import { spawn } from "node:child_process";
import { mkdtempSync } from "node:fs";
import { rm } from "node:fs/promises";
import { tmpdir } from "node:os";
import { join } from "node:path";
import { createInterface } from "node:readline";

const CHROMIUM_FLAGS = [
  "--headless=new", "--no-sandbox", "--disable-gpu", "--disable-dev-shm-usage", "--no-first-run", "--disable-quic",
  "--disable-background-networking", "--disable-component-update", "--disable-sync", "--hide-scrollbars",
];

/** Starts a browser with a profile of its own. */
export async function start() {
  // Where the browser keeps what it needs while it runs: it leaves files behind.
  const scratch = mkdtempSync(join(tmpdir(), "hindsaddle-browser-"));
  const driver = spawn(process.env.CHROMEDRIVER ?? "chromedriver", ["--port=0"], { stdio: ["ignore", "pipe", "ignore"], env: { ...process.env, TMPDIR: scratch } });
  const sessions = `http://127.0.0.1:${await portOf(driver)}/session`;
  const capabilities = {
    "goog:chromeOptions": { args: CHROMIUM_FLAGS },
    "goog:loggingPrefs": { browser: "ALL" },
  };
  const { sessionId } = await post(sessions, { capabilities: { alwaysMatch: capabilities } });
  const session = `${sessions}/${sessionId}`;
  const devtools = (cmd, params = {}) => post(`${session}/goog/cdp/execute`, { cmd, params });
  return {
    devtools,
    visit: (url) => post(`${session}/url`, { url }),
    log: () => post(`${session}/se/log`, { type: "browser" }),
    /** The value of an expression in the page. */
    async run(expression) {
      const answer = await devtools("Runtime.evaluate", { expression, returnByValue: true, awaitPromise: true });
      if (answer.exceptionDetails) throw new Error(answer.exceptionDetails.exception.description);
      return answer.result.value;
    },
    async close() {
      await fetch(session, { method: "DELETE" });
      driver.kill();
      // The browser may write for a moment yet.
      await rm(scratch, { recursive: true, force: true, maxRetries: 20, retryDelay: 100 });
    },
  };
}

async function portOf(driver) {
  for await (const line of createInterface({ input: driver.stdout })) {
    const port = line.match(/successfully on port (\d+)/)?.[1];
    if (port) return port;
  }
  throw new Error("chromedriver did not start");
}

async function post(url, body) {
  const answer = await fetch(url, { method: "POST", body: JSON.stringify(body) });
  const { value } = await answer.json();
  if (value?.error) throw new Error(value.message);
  return value;
}
