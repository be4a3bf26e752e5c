package finish_test

import (
	"math"
	"math/rand/v2"
	"testing"

	"example.org/sapreckoner/boil/finish"
	"example.org/sapreckoner/internal/base/limit/limittest"
	"example.org/sapreckoner/units"
)

var pot = finish.PotReading{Gross: units.Pounds(25), Tare: units.Pounds(5), Brix: 33.45, ScaleBy: units.Ounces(1), BrixBy: 0.2}

func TestPotTarget(t *testing.T) {
	w, err := pot.Target(66.9)
	if err != nil || !near(w.Gross.Pounds(), 15, 1e-9) || !near(w.Off.Pounds(), 10, 1e-9) {
		t.Errorf("%+v, %v", w, err)
	}
	r := rand.New(rand.NewPCG(9, 10))
	for range 500 {
		p := finish.PotReading{Gross: units.Mass(2 + 50*r.Float64()), Tare: units.Mass(2 * r.Float64()), Brix: units.Brix(5 + 75*r.Float64())}
		to := p.Brix + (100-p.Brix)*units.Brix(r.Float64())
		w, err := p.Target(to)
		if err != nil {
			t.Fatal(err)
		}
		back, err := p.At(w.Gross)
		if err != nil || !near(float64(back), float64(to), 1e-9) {
			t.Errorf("%+v: %v at %v, back %v, %v", p, to, w.Gross, back, err)
		}
		if w.GrossBy != 0 || w.BrixBy != 0 {
			t.Errorf("no uncertainty in, %v and %v out", w.GrossBy, w.BrixBy)
		}
	}
}

// The stated uncertainty is the spread that drawn errors of the reading and of
// three weighings make.
func TestPotUncertainty(t *testing.T) {
	r := rand.New(rand.NewPCG(11, 12))
	w, err := pot.Target(66.9)
	if err != nil {
		t.Fatal(err)
	}
	const draws = 40000
	var gross, strength float64
	solids := pot.Brix.Sugar(pot.Gross - pot.Tare)
	for range draws {
		shown := pot
		shown.Gross += pot.ScaleBy * units.Mass(r.NormFloat64())
		shown.Tare += pot.ScaleBy * units.Mass(r.NormFloat64())
		shown.Brix += pot.BrixBy * units.Brix(r.NormFloat64())
		got, err := shown.Target(66.9)
		if err != nil {
			t.Fatal(err)
		}
		gross += math.Pow(float64(got.Gross-w.Gross), 2)
		truth := got.Gross + pot.ScaleBy*units.Mass(r.NormFloat64()) - pot.Tare
		strength += math.Pow(100*float64(solids/truth)-66.9, 2)
	}
	if s := math.Sqrt(gross / draws); !near(s/float64(w.GrossBy), 1, 0.02) {
		t.Errorf("weights spread by %v, stated %v", s, w.GrossBy)
	}
	if s := math.Sqrt(strength / draws); !near(s/float64(w.BrixBy), 1, 0.02) {
		t.Errorf("strengths spread by %v, stated %v", s, w.BrixBy)
	}
}

func TestPotLimits(t *testing.T) {
	with := func(change func(*finish.PotReading, float64)) func(float64) (float64, error) {
		return func(x float64) (float64, error) {
			p := pot
			change(&p, x)
			w, err := p.Target(80)
			if err != nil {
				if w != (finish.PotTarget{}) {
					t.Errorf("%+v beside an error", w)
				}
				return math.NaN(), err
			}
			return float64(w.Gross), nil
		}
	}
	const fn = "finish.PotReading.Target"
	limittest.Edges(t, fn, "reading", 5, 80, 40, with(func(p *finish.PotReading, x float64) { p.Brix = units.Brix(x) }))
	limittest.Edges(t, fn, "standard uncertainty of the reading", 0, 10, 1, with(func(p *finish.PotReading, x float64) { p.BrixBy = units.Brix(x) }))
	limittest.Edges(t, fn, "weight", 0, 1e5, 1, with(func(p *finish.PotReading, x float64) { p.ScaleBy = units.Mass(x) }))
	limittest.Edges(t, fn, "target", 33.45, 100, 66, func(x float64) (float64, error) {
		w, err := pot.Target(units.Brix(x))
		if err != nil {
			return math.NaN(), err
		}
		return float64(w.Gross), nil
	})
	// Sap of 5 Brix is the thinnest reading, and the thinnest target.
	thin := pot
	thin.Brix = 5
	limittest.Edges(t, fn, "target", 5, 100, 66, func(x float64) (float64, error) {
		w, err := thin.Target(units.Brix(x))
		if err != nil {
			return math.NaN(), err
		}
		return float64(w.Gross), nil
	})
	limittest.Edges(t, "finish.PotReading.At", "weight", (pot.Tare + pot.Brix.Sugar(pot.Gross-pot.Tare)).Kilograms(), pot.Gross.Kilograms(), 8, func(x float64) (float64, error) {
		b, err := pot.At(units.Mass(x))
		return float64(b), err
	})
	_, err := finish.PotReading{}.Target(66)
	wantRange(t, "no reading", err)
	b, err := finish.PotReading{}.At(1)
	limittest.Refuses(t, "finish.PotReading.At", "weight", float64(b), err)
}

func BenchmarkPotTarget(b *testing.B) {
	b.ReportAllocs()
	for b.Loop() {
		if _, err := pot.Target(66.9); err != nil {
			b.Fatal(err)
		}
	}
}

func FuzzPot(f *testing.F) {
	f.Add(11.3, 2.3, 33.45, 66.9, 0.03, 0.2)
	f.Add(1e5, 0.0, 5.0, 100.0, 0.0, 0.0)
	f.Add(math.NaN(), math.Inf(1), 80.0, 80.0, -1.0, 10.0)
	f.Fuzz(func(t *testing.T, gross, tare, brix, to, scale, by float64) {
		p := finish.PotReading{Gross: units.Mass(gross), Tare: units.Mass(tare), Brix: units.Brix(brix), ScaleBy: units.Mass(scale), BrixBy: units.Brix(by)}
		w, err := p.Target(units.Brix(to))
		if err != nil {
			return
		}
		if !(w.Gross >= p.Tare && w.Gross <= p.Gross && w.Off >= 0 && w.GrossBy >= 0 && w.BrixBy >= 0) {
			t.Errorf("%+v to %v: %+v", p, to, w)
		}
		// Where the pot outweighs what is in it by far, its weight tells little.
		slack := 1e-9 * gross / (gross - tare)
		if back, err := p.At(w.Gross); err == nil && !near(float64(back), to, slack*to) {
			t.Errorf("%+v to %v: back %v", p, to, back)
		}
	})
}
