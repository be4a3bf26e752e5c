package density

import (
	"example.org/sapreckoner/internal/base/coef"
	"example.org/sapreckoner/units"
)

const (
	// extrapolatedAbove is where the expansion of the ICUMSA polynomial
	// flattens, in degrees Celsius.
	extrapolatedAbove = 90.0
	// flatSlope is the change of the density of water at 8 C, in kg/m3 per
	// kelvin: a thin solution that changes less lies near its maximum.
	flatSlope = -0.06
)

// Extrapolated reports whether densities at the given temperature rest on an
// extrapolation: above 90 C, where every hot mark of a syrup hydrometer lies.
// The answers stand, with a wider uncertainty.
func Extrapolated(at units.Temperature) bool { return at.Celsius() > extrapolatedAbove }

// Caveats tells what to bear in mind about a density, and about any reading
// that rests on one. The zero value has none.
type Caveats struct {
	// Extrapolated: the liquid is above 90 C, where the density polynomial
	// flattens. See [Extrapolated].
	Extrapolated bool
	// Supersaturated: more sugar than the water holds at this temperature. The
	// density stands as long as the syrup is clear; sugar that settles out is
	// lost to the instrument. Saturation by Vavrinecz (from memory), 66.7 Brix at
	// 20 C.
	Supersaturated bool
	// DensityMaximum: thin and cold, where density hardly changes with
	// temperature and two temperatures share one. The strength is still found,
	// at a known temperature; a temperature is not.
	DensityMaximum bool
}

// CaveatsOf returns what to bear in mind about the given strength at the given
// temperature. It is a check on anything: outside the range of [Solution] it
// tells what it can.
//
// Check values: 66.9 Brix is supersaturated below 21.3 C (computed from a
// formula from memory); plain water is near its density maximum below 8 C.
func CaveatsOf(brix units.Brix, at units.Temperature) Caveats {
	c := at.Celsius()
	_, byC := rhoSlopes(brix.Fraction(), c)
	return Caveats{
		Extrapolated:   Extrapolated(at),
		Supersaturated: float64(brix) > saturation(c),
		DensityMaximum: byC > flatSlope,
	}
}

// saturation is the sucrose that water holds at c, in percent by mass.
func saturation(c float64) float64 {
	return coef.Vavrinecz0 + c*(coef.Vavrinecz1+c*(coef.Vavrinecz2+c*(coef.Vavrinecz3+c*coef.Vavrinecz4)))
}
