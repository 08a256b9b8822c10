// Owns working without a network: keeps every file of one build, and answers with it. The list of files and the
// name of the build are put in the place of the two empty ones after a build, by .dev/after_build.mjs.
// A new build is fetched beside the old one and waits: it takes over when no page of the old one is open any more,
// or when the reader asks for it. So nobody's work is interrupted.

const BUILD = "";
const FILES = [];

addEventListener("install", (event) => {
  // Past the browser's own memory of files, which may hold those of an earlier build.
  const fresh = FILES.map((file) => new Request(file, { cache: "reload" }));
  event.waitUntil(caches.open(BUILD).then((cache) => cache.addAll(fresh)));
});

addEventListener("activate", (event) => {
  const others = (names) => names.filter((name) => name.startsWith("hindsaddle-") && name !== BUILD);
  event.waitUntil(caches.keys().then((names) => Promise.all(others(names).map((name) => caches.delete(name)))));
});

addEventListener("message", (event) => {
  if (event.data === "take over") skipWaiting();
});

addEventListener("fetch", (event) => {
  const { request } = event;
  if (request.method !== "GET" || new URL(request.url).origin !== location.origin) return;
  event.respondWith(answer(request));
});

/** The file of this build, whatever stands behind the question mark; else what the network has. */
async function answer(request) {
  const cache = await caches.open(BUILD);
  return (await cache.match(request, { ignoreSearch: true })) ?? fetch(request);
}
