package main

import (
	"fmt"
	"math/rand/v2"
	"strings"
	"testing"
	"time"

	"github.com/chromedp/chromedp"

	"example.org/sapreckoner/boil/finish"
	"example.org/sapreckoner/units"
)

// fakeClock is a clock that stands still until the test moves it: 10 March 2034,
// 19:00 universal time. Its shift lives in the window's name, which a reload keeps.
const fakeClock = `
const began = Date.UTC(2034, 2, 10, 19, 0, 0);
Date.now = () => began + Number(window.name || 0);`

// pass moves the clock, and lets the page notice.
func (p *phone) pass(d time.Duration) {
	p.t.Helper()
	eval[bool](p, fmt.Sprintf("(window.name = String(Number(window.name || 0) + %d), tick(), true)", d.Milliseconds()))
}

// stamp types what the thermometer shows and presses the stamp.
func (p *phone) stamp(shows string) {
	p.t.Helper()
	p.ask("watch", fields{"shows": shows})
	p.do(chromedp.Click("#stamp"))
}

// A pot that climbs from 60 Brix, stamped each minute: what the page tells is what
// the library tells of the same readings.
func TestStamps(t *testing.T) {
	p := opened(t, 390, 844, fakeClock)
	p.screen("syrup")
	water := must(units.ParseTemperature("209.6 F"))
	p.ask("stop", fields{"water": "209.6"})
	r := rand.New(rand.NewPCG(9, 10))
	var readings []finish.WatchReading
	w := finish.Watch{Target: 66.9, Water: water, WaterBy: 0.1 * units.FahrenheitDegree, ProbeBy: 0.2 * units.FahrenheitDegree}
	at, shown := time.Duration(0), 214.0
	told := 0
	for range 12 {
		text := fmt.Sprintf("%.1f", shown)
		p.stamp(text)
		readings = append(readings, finish.WatchReading{At: at, Shown: must(units.ParseTemperature(text + " F"))})
		got := p.ask("watch", nil)
		o, err := w.Outlook(readings...)
		if err == nil && o.Climbs && o.Left < 12*time.Hour {
			told++
			if want := o.Now.Text(1) + "|" + (k2 * o.NowBy).Text(1); got.Rows["now"] != want {
				t.Errorf("now %q, want %q", got.Rows["now"], want)
			}
			if want := o.PerMinute.Text(2) + "|" + (k2 * o.PerMinuteBy).Text(2); got.Rows["climbs"] != want {
				t.Errorf("climbs %q, want %q", got.Rows["climbs"], want)
			}
			if want := fmt.Sprintf("%.1f min|%.1f min", o.Left.Minutes(), 2*o.LeftBy.Minutes()); got.Rows["left"] != want {
				t.Errorf("left %q, want %q", got.Rows["left"], want)
			}
		} else if len(got.Rows) > 1 {
			t.Errorf("%v, and the library says %+v %v", got.Rows, o, err)
		}
		if !strings.Contains(got.Text, "No number and no alarm is a reason to leave it") {
			t.Error("no caution")
		}
		step := time.Duration(55+r.IntN(20)) * time.Second
		p.pass(step)
		at += step
		shown += 0.2 + 0.1*r.Float64()
	}
	if told < 8 {
		t.Errorf("it climbed in %d of 12 answers", told)
	}
	p.fine()
}

// climbing stamps a pot that has some minutes to go.
func climbing(t *testing.T) *phone {
	p := opened(t, 390, 844, fakeClock)
	p.screen("syrup")
	p.ask("stop", fields{"water": "209.6"})
	for _, shows := range []string{"213.2", "213.5", "213.8", "214.1", "214.5", "214.8"} {
		p.pass(time.Minute)
		p.stamp(shows)
	}
	return p
}

// Stamps survive a reload, and the clock goes on while a phone sleeps.
func TestStampsStay(t *testing.T) {
	p := climbing(t)
	before := p.ask("watch", nil)
	if before.Rows["left"] == "" {
		t.Fatalf("no time left: %+v", before)
	}
	p.reload()
	p.until("open && open.key === 'syrup'")
	after := p.ask("watch", nil)
	if after.Rows["left"] != before.Rows["left"] || after.Rows["likely"] != before.Rows["likely"] {
		t.Errorf("%v before the reload, %v after", before.Rows, after.Rows)
	}
	count := func() string { return eval[string](p, "document.getElementById('countdown').textContent") }
	first := count()
	p.pass(30 * time.Second)
	if second := count(); first == second || !strings.HasPrefix(second, "Earliest in ") {
		t.Errorf("%q, 30 s later %q", first, second)
	}
	p.pass(5 * time.Hour)
	if got := count(); got != "Read the cup now" {
		t.Errorf("%q hours later", got)
	}
	// A dropped stamp is gone; a new pot asks twice.
	p.do(chromedp.Click("#stamps li:first-child button"))
	if n := eval[int](p, "document.querySelectorAll('#stamps li').length"); n != 5 {
		t.Errorf("%d stamps", n)
	}
	p.fine()
}

// The alarm calls a minute before the earliest, and says that the screen must be on.
func TestAlarm(t *testing.T) {
	p := climbing(t)
	text := eval[string](p, "document.getElementById('main').innerText")
	if !strings.Contains(text, "silent while the screen is off") || !strings.Contains(text, "never a reason to leave the pot") {
		t.Error("the alarm does not tell its limits")
	}
	p.do(chromedp.Click("#alarm"))
	left := eval[float64](p, "alarm.earliest - Date.now()")
	rings := func() bool { return eval[bool](p, "!document.getElementById('ring').hidden") }
	p.pass(time.Duration(left)*time.Millisecond - 61*time.Second)
	if rings() {
		t.Error("it rings early")
	}
	p.pass(2 * time.Second)
	if !rings() {
		t.Fatal("it does not ring")
	}
	if text := eval[string](p, "document.getElementById('ring').innerText"); !strings.Contains(text, eval[string](p, "timeOf(alarm.earliest).slice(0, 5)")) {
		t.Errorf("it says %q", text)
	}
	p.press("#ring button")
	if rings() {
		t.Error("it rings on")
	}
	p.pass(time.Minute)
	if rings() {
		t.Error("it rings twice")
	}
	p.fine()
}

// The alarm goes on after a reload, on another screen too.
func TestAlarmElsewhere(t *testing.T) {
	p := climbing(t)
	p.do(chromedp.Click("#alarm"))
	p.screen("tonight")
	p.reload()
	p.until("open && open.key === 'tonight'")
	p.pass(time.Duration(eval[float64](p, "alarm.earliest - Date.now()")) * time.Millisecond)
	if eval[bool](p, "document.getElementById('ring').hidden") {
		t.Error("it does not ring")
	}
	p.screen("card")
	if eval[bool](p, "document.getElementById('ring').hidden") {
		t.Error("going to another screen quiets it")
	}
	p.fine()
}

// A phone that slept over the time tells so when it wakes.
func TestAlarmAsleep(t *testing.T) {
	p := climbing(t)
	p.do(chromedp.Click("#alarm"))
	p.pass(3 * time.Hour)
	if text := eval[string](p, "document.getElementById('ring').innerText"); !strings.Contains(text, "passed while the screen was off") {
		t.Errorf("it says %q", text)
	}
	p.fine()
}

// Stamps before the boil are passed over: the rest tells what it tells alone.
func TestThinStamps(t *testing.T) {
	alone := climbing(t).ask("watch", nil)
	p := opened(t, 390, 844, fakeClock)
	p.screen("syrup")
	p.ask("stop", fields{"water": "209.6"})
	for _, shows := range []string{"190", "209.7", "210.2", "213.2", "213.5", "213.8", "214.1", "214.5", "214.8"} {
		p.pass(time.Minute)
		p.stamp(shows)
	}
	got := p.ask("watch", nil)
	if got.Rows["left"] != alone.Rows["left"] || got.Rows["now"] != alone.Rows["now"] || got.Rows["left"] == "" {
		t.Errorf("%v, without the cold ones %v", got.Rows, alone.Rows)
	}
	if !strings.Contains(got.Text, "too thin for a thermometer were left out: 3") {
		t.Error(got.Text)
	}
	p.fine()
}

// The stamps go home as a file.
func TestStampsFile(t *testing.T) {
	p := climbing(t)
	got := eval[string](p, "call('readings', { stamps: state.stamps }).file")
	if want := "time,shown_f\n19:01:00,213.2\n19:02:00,213.5\n"; !strings.HasPrefix(got, want) && eval[int](p, "new Date().getTimezoneOffset()") == 0 {
		t.Errorf("%q, want %q", got, want)
	}
	if rows := strings.Count(got, "\n"); rows != 7 {
		t.Errorf("%d lines", rows)
	}
	// Numbers as people write them are stamped with their unit.
	for typed, want := range map[string]string{"215 1/2": "215 1/2 F", "101.9 C": "101.9 C", " 216 ": "216 F"} {
		p.stamp(typed)
		if got := eval[string](p, "state.stamps.at(-1).shown"); got != want {
			t.Errorf("%q is stamped as %q", typed, got)
		}
	}
	// Three at one moment tell nothing, and are said so without keeping the next away.
	if got := p.ask("watch", nil); len(got.Errors) > 0 || !strings.HasPrefix(got.Verdict, "These stamps tell nothing: ") {
		t.Errorf("%+v", got)
	}
}
