// The number pad: large keys for gloves, on phones and tablets.
const touch = matchMedia("(pointer: coarse)").matches;
let padBox = null;

function padFor(box, button, kind, change) {
  if (!touch || kind === "words") return;
  box.inputMode = "none"; // the phone's own keyboard stays away
  box.addEventListener("focus", () => showPad(box, button, kind, change));
  box.addEventListener("blur", () => setTimeout(() => { if (document.activeElement !== padBox) hidePad(); }, 150));
}

function hidePad() {
  $("pad").hidden = true;
  document.body.classList.remove("padded");
  document.documentElement.style.scrollPaddingBottom = "";
}

function showPad(box, button, kind, change) {
  padBox = box;
  const press = (what) => {
    const [from, to] = [box.selectionStart, box.selectionEnd];
    if (what === "back") box.setRangeText("", from === to ? Math.max(0, from - 1) : from, to, "end");
    else box.setRangeText(what, from, to, "end");
    change();
  };
  const key = (label, act, name) => {
    const b = make("button", { type: "button", tabindex: "-1", "aria-label": name });
    b.textContent = label;
    b.addEventListener("pointerdown", (event) => { event.preventDefault(); act(); });
    return b;
  };
  const next = () => {
    const boxes = [...document.querySelectorAll("#main input[type=text]")].filter((b) => b.offsetParent);
    const other = boxes[boxes.indexOf(box) + 1];
    if (other) other.focus();
    else box.blur();
  };
  const letters = () => {
    box.inputMode = "text";
    hidePad();
    box.blur();
    box.focus();
    box.addEventListener("blur", () => { box.inputMode = "none"; }, { once: true });
  };
  const digit = (d) => key(d, () => press(d));
  const sign = kind === "clock" ? key(":", () => press(":")) : key("\u2212", () => { box.value = box.value.startsWith("-") ? box.value.slice(1) : "-" + box.value; change(); }, "minus sign");
  $("pad").replaceChildren(
    digit("7"), digit("8"), digit("9"), key("\u232b", () => press("back"), "rub out"),
    digit("4"), digit("5"), digit("6"), button ? key("unit", () => button.click(), "next unit") : sign,
    digit("1"), digit("2"), digit("3"), button ? sign : key("abc", letters, "letters"),
    digit("0"), digit("."), button ? key("abc", letters, "letters") : key("done", () => box.blur()), key("next", next));
  $("pad").hidden = false;
  document.body.classList.add("padded");
  document.documentElement.style.scrollPaddingBottom = $("pad").offsetHeight + "px"; // what is under the pad is not seen
  box.closest(".field").scrollIntoView({ block: "center" });
}
