// A screen: its forms, and the answers under them.
let open = null; // the screen that is shown
const extras = {}; // by name: draws what a question has besides its form
const answered = {}; // by name: is told the answer

function drawScreen(screen) {
  open = screen;
  $("title").textContent = screen.title;
  const main = $("main");
  main.replaceChildren(make("p", {}, screen.lead));
  const old = state.filled[screen.key];
  if (old && Date.now() - old > 12 * 3600000) {
    main.append(make("p", { class: "stop", id: "old" }, "Filled in on " + new Date(old).toDateString() + ": look again, or "),
      make("button", { type: "button", onclick: () => { delete state.fields[screen.key]; delete state.filled[screen.key]; save(); drawScreen(screen); } }, "Empty the fields"));
  }
  if (screen.questions.length > 1) {
    main.append(make("nav", { "aria-label": "On this screen" }, ...screen.questions.map((q) => make("button", { type: "button", onclick: () => {
      const head = $("q-" + q.key);
      head.scrollIntoView();
      head.focus();
    } }, q.title))));
  }
  const told = () => answer(screen);
  for (const q of screen.questions) {
    const section = make("section", { "data-question": q.key, "aria-labelledby": "q-" + q.key }, make("h2", { id: "q-" + q.key, tabindex: "-1" }, q.title));
    const more = make("details", {}, make("summary", {}, "More, taken as usual"));
    for (const input of q.inputs) (input.more ? more : section).append(drawField(screen, input, told));
    if (more.children.length > 1) section.append(more);
    if (q.extra) section.append(extras[q.extra](screen));
    section.append(make("output", { class: "answer", "aria-live": "polite", hidden: true }));
    main.append(section);
  }
  answer(screen);
}

// fieldsOf is what is filled in on a screen, whether it is shown or not.
function fieldsOf(screen) {
  const fields = {};
  for (const input of screen.questions.flatMap((q) => q.inputs)) {
    const held = (state.fields[screen.key] || {})[input.key];
    if (held && held[0] && shownNow(screen, input)) fields[input.key] = held;
  }
  return fields;
}

// reckonScreen asks the library for the answers of a screen.
function reckonScreen(screen) {
  return call("ask", { screen: screen.key, fields: fieldsOf(screen), stamps: state.stamps, entries: state.entries, holes: state.holes, finger: state.finger });
}

// answer asks the library anew and shows what it says.
function answer(screen) {
  const reply = reckonScreen(screen);
  if (reply.error) {
    notice(reply.error, "error");
    return;
  }
  for (const input of screen.questions.flatMap((q) => q.inputs)) {
    document.querySelector(`[data-field="${input.key}"]`).hidden = !shownNow(screen, input);
  }
  for (const field of document.querySelectorAll("[data-field]")) {
    const error = (reply.errors || {})[field.dataset.field] || "";
    field.querySelector(".error").textContent = error;
    for (const box of field.querySelectorAll("input, select")) {
      box.classList.toggle("bad", error !== "");
      if (error) box.setAttribute("aria-invalid", "true");
      else box.removeAttribute("aria-invalid");
    }
  }
  for (const a of reply.answers || []) {
    const section = document.querySelector(`[data-question="${a.key}"]`);
    drawAnswer(section.querySelector("output"), a);
    const question = screen.questions.find((q) => q.key === a.key);
    if (question.extra && answered[question.extra]) answered[question.extra](a);
  }
  for (const details of document.querySelectorAll("details")) {
    if ([...details.querySelectorAll(".error")].some((e) => e.textContent)) details.open = true;
  }
}

function drawAnswer(out, a) {
  const inside = [];
  if (a.verdict) inside.push(make("p", { class: "verdict" }, a.verdict));
  if (a.rows) {
    inside.push(make("dl", {}, ...a.rows.map((r) => make("div", { "data-row": r.key }, make("dt", {}, r.label),
      make("dd", {}, make("span", { class: "value" }, r.text), r.give ? make("span", { class: "give" }, "give or take " + r.give) : null,
        r.note ? make("p", { class: "note" }, r.note) : null)))));
  }
  for (const t of a.tables || []) {
    inside.push(make("div", { class: "scroll", tabindex: "0", role: "region", "aria-label": t.title }, make("table", { "data-table": t.key }, make("caption", {}, t.title),
      make("thead", {}, make("tr", {}, ...t.head.map((h) => make("th", { scope: "col" }, h)))),
      make("tbody", {}, ...t.rows.map((r) => make("tr", {}, ...r.map((c, i) => make(i ? "td" : "th", i ? {} : { scope: "row" }, c))))))));
  }
  if (a.cautions) inside.push(make("ul", { class: "cautions" }, ...a.cautions.map((c) => make("li", {}, sentence(c)))));
  if (a.known) inside.push(make("p", { class: "known" }, sentence(a.known.join("; ")) + "."));
  if ((a.rows || []).some((r) => r.give)) inside.push(make("p", { class: "known" }, "Give or take holds 19 times of 20."));
  if (a.wants) inside.push(make("p", { class: "known" }, "Still to fill in: " + a.wants.join(", ") + "."));
  out.className = "answer " + (a.level || "");
  out.hidden = inside.length === 0;
  out.replaceChildren(...inside);
}

const sentence = (s) => s.charAt(0).toUpperCase() + s.slice(1);
