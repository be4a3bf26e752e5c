package density

import (
	"math"

	"example.org/sapreckoner/internal/base/coef"
	"example.org/sapreckoner/internal/base/limit"
	"example.org/sapreckoner/units"
)

// ND20 is a refractive index at 20 C for the yellow light of sodium (589 nm),
// against air. It is what a refractometer for sugar measures.
type ND20 float64

// RefractiveIndex returns the refractive index of the given strength on the
// ICUMSA 1974 scale.
//
// Range: 0 to 85 Brix. Uncertainty: 6.1e-6 (0.003 Brix), the worst difference
// of the fit from the table. Source: ICUMSA 1974 scale, read as the constant
// table of a general-purpose property library that cites a laboratory data
// book. Check value: 1.45822 at 67 Brix.
//
// Cites icumsa-1974.
func RefractiveIndex(brix units.Brix) (ND20, error) {
	if err := brixRange.Check("density.RefractiveIndex", float64(brix)); err != nil {
		return nan[ND20](), err
	}
	return ND20(index(brix.Fraction())), nil
}

// BrixFromRefractiveIndex returns the strength of a sucrose solution of
// refractive index at 20 C: the inverse of [RefractiveIndex], with the same
// uncertainty.
//
// Range: the indices of 0 to 85 Brix, 1.33299 to 1.50398. Check value: 67.0
// Brix at 1.45822.
func BrixFromRefractiveIndex(index ND20) (units.Brix, error) {
	x := snap(float64(index), rounding, &indexRange)
	if err := indexRange.Check("density.BrixFromRefractiveIndex", x); err != nil {
		return nan[units.Brix](), err
	}
	return clamp(indexFraction(x)), nil
}

var indexRange = limit.Range{Arg: "index", What: "refractive index", Low: index(minBrix.Fraction()), High: index(maxBrix.Fraction()),
	Below: "water is 1.333, syrup near 1.458", Above: "water is 1.333, syrup near 1.458"}

// index is the refractive index at 20 C of mass fraction w.
func index(w float64) float64 {
	return coef.N0 + w*(coef.N1+w*(coef.N2+w*(coef.N3+w*(coef.N4+w*coef.N5))))
}

// indexSlope is the change of index with w.
func indexSlope(w float64) float64 {
	return coef.N1 + w*(2*coef.N2+w*(3*coef.N3+w*(4*coef.N4+w*5*coef.N5)))
}

// indexFraction is the inverse of index, by Halley's method from a start within
// 0.02: the index rises smoothly far beyond the range.
func indexFraction(n float64) float64 {
	d := n - coef.N0
	w := d / (coef.N1 + 0.3*d)
	for range 3 {
		f := index(w) - n
		f1 := indexSlope(w)
		f2 := coef.N2 + w*(3*coef.N3+w*(6*coef.N4+w*10*coef.N5)) // half the second derivative
		w -= f * f1 / (f1*f1 - f*f2)
	}
	return w
}

// Away from 20 C the index follows from the density. The refraction of Lorentz
// and Lorenz,
//
//	R = (n^2 - 1)/((n^2 + 2) rho)   with n against vacuum,
//
// hardly changes with temperature, and that of a solution is the sum of its
// parts:
//
//	R = (1-w) Rwater(t) + w Rsugar(w) (1 + 7.27e-5 (t-20))
//
// Rsugar is what the index at 20 C leaves for the sugar.
const (
	airIndex    = 1.000272
	sugarGrowth = 7.27e-5
	sodium      = 0.5893 // micrometers
)

// lorentz returns (n^2-1)/(n^2+2) of an index against air, and its change with
// the index.
func lorentz(n float64) (l, slope float64) {
	v := n * airIndex
	q := v*v + 2
	return (v*v - 1) / q, 6 * v / (q * q) * airIndex
}

// unlorentz is the inverse of [lorentz].
func unlorentz(l float64) float64 { return math.Sqrt((1+2*l)/(1-l)) / airIndex }

// waterRefraction returns the refraction of water at c, in m3/kg, and its
// change with temperature. Source: IAPWS, Release on the Refractive Index of
// Ordinary Water Substance (1997).
func waterRefraction(c float64) (r, slope float64) {
	const (
		l2     = (sodium / 0.589) * (sodium / 0.589)
		fixed  = coef.WaterA0 + coef.WaterA4/l2 + coef.WaterA5/(l2-coef.WaterUV*coef.WaterUV) + coef.WaterA6/(l2-coef.WaterIR*coef.WaterIR)
		byT    = coef.WaterA2 + coef.WaterA3*l2
		kelvin = 273.15
	)
	d := water(c) / 1000
	r = fixed + coef.WaterA1*d + byT*(c+kelvin)/kelvin + coef.WaterA7*d*d
	slope = (coef.WaterA1+2*coef.WaterA7*d)*waterSlope(c)/1000 + byT/kelvin
	return r / 1000, slope / 1000
}

// refraction20 is the refraction of water at the temperature of the scale.
var refraction20, _ = waterRefraction(gravityC)

// lorentzAt returns (n^2-1)/(n^2+2) of mass fraction w at c, and its changes
// with w and with c.
func lorentzAt(w, c float64) (l, byW, byC float64) {
	n := index(w)
	l20, byN := lorentz(n)
	d20 := rho(w, gravityC)
	d20W, _ := rhoSlopes(w, gravityC)
	r20 := l20 / d20
	r20W := (byN*indexSlope(w) - r20*d20W) / d20

	rw, rwC := waterRefraction(c)
	growth := 1 + sugarGrowth*(c-gravityC)
	sugar := r20 - (1-w)*refraction20 // w Rsugar(w)
	r := (1-w)*rw + sugar*growth
	rW := -rw + (r20W+refraction20)*growth
	rC := (1-w)*rwC + sugar*sugarGrowth

	d := rho(w, c)
	dW, dC := rhoSlopes(w, c)
	return r * d, rW*d + r*dW, rC*d + r*dC
}
