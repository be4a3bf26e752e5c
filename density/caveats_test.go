package density_test

import (
	"math"
	"testing"

	"example.org/sapreckoner/density"
	"example.org/sapreckoner/units"
)

func TestCaveats(t *testing.T) {
	tests := []struct {
		b, at float64
		want  density.Caveats
	}{
		{66.9, 90, density.Caveats{}},
		{66.9, 90.1, density.Caveats{Extrapolated: true}},
		{66.9, 21.2, density.Caveats{Supersaturated: true}},
		{66.9, 21.4, density.Caveats{}},
		{2, 4, density.Caveats{DensityMaximum: true}},
		{0, 7.9, density.Caveats{DensityMaximum: true}},
		{0, 7.95, density.Caveats{DensityMaximum: true}},
		{0, 8, density.Caveats{}},
		{40, 1, density.Caveats{}},
		{math.NaN(), math.NaN(), density.Caveats{}},
	}
	for _, tt := range tests {
		if got := density.CaveatsOf(bx(tt.b), c(tt.at)); got != tt.want {
			t.Errorf("%v Brix at %v C: %+v, want %+v", tt.b, tt.at, got, tt.want)
		}
	}
	m, err := stem.Measure(59, units.Fahrenheit(209), doubt)
	if err != nil || !m.Extrapolated {
		t.Errorf("a hot cup: %+v, %v", m, err)
	}
}

func TestNearDensityMaximum(t *testing.T) {
	for _, at := range []float64{1, 2, 6, 7} {
		d, err := density.Solution(2, c(at))
		if err != nil {
			t.Fatal(err)
		}
		if got, err := density.BrixFromDensity(d, c(at)); err != nil || !(math.Abs(float64(got)-2) <= 1e-11) {
			t.Errorf("at %v C: %v, %v", at, got, err)
		}
	}
	d1, d7 := must(of(density.Solution(2, c(1)))), must(of(density.Solution(2, c(7))))
	d4 := must(of(density.Solution(2, c(4))))
	if !(d4 > d1 && d4 > d7) {
		t.Errorf("no maximum between 1 and 7 C: %v, %v, %v", d1, d4, d7)
	}
}
