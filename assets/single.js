// Owns the first moment of single.html, in which the pages are one file: unpacks the program that is asked for and
// starts it, and keeps the ways between the pages inside the file. `PROGRAMS` stands before it.

const asked = location.search.slice(1);
const place = Object.hasOwn(PROGRAMS, asked) ? asked : "app";

try {
  const packed = Uint8Array.from(atob(document.getElementById(`program-${place}`).textContent), (one) => one.charCodeAt(0));
  const unpacked = new Blob([packed]).stream().pipeThrough(new DecompressionStream("gzip"));
  await PROGRAMS[place]()({ module_or_path: await new Response(unpacked).arrayBuffer() });
} catch (reason) {
  console.error(reason);
  const note = document.getElementById("start");
  if (note) note.textContent = "Hindsaddle cannot start here. It needs a browser of 2023 or later.";
}

addEventListener("click", (event) => {
  const way = event.target.closest?.("a[href]")?.getAttribute("href").match(/^(?:\.\/|(kitchen|ahead|learn)\.html)(#.*)$/);
  if (!way) return;
  event.preventDefault();
  const [, other, fragment] = way;
  location.href = location.pathname + (other ? `?${other}` : "") + fragment;
});
