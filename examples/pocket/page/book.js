// What is written down, with the phone's clock.
const lineKeys = ["sap", "reads", "cold", "syrup", "wood", "note"];

extras.book = (screen) => {
  const write = () => {
    answer(screen);
    const typed = lineKeys.map((key) => [key, fieldsOf(screen)[key]]).filter(([, held]) => held);
    const wrong = [...document.querySelectorAll("[data-question=line] .error")].some((e) => e.textContent);
    if (wrong) return;
    if (!typed.length) {
      document.querySelector('[data-field="sap"] .error').textContent = "Type at least one of them.";
      return;
    }
    const { now } = clock();
    const entry = { at: Date.now(), day: now.slice(0, 10), time: now.slice(11, 16), sap: "", reads: "", cold: "", syrup: "", wood: "", note: "" };
    for (const [key, held] of typed) {
      entry[key] = joined(held);
      delete state.fields.book[key];
    }
    state.entries.push(entry);
    save();
    drawScreen(screen);
    $("written").textContent = "Written down at " + entry.time + ".";
  };
  const list = make("ol", { class: "list", id: "entries", "aria-label": "Written down" }, ...state.entries.map((e, i) => make("li", {},
    make("span", {}, [e.day, e.time, e.sap && "sap " + e.sap, e.reads, e.cold && "at " + e.cold, e.syrup && "syrup " + e.syrup, e.wood && "wood " + e.wood, e.note].filter(Boolean).join(", ")),
    twice("drop", "sure?", () => { state.entries.splice(i, 1); save(); drawScreen(screen); }))).reverse());
  return make("div", {}, make("button", { type: "button", class: "act", id: "write", onclick: write }, "Write it down"),
    make("p", { id: "written", role: "status" }), list,
    make("button", { type: "button", id: "save-days", onclick: () => saveFile("days", "days.csv") }, "Save as a file for the folder"));
};
