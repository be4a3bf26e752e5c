package boil

import (
	"math"

	"example.org/sapreckoner/sugar"
	"example.org/sapreckoner/units"
)

// What the rise is uncertain by, as a part of itself: 0.1 K of the 4.199 K at
// 66.9 Brix and 1 atm. See [RiseDoubt] for what stands behind it.
const riseShare = 0.1 / 4.199

// RiseDoubt returns the standard uncertainty of [Rise] for pure sucrose: a share
// of the rise itself, 2.4 percent, through 0.1 K at 66.9 Brix and 1 atm. It is
// common to all readings of a thermometer, and more of them do not narrow it; a
// rig's own past stops do: see [example.org/sapreckoner/boil/finish.LearnOffset].
//
// Range: that of [Rise]; above 85 Brix nothing that was compared reaches.
//
// Source: a second activity model of 2006 gives 4.098 K at 66 Brix and 1 atm,
// where [Rise] gives 4.000, 2.4 percent more (from memory); the ratio of vapor
// pressures leaves out that steam is no perfect gas, 0.06 K at syrup (from
// memory); published stops lie 0.03 to 0.11 K below (read and from memory, see
// [example.org/sapreckoner/boil/finish.SyrupFinishes]); thin solutions are
// within 2.3 percent of isopiestic measurements (from memory). None of the parts
// is known to be the right one, and so no correction is made. Check value: 0.18
// F, 0.43 Brix, at 66.9 Brix and 1 atm (computed).
//
// Cites activity-2006, robinson-stokes.
func RiseDoubt(brix units.Brix, pressure units.Pressure) (units.TempDiff, error) {
	rise, err := riseOf("boil.RiseDoubt", sugar.Solute{}, brix, pressure)
	if err != nil {
		return units.TempDiff(math.NaN()), err
	}
	return riseShare * rise, nil
}
