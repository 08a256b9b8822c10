// Owns the first moment of single.html, in which the pages are one file: unpacks the program that is asked for and
// starts it, and keeps the ways between the pages inside the file. `PROGRAMS` stands before it.

// A plan that was received is read with the program that has the work order.
const asked = location.search.slice(1).replace(/^read$/, "kitchen");
const page = Object.hasOwn(PROGRAMS, asked) ? asked : "app";
// What the reader chose, else the first of the browser's languages there is a program in, as in boot.js.
const program = (language) => (language === "en" ? page : `${page}-${language}`);
const languages = [chosen(), ...navigator.languages].map((language) => language?.slice(0, 2).toLowerCase());
const language = languages.find((language) => language && Object.hasOwn(PROGRAMS, program(language))) ?? "en";
document.documentElement.lang = language;
const place = program(language);

function chosen() {
  try {
    return localStorage.getItem("hindsaddle.language");
  } catch {
    return undefined;
  }
}

try {
  const packed = Uint8Array.from(atob(document.getElementById(`program-${place}`).textContent), (one) => one.charCodeAt(0));
  const unpacked = new Blob([packed]).stream().pipeThrough(new DecompressionStream("gzip"));
  await PROGRAMS[place]()({ module_or_path: await new Response(unpacked).arrayBuffer() });
} catch (reason) {
  console.error(reason);
  const note = document.getElementById("start");
  const words = {
    en: "Hindsaddle cannot start here. It needs a browser of 2023 or later.",
    es: "Hindsaddle no puede arrancar aquí. Necesita un navegador de 2023 o posterior.",
  };
  if (note) note.textContent = words[language];
}

addEventListener("click", (event) => {
  const way = event.target.closest?.("a[href]")?.getAttribute("href").match(/^(?:\.\/|(kitchen|read|ahead|learn)\.html)(#.*)$/);
  if (!way) return;
  event.preventDefault();
  const [, other, fragment] = way;
  location.href = location.pathname + (other ? `?${other}` : "") + fragment;
});
