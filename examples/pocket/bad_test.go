package main

import (
	"fmt"
	"strings"
	"testing"

	"example.org/sapreckoner/density"
	"example.org/sapreckoner/units"
)

// parsers are what the library reads each kind of field with.
var parsers = map[string]func(string) error{
	"temperature": parser(units.ParseTemperature), "brix": parser(units.ParseBrix), "strength": parser(units.ParseBrix),
	"pressure": parser(units.ParsePressure), "vacuum": parser(units.ParsePressure), "volume": parser(units.ParseVolume), "small": parser(units.ParseVolume),
	"mass": parser(units.ParseMass), "rate": parser(units.ParseVolumeRate), "length": parser(units.ParseLength), "height": parser(units.ParseLength),
	"area": parser(units.ParseArea), "share": parser(units.ParseShare), "difference": parser(units.ParseTempDiff), "amount": parser(units.ParseVolume),
}

func parser[Q any](parse func(string) (Q, error)) func(string) error {
	return func(s string) error { _, err := parse(s); return err }
}

// A box is a field of the table, as the page tells it.
type box struct {
	Screen, Question, Key, Kind, When, Unit string
}

// boxes are all fields that are typed.
func (p *phone) boxes() []box {
	p.t.Helper()
	return eval[[]box](p, `table.screens.flatMap((s) => s.questions.flatMap((q) => q.inputs.map((i) => (
		{ Screen: s.key, Question: q.key, Key: i.key, Kind: i.kind, When: i.when || "", Unit: (unitsOf(i.kind)[0] || { text: "" }).text })))).filter((b) => b.Kind !== "choice" && b.Kind !== "words")`)
}

// show makes a field seen that waits for a choice.
func (p *phone) show(b box) {
	p.t.Helper()
	if key, value, ok := strings.Cut(b.When, "="); ok {
		p.ask(b.Question, fields{key: value})
	}
}

// Every field answers every bad input beside itself, in the words of the library,
// and its question has no figures then.
func TestBadInput(t *testing.T) {
	p := opened(t, 390, 844)
	tried := 0
	for _, b := range p.boxes() {
		p.empty()
		p.screen(b.Screen)
		p.show(b)
		bad := []string{"words", "NaN", "nan", "Inf", "1e999", "2.1.3", "<b>", "２１"}
		switch b.Kind {
		case "temperature":
			bad = append(bad, "2190 F", "2190", "-400 F", "669", "12 lb")
		case "brix", "strength":
			bad = append(bad, "669", "-7", "2190 F", "66.9 %")
		case "volume", "small", "amount":
			bad = append(bad, "40 gal", "-3", "-3 US gal", "1e9", "2190 F")
		case "rate":
			bad = append(bad, "8 gal/h", "-8", "1e9")
		case "count":
			bad = append(bad, "1.5", "-1", "1e9", "99999999999999999999")
		case "clock":
			bad = append(bad, "25:00", "-1", "7", "12:60")
		case "difference":
			bad = append(bad, "2190 F", "-900")
		default:
			bad = append(bad, "-1e6", "1e12", "2190 F")
		}
		for _, text := range bad {
			got := p.ask(b.Question, fields{b.Key: text})
			told := got.Errors[b.Key]
			if told == "" || strings.ContainsAny(told, "\n") || len(got.Errors) != 1 {
				t.Errorf("%s.%s: %q is answered by %q", b.Screen, b.Key, text, got.Errors)
			}
			if len(got.Rows) > 0 || got.Verdict != "" {
				t.Errorf("%s.%s: %q gives figures: %+v", b.Screen, b.Key, text, got.Rows)
			}
			for _, name := range []string{"units.", "density.", "boil.", "Container.", "%!"} {
				if strings.Contains(told, name) {
					t.Errorf("%s.%s: %q tells %q", b.Screen, b.Key, text, told)
				}
			}
			// What cannot be read at all has the library's own reason.
			if parse := parsers[b.Kind]; parse != nil {
				err := parse(text)
				if strings.Trim(text, "-.0123456789") == "" {
					err = parse(text + " " + b.Unit)
				}
				if err != nil && told != strings.Join(strings.Fields(units.Reason(err, units.US)), " ") {
					t.Errorf("%s.%s: %q is answered by %q, the library says %q", b.Screen, b.Key, text, told, units.Reason(err, units.US))
				}
			}
			tried++
		}
		if got := p.ask(b.Question, fields{b.Key: ""}); got.Errors[b.Key] != "" {
			t.Errorf("%s.%s: an empty field is told %q", b.Screen, b.Key, got.Errors[b.Key])
		}
	}
	p.fine()
	t.Logf("%d bad inputs", tried)
}

// The reason of a value outside its range is in the person's units.
func TestReasonUnits(t *testing.T) {
	p := opened(t, 390, 844)
	p.screen("syrup")
	const f, c = "my thermometer in boiling water 2190 F is outside 178.5 to 216 F", "my thermometer in boiling water 1198.9 C is outside 81.4 to 102.2 C"
	if got := p.ask("stop", fields{"water": "2190 F"}).Errors["water"]; got != f {
		t.Errorf("%q, want %q", got, f)
	}
	p.metric(true)
	if got := p.ask("stop", fields{"water": "2190 F"}).Errors["water"]; got != c {
		t.Errorf("%q, want %q", got, c)
	}
	// 669 for 66.9, and a reading that no syrup of the library's has: its own words.
	got := p.ask("cup", fields{"cup": "20", "reads": "669"})
	if want := "the hydrometer reads 669 Brix is outside 20 to 85 Brix"; got.Errors["reads"] != want {
		t.Errorf("%q, want %q", got.Errors["reads"], want)
	}
	p.ask("cup", fields{"cup": "100", "reads": "84.9"})
	_, err := density.Hydrometer{GraduatedAt: units.Fahrenheit(60)}.Brix(84.9, units.Celsius(100))
	if err == nil {
		t.Fatal("the library takes it")
	}
	if got := p.ask("cup", nil); len(got.Rows) > 0 || got.Errors["reads"] == "" {
		t.Errorf("the library says %v, the page %+v", err, got)
	}
	// What is missing is asked for, and gives no figure.
	p.empty()
	if got := p.ask("stop", nil); len(got.Rows) > 0 || !strings.Contains(got.Text, "Still to fill in: my thermometer in boiling water") {
		t.Errorf("%+v", got)
	}
	p.fine()
}

// Slips between two fields are told beside one of them.
func TestSlips(t *testing.T) {
	p := opened(t, 390, 844)
	for _, c := range []struct{ screen, question, field, want string }{
		{"syrup", "stop", "water", "neither weather nor a thermometer"},
		{"tomorrow", "days", "high1", "colder than its night"},
		{"tonight", "fire", "safe", "does not lie below the depth"},
		{"mend", "jars", "brim", "must fit under the brim"},
	} {
		typed := map[string]fields{
			"syrup": {"water": "212", "elevation": "3000 ft"}, "tomorrow": {"low1": "40", "high1": "20"},
			"tonight": {"volume": "40", "reads": "2", "cold": "40", "lit": "8:00", "safe": "3 in"},
			"mend":    {"amount": "3", "reads": "66", "cup": "60", "jar": "1 US qt", "brim": "32 US fl oz"},
		}[c.screen]
		p.screen(c.screen)
		got := p.ask(c.question, typed)
		if !strings.Contains(got.Errors[c.field], c.want) || len(got.Rows) > 0 {
			t.Errorf("%s: %v %v, want %q beside %s", c.screen, got.Errors, got.Rows, c.want, c.field)
		}
	}
	p.fine()
}

// Storage that is full or denied is told, and all answers go on.
func TestStorage(t *testing.T) {
	for name, script := range map[string]string{
		"full":   `Storage.prototype.setItem = () => { throw new DOMException("full", "QuotaExceededError"); };`,
		"denied": `Object.defineProperty(window, "localStorage", { get() { throw new DOMException("denied", "SecurityError"); } });`,
		"torn":   `localStorage.setItem("sapreckoner-pocket", "{torn");`,
	} {
		t.Run(name, func(t *testing.T) {
			p := opened(t, 390, 844, script)
			p.screen("syrup")
			if got := p.ask("stop", fields{"water": "209.6"}); got.Rows["water"] != "209.6 F" {
				t.Errorf("%+v", got)
			}
			p.stamp("214.0")
			if n := eval[int](p, "document.querySelectorAll('#stamps li').length"); n != 1 {
				t.Errorf("%d stamps", n)
			}
			told := eval[string](p, "document.getElementById('notice').hidden ? '' : document.getElementById('notice').textContent")
			if kept := name == "torn"; kept != (told == "") {
				t.Errorf("told %q", told)
			}
			p.fine()
		})
	}
}

// All that is kept can be cleared, after a second press.
func TestClear(t *testing.T) {
	p := opened(t, 390, 844)
	p.screen("syrup")
	p.ask("stop", fields{"water": "209.6"})
	press := func() {
		eval[bool](p, "([...document.querySelectorAll('button')].find((b) => /Clear all|lose it all/.test(b.textContent)).click(), true)")
	}
	kept := func() string { return fmt.Sprint(eval[string](p, "localStorage.getItem('sapreckoner-pocket') || ''")) }
	eval[bool](p, "(location.hash = 'house', true)")
	p.until("open && open.key === 'house'")
	press()
	if !strings.Contains(kept(), "209.6") {
		t.Error("one press clears it")
	}
	press()
	if strings.Contains(kept(), "209.6") {
		t.Errorf("two presses keep %s", kept())
	}
	p.fine()
}
