package finish

import (
	"example.org/sapreckoner/internal/base/limit"
	"example.org/sapreckoner/internal/base/shelf"
	"example.org/sapreckoner/sugar"
	"example.org/sapreckoner/units"
)

var fixedRise = limit.Range{Arg: "rise", What: "rise above the boiling point of water", Low: 1.5, High: 10, Unit: "C deg",
	Below: "syrup is finished near 7 F above the boiling point of water",
	Above: "syrup is finished near 7 F above the boiling point of water, and candy by its own: boil water today and subtract"}

// FixedRise returns what comes of stopping a boil at a fixed rise above the
// boiling point of water, such as the 7 F of the rule of thumb, where so much
// syrup of the target was meant. For a fixed point of the scale, such as 219 F,
// give it less the boiling point of water under the pressure of the day.
//
// The rise to a strength shrinks with the pressure, so that a rule that was
// right at the sea boils on too long up a hill; but 7 F is under the syrup point
// of any law at the sea. The two errors offset each other near 5,200 ft for 66.0
// Brix, and nowhere that maples grow for 66.9.
//
// Range: rises of 1.5 to 10 C deg, 50 to 80 Brix, 20 to 120 kPa, 0 to 1e6 m3.
// Uncertainty: [boil.RiseDoubt], 0.44 Brix.
//
// Source: [boil.BrixFromRise]; the rule is common practice. Check values: 7 F at
// 1 atm stops 0.53 Brix short of 66.0, 7.2 F at 80 kPa 0.65 Brix past it
// (computed).
func FixedRise(rise units.TempDiff, target units.Brix, pressure units.Pressure, meant units.Volume) (units.Miss, error) {
	const fn = "finish.FixedRise"
	if err := fixedRise.Check(fn, rise.CelsiusDegrees()); err != nil {
		return limit.NoMiss(), err
	}
	if err := stopTarget.Check(fn, float64(target)); err != nil {
		return limit.NoMiss(), err
	}
	made, err := strength(fn, sugar.Solute{}, rise, pressure)
	if err != nil {
		return limit.NoMiss(), err
	}
	return shelf.Missed(fn, "meant", meant, target, made)
}
