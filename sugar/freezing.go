package sugar

import (
	"math"

	"example.org/sapreckoner/internal/base/limit"
	"example.org/sapreckoner/internal/base/numeric"
	"example.org/sapreckoner/units"
)

// Melting of ice at 0 C: heat, and by how much the molar heat capacity of water
// is above that of ice.
const (
	meltingHeat     = 6009.5 // J/mol
	meltingCapacity = 38.2   // J/(mol K)
	meltingK        = 273.15
)

// What the freezing point may be asked for, and a temperature below the lowest
// answer to search from.
var freezingBrix = limit.Range{Arg: "brix", What: "sugar content", Low: 0, High: 60, Unit: "Brix",
	Below: "less than no sugar: check the instrument in plain water",
	Above: "sugar begins to come out beside the ice: the curve ends here"}

const coldest = meltingK - 20

// FreezingPoint returns the temperature at which the first ice forms in a
// solution of sucrose of the given strength, and at which the last melts. The
// ice is nearly pure water: what stays liquid follows this curve.
//
// Range: 0 to 60 Brix. Uncertainty: 2.5 percent of the depression, against
// handbook figures to 40 Brix (from memory); beyond them an estimate. A
// solution may be cooled some degrees below before ice starts.
//
// Source: the water activity of [WaterActivity] equals that of ice, with 6009.5
// J/mol and 38.2 J/(mol K) for its melting. Check value: -0.63 C at 10 Brix (CRC
// Handbook, concentrative properties of aqueous solutions, from memory).
//
// Cites starzak-peacock-1997, crc-handbook.
func FreezingPoint(brix units.Brix) (units.Temperature, error) {
	if err := freezingBrix.Check("sugar.FreezingPoint", float64(brix)); err != nil {
		return units.Celsius(math.NaN()), err
	}
	return units.Kelvin(freezing(brix)), nil
}

// BrixFromFreezingPoint returns the sugar content of a solution in which ice
// and liquid rest side by side at the given temperature: the inverse of
// [FreezingPoint], and the strength of the brine in a tank that freezes.
//
// Range: 0 C down to the freezing point of 60 Brix, -11.9 C. Uncertainty: that
// of [FreezingPoint]. Check value: 10.0 Brix at -0.63 C (computed).
func BrixFromFreezingPoint(at units.Temperature) (units.Brix, error) {
	top := units.Brix(freezingBrix.High)
	c := at.Celsius()
	if low := units.Kelvin(freezing(top)).Celsius(); !(c >= low-limit.HairC && c <= limit.HairC) {
		return units.Brix(math.NaN()), &units.RangeError{Func: "sugar.BrixFromFreezingPoint", Arg: "at", What: "freezing point", Value: c, Low: low, High: 0, Unit: "C",
			Hint: "above 0 C no ice is left, and below the freezing point of 60 Brix sugar comes out too"}
	}
	at = units.Celsius(min(c, 0))
	y, _ := logIce(at.Kelvin())
	return min(Solute{}.fromLogActivity(y, at.Kelvin()), top), nil
}

// logIce returns the logarithm of the activity of ice at k kelvin against
// supercooled water, and its slope.
func logIce(k float64) (y, slope float64) {
	y = (-meltingHeat*(1/k-1/meltingK) + meltingCapacity*(meltingK/k-1-math.Log(meltingK/k))) / gasConstant
	slope = (meltingHeat + meltingCapacity*(k-meltingK)) / (gasConstant * k * k)
	return y, slope
}

// freezing returns the freezing point in kelvin.
func freezing(b units.Brix) float64 {
	x := Solute{}.moleFraction(b)
	k, _ := numeric.Newton(func(k float64) (float64, float64) { return thaw(x, k) }, coldest, meltingK, meltingK+100*math.Log1p(-x), 1e-12)
	return k
}

// thaw returns by how much the logarithm of the activity of ice is above that
// of the water beside mole fraction x of sugar, at k kelvin, and its slope with
// k. At the freezing point it is zero.
func thaw(x, k float64) (y, slope float64) {
	ice, slope := logIce(k)
	liquid, _ := logActivity(x, k)
	// Other than its ideal part, the logarithm of the activity goes with 1/k.
	return ice - liquid, slope + (liquid-math.Log1p(-x))/k
}
