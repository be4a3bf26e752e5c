package tapping_test

import (
	"encoding/json"
	"errors"
	"math"
	"math/rand/v2"
	"strings"
	"testing"

	"example.org/sapreckoner/tapping"
	"example.org/sapreckoner/units"
)

// back sends a value out and in again.
func back[T any](t *testing.T, v T) T {
	t.Helper()
	b, err := json.Marshal(v)
	var got T
	if err == nil {
		err = json.Unmarshal(b, &got)
	}
	if err != nil {
		t.Fatalf("%s: %v", b, err)
	}
	return got
}

// What goes out comes back to the last bit.
func TestJSON(t *testing.T) {
	r := rand.New(rand.NewPCG(15, 2))
	between := func(low, high units.Length) units.Length { return low + units.Length(r.Float64())*(high-low) }
	for range 500 {
		hole := must[tapping.Hole](t)(tapping.NewHole(between(4*units.Millimeter, 12*units.Millimeter), between(units.Inch, 3*units.Inch), between(0, units.Inch)))
		trunk := must[tapping.Trunk](t)(tapping.NewTrunk(between(0, units.Meter), tapping.Species(r.IntN(9)), tapping.Vigor(r.IntN(4))))
		byHand := must[tapping.Reach](t)(tapping.ReachByHand(between(0, units.Foot), between(3*units.Foot, 6*units.Foot)))
		byLine := must[tapping.Reach](t)(tapping.ReachByDropline(tapping.Position{At: units.Angle(r.Float64()), Height: between(0, 6*units.Foot)}, between(units.Foot, 3*units.Foot)))
		band := must[tapping.TappingBand](t)(tapping.NewTappingBand(between(10*units.Inch, 30*units.Inch), between(units.Foot, 6*units.Foot), hole, 1+r.IntN(3)))
		if back(t, hole) != hole || back(t, trunk) != trunk || back(t, byHand) != byHand || back(t, byLine) != byLine || back(t, band) != band {
			t.Fatalf("%v, %v, %v, %v, %v came back otherwise", hole, trunk, byHand, byLine, band)
		}
	}
	// A published guideline is the same one again, so that advice does not list it
	// among the others.
	for _, g := range tapping.Guidelines() {
		if back(t, g) != g {
			t.Errorf("%v came back as another", g)
		}
	}
	info := tapping.DefaultGuideline().Info()
	info.ID = "house"
	house := back(t, must[tapping.Guideline](t)(tapping.NewGuideline(info)))
	if n, err := house.Taps(20 * units.Inch); house.ID() != "house" || n != 2 || err != nil {
		t.Errorf("%v gives %d, %v", house, n, err)
	}
}

// What a constructor refuses is refused with the range of its argument.
func TestJSONRefused(t *testing.T) {
	for _, c := range []struct {
		into      any
		text, arg string
	}{
		{new(tapping.Hole), `{}`, "bit"},
		{new(tapping.Hole), `{"bit":"0.3125 in","depth":"1.5 in"}`, "bark"},
		{new(tapping.Hole), `{"bit":"0.3125 in","depth":"15 in","bark":"0 in"}`, "depth"},
		{new(tapping.Trunk), `{"dbh":null,"species":"","vigor":""}`, "dbh"},
		{new(tapping.Trunk), `{"dbh":"-1 in","species":"maple","vigor":"slow"}`, "dbh"},
		{new(tapping.Reach), `{}`, "low"},
		{new(tapping.Reach), `{"low":"1 ft"}`, "high"},
		{new(tapping.Reach), `{"dropline":"3 ft"}`, "Position.Height"},
		{new(tapping.Reach), `{"dropline":"3 ft","fitting_height":"3 ft"}`, "Position.At"},
		{new(tapping.TappingBand), `{"diameter":"12 in","height":"5 ft","hole":{"bit":"0.3125 in","depth":"1.5 in","bark":"0 in"},"taps":11}`, "taps"},
		{new(tapping.Step), `{"from":null,"to":12,"after":false,"before":false,"taps":1}`, "Step.From"},
	} {
		err := json.Unmarshal([]byte(c.text), c.into)
		var e *units.RangeError
		if !errors.As(err, &e) || e.Arg != c.arg || !strings.HasSuffix(e.Func, ".UnmarshalJSON") {
			t.Errorf("%T, %s: %v, want an error about %s", c.into, c.text, err, c.arg)
		}
	}
	var r tapping.Reach
	if err := json.Unmarshal([]byte(`{"low":"1 ft","high":"5 ft","dropline":"3 ft"}`), &r); err == nil || r != (tapping.Reach{}) {
		t.Errorf("a reach of both kinds: %v, %v", r, err)
	}
	var p tapping.Planner
	if _, err := json.Marshal(p); err == nil || !strings.Contains(err.Error(), "encode the diameter") {
		t.Errorf("a planner goes out: %v", err)
	}
	if err := json.Unmarshal([]byte(`{}`), &p); err == nil {
		t.Error("a planner comes in")
	}
}

// A step without an end says so, since JSON has no infinity.
func TestStepWithoutEnd(t *testing.T) {
	s := tapping.Step{From: 18, To: math.Inf(1), After: true, Taps: 2}
	b, err := json.Marshal(s)
	if want := `{"from":18,"to":"+Inf","after":true,"before":false,"taps":2}`; err != nil || string(b) != want {
		t.Errorf("%s, %v, want %s", b, err, want)
	}
}
