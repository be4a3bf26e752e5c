package pan

import (
	"encoding/json"
	"errors"
	"strings"
	"testing"
	"time"

	"github.com/google/go-cmp/cmp"

	"example.org/sapreckoner/units"
)

// What a day came to is kept whole: every number to the last bit, and the end by
// its name.
func TestOutcomeJSON(t *testing.T) {
	want, err := partitioned().Run(longDay())
	if err != nil || len(want.Draws) == 0 {
		t.Fatalf("%d draws, %v", len(want.Draws), err)
	}
	b, err := json.Marshal(want)
	if err != nil {
		t.Fatal(err)
	}
	var got Outcome
	if err := json.Unmarshal(b, &got); err != nil {
		t.Fatal(err)
	}
	if d := cmp.Diff(want, got, cmp.Comparer(func(x, y units.Temperature) bool { return x == y })); d != "" {
		t.Errorf("came back otherwise (- out, + back):\n%s", d)
	}
	if !strings.Contains(string(b), `"End":"`+want.End.String()+`"`) {
		t.Errorf("the end has no name: %.80s", b)
	}
}

// A moment cannot be kept, and says what to keep of it.
func TestMomentRefuses(t *testing.T) {
	met := false
	_, err := partitioned().Trace(longDay(), time.Hour, func(m Moment) bool {
		met = true
		b, err := json.Marshal(struct{ Last Moment }{m})
		if b != nil || err == nil || !strings.Contains(err.Error(), "its event and its liquids") {
			t.Errorf("%s, %v", b, err)
		}
		return false
	})
	if !met || err != nil {
		t.Errorf("no moment: %v", err)
	}
	var m Moment
	if err := json.Unmarshal([]byte(`{"At":1}`), &m); err == nil || m.At != 0 {
		t.Errorf("%v, %v", m, err)
	}
}

// Each entry of a list is told by its place, and what one function passes on to
// another by the name that the caller wrote.
func TestArgsByPlace(t *testing.T) {
	sap := Sap{Volume: units.Liter, Brix: 2, Temperature: units.Celsius(4)}
	d := longDay()
	d.Sap = []Sap{sap, {Volume: units.Liter, Brix: 90, Temperature: units.Celsius(4)}}
	b := sugarhouse()
	held, err := kettle().Fill(30, units.Celsius(20), units.Atmosphere)
	if err != nil {
		t.Fatal(err)
	}
	run := func(_ Outcome, err error) error { return err }
	plan := func(_ Plan, err error) error { return err }
	chase := func(_ Chased, err error) error { return err }
	for want, err := range map[string]error{
		"Day.Sap[1].Brix":     run(kettle().Run(d)),
		"Day.Pressure":        run(kettle().Run(Day{Out: time.Hour})),
		"Day.Out":             run(kettle().Run(Day{Light: 2 * time.Hour, Out: time.Hour})),
		"Day.Reverse[0]":      run(kettle().Run(Day{Out: time.Hour, Reverse: []time.Duration{-1}})),
		"days[1].Temperature": plan(b.Plan(gathered(10), Gathering{Volume: 1, Brix: 2, Temperature: units.Celsius(101)})),
		"water":               chase(kettle().Chase(held, -1, units.Celsius(4), units.Atmosphere)),
		"at":                  chase(kettle().Chase(held, 1, units.Celsius(-4), units.Atmosphere)),
		"pressure":            chase(kettle().Chase(held, 1, units.Celsius(4), 0)),
		"held":                chase(kettle().Chase(Contents{{Water: 1}}, 1, units.Celsius(4), units.Atmosphere)),
	} {
		var e *units.RangeError
		if !errors.As(err, &e) || e.Arg != want || strings.Contains(e.Text(units.US), want) && strings.Contains(want, ".") {
			t.Errorf("%v; want %s", err, want)
		}
	}
}

// A day that is too busy is told to a person without the function.
func TestTooBusyText(t *testing.T) {
	err := &followError{"pan.Rig.Run", ErrTooBusy}
	if !errors.Is(err, ErrTooBusy) || err.Error() != "pan.Rig.Run: "+ErrTooBusy.Error() || units.Reason(err, units.US) != ErrTooBusy.Error() {
		t.Errorf("%v, %s", err, units.Reason(err, units.US))
	}
}
