package tapping

import "example.org/sapreckoner/units"

// DegreeDays is warmth summed over days, in Celsius degrees times days. Sums
// over a base of 50 F are printed in Fahrenheit degree-days: see
// [DegreeDays.Fahrenheit].
type DegreeDays float64

// Celsius returns Celsius degree-days.
func (d DegreeDays) Celsius() float64 { return float64(d) }

// Fahrenheit returns Fahrenheit degree-days, 1.8 times as many.
func (d DegreeDays) Fahrenheit() float64 { return units.TempDiff(d).FahrenheitDegrees() }

// FahrenheitDegreeDays returns n Fahrenheit degree-days.
func FahrenheitDegreeDays(n float64) DegreeDays { return DegreeDays(units.FahrenheitDegrees(n)) }

// GrowingDegreeDays returns what a day adds to the sum of growing degree-days.
//
// It takes any day and any base, and adds nothing where a temperature is NaN.
//
// Formula: max(0, (Tmax + Tmin)/2 - base), Ohio State University Extension.
// Check: 40 and 64 F over a base of 50 F add 2 Fahrenheit degree-days.
func GrowingDegreeDays(d Day, base units.Temperature) DegreeDays {
	mean := d.Min.Add(d.Max.Sub(d.Min) / 2)
	if warm := mean.Sub(base); warm > 0 {
		return DegreeDays(warm)
	}
	return 0
}

// SilverMapleBloom returns the growing degree-days over a base of 50 F at which
// silver maple, among the first of the maples, opens its first flowers and
// stands in full bloom: 34 and 42 Fahrenheit degree-days (Ohio State
// University). Sap of a tree in bud gives syrup of an off flavor.
func SilverMapleBloom() (first, full DegreeDays) {
	return FahrenheitDegreeDays(34), FahrenheitDegreeDays(42)
}
