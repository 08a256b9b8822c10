// Owns the first moment: fetches the page's code and starts it, or says why it cannot. It knows nothing of deer.
// It is a file of its own, and no script stands in index.html, so that a strict content security policy can hold.

const code = document.querySelector('link[rel="modulepreload"]');
const wasm = document.querySelector('link[rel="preload"][type="application/wasm"]');

try {
  const page = await import(code.href);
  await page.default({ module_or_path: wasm.href });
} catch (reason) {
  console.error(reason);
  // The page clears the body when it starts, so the note is there only if it did not get that far.
  const note = document.getElementById("start");
  if (note) {
    note.textContent =
      "Hindsaddle cannot start here. It needs a browser with WebAssembly and a connection for the first visit. " +
      "The plan is kept in the address: open the same address again, or in another browser.";
  }
}

// Without a network next time: see offline.js. A page opened from a file has no such thing.
if ("serviceWorker" in navigator && location.protocol.startsWith("http")) {
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
