package density

import (
	"math"
	"testing"

	"example.org/sapreckoner/internal/base/coef"
	"example.org/sapreckoner/internal/base/numeric"
	"example.org/sapreckoner/units"
)

// The conventional value in air: what is as dense as the weights weighs true,
// and what is as dense as air weighs nothing (OIML D 28: 8000 and 1.2 kg/m3).
func TestWeighingInAir(t *testing.T) {
	for _, c := range []struct{ density, apparent units.Density }{{8000, 8000}, {1.2, 0}} {
		if got := InAir(c.density); !(math.Abs(float64(got-c.apparent)) <= 1e-9) {
			t.Errorf("%v kg/m3 weighs as %v, want %v", float64(c.density), float64(got), float64(c.apparent))
		}
		if got := FromAir(c.apparent); !(math.Abs(float64(got-c.density)) <= 1e-9) {
			t.Errorf("what weighs as %v is %v kg/m3, want %v", float64(c.apparent), float64(got), float64(c.density))
		}
	}
}

// The constants that no table holds, each from its definition or from where it
// was taken, and rounded as it is written.
func TestConstants(t *testing.T) {
	z := math.Sqrt2 * math.Erfinv(0.95) // of the normal distribution, two sides
	// Dry air of 20 C and 101325 Pa at the wavelength of sodium: Birch and Downs,
	// Metrologia 30 (1993) 155 (from memory).
	k2 := 1 / (sodium * sodium)
	standardAir := 1e-8 * (8342.54 + 2406147/(130-k2) + 15998/(38.9-k2))
	air := 1 + standardAir*101325*(1+1e-8*(0.601-0.00972*20)*101325)/(96095.43*(1+0.003661*20))
	for _, c := range []struct {
		name      string
		got, want float64
		digit     float64 // weight of the last one written
	}{
		{"chance of chi-squared, one degree of freedom, beyond 95 of 100 cases", disagreeBelow, numeric.ChiSquaredBeyond(z*z, 1), 1e-12},
		{"change of the density of water at 8 C (Kell 1975)", flatSlope, waterSlope(8), 1e-2},
		{"surface tension, k = 2 (Aguilera, Wright, Bean 2008)", surfaceDoubt, 370e-6, 1e-9},
		{"sodium light, mean of the D lines at 0.5889950 and 0.5895924 micrometers (from memory)", sodium, (0.5889950 + 0.5895924) / 2, 1e-4},
		{"refractive index of air", airIndex, air, 1e-6},
		{"a tenth of the density of air", airLimit, airDensity / 10, 1e-9},
	} {
		if !(math.Abs(c.got-c.want) <= c.digit/2) {
			t.Errorf("%s: %v, want %v", c.name, c.got, c.want)
		}
	}
}

// The formula of the IAPWS release of 1997 with its reference values, 1000
// kg/m3, 273.15 K and 0.589 micrometers, for the D lines of sodium.
func TestWaterRefractionAsReleased(t *testing.T) {
	for _, c := range []float64{10, 20, 30} {
		r, k, l := water(c)/1000, (c+273.15)/273.15, 0.5893/0.589
		want := r * (coef.WaterA0 + coef.WaterA1*r + coef.WaterA2*k + coef.WaterA3*l*l*k + coef.WaterA4/(l*l) +
			coef.WaterA5/(l*l-coef.WaterUV*coef.WaterUV) + coef.WaterA6/(l*l-coef.WaterIR*coef.WaterIR) + coef.WaterA7*r*r)
		if got, _ := waterRefraction(c); !(math.Abs(got*water(c)-want) <= 1e-14) {
			t.Errorf("(n^2-1)/(n^2+2) at %v C is %v, want %v", c, got*water(c), want)
		}
	}
}
