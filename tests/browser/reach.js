// Owns where a pointer can reach an element: called with `this` the element, and whether it may scroll to it.
// Gives { x, y } on the screen, or { covered } saying what is in the way.
async function (mayScroll) {
  const frame = () => new Promise(requestAnimationFrame);
  const place = () => JSON.stringify(this.getBoundingClientRect());
  if (mayScroll) this.scrollIntoView({ block: "center", inline: "center", behavior: "instant" });
  // A sheet that still slides in would be missed, so wait until it is where it was a frame ago.
  for (let before; before !== place(); await frame()) before = place();

  // A radio button drawn by its label is reached through the label.
  const targets = [this, ...(this.labels ?? [])];
  let inTheWay = "nothing: it is off the screen";
  for (const target of targets) {
    const box = target.getBoundingClientRect();
    const left = Math.max(box.left, 0), right = Math.min(box.right, innerWidth);
    const top = Math.max(box.top, 0), bottom = Math.min(box.bottom, innerHeight);
    if (right <= left || bottom <= top) continue;
    // The centre first; a crescent-shaped muscle does not hold its own centre, so then a grid, from the centre out.
    const steps = 16, points = [];
    for (let i = 0; i <= steps; i++)
      for (let j = 0; j <= steps; j++)
        points.push({ x: left + ((i + 0.5) / (steps + 1)) * (right - left), y: top + ((j + 0.5) / (steps + 1)) * (bottom - top) });
    const middle = { x: (left + right) / 2, y: (top + bottom) / 2 };
    const distance = ({ x, y }) => Math.hypot(x - middle.x, y - middle.y);
    points.sort((a, b) => distance(a) - distance(b));
    for (const { x, y } of [middle, ...points]) {
      const hit = document.elementFromPoint(x, y);
      if (hit && target.contains(hit)) return { x, y };
      if (hit) inTheWay = `<${hit.localName} class="${hit.getAttribute("class") ?? ""}"> ${hit.getAttribute("aria-label") ?? ""}`;
    }
  }
  return { covered: inTheWay };
}
