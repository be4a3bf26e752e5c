package tapping

import (
	"math"

	"example.org/sapreckoner/internal/base/limit"
	"example.org/sapreckoner/units"
)

// BasalAreaGrowth returns what a year's radial growth adds to the cross section
// of a trunk.
//
// Range: diameter 0 to 5 m; growth 0 to 1 in.
//
// Formula: pi ((D/2 + g)^2 - (D/2)^2). Check value: 10 in and 0.04436 in give
// 1.400 in2. Healthy overstory maples grew 1.8 in2 a year at 10 in and 3.5 at
// 18 in (van den Berg and others, Forest Science 62, 2016, 107-114).
func BasalAreaGrowth(diameter, growth units.Length) (units.Area, error) {
	const fn = "tapping.BasalAreaGrowth"
	if err := diameterRange.Check(fn, float64(diameter)); err != nil {
		return nan[units.Area](), err
	}
	if err := checkLength(fn, "growth", growth, 0, maxGrowth, growthHint); err != nil {
		return nan[units.Area](), err
	}
	return math.Pi * (diameter + growth).Times(growth), nil
}

// RadialGrowth returns the radial growth that adds the given basal area, the
// inverse of [BasalAreaGrowth].
//
// Range: diameter 0 to 5 m; area 0 to what 1 in of growth adds.
//
// Formula: g = sqrt((D/2)^2 + A/pi) - D/2. Check value: 10 in and 1.400 in2
// give 0.0444 in.
func RadialGrowth(diameter units.Length, area units.Area) (units.Length, error) {
	const fn = "tapping.RadialGrowth"
	most, err := BasalAreaGrowth(diameter, maxGrowth)
	if err != nil {
		return nan[units.Length](), units.Under(fn, err)
	}
	if err := limit.Within(fn, "area", area, 0, most, units.SquareInch, "in2", "basal-area growth of one year"); err != nil {
		return nan[units.Length](), err
	}
	radius, a := float64(diameter)/2, float64(area)/math.Pi
	if !(a > 0) {
		return 0, nil
	}
	// The difference of roots in the form that keeps its digits.
	return units.Length(a / (math.Sqrt(radius*radius+a) + radius)), nil
}
