// What the page keeps: in its own storage alone, which the person can clear.
const storeName = "sapreckoner-pocket";
const empty = () => ({ metric: false, fields: {}, filled: {}, house: "", stamps: [], entries: [], holes: [], finger: null, ring: false, rung: 0 });
let state = empty();
let table = null; // the questions, as the library tells them
let house = { values: {}, taken: {}, tanks: [] };
const $ = (id) => document.getElementById(id);

function load() {
  try {
    const text = localStorage.getItem(storeName);
    const old = text && JSON.parse(text);
    if (old && typeof old === "object") state = { ...empty(), ...old };
  } catch {
    notKept();
  }
}

function save() {
  try {
    localStorage.setItem(storeName, JSON.stringify(state));
    if ($("notice").dataset.why === "kept") notice("");
  } catch {
    notKept();
  }
}

function notKept() {
  notice("This phone does not keep what you enter: its storage is full or denied. All still works, but is lost when the page is closed. Write it on paper too.", "kept");
}

function notice(text, why = "") {
  const p = $("notice");
  p.textContent = text;
  p.dataset.why = why;
  p.hidden = text === "";
}

function clearAll() {
  try {
    localStorage.removeItem(storeName);
  } catch {
    notKept();
  }
  state = empty();
}

// stamp is the phone's clock as the library reads it, and how far it is ahead of
// universal time.
function clock() {
  const ms = Date.now();
  const zone = -new Date(ms).getTimezoneOffset();
  return { zone, now: new Date(ms + zone * 60000).toISOString().slice(0, 19) };
}

function timeOf(ms) {
  const zone = -new Date(ms).getTimezoneOffset();
  return new Date(ms + zone * 60000).toISOString().slice(11, 19);
}

// call asks the library.
function call(what, more = {}) {
  return reckon({ do: what, metric: state.metric, house: state.house, ...clock(), ...more });
}

function make(tag, attributes = {}, ...inside) {
  const e = document.createElement(tag);
  for (const [name, value] of Object.entries(attributes)) {
    if (name.startsWith("on")) e.addEventListener(name.slice(2), value);
    else if (value === true) e.setAttribute(name, "");
    else if (value !== false && value !== null && value !== undefined) e.setAttribute(name, value);
  }
  e.append(...inside.filter((x) => x !== null && x !== undefined));
  return e;
}

function download(name, text) {
  const url = URL.createObjectURL(new Blob([text], { type: "text/plain;charset=utf-8" }));
  const a = make("a", { href: url, download: name, hidden: true });
  document.body.append(a);
  a.click();
  a.remove();
  setTimeout(() => URL.revokeObjectURL(url), 60000);
}

// twice asks for a second press before something is lost.
function twice(label, again, act) {
  const b = make("button", { type: "button" }, label);
  let timer = 0;
  b.addEventListener("click", () => {
    if (b.textContent === again) {
      clearTimeout(timer);
      b.textContent = label;
      act();
      return;
    }
    b.textContent = again;
    timer = setTimeout(() => { b.textContent = label; }, 4000);
  });
  return b;
}
