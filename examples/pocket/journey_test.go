package main

import (
	"strings"
	"testing"

	"github.com/chromedp/chromedp"
	"github.com/chromedp/chromedp/kb"
)

// A maker's way through the page with presses and keys alone: a tile, the fields
// key by key, the unit button, the steps, metric, and back.
func TestJourney(t *testing.T) {
	p := opened(t, 390, 844)
	read := func(question, key string) string {
		t.Helper()
		return p.ask(question, nil).Rows[key]
	}
	p.do(chromedp.Click(`a[href="#syrup"]`))
	p.until("open && open.key === 'syrup'")
	p.do(chromedp.SendKeys("#syrup-water", "209.6"), chromedp.SendKeys("#syrup-cup", "205"), chromedp.SendKeys("#syrup-reads", "59.5"))
	if stop, truth := read("stop", "stop"), read("cup", "true"); !strings.HasPrefix(stop, "217.1 F|") || truth != "67.0 Brix|0.4 Brix" {
		t.Errorf("stop %q, true %q", stop, truth)
	}
	p.do(chromedp.Click(`[data-field="cup"] .unit`)) // 205 C is no cup of syrup
	if told := p.ask("cup", nil).Errors["cup"]; told != "heat of the cup 401 F is outside 41 to 224.6 F" {
		t.Errorf("205 C is told %q", told)
	}
	p.do(chromedp.Click(`[data-field="cup"] .unit`), chromedp.Click(`[data-field="water"] .step:last-child`))
	if got := read("stop", "water"); got != "210.1 F" {
		t.Errorf("a step more is %q", got)
	}
	p.do(chromedp.Click(`#units input[value="metric"]`))
	if got := read("stop", "water"); got != "98.9 C" { // (210.1 - 32) / 1.8 = 98.94
		t.Errorf("in metric units %q", got)
	}
	p.press("#home")
	p.until("open === null")
	p.do(chromedp.Click(`a[href="#tree"]`))
	p.until("open && open.key === 'tree'")
	p.do(chromedp.SendKeys("#tree-girth", "160"))
	if got := read("taps", "diameter"); got != "50.9 cm" { // 160 / pi
		t.Errorf("diameter %q", got)
	}
	// The finger in the middle of the bark is half round, and 42 in (106.7 cm) up.
	p.press("#trunk")
	if along, up := read("hole", "along"), read("hole", "height"); along != "80.0 cm" || up != "106.7 cm" {
		t.Errorf("the finger is %s round and %s up", along, up)
	}
	p.do(chromedp.Click("#mark"))
	if told := eval[string](p, `document.querySelector('[data-field="year"] .error').textContent`); told == "" {
		t.Error("a hole without a year is taken")
	}
	p.do(chromedp.SendKeys("#tree-year", "2033"), chromedp.Click("#mark"))
	got := p.ask("hole", nil)
	if got.Level != "stop" || got.Rows["side"] != "0.0 cm" || eval[int](p, "document.querySelectorAll('#holes li').length") != 1 {
		t.Errorf("on the old hole: %+v", got)
	}
	// By keys the finger goes a hundredth of the girth a press.
	eval[bool](p, "(document.getElementById('trunk').focus(), true)")
	p.do(chromedp.KeyEvent(kb.ArrowRight))
	if got := read("hole", "side"); got != "1.6 cm" {
		t.Errorf("a key moves it by %q", got)
	}
	p.fine()
}
