// Owns the first moment: fetches the page's code and starts it, or says why it cannot. It knows nothing of deer.
// It is a file of its own, and no script stands in index.html, so that a strict content security policy can hold.

// The address says which of the two pages it is: the plan, or ?kitchen, which a first visit does not fetch.
const isKitchen = location.search === "?kitchen";
const code = isKitchen
  ? new URL("kitchen.js", document.baseURI)
  : document.querySelector('link[rel="modulepreload"]').href;
const wasm = isKitchen
  ? new URL("kitchen_bg.wasm", document.baseURI)
  : document.querySelector('link[rel="preload"][type="application/wasm"]').href;

try {
  const page = await import(code);
  await page.default({ module_or_path: wasm });
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
