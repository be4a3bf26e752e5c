package density

import (
	"testing"

	"example.org/sapreckoner/internal/coef"
	"example.org/sapreckoner/units"
)

var coefficients = coef.Sucrose()

// bare is the polynomial of [Solution] as its source prints it, with the same
// arithmetic and no checks: what the benchmarks of this file are measured by.
//
//go:noinline
func bare(w, c float64) float64 {
	u := (c - 20) / 100
	k := &coefficients
	a1 := k[0][0] + u*(k[1][0]+u*(k[2][0]+u*(k[3][0]+u*k[4][0])))
	a2 := k[0][1] + u*(k[1][1]+u*(k[2][1]+u*(k[3][1]+u*k[4][1])))
	a3 := k[0][2] + u*(k[1][2]+u*(k[2][2]+u*k[3][2]))
	a4 := k[0][3] + u*(k[1][3]+u*k[2][3])
	a5 := k[0][4] + u*k[1][4]
	a6 := k[0][5]
	num := coef.KellA0 + c*(coef.KellA1+c*(coef.KellA2+c*(coef.KellA3+c*(coef.KellA4+c*coef.KellA5))))
	return num/(1+coef.KellB*c) + w*(a1+w*(a2+w*(a3+w*(a4+w*(a5+w*a6)))))
}

// Inputs that the compiler cannot know, so that it cannot fold them.
var (
	syrup  units.Brix = 66.9
	cup               = units.Fahrenheit(180)
	weight            = units.Density(1290)
	sink   float64
)

func BenchmarkBarePolynomial(b *testing.B) {
	b.ReportAllocs()
	for b.Loop() {
		sink = bare(syrup.Fraction(), cup.Celsius())
	}
}

func BenchmarkSolution(b *testing.B) {
	b.ReportAllocs()
	for b.Loop() {
		rho, err := Solution(syrup, cup)
		if err != nil {
			b.Fatal(err)
		}
		sink = float64(rho)
	}
}

func BenchmarkBrixFromDensity(b *testing.B) {
	b.ReportAllocs()
	for b.Loop() {
		v, err := BrixFromDensity(weight, cup)
		if err != nil {
			b.Fatal(err)
		}
		sink = float64(v)
	}
}

func BenchmarkHydrometerBrix(b *testing.B) {
	b.ReportAllocs()
	h := Hydrometer{GraduatedAt: units.Fahrenheit(60)}
	for b.Loop() {
		v, err := h.Brix(62, cup)
		if err != nil {
			b.Fatal(err)
		}
		sink = float64(v)
	}
}

func BenchmarkHydrometerReading(b *testing.B) {
	b.ReportAllocs()
	h := Hydrometer{GraduatedAt: units.Fahrenheit(60)}
	for b.Loop() {
		v, err := h.Reading(syrup, cup)
		if err != nil {
			b.Fatal(err)
		}
		sink = float64(v)
	}
}
