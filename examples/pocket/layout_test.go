package main

import (
	"bytes"
	"fmt"
	"image/png"
	"os"
	"path/filepath"
	"strings"
	"testing"

	"github.com/chromedp/cdproto/emulation"
	"github.com/chromedp/chromedp"
)

// filled fills every screen, so that its answers are seen too.
func (p *phone) filled(see func(screen string)) {
	p.t.Helper()
	for _, s := range []struct {
		screen string
		typed  fields
	}{
		{"syrup", fields{"water": "209.6", "cup": "205", "reads": "59.5", "shows": "214.1"}},
		{"tonight", fields{"volume": "40", "reads": "2.1", "cold": "40", "lit": "14:00", "by": "22:00"}},
		{"book", fields{"sap": "40", "reads": "2.1", "cold": "bad"}},
		{"mend", fields{"amount": "3", "reads": "70", "cup": "66", "jar": "1", "glass": "1", "brim": "34 US fl oz", "amount2": "1", "true2": "64"}},
		{"tomorrow", fields{"low1": "24", "high1": "44", "low2": "28", "high2": "50", "waiting": "40"}},
		{"tree", fields{"girth": "63"}},
		{"card", fields{"water": "209.6"}},
		{"house", nil},
		{"", nil},
	} {
		eval[bool](p, fmt.Sprintf("(location.hash = %q, true)", s.screen))
		p.until(fmt.Sprintf("(open ? open.key : '') === %q", s.screen))
		if s.typed != nil {
			eval[bool](p, fmt.Sprintf("%s; tFill(%s); true", helpers, js(s.typed)))
		}
		if s.screen == "syrup" {
			p.do(chromedp.Click("#stamp"))
		}
		if s.screen == "tree" {
			eval[bool](p, "(state.holes = [{ year: 2033, along: '10 in', height: '40 in' }], state.finger = { x: 0.6, y: 0.5 }, route(), true)")
		}
		eval[bool](p, "(document.querySelectorAll('details').forEach((d) => { d.open = true; }), true)")
		see(s.screen)
	}
}

// Nothing is wider than the screen: on a phone, on a computer, and on a phone at
// 200 percent, which has half the width.
func TestWidths(t *testing.T) {
	for _, size := range [][2]int64{{390, 844}, {360, 640}, {1280, 800}, {195, 422}} {
		t.Run(fmt.Sprint(size), func(t *testing.T) {
			p := opened(t, size[0], size[1])
			p.filled(func(screen string) {
				if wide := eval[int64](p, "document.documentElement.scrollWidth"); wide > size[0] {
					t.Errorf("screen %q is %d wide: %s", screen, wide, eval[string](p, `[...document.querySelectorAll("body *")].filter((e) => e.getBoundingClientRect().right > innerWidth + 1 && !e.closest(".scroll")).slice(0, 5).map((e) => e.outerHTML.slice(0, 120)).join("\n")`))
				}
			})
			p.fine()
		})
	}
}

// contrasts lists texts with less contrast than asked for, by the formula of WCAG
// 2.2 (relative luminance).
const contrasts = `(() => {
  const rgb = (c) => c.match(/[\d.]+/g).map(Number);
  const light = ([r, g, b]) => [r, g, b].map((v) => v / 255).map((v) => v <= 0.04045 ? v / 12.92 : ((v + 0.055) / 1.055) ** 2.4).reduce((s, v, i) => s + v * [0.2126, 0.7152, 0.0722][i], 0);
  const behind = (e) => { for (; e; e = e.parentElement) { const c = rgb(getComputedStyle(e).backgroundColor); if (c.length < 4 || c[3] > 0) return c; } return [255, 255, 255]; };
  const wrong = [];
  let seen = 0;
  for (const e of document.querySelectorAll("body *")) {
    if (!e.offsetParent && !(e instanceof SVGElement)) continue;
    const own = [...e.childNodes].some((n) => n.nodeType === 3 && n.textContent.trim());
    const texts = own ? [getComputedStyle(e)[e instanceof SVGElement ? "fill" : "color"]] : [];
    if (e.matches("input[type=text]")) texts.push(getComputedStyle(e).color, getComputedStyle(e, "::placeholder").color);
    for (const text of texts) {
      const [a, b] = [light(rgb(text)), light(behind(e))];
      const ratio = (Math.max(a, b) + 0.05) / (Math.min(a, b) + 0.05);
      seen++;
      if (ratio < 4.5) wrong.push(ratio.toFixed(2) + " " + e.outerHTML.slice(0, 100));
    }
  }
  return { Seen: seen, Wrong: wrong };
})()`

func TestContrast(t *testing.T) {
	for _, night := range []bool{false, true} {
		p := opened(t, 390, 844)
		if night {
			p.dark()
		}
		seen := 0
		p.filled(func(screen string) {
			got := eval[struct {
				Seen  int
				Wrong []string
			}](p, contrasts)
			seen += got.Seen
			if len(got.Wrong) > 0 {
				t.Errorf("night %v, screen %q: %s", night, screen, strings.Join(got.Wrong, "\n"))
			}
		})
		if seen < 300 {
			t.Errorf("%d texts seen", seen)
		}
	}
}

// Every field has a label, every button a name, every press is large enough for a
// glove: 48 pixels high, of which a finger needs 44 (WCAG 2.2, 2.5.5).
func TestReach(t *testing.T) {
	p := opened(t, 390, 844)
	p.filled(func(screen string) {
		if wrong := eval[[]string](p, `[...document.querySelectorAll("button, a, select, input, summary, label.pick")].filter((e) => e.offsetParent).flatMap((e) => {
			const name = e.getAttribute("aria-label") || e.textContent.trim() || (e.labels && [...e.labels].map((l) => l.textContent).join("").trim());
			const large = e.matches("[type=radio]") ? e.closest("label") : e;
			return (name ? [] : ["no name: " + e.outerHTML.slice(0, 120)]).concat(large.getBoundingClientRect().height >= 48 ? [] : ["small: " + e.outerHTML.slice(0, 120)]);
		})`); len(wrong) > 0 {
			t.Errorf("screen %q: %s", screen, strings.Join(wrong, "\n"))
		}
		if twice := eval[[]string](p, `(() => { const ids = [...document.querySelectorAll("[id]")].map((e) => e.id); return ids.filter((id, i) => ids.indexOf(id) !== i); })()`); len(twice) > 0 {
			t.Errorf("screen %q: twice %v", screen, twice)
		}
	})
	// The order of the tab key is that of the page: no element jumps ahead.
	if n := eval[int](p, `document.querySelectorAll("[tabindex]:not([tabindex='0']):not([tabindex='-1'])").length`); n > 0 {
		t.Errorf("%d elements jump ahead", n)
	}
}

// A printed screen has the answers and no buttons.
func TestPrint(t *testing.T) {
	p := opened(t, 390, 844)
	p.screen("card")
	p.ask("card", fields{"water": "209.6"})
	command(p, emulation.SetEmulatedMedia, emulation.SetEmulatedMediaParams{Media: "print"})
	if n := eval[int](p, "[...document.querySelectorAll('button, nav')].filter((e) => e.offsetParent).length"); n > 0 {
		t.Errorf("%d buttons on paper", n)
	}
	if !strings.Contains(eval[string](p, "document.getElementById('main').innerText"), "209.6 F") {
		t.Error("the answer is not on paper")
	}
}

// The keys of the pad type, change the unit and go to the next field.
func TestPad(t *testing.T) {
	p := begin(t, 390, 844)
	command(p, emulation.SetTouchEmulationEnabled, emulation.SetTouchEmulationEnabledParams{Enabled: true})
	p.open(saved(t))
	p.screen("syrup")
	if !eval[bool](p, "touch") {
		t.Fatal("this browser tells of no finger")
	}
	press := func(keys ...string) {
		for _, k := range keys {
			eval[bool](p, fmt.Sprintf("([...document.querySelectorAll('#pad button')].find((b) => b.textContent === %q).dispatchEvent(new PointerEvent('pointerdown', { bubbles: true, cancelable: true })), true)", k))
		}
	}
	eval[bool](p, "(document.getElementById('syrup-water').focus(), true)")
	p.until("!document.getElementById('pad').hidden")
	press("2", "0", "8", "⌫", "9", ".", "6")
	if got := p.ask("stop", fields{}); got.Rows["water"] != "209.6 F" {
		t.Errorf("typed by the pad: %v", got.Rows)
	}
	press("⌫", "⌫", "⌫", "⌫", "⌫", "9", "8", ".", "5", "unit")
	if got := p.ask("stop", fields{}); got.Rows["water"] != "209.3 F" { // 98.5 C
		t.Errorf("in the other unit: %v", got.Rows)
	}
	press("next")
	if id := eval[string](p, "document.activeElement.id"); id != "syrup-elevation" {
		t.Errorf("next goes to %s", id)
	}
	// The pad hides nothing of the field above it, on a small phone as on a large one.
	for _, high := range []int64{844, 640} {
		p.do(chromedp.EmulateViewport(360, high))
		eval[bool](p, "(document.activeElement.blur(), document.getElementById('syrup-cup').focus(), true)")
		p.until("!document.getElementById('pad').hidden")
		if box := eval[[3]float64](p, "(() => { const r = document.activeElement.getBoundingClientRect(); return [r.top, r.bottom, document.getElementById('pad').getBoundingClientRect().top]; })()"); !(box[0] > 0 && box[1] < box[2]) {
			t.Errorf("%d high: the field stands from %.0f to %.0f, the pad from %.0f", high, box[0], box[1], box[2])
		}
	}
	p.fine()
}

// The steps beside a field, on numbers, numbers with a unit, and clocks.
func TestSteps(t *testing.T) {
	p := opened(t, 390, 844)
	p.screen("syrup")
	value := func(id, step string) string {
		return eval[string](p, fmt.Sprintf("document.getElementById(%q).closest('.entry').querySelector('[aria-label^=%s]').click(), document.getElementById(%q).value", id, step, id))
	}
	p.ask("stop", fields{"water": "209.6"})
	if got := value("syrup-water", "more"); got != "210.1" {
		t.Errorf("a step from 209.6 F is %s", got)
	}
	p.ask("stop", fields{"water": "98.5 C"})
	if got := value("syrup-water", "less"); got != "98.0 C" {
		t.Errorf("a step from 98.5 C is %s", got)
	}
	if got := value("syrup-target", "more"); got != "67.0 Brix" {
		t.Errorf("a step from the usual 66.9 Brix is %s", got)
	}
	// A fraction is a number; what is none stays for its error to be read.
	for typed, want := range map[string]string{"208 1/2": "209", "417/2 F": "209 F", "1/3": "0.8333", "98,4 C": "98,4 C", "1e2": "1e2", "hot": "hot", "-": "-"} {
		p.ask("stop", fields{"water": typed})
		if got := value("syrup-water", "more"); got != want {
			t.Errorf("a step from %s is %s, want %s", typed, got, want)
		}
	}
	p.screen("tonight")
	p.ask("fire", fields{"lit": "23:50"})
	if got := value("tonight-lit", "more"); got != "00:05" {
		t.Errorf("a step from 23:50 is %s", got)
	}
	p.fine()
}

// The two pictures of README.md; POCKET_SHOTS=1 draws them.
func TestShots(t *testing.T) {
	if os.Getenv("POCKET_SHOTS") == "" {
		for _, name := range []string{"syrup.png", "night.png"} {
			if info, err := os.Stat(filepath.Join("shots", name)); err != nil || info.Size() > 120_000 {
				t.Errorf("%s: %v", name, err)
			}
		}
		t.Skip("set POCKET_SHOTS to draw the pictures")
	}
	p := opened(t, 390, 844, fakeClock)
	shot := func(name string) {
		raw, err := chromedp.Run(p.ctx, chromedp.CaptureScreenshot())
		if err != nil {
			t.Fatal(err)
		}
		picture, err := png.Decode(bytes.NewReader(raw))
		if err != nil {
			t.Fatal(err)
		}
		var b bytes.Buffer
		if err := (&png.Encoder{CompressionLevel: png.BestCompression}).Encode(&b, picture); err != nil {
			t.Fatal(err)
		}
		if err := os.WriteFile(filepath.Join("shots", name), b.Bytes(), 0o644); err != nil {
			t.Fatal(err)
		}
	}
	p.screen("syrup")
	p.ask("cup", fields{"water": "209.6", "cup": "205", "reads": "59.5"})
	eval[bool](p, "(document.getElementById('q-cup').scrollIntoView(), true)")
	shot("syrup.png")
	p.dark()
	p.screen("tonight")
	p.ask("fire", fields{"volume": "40", "reads": "2.1", "cold": "40", "lit": "14:00", "by": "22:00"})
	eval[bool](p, "(document.querySelector('[data-question=fire] output').scrollIntoView(), true)")
	shot("night.png")
}
