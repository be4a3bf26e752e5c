package tapping_test

import (
	"testing"

	"example.org/sapreckoner/tapping"
	"example.org/sapreckoner/units"
)

func BenchmarkTaps(b *testing.B) {
	g := tapping.DefaultGuideline()
	b.ReportAllocs()
	for b.Loop() {
		if _, err := g.Taps(15 * units.Inch); err != nil {
			b.Fatal(err)
		}
	}
}

func BenchmarkGrowthNeeded(b *testing.B) {
	w := band(b, 12, 30, 0.3125, 1.5, 1)
	b.ReportAllocs()
	for b.Loop() {
		if _, err := w.GrowthNeeded(90); err != nil {
			b.Fatal(err)
		}
	}
}
