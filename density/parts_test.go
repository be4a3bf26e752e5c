package density_test

import (
	"math"
	"testing"

	"example.org/sapreckoner/density"
	"example.org/sapreckoner/units"
)

// Each part is the input's standard uncertainty, as the documentation states it,
// times the change of the answer with that input, here found by differences of
// the public functions.
func TestPartsByDifferences(t *testing.T) {
	var (
		sqrt3  = math.Sqrt(3)
		sqrt12 = math.Sqrt(12)
		cupC   = 102.0
		h      = density.Hydrometer{GraduatedAt: f60, Scale: density.NBSC440, ReadsHigh: 0.2, Expansion: 24e-6}
		net    = 655 * units.Gram
		steel  = density.Flask{Volume: units.Liter / 2, CalibratedAt: c20, Expansion: 50e-6}
		truth  = must(of(h.Brix(59, c(cupC))))
		filled = must(of(steel.Brix(net, c(40))))
	)
	// slope is the change of f per unit of x, from both sides.
	slope := func(f func(dx float64) (float64, error), dx float64) float64 {
		return math.Abs(must(f(dx))-must(f(-dx))) / (2 * dx)
	}
	// byDensity is the change in Brix for a kg/m3, at a strength and a temperature.
	byDensity := func(b, at float64) float64 {
		d := must(of(density.Solution(bx(b), c(at))))
		return slope(func(dx float64) (float64, error) { return of(density.BrixFromDensity(kg(d+dx), c(at))) }, 0.01)
	}
	onStem := slope(func(dx float64) (float64, error) { return of(h.Brix(bx(59+dx), c(cupC))) }, 0.001)
	onPrism := slope(func(dx float64) (float64, error) { return of(prism.Brix(bx(66.5+dx), c(25))) }, 0.001)
	byNet := slope(func(dx float64) (float64, error) { return of(steel.Brix(net+units.Mass(dx), c(40))) }, 1e-5)
	hotDensity := must(of(density.Solution(bx(truth), c(cupC))))
	// 0.035 Brix at 99 C and 0.075 at 105 C, so 0.055 at 102, of 6.16 kg/m3 each.
	hotModel := math.Hypot(0.05, 0.055*6.16/sqrt3)
	air := 0.12 / sqrt3 * (1 - must(of(density.Solution(bx(filled), c(40))))/8000)

	stemDoubt := density.Doubt{Division: 0.5, Thermometer: 0.8, Calibration: 0.12}
	weighed := density.FlaskDoubt{Division: 2 * units.Gram, Calibration: 1 * units.Gram, Volume: units.Milliliter, Thermometer: 0.9}
	fromStem, err := h.Measure(59, c(cupC), stemDoubt)
	if err != nil {
		t.Fatal(err)
	}
	fromPrism, err := prism.Measure(66.5, c(25), stemDoubt)
	if err != nil {
		t.Fatal(err)
	}
	fromATC, err := atc.Measure(66.5, c(25), stemDoubt)
	if err != nil {
		t.Fatal(err)
	}
	fromFlask, err := steel.Measure(net, c(40), weighed)
	if err != nil {
		t.Fatal(err)
	}
	tests := []struct {
		name string
		got  units.Brix
		want float64
	}{
		{"stem, division", fromStem.Parts.Division, onStem * 0.5 / sqrt12},
		{"stem, calibration", fromStem.Parts.Calibration, onStem * 0.06},
		{"stem, thermometer", fromStem.Parts.Thermometer, 0.8 / sqrt3 *
			slope(func(dx float64) (float64, error) { return of(h.Brix(59, c(cupC+dx))) }, 0.01)},
		{"stem, glass", fromStem.Parts.Glass, 5e-6 / sqrt3 * slope(func(dx float64) (float64, error) {
			other := h
			other.Expansion += dx
			return of(other.Brix(59, c(cupC)))
		}, 1e-6)},
		{"stem, surface", fromStem.Parts.Surface, byDensity(truth, cupC) * hotDensity * 185e-6},
		{"stem, model", fromStem.Parts.Model, byDensity(truth, cupC) * hotModel},
		{"stem, volume", fromStem.Parts.Volume, 0},
		{"prism, division", fromPrism.Parts.Division, onPrism * 0.5 / sqrt12},
		{"prism, calibration", fromPrism.Parts.Calibration, onPrism * 0.06},
		{"prism, thermometer", fromPrism.Parts.Thermometer, 0.8 / sqrt3 *
			slope(func(dx float64) (float64, error) { return of(prism.Brix(66.5, c(25+dx))) }, 0.01)},
		{"prism, model", fromPrism.Parts.Model, 0.02},
		{"compensated, division", fromATC.Parts.Division, 0.5 / sqrt12},
		{"compensated, thermometer", fromATC.Parts.Thermometer, 0},
		{"compensated, model", fromATC.Parts.Model, 0.003},
		{"flask, division", fromFlask.Parts.Division, byNet * 2e-3 / sqrt12},
		{"flask, calibration", fromFlask.Parts.Calibration, byNet * 0.5e-3},
		{"flask, volume", fromFlask.Parts.Volume, 0.5e-6 * slope(func(dx float64) (float64, error) {
			other := steel
			other.Volume += m3(dx)
			return of(other.Brix(net, c(40)))
		}, 1e-8)},
		{"flask, thermometer", fromFlask.Parts.Thermometer, 0.9 / sqrt3 *
			slope(func(dx float64) (float64, error) { return of(steel.Brix(net, c(40+dx))) }, 0.01)},
		{"flask, model", fromFlask.Parts.Model, byDensity(filled, 40) * math.Hypot(0.05, air)},
	}
	for _, tt := range tests {
		if !(math.Abs(float64(tt.got)-tt.want) <= 1e-4*tt.want) {
			t.Errorf("%s: %v, by differences %v", tt.name, tt.got, tt.want)
		}
	}
}
