// The beginning: unpack the library, ask it for its table, show a screen.
function route() {
  const key = location.hash.slice(1);
  const screen = table.screens.find((s) => s.key === key);
  hidePad();
  $("home").hidden = !key;
  if (screen) drawScreen(screen);
  else if (key === "house") drawHouse();
  else drawHome();
  scrollTo(0, 0);
}

function drawHome() {
  open = null;
  $("title").textContent = house.title || "Pocket page";
  const tiles = [...table.screens, { key: "house", title: "My sugarhouse", lead: "Elevation, pan, tanks and instruments, once for all screens." }];
  $("main").replaceChildren(make("ul", { class: "tiles" }, ...tiles.map((s) => make("li", {}, make("a", { class: "tile", href: "#" + s.key }, make("b", {}, s.title), make("span", {}, s.lead))))));
}

function reckonerReady() {
  load();
  table = call("table");
  readHouse();
  if (state.ring) { // an alarm goes on, whatever screen is opened
    const reply = reckonScreen(table.screens.find((s) => s.key === "syrup"));
    for (const a of reply.answers || []) if (a.key === "watch") answered.watch(a);
  }
  for (const radio of document.querySelectorAll("[name=units]")) {
    radio.checked = (radio.value === "metric") === state.metric;
    radio.addEventListener("change", () => { state.metric = radio.value === "metric"; save(); table = call("table"); route(); });
  }
  $("units").hidden = false;
  addEventListener("hashchange", () => { route(); $("title").focus(); });
  addEventListener("visibilitychange", () => { if (!document.hidden) { if (state.ring) wake(); tick(); } });
  setInterval(tick, 1000);
  route();
  document.documentElement.dataset.ready = String(Math.round(performance.now()));
}

async function start() {
  const bytes = await unpack($("wasm"));
  const go = new Go();
  const { instance } = await WebAssembly.instantiate(bytes, go.importObject);
  go.run(instance);
}

start().catch((error) => { $("wait").textContent = "This browser cannot open the page: it needs WebAssembly and DecompressionStream, of 2023 or later. " + error; });

if (location.protocol === "https:" && navigator.serviceWorker) {
  navigator.serviceWorker.register("worker.js").catch(() => notice("Not kept on this phone: it does not trust the certificate of this https."));
} else if (location.protocol === "http:") {
  notice("Plain http shows this page and does not keep it. Save it as a file, or serve it over https that the phone trusts.");
}
