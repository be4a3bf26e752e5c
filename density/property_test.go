package density_test

import (
	"math"
	"math/rand/v2"
	"testing"

	"example.org/sapreckoner/density"
	"example.org/sapreckoner/units"
)

const draws = 2000

func TestInversePairs(t *testing.T) {
	rng := rand.New(rand.NewPCG(3, 66))
	between := func(low, high float64) float64 { return low + (high-low)*rng.Float64() }
	pairs := []struct {
		name   string
		most   float64 // Brix
		within float64 // Brix
		there  func(b units.Brix, t units.Temperature) (float64, error)
		back   func(x float64, t units.Temperature) (units.Brix, error)
	}{
		{"Solution", 85, 1e-11,
			func(b units.Brix, t units.Temperature) (float64, error) { return of(density.Solution(b, t)) },
			func(x float64, t units.Temperature) (units.Brix, error) { return density.BrixFromDensity(kg(x), t) }},
		{"SG2020", 85, 1e-11,
			func(b units.Brix, _ units.Temperature) (float64, error) { return of(density.SG2020FromBrix(b)) },
			func(x float64, _ units.Temperature) (units.Brix, error) { return density.BrixFromSG2020(sg(x)) }},
		{"TrueSG2020", 85, 1e-11,
			func(b units.Brix, _ units.Temperature) (float64, error) { return of(density.TrueSG2020FromBrix(b)) },
			func(x float64, _ units.Temperature) (units.Brix, error) { return density.BrixFromTrueSG2020(tg(x)) }},
		{"Baume", 85, 1e-11,
			func(b units.Brix, _ units.Temperature) (float64, error) { return of(density.BaumeFromBrix(b)) },
			func(x float64, _ units.Temperature) (units.Brix, error) { return density.BrixFromBaume(be(x)) }},
		{"NBSC440 SG2020", 95, 1e-11,
			func(b units.Brix, _ units.Temperature) (float64, error) { return of(density.NBSC440.SG2020(b)) },
			func(x float64, _ units.Temperature) (units.Brix, error) { return density.NBSC440.Brix(sg(x)) }},
		{"NBSC440 Baume", 95, 1e-11,
			func(b units.Brix, _ units.Temperature) (float64, error) { return of(density.NBSC440.Baume(b)) },
			func(x float64, _ units.Temperature) (units.Brix, error) { return density.NBSC440.BrixFromBaume(be(x)) }},
		{"Convert", 84.9, 1e-11,
			func(b units.Brix, _ units.Temperature) (float64, error) {
				return of(density.NBSC440.Convert(b, density.ICUMSA))
			},
			func(x float64, _ units.Temperature) (units.Brix, error) {
				return density.ICUMSA.Convert(bx(x), density.NBSC440)
			}},
		{"RefractiveIndex", 85, 1e-11,
			func(b units.Brix, _ units.Temperature) (float64, error) { return of(density.RefractiveIndex(b)) },
			func(x float64, _ units.Temperature) (units.Brix, error) {
				return density.BrixFromRefractiveIndex(nd(x))
			}},
		{"Flask", 85, 1e-11,
			func(b units.Brix, t units.Temperature) (float64, error) { return of(flask.Net(b, t)) },
			func(x float64, t units.Temperature) (units.Brix, error) { return flask.Brix(units.Mass(x), t) }},
	}
	for _, p := range pairs {
		t.Run(p.name, func(t *testing.T) {
			for i := range draws {
				b, at := bx(between(0, p.most)), c(between(0, 110))
				switch i { // the ends of the range first
				case 0:
					b = 0
				case 1:
					b = bx(p.most)
				}
				x, err := p.there(b, at)
				if err != nil {
					t.Fatal(err)
				}
				got, err := p.back(x, at)
				if err != nil || !(math.Abs(float64(got-b)) <= p.within) {
					t.Fatalf("%v at %v comes back as %v, %v", b, at, got, err)
				}
			}
		})
	}
}

func TestMonotoneInBrix(t *testing.T) {
	forward := map[string]func(b units.Brix, t units.Temperature) (float64, error){
		"Solution":        func(b units.Brix, t units.Temperature) (float64, error) { return of(density.Solution(b, t)) },
		"Reading":         func(b units.Brix, t units.Temperature) (float64, error) { return of(stem.Reading(b, t)) },
		"NBSC440 Reading": func(b units.Brix, t units.Temperature) (float64, error) { return of(nbsStem.Reading(b, t)) },
		"NBSC440":         func(b units.Brix, _ units.Temperature) (float64, error) { return of(density.NBSC440.SG2020(b)) },
		"RefractiveIndex": func(b units.Brix, _ units.Temperature) (float64, error) { return of(density.RefractiveIndex(b)) },
		"prism": func(b units.Brix, t units.Temperature) (float64, error) {
			return of(prism.Reading(b, c(10+t.Celsius()/5.5)))
		},
	}
	for name, f := range forward {
		for at := 0.0; at <= 110; at += 10 {
			last, ends := math.Inf(-1), 0
			for i := range 801 {
				x, err := f(bx(2+float64(i)/10), c(at))
				if err != nil {
					ends++ // off the stem
					continue
				}
				if !(x > last) {
					t.Fatalf("%s at %v C: %v after %v at %v Brix", name, at, x, last, 2+float64(i)/10)
				}
				last = x
			}
			if ends > 400 {
				t.Errorf("%s at %v C: %d of 801 strengths are off the scale", name, at, ends)
			}
		}
	}
}

func TestMonotoneInTemperature(t *testing.T) {
	for b := 0.0; b <= 85; b += 2.5 {
		last := math.Inf(1)
		for at := 4.0; at <= 110; at += 0.5 {
			d, err := density.Solution(bx(b), c(at))
			if err != nil || !(float64(d) < last) {
				t.Fatalf("%v Brix at %v C: %v after %v, %v", b, at, d, last, err)
			}
			last = float64(d)
		}
	}
}

func TestMassIsKept(t *testing.T) {
	rng := rand.New(rand.NewPCG(5, 70))
	for range draws {
		v, b := m3(rng.Float64()), bx(85*rng.Float64())
		from, to := c(110*rng.Float64()), c(110*rng.Float64())
		moved, err := density.VolumeAt(v, b, from, to)
		if err != nil {
			t.Fatal(err)
		}
		m0, m1 := must(of(density.Mass(v, b, from))), must(of(density.Mass(moved, b, to)))
		if !(math.Abs(m1-m0) <= 1e-12*m0) {
			t.Fatalf("%v of %v from %v to %v: %v becomes %v kg", v, b, from, to, m0, m1)
		}
		share := must(of(density.Contraction(b, from, to)))
		if !(math.Abs(float64(v-moved)-share/100*float64(v)) <= 1e-12*float64(v)) {
			t.Fatalf("contraction %v of %v to %v", share, v, moved)
		}
		fill := must(of(density.HotVolume(v, b, from)))
		if m := must(of(density.Mass(m3(fill), b, from))); !(math.Abs(m-must(of(density.Mass(v, b, c20)))) <= 1e-12*m) {
			t.Fatalf("overfill of %v at %v holds %v kg", v, from, m)
		}
	}
}

func TestAirUndone(t *testing.T) {
	for d := 900.0; d < 1500; d += 0.7 {
		if got := density.FromAir(density.InAir(kg(d))); !(math.Abs(float64(got)-d) <= 1e-12*d) {
			t.Fatalf("%v comes back as %v", d, got)
		}
	}
}

func TestNoAllocation(t *testing.T) {
	rows := make([]density.CupRow, 8)
	for i := range rows {
		rows[i].At = units.Fahrenheit(60 + 20*float64(i))
	}
	a, err := stem.Measure(60, c20, doubt)
	if err != nil {
		t.Fatal(err)
	}
	calls := []func() error{
		func() error { _, err := density.Solution(66.9, c20); return err },
		func() error { _, err := density.BrixFromDensity(1300, c20); return err },
		func() error { _, err := density.NBSC440.Convert(66, density.ICUMSA); return err },
		func() error { _, err := nbsStem.Brix(60, c(80)); return err },
		func() error { _, err := nbsStem.Reading(66.9, c(80)); return err },
		func() error { _, err := stem.Baume(66.9, c(80)); return err },
		func() error { return stem.FillCupTable(66.9, rows) },
		func() error { _, err := hot.Brix(c(80)); return err },
		func() error { _, err := prism.Brix(66, c(25)); return err },
		func() error { _, err := prism.Reading(66, c(25)); return err },
		func() error { _, err := flask.Brix(0.6, c20); return err },
		func() error { _, err := density.HotVolume(1, 66.9, c(85)); return err },
		func() error { _, err := stem.Measure(60, c(80), doubt); return err },
		func() error { _, err := prism.Measure(60, c(25), doubt); return err },
		func() error { _, err := flask.Measure(0.6, c(25), weighing); return err },
		func() error { _, err := density.Combine(a, a); return err },
	}
	for i, call := range calls {
		if err := call(); err != nil {
			t.Fatalf("call %d: %v", i, err)
		}
		if n := testing.AllocsPerRun(100, func() { _ = call() }); n != 0 {
			t.Errorf("call %d allocates %v times", i, n)
		}
	}
}
