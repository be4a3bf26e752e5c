// The sugarhouse: the settings file of the folder, read and written back.
function readHouse() {
  const reply = call("house");
  house = { values: reply.values || {}, taken: reply.taken || {}, tanks: reply.tanks || [], title: reply.title || "", errors: reply.errors || {} };
  return reply;
}

function drawHouse() {
  open = { key: "house", questions: [] };
  $("title").textContent = "My sugarhouse";
  const told = (input) => () => {
    const reply = call("set", { name: input.key, value: fieldOf("house", input.key, input.kind)[0] });
    const error = (reply.errors || {})[input.key] || "";
    document.querySelector(`[data-field="${input.key}"] .error`).textContent = error;
    if (error || reply.error) return;
    state.house = reply.house || "";
    readHouse();
    takeUnits();
    save();
  };
  state.fields.house = {};
  for (const [key, value] of Object.entries(house.values)) state.fields.house[key] = [value, ""];
  const pick = make("input", { type: "file", id: "file", accept: ".txt,text/plain", onchange: async () => {
    const file = pick.files[0];
    if (!file) return;
    const text = await file.text();
    const before = state.house;
    state.house = text;
    const reply = readHouse();
    if (reply.error) {
      state.house = before;
      readHouse();
      notice("Not read: " + reply.error, "error");
      return;
    }
    takeUnits();
    save();
    drawHouse();
    $("read").textContent = Object.keys(house.values).length + " settings were read from " + file.name + ".";
  } });
  const main = $("main");
  main.replaceChildren(make("p", {}, "What all screens take from here: the settings file of the folder, sugarhouse.txt."),
    make("div", { class: "field" }, make("label", { for: "file" }, "Read the file"), pick, make("p", { id: "read", role: "status" })));
  const screen = { key: "house", questions: [] };
  for (const input of table.settings.filter((s) => s.key !== "tank")) {
    const few = input.kind === "choice" && input.choices[0].key === "";
    main.append(drawField(screen, { ...input, kind: few ? "choice" : "words", start: few ? "" : "such as " + input.start }, told(input)));
  }
  for (const [key, error] of Object.entries(house.errors)) document.querySelector(`[data-field="${key}"] .error`).textContent = error;
  if (house.tanks.length) main.append(make("p", { class: "known" }, "Tanks with a stick: " + house.tanks.map((t) => t.label).join(", ") + ". Tanks are lines of the file: tank: big, 120 gallons, 2.5 gallons an inch."));
  main.append(make("button", { type: "button", class: "act", id: "save-house", onclick: () => download("sugarhouse.txt", state.house + "\n") }, "Save the file for the folder"),
    make("h2", {}, "What this page keeps"), make("p", {}, "Readings, lines and settings stay in this browser, on this phone. Nothing is sent anywhere."),
    twice("Clear all that this page keeps", "Press again to lose it all", () => { clearAll(); readHouse(); route(); }));
}

// takeUnits goes by the units that the settings name.
function takeUnits() {
  if (house.values.units) state.metric = house.values.units === "metric";
  table = call("table");
  for (const radio of document.querySelectorAll("[name=units]")) radio.checked = (radio.value === "metric") === state.metric;
}
