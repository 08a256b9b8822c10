// Owns the first moment: fetches the page's code and starts it, or says why it cannot. It knows nothing of deer.
// It is a file of its own, and no script stands in index.html, so that a strict content security policy can hold.
// It runs before the body is read: what is fetched is on its way when the first picture is drawn.

const CANNOT =
  "Hindsaddle cannot start here. It needs a browser with WebAssembly and a connection for the first visit. " +
  "The plan is kept in the address: open the same address again, or in another browser.";

// index.html shows the example until the program is there. Who has a plan of his own sees its outlines only.
if (location.hash.length > 1 || remembers()) document.documentElement.classList.add("own-plan");

function remembers() {
  try {
    return localStorage.getItem("hindsaddle.plan") !== null;
  } catch {
    // A browser that remembers nothing may refuse to be asked.
    return false;
  }
}

const code = document.querySelector('link[rel="program"]').href;
// Both are fetched at once.
start(import(code), fetch(code.replace(/\.js$/, "_bg.wasm"))).then(keep);

async function start(code, program) {
  try {
    const [page] = await Promise.all([code, body()]);
    await page.default({ module_or_path: program });
  } catch (reason) {
    console.error(reason);
    await body();
    // The page clears the body when it starts, so this is there only if it did not get that far.
    const start = document.getElementById("start");
    if (!start) return;
    const note = document.createElement("p");
    note.className = "note";
    note.setAttribute("role", "alert");
    note.textContent = CANNOT;
    start.replaceChildren(note);
    start.inert = false;
  }
}

/** When the body is read. */
function body() {
  return new Promise((read) => {
    if (document.readyState === "loading") addEventListener("DOMContentLoaded", read, { once: true });
    else read();
  });
}

// A fault of the program itself stops it for good; the plan is remembered after every change.
const stopped = (reason) => {
  if (!(reason instanceof WebAssembly.RuntimeError) || document.getElementById("stopped")) return;
  const note = document.createElement("div");
  note.id = "stopped";
  note.setAttribute("role", "alert");
  const again = document.createElement("button");
  again.className = "tool";
  again.textContent = "Open the same plan again";
  again.addEventListener("click", () => location.reload());
  note.append("The planner stopped by a fault of its own. Nothing you decided is lost. ", again);
  document.body.prepend(note);
};
addEventListener("error", (event) => stopped(event.error));
addEventListener("unhandledrejection", (event) => stopped(event.reason));

// Without a network next time: see offline.js. It fetches every page, so the one that is opened comes first.
async function keep() {
  // A page opened from a file has no such thing.
  if (!("serviceWorker" in navigator && location.protocol.startsWith("http"))) return;
  try {
    const kept = await navigator.serviceWorker.register("offline.js");
    const tell = (worker) => {
      if (worker?.state === "installed" && navigator.serviceWorker.controller) dispatchEvent(new Event("newer"));
    };
    tell(kept.waiting);
    kept.addEventListener("updatefound", () => {
      const worker = kept.installing;
      worker.addEventListener("statechange", () => tell(worker));
    });
  } catch (reason) {
    // Refused, as in private windows: the page works all the same while there is a network.
    console.info(reason);
  }
}
