package density_test

import (
	"testing"

	"example.org/sapreckoner/density"
	"example.org/sapreckoner/internal/base/coef"
	"example.org/sapreckoner/units"
)

var coefficients = coef.Sucrose()

// bare is the polynomial of density.Solution as its source prints it, the same
// arithmetic without a check: what the other benchmarks are measured by.
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
	syrup   units.Brix = 66.9
	reading units.Brix = 60
	cup                = units.Fahrenheit(180)
	room               = units.Celsius(25)
	weight             = units.Density(1290)
	sink    float64
)

// repeat measures f, which must give a good answer.
func repeat(b *testing.B, f func() (float64, error)) {
	b.ReportAllocs()
	for b.Loop() {
		x, err := f()
		if err != nil {
			b.Fatal(err)
		}
		sink = x
	}
}

// bareIndex is the polynomial of density.RefractiveIndex without a check.
//
//go:noinline
func bareIndex(w float64) float64 {
	return coef.N0 + w*(coef.N1+w*(coef.N2+w*(coef.N3+w*(coef.N4+w*coef.N5))))
}

// The benchmarks that are held against bare ones call their function directly: a
// call through repeat would cost both sides the same and flatter the ratio.

func BenchmarkBarePolynomial(b *testing.B) {
	b.ReportAllocs()
	for b.Loop() {
		sink = bare(syrup.Fraction(), cup.Celsius())
	}
}

func BenchmarkBareIndex(b *testing.B) {
	b.ReportAllocs()
	for b.Loop() {
		sink = bareIndex(syrup.Fraction())
	}
}

func BenchmarkSolution(b *testing.B) {
	b.ReportAllocs()
	for b.Loop() {
		d, err := density.Solution(syrup, cup)
		if err != nil {
			b.Fatal(err)
		}
		sink = float64(d)
	}
}

func BenchmarkRefractiveIndex(b *testing.B) {
	b.ReportAllocs()
	for b.Loop() {
		n, err := density.RefractiveIndex(syrup)
		if err != nil {
			b.Fatal(err)
		}
		sink = float64(n)
	}
}

func BenchmarkBrixFromDensity(b *testing.B) {
	b.ReportAllocs()
	for b.Loop() {
		v, err := density.BrixFromDensity(weight, cup)
		if err != nil {
			b.Fatal(err)
		}
		sink = float64(v)
	}
}

func BenchmarkHydrometerBrix(b *testing.B) {
	b.ReportAllocs()
	for b.Loop() {
		v, err := stem.Brix(reading, cup)
		if err != nil {
			b.Fatal(err)
		}
		sink = float64(v)
	}
}

func BenchmarkHydrometerReading(b *testing.B) {
	repeat(b, func() (float64, error) {
		v, err := stem.Reading(syrup, cup)
		return float64(v), err
	})
}

func BenchmarkHydrometerNBS(b *testing.B) {
	repeat(b, func() (float64, error) {
		v, err := nbsStem.Brix(reading, cup)
		return float64(v), err
	})
}

func BenchmarkHydrometerMeasure(b *testing.B) {
	repeat(b, func() (float64, error) {
		m, err := stem.Measure(reading, cup, doubt)
		return float64(m.Uncertainty), err
	})
}

func BenchmarkRefractometerBrix(b *testing.B) {
	repeat(b, func() (float64, error) {
		v, err := prism.Brix(syrup, room)
		return float64(v), err
	})
}

func BenchmarkRefractometerReading(b *testing.B) {
	repeat(b, func() (float64, error) {
		v, err := prism.Reading(syrup, room)
		return float64(v), err
	})
}

func BenchmarkConvert(b *testing.B) {
	repeat(b, func() (float64, error) {
		v, err := density.ICUMSA.Convert(syrup, density.NBSC440)
		return float64(v), err
	})
}

// A season of readings, each in a cup of its own temperature, by as many workers
// as -cpu says, ten thousand a turn.
func BenchmarkTenThousandReadings(b *testing.B) {
	type line struct {
		reading units.Brix
		cup     units.Temperature
	}
	lines := make([]line, 10000)
	for i := range lines {
		lines[i] = line{units.Brix(55 + float64(i%120)/10), units.Fahrenheit(60 + float64(i%151))}
	}
	b.ReportAllocs()
	b.RunParallel(func(pb *testing.PB) {
		answers := make([]units.Brix, len(lines))
		for pb.Next() {
			for i, l := range lines {
				v, err := stem.Brix(l.reading, l.cup)
				if err != nil {
					b.Error(err)
					return
				}
				answers[i] = v
			}
		}
	})
}
