package boil

import (
	"math"

	"example.org/sapreckoner/sugar"
	"example.org/sapreckoner/units"
)

// SyrupPoint returns the temperature at which a solution of b Brix of sucrose
// boils under pressure p: where to take syrup off.
//
// The pressure is that at the probe. In order of trust: of water boiled today
// with the same probe at the same depth ([PressureFromWater]), of a barometer in
// the sugarhouse, of an altimeter setting ([StationPressure]), of the elevation
// alone ([PressureAt]); [PressureAtDepth] adds the syrup over the probe.
//
// Range: 0 to 92 Brix, 20 to 120 kPa. Uncertainty: that of [Rise] and of the
// pressure; 0.1 F is 0.26 Brix at 66. Finish by the thermometer to the last few
// degrees and by a hydrometer to the end. Outside the range the answer is NaN
// and a [units.RangeError].
//
// Source: as of [Water] and [Rise]. Check value: 105.2 C at 66.9 Brix and 105
// kPa (computed).
func SyrupPoint(b units.Brix, p units.Pressure) (units.Temperature, error) {
	return syrupPointOf("boil.SyrupPoint", sugar.Solute{}, b, p)
}

// SyrupPointOf is the function [SyrupPoint] for a sugar of which a part is
// inverted.
//
// Range: a share of 0 to 20 percent; the rest as there. Check value: 219.51 F at
// 65.9 Brix, 5 percent and 1 atm (computed).
func SyrupPointOf(s sugar.Solute, b units.Brix, p units.Pressure) (units.Temperature, error) {
	return syrupPointOf("boil.SyrupPointOf", s, b, p)
}

func syrupPointOf(fn string, s sugar.Solute, b units.Brix, p units.Pressure) (units.Temperature, error) {
	if err := checkRise(fn, s, b, p); err != nil {
		return units.Celsius(math.NaN()), err
	}
	return pointOf(fn, s, b, p)
}
