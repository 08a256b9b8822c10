// Owns the first moment: fetches the page's code and starts it, or says why it cannot. It knows nothing of deer.
// It is a file of its own, and no script stands in index.html, so that a strict content security policy can hold.
// It runs before the body is read: what is fetched is on its way when the first picture is drawn.

// What the reader chose, else the first of the browser's languages there is a program in. The choice is written by
// app/src/components/animal_card.rs.
const programs = new Map([...document.querySelectorAll('link[rel="program"]')].map(({ hreflang, href }) => [hreflang, href]));
const asked = [chosen(), ...navigator.languages].map((language) => language?.slice(0, 2).toLowerCase());
const language = asked.find((language) => programs.has(language)) ?? "en";
document.documentElement.lang = language;
const words = {
  en: {
    cannot:
      "Hindsaddle cannot start here. It needs a browser with WebAssembly and a connection for the first visit. " +
      "The plan is kept in the address: open the same address again, or in another browser.",
    stopped: "The planner stopped by a fault of its own. Nothing you decided is lost. ",
    again: "Open the same plan again",
  },
  es: {
    cannot:
      "Hindsaddle no puede arrancar aquí. Necesita un navegador con WebAssembly y conexión en la primera visita. " +
      "El plan está en la dirección: abre la misma dirección otra vez, o en otro navegador.",
    stopped: "El programa se detuvo por un fallo propio. No se ha perdido nada de lo que decidiste. ",
    again: "Abrir otra vez el mismo plan",
  },
}[language];

function chosen() {
  try {
    return localStorage.getItem("hindsaddle.language");
  } catch {
    // A browser that remembers nothing may refuse to be asked.
    return undefined;
  }
}

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

const code = programs.get(language);
// Both are fetched at once.
start(import(code), fetch(code.replace(/\.js$/, "_bg.wasm"))).then(keep);

async function start(code, program) {
  try {
    const [page] = await Promise.all([code, body(), recall()]);
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
    note.textContent = words.cannot;
    start.replaceChildren(note);
    start.inert = false;
  }
}

/** Puts back what a browser that was killed had not kept yet: see app/src/platform/journal.rs. */
async function recall() {
  try {
    const kept = Number(localStorage.getItem("hindsaddle.count"));
    const journal = await caches.open("hindsaddle.journal");
    let last = kept;
    for (const { url } of await journal.keys()) {
      const [count, ...lines] = (await (await journal.match(url)).text()).split("\n");
      if (Number(count) <= kept) continue;
      localStorage.setItem(new URL(url).pathname.split("/").pop(), lines.join("\n"));
      last = Math.max(last, Number(count));
    }
    if (last > kept) localStorage.setItem("hindsaddle.count", last);
  } catch (reason) {
    // Refused, as in private windows or from a file: there is nothing to put back.
    console.info(reason);
  }
}

// A browser that can install the page says so; the page offers it in its own time: app/src/platform/install.rs.
addEventListener("beforeinstallprompt", (event) => {
  event.preventDefault();
  globalThis.installing = event;
  dispatchEvent(new Event("installable"));
});
addEventListener("appinstalled", () => {
  globalThis.installing = undefined;
  dispatchEvent(new Event("installable"));
});

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
  again.textContent = words.again;
  again.addEventListener("click", () => location.reload());
  note.append(words.stopped, again);
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
