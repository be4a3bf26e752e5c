package pan

import (
	"errors"
	"math"
	"testing"

	"example.org/sapreckoner/boil"
	"example.org/sapreckoner/density"
	"example.org/sapreckoner/units"
)

func TestSteadyLimits(t *testing.T) {
	p := 1 * units.Atmosphere
	sap := Sap{Brix: 2, Temperature: units.Celsius(4)}
	for _, x := range append(outside(0.1, 66.85), 0) {
		if _, err := partitioned().Steady(Sap{Brix: units.Brix(x)}, p); !errors.Is(err, units.ErrRange) {
			t.Errorf("%v Brix: %v", x, err)
		}
	}
	for _, x := range []float64{0.1, 30, 60} {
		if s, err := partitioned().Steady(Sap{Brix: units.Brix(x), Temperature: units.Celsius(99)}, p); err != nil {
			t.Errorf("%v Brix: %+v, %v", x, s, err)
		}
	}
	for _, x := range outside(0, 100) {
		if _, err := partitioned().Steady(Sap{Brix: 2, Temperature: units.Celsius(x)}, p); !errors.Is(err, units.ErrRange) {
			t.Errorf("%v C: %v", x, err)
		}
	}
	if _, err := partitioned().Steady(sap, 0); !errors.Is(err, units.ErrRange) {
		t.Error(err)
	}
	r := partitioned()
	r.Draw = DrawOff{}
	if _, err := r.Steady(sap, p); !errors.Is(err, units.ErrRange) {
		t.Error(err)
	}
	// A first compartment without fire stays cold: there is no such steady state.
	r = partitioned()
	for i := range r.Compartments {
		r.Compartments[i].Fire = 25
	}
	r.Compartments[0].Fire = 0
	var e *units.RangeError
	if _, err := r.Steady(sap, p); !errors.As(err, &e) || !errors.Is(err, ErrOffBoil) || e.What != "evaporation of a compartment" || e.Low != 0 {
		t.Error(err)
	}
	if _, err := partitioned().HeatFor(units.MassRate(math.NaN()), sap, p); !errors.As(err, &e) || e.Low != 1e-9 || e.High != 1e6 {
		t.Errorf("no number of kg/s: %v", err)
	}
	for _, x := range append(outside(1e-9, 1e6), 0, 1e6) {
		if q, err := partitioned().HeatFor(units.MassRate(x), sap, p); !errors.Is(err, units.ErrRange) || !math.IsNaN(float64(q)) {
			t.Errorf("%v kg/s: %v, %v", x, q, err)
		}
	}
}

func TestPlugFlowLimits(t *testing.T) {
	p := 1 * units.Atmosphere
	nan := math.NaN()
	for _, tc := range [][3]float64{{0, 66, 50}, {2, 1, 50}, {2, 93, 50}, {2, 66, -1}, {2, 66, 101}, {nan, 66, 50}, {2, nan, 50}, {2, 66, nan}} {
		if b, err := PlugFlow(units.Brix(tc[0]), units.Brix(tc[1]), units.Share(tc[2])); !errors.Is(err, units.ErrRange) || !math.IsNaN(float64(b)) {
			t.Errorf("%v: %v, %v", tc, b, err)
		}
	}
	for _, tc := range [][4]float64{{2, 66, 0, 2}, {2, 66, 100, 66}, {2, 2, 50, 2}, {0.1, 92, 100, 92}} {
		if b, err := PlugFlow(units.Brix(tc[0]), units.Brix(tc[1]), units.Share(tc[2])); err != nil || !near(float64(b), tc[3], 1e-12) {
			t.Errorf("%v: %v, %v", tc, b, err)
		}
	}
	for _, tc := range [][5]float64{{0, 66, 1, 1e-5, 1e5}, {2, 76, 1, 1e-5, 1e5}, {2, 66, -1, 1e-5, 1e5}, {2, 66, 11, 1e-5, 1e5}, {2, 66, 1, 0, 1e5}, {2, 66, 1, nan, 1e5}, {2, 66, 1, 1e-5, 1e4}, {2, 66, nan, 1e-5, 1e5}} {
		if d, err := Transit(units.Brix(tc[0]), units.Brix(tc[1]), units.Length(tc[2]), units.Flux(tc[3]), units.Pressure(tc[4])); !errors.Is(err, units.ErrRange) || d != 0 {
			t.Errorf("%v: %v, %v", tc, d, err)
		}
	}
	for flux, ok := range map[units.Flux]bool{0.99e-9: false, 1e-9: true, 1: true, 1.01: false} {
		if d, err := Transit(2, 66, 1, flux, p); ok != (err == nil) || !ok && d != 0 {
			t.Errorf("evaporation of %v m/s: %v, %v", float64(flux), d, err)
		}
	}
	// Over a thousandth of its strength the density stands still: that of the hot
	// liquid over that of water of 60 F.
	point, err := boil.SyrupPoint(0.1, p)
	hot, err2 := density.Solution(0.1, point)
	cool, err3 := density.Water(units.Fahrenheit(60))
	d, err4 := Transit(0.1, 0.1001, 1, 1e-6, p)
	if want := 1e6 * math.Log(1.001) * float64(hot/cool); errors.Join(err, err2, err3, err4) != nil || !near(d.Seconds(), want, 2e-5) {
		t.Errorf("water takes %v, want %v s", d, want)
	}
	if d, err := Transit(2, 66, 0, 1e-5, p); err != nil || d != 0 {
		t.Errorf("no depth: %v, %v", d, err)
	}
	if d, err := Transit(66, 66, 1, 1e-5, p); err != nil || d != 0 {
		t.Errorf("no way: %v, %v", d, err)
	}
}

// Gauss's rule of five points in closed form: the points are the zeros of the
// Legendre polynomial (63 x^5 - 70 x^3 + 15 x)/8. To half of the last digit.
func TestGauss(t *testing.T) {
	for i, side := range []float64{-1, -1, 0, 1, 1} {
		inner := 1.0
		if i == 0 || i == 4 {
			inner = -1
		}
		point := side / 3 * math.Sqrt(5-inner*2*math.Sqrt(10.0/7))
		weight := (322 + inner*13*math.Sqrt(70)) / 900
		if side == 0 {
			weight = 128.0 / 225
		}
		if math.Abs(gaussPoints[i]-point) > 6e-16 || math.Abs(gaussWeights[i]-weight) > 6e-15 {
			t.Errorf("point %d: %v with %v, want %v with %v", i, gaussPoints[i], gaussWeights[i], point, weight)
		}
	}
}

func BenchmarkSteady(b *testing.B) {
	b.ReportAllocs()
	for b.Loop() {
		if _, err := partitioned().Steady(Sap{Brix: 2, Temperature: units.Celsius(4)}, units.Atmosphere); err != nil {
			b.Fatal(err)
		}
	}
}

// Sap as thick as the syrup to be drawn is named for what it is.
func TestSteadyTellsThickSap(t *testing.T) {
	for _, b := range []units.Brix{66.9, 66.88, 70} {
		_, err := partitioned().Steady(Sap{Brix: b, Temperature: units.Celsius(99)}, 98*units.Kilopascal)
		var e *units.RangeError
		if !errors.As(err, &e) || e.Hint != "the sap is as thick as the syrup to be drawn" || !near(e.High, 66.85, 1e-12) {
			t.Errorf("%v: %v", float64(b), err)
		}
	}
}
