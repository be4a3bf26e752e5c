package tapping_test

import (
	"fmt"
	"math"
	"math/rand/v2"
	"testing"

	"example.org/sapreckoner/tapping"
	"example.org/sapreckoner/units"
)

func TestGirthRange(t *testing.T) {
	checkRange(t, "DiameterFromGirth", 0, 5*math.Pi, func(x float64) error {
		d, err := tapping.DiameterFromGirth(units.Length(x))
		if (err != nil) != math.IsNaN(float64(d)) {
			t.Errorf("girth %v: diameter %v with error %v", x, d, err)
		}
		return err
	})
	checkRange(t, "GirthFromDiameter", 0, 5, func(x float64) error {
		g, err := tapping.GirthFromDiameter(units.Length(x))
		if (err != nil) != math.IsNaN(float64(g)) {
			t.Errorf("diameter %v: girth %v with error %v", x, g, err)
		}
		return err
	})
	checkRange(t, "NewTrunk", 0, 5, func(x float64) error {
		_, err := tapping.NewTrunk(units.Length(x), tapping.SugarMaple, tapping.Healthy)
		return err
	})
	for _, bad := range []struct {
		s tapping.Species
		v tapping.Vigor
	}{{tapping.OtherTree + 1, tapping.Healthy}, {tapping.Maple, tapping.Unhealthy + 1}} {
		if _, err := tapping.NewTrunk(1*units.Foot, bad.s, bad.v); err == nil {
			t.Errorf("species %d with vigor %d made a trunk", bad.s, bad.v)
		}
	}
}

func TestGirthRoundTrip(t *testing.T) {
	r := rand.New(rand.NewPCG(1, 2))
	for range 1000 {
		d := units.Length(5 * r.Float64())
		g := must[units.Length](t)(tapping.GirthFromDiameter(d))
		if back := must[units.Length](t)(tapping.DiameterFromGirth(g)); !near(float64(back), float64(d)) {
			t.Fatalf("diameter %v came back as %v", d, back)
		}
	}
}

func TestNamesRoundTrip(t *testing.T) {
	for s := tapping.Maple; s <= tapping.OtherTree; s++ {
		var back tapping.Species
		text, err := s.MarshalText()
		if err != nil || back.UnmarshalText(text) != nil || back != s {
			t.Errorf("species %v came back as %v (%v)", s, back, err)
		}
	}
	for v := tapping.NotJudged; v <= tapping.Unhealthy; v++ {
		var back tapping.Vigor
		text, err := v.MarshalText()
		if err != nil || back.UnmarshalText(text) != nil || back != v {
			t.Errorf("vigor %v came back as %v (%v)", v, back, err)
		}
	}
	s := tapping.Birch
	if err := s.UnmarshalText([]byte("oaf")); err == nil || s != tapping.Birch {
		t.Errorf("oaf was read as %v", s)
	}
	if _, err := tapping.Vigor(9).MarshalText(); err == nil {
		t.Error("an unknown vigor was written")
	}
	for _, n := range []tapping.Species{tapping.OtherTree + 1, 99} {
		if got, want := n.String(), fmt.Sprintf("Species(%d)", int(n)); got != want {
			t.Errorf("species %d prints as %q", int(n), got)
		}
		if text, err := n.MarshalText(); err == nil {
			t.Errorf("species %d is written as %q", int(n), text)
		}
	}
}

func TestVigorAndSpecies(t *testing.T) {
	traditional := must[tapping.Guideline](t)(tapping.GuidelineByID("NAMSPM-traditional"))
	for _, c := range []struct {
		v    tapping.Vigor
		want int
	}{{tapping.Healthy, 4}, {tapping.NotJudged, 4}, {tapping.Slow, 1}, {tapping.Unhealthy, 0}} {
		trunk := must[tapping.Trunk](t)(tapping.NewTrunk(30*units.Inch, tapping.SugarMaple, c.v))
		if n := must[int](t)(trunk.Taps(traditional)); n != c.want {
			t.Errorf("a %v trunk takes %d taps, want %d", c.v, n, c.want)
		}
	}
	birch := must[tapping.Trunk](t)(tapping.NewTrunk(30*units.Inch, tapping.Birch, tapping.Healthy))
	if n, err := birch.Taps(traditional); n != 0 || !isNotCovered(err) {
		t.Errorf("a birch takes %d taps, error %v", n, err)
	}
}

func TestTreeAddsStems(t *testing.T) {
	stem := func(in float64) tapping.Trunk {
		return must[tapping.Trunk](t)(tapping.NewTrunk(units.Inches(in), tapping.SugarMaple, tapping.Healthy))
	}
	g := tapping.DefaultGuideline()
	forked := tapping.Tree{Label: "by the gate", Stems: []tapping.Trunk{stem(13), stem(19), stem(11)}}
	if n := must[int](t)(forked.Taps(g)); n != 1+2+0 {
		t.Errorf("stems of 13, 19 and 11 in take %d taps together, want 3", n)
	}
	if n := must[int](t)((tapping.Tree{}).Taps(g)); n != 0 {
		t.Errorf("a tree without stems takes %d taps", n)
	}
	school := must[tapping.Guideline](t)(tapping.GuidelineByID("UVM-school"))
	if _, err := forked.Taps(tapping.Guideline{}); !isNotCovered(err) {
		t.Errorf("no guideline: error %v", err)
	}
	big := tapping.Tree{Stems: []tapping.Trunk{stem(30)}}
	if _, err := big.Taps(school); !isNotCovered(err) {
		t.Errorf("a stem of 30 in by %s: error %v", school.ID(), err)
	}
}

func TestBasalArea(t *testing.T) {
	trunk := must[tapping.Trunk](t)(tapping.NewTrunk(12*units.Inch, tapping.Maple, tapping.Healthy))
	if got, want := trunk.BasalArea().SquareFeet(), math.Pi/4; !near(got, want) {
		t.Errorf("12 in: %v ft2, want %v", got, want)
	}
}
