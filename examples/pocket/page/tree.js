// The unrolled trunk, on which a finger sets the new hole.
const svg = (tag, attributes, ...inside) => {
  const e = document.createElementNS("http://www.w3.org/2000/svg", tag);
  for (const [name, value] of Object.entries(attributes)) e.setAttribute(name, value);
  e.append(...inside);
  return e;
};
let trunk = null; // the last answer's

extras.tree = (screen) => {
  const drawing = svg("svg", { id: "trunk", viewBox: "0 0 400 300", role: "img", tabindex: "0", "aria-label": "The trunk unrolled from the mark, clockwise to the right. Set the new hole with a finger or with the arrow keys." });
  const set = (x, y) => {
    state.finger = { x: Math.min(Math.max(x, 0), 1), y: Math.min(Math.max(y, 0), 1) };
    save();
    answer(screen);
  };
  const point = (event) => {
    if (event.type === "pointermove" && !event.buttons) return;
    const box = drawing.getBoundingClientRect();
    set((event.clientX - box.left) / box.width, (event.clientY - box.top) / box.height);
    event.preventDefault();
  };
  drawing.addEventListener("pointerdown", (event) => { drawing.setPointerCapture(event.pointerId); point(event); });
  drawing.addEventListener("pointermove", point);
  drawing.addEventListener("keydown", (event) => {
    const move = { ArrowLeft: [-1, 0], ArrowRight: [1, 0], ArrowUp: [0, -1], ArrowDown: [0, 1] }[event.key];
    if (!move) return;
    const from = state.finger || { x: 0.5, y: 0.5 };
    set(from.x + move[0] / 100, from.y + move[1] / 100);
    event.preventDefault();
  });
  const mark = () => {
    const field = document.querySelector('[data-field="year"]');
    const year = Number(field.querySelector("input").value);
    answer(screen);
    if (field.querySelector(".error").textContent) return;
    if (!year || !trunk || !trunk.along) {
      field.querySelector(".error").textContent = "Set a finger on the old hole, and type its year.";
      return;
    }
    state.holes.push({ year, along: trunk.along, height: trunk.height });
    save();
    draw(screen);
  };
  const draw = () => { holes.replaceChildren(...drawn(screen, draw)); answer(screen); };
  const holes = make("ol", { class: "list", id: "holes", "aria-label": "Old holes" });
  holes.append(...drawn(screen, () => draw()));
  return make("div", {}, drawing, make("button", { type: "button", class: "act", id: "mark", onclick: mark }, "An old hole is under the finger"), holes,
    twice("Another tree: drop the holes", "Press again to drop them", () => { state.holes = []; state.finger = null; save(); draw(); }));
};

function drawn(screen, again) {
  return state.holes.map((h, i) => make("li", {}, make("span", {}, `${h.year}: ${h.along} round, ${h.height} up`),
    make("button", { type: "button", "aria-label": "drop the hole of " + h.year, onclick: () => { state.holes.splice(i, 1); save(); again(); } }, "drop")));
}

answered.tree = (a) => {
  trunk = a.trunk || null;
  const drawing = $("trunk");
  if (!trunk) {
    drawing.replaceChildren();
    return;
  }
  const wide = 400;
  const high = Math.min(500, Math.max(160, wide / trunk.wide));
  drawing.setAttribute("viewBox", `0 0 ${wide} ${high}`);
  const spot = (s, kind, r) => svg("g", {}, svg("circle", { class: kind, cx: s.x * wide, cy: s.y * high, r }), svg("text", { x: Math.min(s.x * wide + r + 3, wide - 36), y: s.y * high + 5 }, s.text || ""));
  const line = (y) => svg("line", { x1: 0, x2: wide, y1: y * high, y2: y * high, stroke: "currentColor", "stroke-dasharray": "6 6" });
  drawing.replaceChildren(line(trunk.low), line(trunk.high), ...trunk.holes.map((s) => spot(s, "old", 7)), ...(trunk.next || []).map((s) => spot(s, "clear", 9)),
      ...(trunk.finger ? [spot({ ...trunk.finger, text: "" }, "new", 9)] : []));
};
