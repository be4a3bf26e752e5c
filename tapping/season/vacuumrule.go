package season

import (
	"example.org/sapreckoner/internal/base/limit"
	"example.org/sapreckoner/units"
)

// The gravity sap of a season and its ratio to syrup.
var (
	gravitySap = limit.Range{Arg: "gravity", What: "sap by gravity", Low: 0, High: 1e6, Unit: "m3",
		Below: "a volume is not negative", Above: "check its unit"}
	sapRatio = limit.Range{Arg: "ratio", What: "volumes of sap for one of syrup", Low: 1, High: 1000,
		Below: "sap boils down to less than its volume: 43 for sap of 2 Brix", Above: "43 for sap of 2 Brix"}
)

// FivePercentAnInch returns the most that the rule of 5 percent more sap for each
// inch of mercury may miss by, in syrup, where so much sap comes by gravity and
// so many volumes of sap make one of syrup ([example.org/sapreckoner/yield.Ratio]).
// It is negative: added up, the rule falls short of what was measured. The least
// is nothing, since it is the rule of one of the two sources of [VacuumGain].
// The Brix of the miss is 0.
//
// Range: 0 to 28 inHg at the hole, 0 to 1e6 m3, ratios of 1 to 1000.
// Uncertainty: holes differ more than the sources.
//
// Method: the low end of VacuumGain less its high end. Check value: 83 percent
// against 151 at 16.5 inHg, so that 434 US gal by gravity at 43.4 to one make up
// to 6.85 US gal of syrup more than promised (computed).
func FivePercentAnInch(vacuum units.Pressure, gravity units.Volume, ratio float64) (units.Miss, error) {
	const fn = "season.FivePercentAnInch"
	if err := checkVacuum(fn, vacuum); err != nil {
		return limit.NoMiss(), err
	}
	if err := gravitySap.Check(fn, float64(gravity)); err != nil {
		return limit.NoMiss(), err
	}
	if err := sapRatio.Check(fn, ratio); err != nil {
		return limit.NoMiss(), err
	}
	low, high := vacuumFactors(vacuum)
	return units.Miss{Syrup: gravity * units.Volume((low-high)/ratio)}, nil
}
