package boil

import (
	"math"

	"example.org/sapreckoner/sugar"
	"example.org/sapreckoner/units"
)

// SyrupPoint returns the temperature at which a solution of sucrose boils under a
// pressure: where to take syrup off.
//
// Give the pressure at the probe. Trust, in this order, that of water boiled
// today with the same probe at the same depth ([PressureFromWater]), of a
// barometer in the sugarhouse, of an altimeter setting ([StationPressure]), of
// the elevation alone ([PressureAt]); [PressureAtDepth] adds the syrup over the
// probe.
//
// Range: 0 to 92 Brix, 20 to 120 kPa. Uncertainty: that of [Rise] and of the
// pressure; 0.1 F is 0.26 Brix at 66. Finish by the thermometer to the last few
// degrees and by a hydrometer to the end.
//
// Source: as of [Water] and [Rise]. Check value: 105.2 C at 66.9 Brix and 105
// kPa (computed).
func SyrupPoint(brix units.Brix, pressure units.Pressure) (units.Temperature, error) {
	return syrupPointOf("boil.SyrupPoint", sugar.Solute{}, brix, pressure)
}

// SyrupPointOf is [SyrupPoint] for a sugar of which a part is
// inverted.
//
// Range: a share of 0 to 20 percent; the rest as there. Check value: 219.51 F at
// 65.9 Brix, 5 percent and 1 atm (computed).
func SyrupPointOf(solute sugar.Solute, brix units.Brix, pressure units.Pressure) (units.Temperature, error) {
	return syrupPointOf("boil.SyrupPointOf", solute, brix, pressure)
}

func syrupPointOf(fn string, s sugar.Solute, b units.Brix, p units.Pressure) (units.Temperature, error) {
	if err := checkRise(fn, s, b, p); err != nil {
		return units.Celsius(math.NaN()), err
	}
	return pointOf(fn, s, b, p)
}
