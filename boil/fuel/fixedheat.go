package fuel

import (
	"example.org/sapreckoner/boil"
	"example.org/sapreckoner/internal/base/limit"
	"example.org/sapreckoner/units"
)

// FixedHeatPerUSGallon is the rule of thumb for the heat that must get into the
// liquid for a US gallon of syrup from sap of 2 Brix: 400,000 Btu. Source: Ohio
// State University Extension.
const FixedHeatPerUSGallon = 400000 * units.BtuIT

var intoPan = limit.Range{Arg: "into", What: "heat into the pan", Low: 0, High: 1e15, Unit: "J",
	Below: "a fire gives no less than no heat", Above: "check the unit of the heat"}

// FixedHeat returns what comes of reckoning syrup at [FixedHeatPerUSGallon] from
// the heat that gets into the pan, against what [boil.Heat] demands for the sap
// of the day: the syrup that the rule promises too much. Its Brix is 0: no boil
// is stopped by its fuel.
//
// Range: 0 to 1e15 J; a demand that is not empty. Uncertainty: 0.5 percent of the
// demand; that of the heat into the pan, which hangs on the efficiency, is far
// greater.
//
// Check value: 404,680 Btu are 1.0117 gal by the rule and 1 gal of 66.0 Brix from
// 2.0 at 40 F (computed).
func FixedHeat(into units.Energy, demand boil.HeatDemand) (units.Miss, error) {
	const fn = "fuel.FixedHeat"
	if err := intoPan.Check(fn, into.Joules()); err != nil {
		return limit.NoMiss(), err
	}
	gallon, err := demand.Per(units.USGallon, units.Celsius(20))
	if err != nil {
		return limit.NoMiss(), units.Under(fn, err)
	}
	promised := units.USGallons(float64(into / FixedHeatPerUSGallon))
	return units.Miss{Syrup: promised - units.USGallons(float64(into/gallon))}, nil
}
