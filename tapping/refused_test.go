package tapping_test

import (
	"encoding/json"
	"errors"
	"strings"
	"testing"

	"example.org/sapreckoner/tapping"
	"example.org/sapreckoner/units"
)

// Called by itself, without encoding/json before it, a decoder refuses what is
// no JSON, and what has a field too many, and leaves the value alone.
func TestDecodersRefuse(t *testing.T) {
	hole := must[tapping.Hole](t)(tapping.NewHole(units.Inch*5/16, 1.5*units.Inch, 0))
	step := tapping.Step{From: 10, To: 12, Taps: 1}
	silence := tapping.NotCoveredError{Guideline: "a", DBH: units.Inch}
	for _, text := range []string{`x`, `[]`, `7`} {
		h, s, e := hole, step, silence
		for _, v := range []json.Unmarshaler{&h, &s, &e} {
			if err := v.UnmarshalJSON([]byte(text)); err == nil {
				t.Errorf("%T takes %s", v, text)
			}
		}
		if h != hole || s != step || e != silence {
			t.Errorf("%s changes %v, %v or %v", text, h, s, e)
		}
	}
	h, s := hole, step
	if err := h.UnmarshalJSON([]byte(`{"bit":"0.3125 in","depth":"1.5 in","bark":"0 in","taps":1}`)); err == nil || h != hole {
		t.Errorf("a hole with a field too many: %v, %v", h, err)
	}
	if err := s.UnmarshalJSON([]byte(`{"from":1,"to":2,"after":false,"before":false,"taps":1,"color":1}`)); err == nil || s != step {
		t.Errorf("a step with a field too many: %v, %v", s, err)
	}
}

// A plan calls its first year from, and words it as a year.
func TestFirstYearRefused(t *testing.T) {
	hole := must[tapping.Hole](t)(tapping.NewHole(units.Inch*5/16, 1.5*units.Inch, 0))
	reach := must[tapping.Reach](t)(tapping.ReachByHand(units.Foot, 5*units.Foot))
	p := must[tapping.Planner](t)(tapping.NewPlanner(12*units.Inch, 2024, units.Inch/10, reach, hole, tapping.DefaultDistances()))
	_, err := p.Plan(nil, -10001, 1, 1)
	var e *units.RangeError
	if !errors.As(err, &e) || e.Arg != "from" || e.What != "year" {
		t.Errorf("%+v", err)
	}
}

// A guideline that is none takes the place of the one before it.
func TestNoGuideline(t *testing.T) {
	none, err := json.Marshal(tapping.Guideline{})
	if err != nil {
		t.Fatal(err)
	}
	g := tapping.DefaultGuideline()
	if err := json.Unmarshal(none, &g); err != nil || g.ID() != "" {
		t.Errorf("%s is read as %q, %v", none, g.ID(), err)
	}
}

// A slip in the name of a guideline is told, and so are the names there are.
func TestNearestGuideline(t *testing.T) {
	_, err := tapping.GuidelineByID("NAMSPM-conservativ")
	var e *units.ParseError
	if !errors.As(err, &e) || !strings.HasPrefix(e.Hint, `did you mean "NAMSPM-conservative"? Use one of: `) || !strings.Contains(e.Hint, "UVM-school") {
		t.Errorf("%v", err)
	}
}

// The year to drill in is asked for by every call, in its own place.
func TestYearRefused(t *testing.T) {
	hole := must[tapping.Hole](t)(tapping.NewHole(units.Inch*5/16, 1.5*units.Inch, 0))
	reach := must[tapping.Reach](t)(tapping.ReachByHand(units.Foot, 5*units.Foot))
	p := must[tapping.Planner](t)(tapping.NewPlanner(12*units.Inch, 2024, units.Inch/10, reach, hole, tapping.DefaultDistances()))
	at := tapping.Position{At: units.Degree * 90, Height: 3 * units.Foot}
	for _, year := range []int{-10001, 10001} {
		_, err := p.Stains(nil, year)
		for name, err := range map[string]error{"Check": p.Check(nil, year, at), "Stains": err} {
			var e *units.RangeError
			if !errors.As(err, &e) || e.Arg != "year" || e.Unit != "" || e.Hint != "the year to drill in" {
				t.Errorf("%s in the year %d: %v", name, year, err)
			}
		}
	}
}

// What has no unit tells none, and an angle tells degrees.
func TestUnitsOfRefusals(t *testing.T) {
	info := tapping.DefaultGuideline().Info()
	info.Steps = []tapping.Step{{From: 10, To: 12, Taps: 99}}
	_, steps := tapping.NewGuideline(info)
	from := new(tapping.Step).UnmarshalJSON([]byte(`{"from":-1,"to":2,"after":false,"before":false,"taps":1}`))
	hole := must[tapping.Hole](t)(tapping.NewHole(units.Inch*5/16, 1.5*units.Inch, 0))
	reach := must[tapping.Reach](t)(tapping.ReachByHand(units.Foot, 5*units.Foot))
	p := must[tapping.Planner](t)(tapping.NewPlanner(12*units.Inch, 2024, units.Inch/10, reach, hole, tapping.DefaultDistances()))
	angle := p.Check(nil, 2024, tapping.Position{At: 2 * units.Turn, Height: 3 * units.Foot})
	for unit, errs := range map[string][]error{"": {steps, from}, "deg": {angle}} {
		for _, err := range errs {
			var e *units.RangeError
			if !errors.As(err, &e) || e.Unit != unit || e.Hint == "" {
				t.Errorf("%+v, want the unit %q", err, unit)
			}
		}
	}
}
