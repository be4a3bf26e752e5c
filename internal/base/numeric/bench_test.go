package numeric_test

import (
	"testing"

	"example.org/sapreckoner/internal/base/numeric"
)

func BenchmarkNewton(b *testing.B) {
	b.ReportAllocs()
	target := 2.0
	for b.Loop() {
		f := func(x float64) (float64, float64) { return x*x - target, 2 * x }
		target, _ = numeric.Newton(f, 0, 2, 1.4, 1e-9)
		target *= target
	}
}

func BenchmarkNewtonInside(b *testing.B) {
	b.ReportAllocs()
	target := 2.0
	for b.Loop() {
		f := func(x float64) (float64, float64) { return x*x - target, 2 * x }
		target, _ = numeric.Newton(f, 0, 2, 0, 1e-9)
		target *= target
	}
}

func BenchmarkRoot(b *testing.B) {
	b.ReportAllocs()
	target := 2.0
	for b.Loop() {
		f := func(x float64) float64 { return x*x - target }
		target, _ = numeric.Root(f, 0, 2, 1e-9)
		target *= target
	}
}
