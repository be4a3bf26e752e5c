package density

import (
	"math"

	"example.org/sapreckoner/units"
)

// Range of sugar content, in Brix.
const (
	minBrix units.Brix = 0
	maxBrix units.Brix = 85
)

// extrapolatedAbove is where the expansion of the ICUMSA polynomial flattens,
// in degrees Celsius.
const extrapolatedAbove = 90.0

// icumsa holds the coefficients c[k][i-1] of w^i ((t-20)/100)^k, in kg/m3.
var icumsa = [5][6]float64{
	{385.1761, 135.3705, 40.9299, -3.9643, 13.4853, -17.289},
	{-46.272, -7.172, 1.1597, 5.1126, 17.5254, 0},
	{59.7712, 7.2491, 12.363, -35.4791, 0, 0},
	{-47.2207, -21.6977, 27.6301, 0, 0, 0},
	{18.3184, 12.3081, 0, 0, 0, 0},
}

// An isotherm is the density polynomial at one temperature, in powers of the
// mass fraction: the water density stands in a[0]. Solvers at one temperature
// build it once.
type isotherm struct{ a [7]float64 }

// at returns the isotherm of c degrees Celsius.
func at(c float64) isotherm {
	u := (c - 20) / 100
	k := &icumsa
	return isotherm{[7]float64{
		water(c),
		k[0][0] + u*(k[1][0]+u*(k[2][0]+u*(k[3][0]+u*k[4][0]))),
		k[0][1] + u*(k[1][1]+u*(k[2][1]+u*(k[3][1]+u*k[4][1]))),
		k[0][2] + u*(k[1][2]+u*(k[2][2]+u*k[3][2])),
		k[0][3] + u*(k[1][3]+u*k[2][3]),
		k[0][4] + u*k[1][4],
		k[0][5],
	}}
}

// rho returns the density at mass fraction w.
func (s *isotherm) rho(w float64) float64 {
	a := &s.a
	return a[0] + w*(a[1]+w*(a[2]+w*(a[3]+w*(a[4]+w*(a[5]+w*a[6])))))
}

// slope returns the change of density with mass fraction at w.
func (s *isotherm) slope(w float64) float64 {
	a := &s.a
	return a[1] + w*(2*a[2]+w*(3*a[3]+w*(4*a[4]+w*(5*a[5]+w*6*a[6]))))
}

// fraction returns the mass fraction of density rho by Newton's method.
//
// The start is within 0.01 of the root everywhere and each step squares the
// error, so that three steps reach the last bits and a fourth holds them; the
// polynomial is smooth and rising far beyond the range, and no bracket is
// needed.
func (s *isotherm) fraction(rho float64) float64 {
	d := rho - s.a[0]
	w := d / (s.a[1] + 0.33*d)
	for range 4 {
		w -= (s.rho(w) - rho) / s.slope(w)
	}
	return w
}

// Solution returns the density of a sucrose solution of b Brix at temperature
// t, in vacuo, on the ICUMSA scale.
//
// Range: 0 to 85 Brix, 0 to 110 C; the source covers 0 to 100 C. Uncertainty:
// 0.1 kg/m3 to 90 C (from memory). Above 90 C the expansion of the polynomial
// flattens, an artefact worth 0.035 Brix at 99 C and 0.075 at 105 C at 66.9
// Brix: see [Extrapolated]. Outside the range the answer is NaN and a
// [units.RangeError].
//
// Source: ICUMSA Specification and Standard SPS-4, as reprinted in Bubnik,
// Kadlec, Urban, Bruhns, Sugar Technologists Manual, 8th ed., Bartens 1995, p.
// 164, on the water of [Water]. Check value: 1328.191 kg/m3 at 66.9 Brix and
// 20 C (computed).
func Solution(b units.Brix, t units.Temperature) (units.Density, error) {
	c := t.Celsius()
	if !(b >= minBrix && b <= maxBrix) {
		return nan[units.Density](), brixError("density.Solution", "sugar content", b)
	}
	if !(c >= minC && c <= maxC) {
		return nan[units.Density](), tempError("density.Solution", "temperature", c)
	}
	s := at(c)
	return units.Density(s.rho(b.Fraction())), nil
}

// BrixFromDensity returns the sugar content of a solution of density d at
// temperature t: the inverse of [Solution], by Newton's method with analytic
// slope.
//
// Range: the densities of 0 to 85 Brix at t, and t from 0 to 110 C.
// Uncertainty: that of [Solution] over its slope, 0.016 Brix at 66.9 and 20 C.
// Outside the range the answer is NaN and a [units.RangeError].
//
// The temperature is never solved for: below about 8 C a thin sap's density
// has two temperatures. Check value: 1328.191 kg/m3 at 20 C is 66.9 Brix
// (computed).
func BrixFromDensity(d units.Density, t units.Temperature) (units.Brix, error) {
	c := t.Celsius()
	if !(c >= minC && c <= maxC) {
		return nan[units.Brix](), tempError("density.BrixFromDensity", "temperature", c)
	}
	s := at(c)
	low, high := s.a[0], s.rho(maxBrix.Fraction())
	if !(float64(d) >= low && float64(d) <= high) {
		return nan[units.Brix](), &units.RangeError{
			Func: "density.BrixFromDensity", Arg: "density", Value: float64(d),
			Low: low, High: high, Unit: "kg/m3",
			Hint: "at this temperature water is the least and 85 Brix the most: check the unit, the temperature and whether the figure was weighed in air (see density.FromAir)",
		}
	}
	return toBrix(math.Min(math.Max(s.fraction(float64(d)), 0), maxBrix.Fraction())), nil
}

// toBrix turns a mass fraction into Brix.
func toBrix(w float64) units.Brix { return units.Brix(100 * w) }

// Extrapolated reports whether densities at temperature t rest on an
// extrapolation: above 90 C, where every hot mark of a syrup hydrometer lies.
// The answers stand, with a wider uncertainty.
func Extrapolated(t units.Temperature) bool { return t.Celsius() > extrapolatedAbove }

func brixError(fn, arg string, b units.Brix) error {
	hint := ""
	switch {
	case b < minBrix:
		hint = "less than no sugar: check the instrument in plain water"
	case b > maxBrix:
		hint = "beyond 85 Brix the liquid sets as candy: go by its boiling temperature"
	}
	return &units.RangeError{Func: fn, Arg: arg, Value: float64(b), Low: float64(minBrix), High: float64(maxBrix), Unit: "Brix", Hint: hint}
}
