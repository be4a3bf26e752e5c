package pan

import (
	"math"
	"testing"

	"example.org/sapreckoner/units"
)

// TestHot holds the curves to the formulas they go through.
func TestHot(t *testing.T) {
	for _, kPa := range []float64{firePressure.Low, 80, 101.325, firePressure.High} {
		p := units.Kilopascals(kPa)
		h, err := newHot("pan.test", "pressure", p)
		if err != nil {
			t.Fatal(err)
		}
		const step = 1e-5
		for b := 0.0; b <= thickest; b += 0.25 {
			w := b / 100
			want, err := solveBoiling(units.Brix(b), p)
			if err != nil {
				t.Fatal(err)
			}
			got := h.at(w)
			if d := math.Abs(got.point - want.point); d > 1e-6 {
				t.Errorf("%v kPa, %v Brix: boiling point off by %v K", kPa, b, d)
			}
			for _, q := range [][2]float64{{got.volume, want.volume}, {got.latent, want.latent}, {got.heat, want.heat}} {
				if d := math.Abs(q[0]/q[1] - 1); d > 1e-9 {
					t.Errorf("%v kPa, %v Brix: %v, want %v", kPa, b, q[0], q[1])
				}
			}
			slope := (h.at(w+step).volume - h.at(w-step).volume) / (2 * step)
			if math.Abs(got.swell-slope) > 1e-8*math.Abs(slope) {
				t.Errorf("%v kPa, %v Brix: swell %v, want %v", kPa, b, got.swell, slope)
			}
		}
	}
}

func BenchmarkHot(b *testing.B) {
	b.ReportAllocs()
	h, err := newHot("pan.benchmark", "pressure", units.Kilopascals(100))
	if err != nil {
		b.Fatal(err)
	}
	for b.Loop() {
		h.at(0.3)
	}
}

func BenchmarkNewHot(b *testing.B) {
	b.ReportAllocs()
	for b.Loop() {
		if _, err := newHot("pan.benchmark", "pressure", units.Kilopascals(100)); err != nil {
			b.Fatal(err)
		}
	}
}
