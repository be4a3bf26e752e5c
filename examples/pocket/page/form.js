// The forms, drawn from the table of questions.
function unitsOf(kind) {
  const k = table.kinds[kind] || {};
  const all = (state.metric ? k.metric : k.us) || [];
  if (house.values.gallons !== "imperial") return all;
  return [...all].sort((a, b) => b.text.startsWith("imp gal") - a.text.startsWith("imp gal"));
}

// fieldOf is what stands in a field: the text, and the unit of its button.
function fieldOf(screen, key, kind) {
  const held = (state.fields[screen] || {})[key];
  const unit = unitsOf(kind)[0];
  return held && held[0] ? held : ["", unit ? unit.text : ""];
}

// joined is what stands in a field as one text: a bare number takes the unit of
// its button, as the library reads it.
function joined([text, unit]) {
  return /^[0-9.,+\-/ ]+$/.test(text) && unit ? text.trim() + " " + unit : text.trim();
}

function setField(screen, key, text, unit) {
  state.fields[screen] = state.fields[screen] || {};
  state.fields[screen][key] = [text, unit];
  state.filled[screen] = Date.now();
  save();
}

function shownNow(screen, input) {
  if (!input.when) return true;
  const [key, value] = input.when.split("=");
  const other = screen.questions.flatMap((q) => q.inputs).find((i) => i.key === key);
  return (fieldOf(screen.key, key, other.kind)[0] || other.start || "") === value;
}

// drawField draws a field of a screen. Told is called when it changes.
function drawField(screen, input, told) {
  const id = screen.key + "-" + input.key.replaceAll(" ", "-");
  const error = make("p", { class: "error", id: id + "-error", role: "alert" });
  const help = make("p", { class: "help", id: id + "-help" }, input.help || "");
  if (input.kind === "choice") return drawChoice(screen, input, id, help, error, told);
  const [text, unit] = fieldOf(screen.key, input.key, input.kind);
  const usual = (input.setting && house.taken[input.setting]) || input.start || "";
  const box = make("input", { id, type: "text", inputmode: "decimal", autocomplete: "off", autocapitalize: "off", spellcheck: "false", placeholder: usual, "aria-describedby": help.id + " " + error.id });
  if (input.kind === "words") box.inputMode = "text";
  box.value = text;
  const units = unitsOf(input.kind);
  const button = units.length && units[0].text ? make("button", { type: "button", class: "unit" }, unit) : null;
  const change = () => {
    setField(screen.key, input.key, box.value, button ? button.textContent : "");
    told();
  };
  const name = (u) => button && button.setAttribute("aria-label", u + ", unit of " + input.label + (units.length > 1 ? ", press for the next" : ""));
  name(unit);
  box.addEventListener("input", () => {
    if (button && box.value === "") { // an emptied field begins anew, in the units of the page
      button.textContent = units[0].text;
      name(button.textContent);
    }
    change();
  });
  if (button) {
    button.addEventListener("click", () => {
      const at = units.findIndex((u) => u.text === button.textContent);
      button.textContent = units[(at + 1) % units.length].text;
      name(button.textContent);
      change();
    });
  }
  const entry = make("div", { class: "entry" });
  if (units.length) entry.append(stepper(box, button, units, usual, -1, input.label, change));
  entry.append(box);
  if (button) entry.append(button);
  if (input.kind === "clock") {
    entry.append(make("button", { type: "button", class: "now", onclick: () => { box.value = timeOf(Date.now()).slice(0, 5); change(); } }, "now"));
  }
  if (units.length) entry.append(stepper(box, button, units, usual, 1, input.label, change));
  padFor(box, button, input.kind, change);
  return make("div", { class: "field", "data-field": input.key }, make("label", { for: id }, input.label), entry, help, error);
}

// stepper is a plus or a minus button. A clock steps by minutes.
function stepper(box, button, units, usual, sign, label, change) {
  const step = () => {
    const unit = button ? button.textContent : "";
    const size = (units.find((u) => u.text === unit) || units[0]).step;
    const text = box.value.trim() || usual;
    const time = /^(\d{1,2}):(\d\d)$/.exec(text);
    if (time) {
      const minutes = (Number(time[1]) * 60 + Number(time[2]) + sign * size + 1440) % 1440;
      box.value = String(Math.floor(minutes / 60)).padStart(2, "0") + ":" + String(minutes % 60).padStart(2, "0");
    } else {
      // A number, or a whole and a fraction, and its unit; other words stay as they are.
      const parts = /^(-?)(?:(\d*\.?\d*)|(?:(\d+) +)?(\d+)\/([1-9]\d*))(\s*(?!e\d)[a-z%].*|)$/i.exec(text);
      if (!parts || (text && !/\d/.test(text))) return;
      const whole = parts[4] ? Number(parts[3] || 0) + parts[4] / parts[5] : Number(parts[2] || 0);
      const decimals = Math.max((String(size).split(".")[1] || "").length, parts[4] ? 4 : (parts[2].split(".")[1] || "").length);
      const moved = (Number(parts[1] + 1) * whole + sign * size).toFixed(decimals);
      box.value = (parts[4] ? String(Number(moved)) : moved) + parts[6];
    }
    change();
  };
  return make("button", { type: "button", class: "step", "aria-label": (sign < 0 ? "less " : "more ") + label, onclick: step }, sign < 0 ? "\u2212" : "+");
}

function drawChoice(screen, input, id, help, error, told) {
  const chosen = fieldOf(screen.key, input.key, input.kind)[0];
  const start = chosen || (input.setting && house.taken[input.setting]) || input.start || "";
  const set = (value) => { setField(screen.key, input.key, value, ""); told(); };
  const choices = input.key === "tank" ? [...input.choices, ...house.tanks] : input.choices;
  if (choices.length > 4) {
    const select = make("select", { id, "aria-describedby": error.id, onchange: () => set(select.value) },
      ...choices.filter((c) => c.key || !input.setting).map((c) => make("option", { value: c.key, selected: c.key === start }, c.label)));
    return make("div", { class: "field", "data-field": input.key }, make("label", { for: id }, input.label), make("div", { class: "entry" }, select), help, error);
  }
  return make("fieldset", { class: "field", "data-field": input.key }, make("legend", {}, input.label),
    ...choices.map((c) => make("label", { class: "pick" },
      make("input", { type: "radio", name: id, value: c.key, checked: c.key === start, onchange: () => set(c.key) }), c.label)), help, error);
}
