package sugar_test

import (
	"errors"
	"math"
	"testing"
	"time"

	"example.org/sapreckoner/sugar"
	"example.org/sapreckoner/units"
)

func TestMembraneConserves(t *testing.T) {
	r := newDraw()
	for range draws {
		feed := drawLot(t, r, 0.1, 40)
		b := float64(feed.Brix())
		target := units.Brix(between(r, b, 85))
		m := sugar.Membrane{}
		if r.IntN(2) == 0 {
			m.Passage = units.Share(between(r, 0, 50))
		}
		s := must[sugar.Separation](t)(m.Concentrate(feed, target))
		conserved(t, []sugar.Lot{feed}, []sugar.Lot{s.Concentrate, s.Removed})
		if !near(float64(s.Concentrate.Brix()), float64(target), 1e-11*85) {
			t.Errorf("%v to %v with %v passing: %v", feed.Brix(), target, m.Passage, s.Concentrate.Brix())
		}
		if m.Passage == 0 && s.Removed.Sugar() != 0 {
			t.Errorf("a tight membrane lets %v by", s.Removed.Sugar())
		}
		if s.Removed.Mass() < 1e-3*feed.Mass() {
			continue
		}
		// The permeate is between the passage's share of the feed and of the
		// concentrate.
		p, f := float64(s.Removed.Brix()), m.Passage.Fraction()
		if !(p >= f*b-1e-9 && p <= f*float64(target)+1e-9) {
			t.Errorf("%v to %v with %v passing: permeate of %v Brix", b, target, m.Passage, p)
		}
		saved := must[units.Share](t)(s.EvaporationSaved(85))
		want := (1/float64(s.Concentrate.Sugar()/s.Concentrate.Mass()) - 1/0.85)
		sap := 1/float64(feed.Sugar()/feed.Mass()) - 1/0.85
		if !near(saved.Fraction(), 1-want/sap, 1e-9) {
			t.Errorf("%v to %v saves %v, want %v", b, target, saved, 100*(1-want/sap))
		}
	}
}

// The sugar that passes is the sum over many small steps of passage times the
// strength at the time: the differential balance, integrated by midpoints.
func TestMembranePassageAgainstSteps(t *testing.T) {
	feed := must[sugar.Lot](t)(sugar.NewLotByMass(1000, 2, units.Celsius(5)))
	m := sugar.Membrane{Passage: 5 * units.Percent}
	s := must[sugar.Separation](t)(m.Concentrate(feed, 12))
	const steps = 100000
	mass, sweet := 1000.0, 20.0
	step := (mass - float64(s.Concentrate.Mass())) / steps
	for range steps {
		half := sweet - 0.05*sweet/mass*step/2
		sweet -= 0.05 * half / (mass - step/2) * step
		mass -= step
	}
	if !near(float64(s.Concentrate.Sugar()), sweet, 1e-6) {
		t.Errorf("%v of sugar left, by steps %v kg", s.Concentrate.Sugar(), sweet)
	}
}

// Passes are the same work cut in pieces.
func TestPasses(t *testing.T) {
	r := newDraw()
	for range draws {
		feed := drawLot(t, r, 0.5, 3)
		m := sugar.Membrane{Passage: units.Share(between(r, 0, 20))}
		share, n := units.Share(between(r, 1, 60)), 1+r.IntN(3)
		s := must[sugar.Separation](t)(m.Passes(feed, share, n))
		conserved(t, []sugar.Lot{feed}, []sugar.Lot{s.Concentrate, s.Removed})
		if want := float64(feed.Mass()) * math.Pow(1-share.Fraction(), float64(n)); !near(float64(s.Concentrate.Mass()), want, 1e-12*want) {
			t.Errorf("%d passes of %v leave %v, want %v", n, share, s.Concentrate.Mass(), want)
		}
		step := feed
		for range n {
			step = must[sugar.Separation](t)(m.Passes(step, share, 1)).Concentrate
		}
		conserved(t, []sugar.Lot{s.Concentrate}, []sugar.Lot{step})
		run := must[sugar.Separation](t)(m.Concentrate(feed, s.Concentrate.Brix()))
		if !near(float64(run.Concentrate.Mass()), float64(s.Concentrate.Mass()), 1e-10*float64(feed.Mass())) {
			t.Errorf("passes leave %v, one run %v", s.Concentrate.Mass(), run.Concentrate.Mass())
		}
	}
}

func TestMembraneTime(t *testing.T) {
	m := sugar.Membrane{Flow: 50 * units.USGallonPerHour}
	for _, tt := range []struct {
		gallons float64
		factor  units.Share
		want    time.Duration
	}{
		{75, 75, 2 * time.Hour}, {50, 100, time.Hour}, {0, 100, 0}, {100, 400, 30 * time.Minute}, {0.5, 1, time.Hour},
	} {
		got, err := m.Time(units.USGallons(tt.gallons), tt.factor)
		if err != nil || (got-tt.want).Abs() > time.Microsecond {
			t.Errorf("%v US gal at %v takes %v, %v; want %v", tt.gallons, tt.factor, got, err, tt.want)
		}
	}
}

func TestPump(t *testing.T) {
	r := newDraw()
	for range draws / 10 {
		at := units.Celsius(between(r, 0, 50))
		m := sugar.Membrane{Pump: units.Bars(between(r, 0.1, 150))}
		stop := must[units.Brix](t)(m.Limit(at))
		if p := must[units.Pressure](t)(sugar.OsmoticPressure(stop, at)); !near(float64(p), float64(m.Pump), 1e-8*float64(m.Pump)) {
			t.Errorf("%v at %v stops at %v, where the osmotic pressure is %v", m.Pump, at, stop, p)
		}
		feed := must[sugar.Lot](t)(sugar.NewLotByMass(100, stop/4, at))
		for _, target := range []units.Brix{stop * 0.999, stop} {
			if _, err := m.Concentrate(feed, target); err != nil {
				t.Errorf("%v to %v, where it stops at %v: %v", m.Pump, target, stop, err)
			}
		}
		if _, err := m.Concentrate(feed, stop*1.001); !errors.Is(err, sugar.ErrInfeasible) {
			t.Errorf("%v beyond %v: %v", m.Pump, stop, err)
		}
		if _, err := m.Passes(feed, 49, 2); err != nil {
			t.Errorf("%v, to 0.96 of %v: %v", m.Pump, stop, err)
		}
		if _, err := m.Passes(feed, 51, 2); !errors.Is(err, sugar.ErrInfeasible) {
			t.Errorf("%v, to 1.04 of %v: %v", m.Pump, stop, err)
		}
	}
}

func TestMembraneLimits(t *testing.T) {
	at := units.Celsius(10)
	feed := must[sugar.Lot](t)(sugar.NewLotByMass(10, 2, at))
	tight := sugar.Membrane{Flow: units.USGallonPerHour}
	var errs []error
	keep := func(s sugar.Separation, err error) {
		if s != (sugar.Separation{}) {
			t.Errorf("an answer beside %v", err)
		}
		errs = append(errs, err)
	}
	duration := func(d time.Duration, err error) {
		if d != 0 {
			t.Errorf("%v beside %v", d, err)
		}
		errs = append(errs, err)
	}
	for _, x := range append([]float64{-0.001, 50.001}, notNumbers...) {
		m := sugar.Membrane{Passage: units.Share(x)}
		keep(m.Concentrate(feed, 8))
		keep(m.Passes(feed, 50, 2))
		b, err := sugar.Membrane{Pump: 10 * units.Bar}.Limit(units.Celsius(x))
		if !math.IsNaN(float64(b)) {
			t.Errorf("limit of %v at %v C", b, x)
		}
		errs = append(errs, err)
	}
	for _, x := range append([]float64{-0.001, 85.001}, notNumbers...) {
		keep(tight.Concentrate(feed, units.Brix(x)))
	}
	for _, x := range append([]float64{0, 0.09, 95.001}, notNumbers...) {
		keep(tight.Passes(feed, units.Share(x), 1))
	}
	for _, n := range []int{-1, 0, 1001} {
		keep(tight.Passes(feed, 10, n))
	}
	for _, x := range append([]float64{0, -1, 0.9999e-8, 1.0001}, notNumbers...) {
		duration(sugar.Membrane{Flow: units.VolumeRate(x)}.Time(units.Liter, 100))
	}
	for _, x := range append([]float64{-1, 1.001e6}, notNumbers...) {
		duration(tight.Time(units.Volume(x), 100))
	}
	for _, x := range append([]float64{0, 0.99, 400.001}, notNumbers...) {
		duration(tight.Time(units.Liter, units.Share(x)))
	}
	for _, x := range append([]float64{-1, 0, 0.0999, 150.001}, notNumbers...) {
		m := sugar.Membrane{Pump: units.Bars(x)}
		_, err := m.Limit(at)
		errs = append(errs, err)
		if x != 0 { // no pump is not looked at
			keep(m.Concentrate(feed, 8))
			keep(m.Passes(feed, 50, 2))
		}
	}
	for i, err := range errs {
		if !errors.Is(err, units.ErrRange) {
			t.Errorf("case %d: %v", i, err)
		}
	}
	errs = nil
	keep(tight.Concentrate(sugar.Lot{}, 8))
	keep(tight.Concentrate(feed, 1.9))
	keep(tight.Passes(sugar.Lot{}, 50, 1))
	keep(tight.Passes(feed, 50, 6))
	keep(tight.Passes(feed, 95, 1000))
	keep(tight.Passes(must[sugar.Lot](t)(sugar.NewLotByMass(10, 0, at)), 95, 1000))
	for i, err := range errs {
		if !errors.Is(err, sugar.ErrInfeasible) {
			t.Errorf("case %d: %v", i, err)
		}
	}
	for _, flow := range []units.VolumeRate{1e-8, 1} {
		if _, err := (sugar.Membrane{Flow: flow}).Time(units.Liter, 100); err != nil {
			t.Errorf("%v: %v", flow, err)
		}
	}
	for _, m := range []sugar.Membrane{{Passage: 0}, {Passage: 50}} {
		for _, target := range []units.Brix{feed.Brix(), 85} {
			if _, err := m.Concentrate(feed, target); err != nil {
				t.Errorf("%v passing to %v: %v", m.Passage, target, err)
			}
		}
	}
	// One pass that halves 42.5 Brix leaves 85, the most.
	half := must[sugar.Lot](t)(sugar.NewLotByMass(8, 42.5, at))
	if s, err := (sugar.Membrane{}).Passes(half, 50, 1); err != nil || !near(float64(s.Concentrate.Brix()), 85, 1e-12) {
		t.Errorf("to 85 Brix: %v, %v", s.Concentrate.Brix(), err)
	}
	for _, share := range []units.Share{0.1, 95} {
		if _, err := tight.Passes(feed, share, 1); err != nil {
			t.Errorf("recovery of %v: %v", share, err)
		}
	}
	for _, c := range []float64{0, 50} {
		for _, bar := range []float64{0.1, 150} {
			if b, err := (sugar.Membrane{Pump: units.Bars(bar)}).Limit(units.Celsius(c)); err != nil || !(b > 0 && b < 70) {
				t.Errorf("%v bar at %v C: %v, %v", bar, c, b, err)
			}
		}
	}
}
