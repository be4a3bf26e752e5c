// The stamps of a pot, the clock that counts down, and the alarm.
let alarm = null; // the last answer's
let sound = null;
let awake = null;

extras.watch = (screen) => {
  const stampIt = () => {
    const box = $("syrup-shows");
    const held = fieldOf("syrup", "shows", "temperature");
    const field = box.closest(".field");
    answer(screen); // tells beside the field what is wrong with it
    if (!held[0].trim()) {
      field.querySelector(".error").textContent = "Type what the thermometer shows, then stamp it.";
      return;
    }
    if (field.querySelector(".error").textContent) return;
    state.stamps.push({ at: Date.now(), shown: joined(held) });
    save();
    drawStamps(screen);
    answer(screen);
  };
  const ring = make("button", { type: "button", id: "alarm", "aria-pressed": String(state.ring), onclick: () => {
    state.ring = !state.ring;
    state.rung = 0;
    save();
    wake();
    answer(screen);
  } }, "");
  setTimeout(() => drawStamps(screen));
  return make("div", {}, make("button", { type: "button", class: "act", id: "stamp", onclick: stampIt }, "Stamp this reading"),
    make("ol", { class: "list", id: "stamps", "aria-label": "Stamped readings" }), make("p", { class: "count", id: "countdown", role: "timer" }),
    ring, make("p", { class: "help" }, "The alarm is silent while the screen is off or another page is in front. It is never a reason to leave the pot."),
    make("button", { type: "button", onclick: () => saveFile("readings", "readings.csv") }, "Save the stamps as a file"),
    twice("A new pot: drop the stamps", "Press again to drop them", () => { state.stamps = []; state.ring = false; state.rung = 0; save(); drawStamps(screen); answer(screen); }));
};

function drawStamps(screen) {
  const list = $("stamps");
  if (!list) return;
  list.replaceChildren(...state.stamps.map((s, i) => make("li", {}, make("span", {}, timeOf(s.at) + "  " + s.shown),
    make("button", { type: "button", "aria-label": "drop the stamp of " + timeOf(s.at), onclick: () => { state.stamps.splice(i, 1); save(); drawStamps(screen); answer(screen); } }, "drop"))));
}

answered.watch = (a) => {
  alarm = a.alarm || null;
  tick();
};

// wake makes the alarm heard: browsers give sound only after a press, and may
// keep the screen on.
function wake() {
  if (!state.ring) {
    if (awake) awake.release();
    awake = null;
    return;
  }
  try {
    sound = sound || new AudioContext();
    sound.resume();
  } catch {
    sound = null;
  }
  if (navigator.wakeLock) navigator.wakeLock.request("screen").then((lock) => { awake = lock; }, () => { awake = null; });
}

// After a reload the first touch gives the sound back.
addEventListener("pointerdown", () => { if (state.ring && !sound) wake(); });

function tick() {
  const count = $("countdown");
  const button = $("alarm");
  if (count) count.textContent = alarm ? countdown(alarm.earliest - Date.now()) : "";
  if (button) {
    button.hidden = !alarm && !state.ring;
    button.setAttribute("aria-pressed", String(state.ring));
    const mute = state.ring && (!sound || sound.state !== "running");
    button.textContent = mute ? "Alarm is on but mute: touch the page once, or press to turn it off" : state.ring ? (alarm ? "Alarm is set for " + alarm.text + ": press to turn it off" : "Alarm is on, but the stamps tell no time yet") : "Set an alarm, a minute before the earliest";
  }
  if (state.ring && alarm && Date.now() >= alarm.at && state.rung < alarm.at) ringOut(Date.now() - alarm.at > 90000);
}

function countdown(ms) {
  const s = Math.max(0, Math.floor(ms / 1000));
  return ms <= 0 ? "Read the cup now" : "Earliest in " + Math.floor(s / 60) + ":" + String(s % 60).padStart(2, "0");
}

function ringOut(late) {
  state.rung = alarm.at;
  save();
  const ring = $("ring");
  ring.replaceChildren(make("p", {}, late ? "The time of the alarm passed while the screen was off or the page was not in front. Read the cup now." : "Read the cup now: it may be syrup from " + timeOf(alarm.earliest).slice(0, 5) + " on."),
    make("button", { type: "button", onclick: () => { ring.hidden = true; } }, "I am at the pot"));
  ring.hidden = false;
  const call = () => {
    if (ring.hidden) return;
    beep();
    setTimeout(call, 1500);
  };
  call();
}

function beep() {
  if (navigator.vibrate) navigator.vibrate([400, 200, 400]);
  if (!sound) return;
  const [tone, gain] = [sound.createOscillator(), sound.createGain()];
  tone.frequency.value = 880;
  gain.gain.value = 0.5;
  tone.connect(gain).connect(sound.destination);
  tone.start();
  tone.stop(sound.currentTime + 0.8);
}

// saveFile writes what was stamped or written down.
function saveFile(what, name) {
  const reply = call(what, { stamps: state.stamps, entries: state.entries });
  if (reply.error) notice(reply.error, "error");
  else download(name, reply.file || "");
}
