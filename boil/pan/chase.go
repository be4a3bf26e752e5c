package pan

import (
	"example.org/sapreckoner/internal/base/limit"
	"example.org/sapreckoner/units"
)

// Chased is what came of chasing the last sweet with water: see [Rig.Chase].
type Chased struct {
	Outcome
	Recovered units.Share // of the sugar that the pans held, as syrup drawn
}

// Chase feeds water behind the last sap of the season, so that the sweet in the
// pans comes off as syrup instead of being lost: held is what stands in the
// pans, and the fire burns until the water is gone and the first compartment is
// down to its safe depth.
//
// The last compartment still holds its fill, the last of Held: at the strength of
// the draw as long as there was enough behind it, and then it is drained as syrup
// too or finished in a pot.
//
// The compartments are well mixed, so that water also mixes with the sweet and
// the last of it takes ever more water: compare a few volumes. A pan in which
// water follows sap with less mixing does better. Never let the sweet end of the
// pan run low behind the last water: shut the valve, put the fire out and keep
// water at hand.
//
// Range: as of [Rig.Run]; the contents must hold sugar, and the rig must draw.
func (r Rig) Chase(held Contents, water units.Volume, at units.Temperature, pressure units.Pressure) (Chased, error) {
	const fn = "pan.Rig.Chase"
	if err := drawAt.Check(fn, float64(r.Draw.At)); err != nil {
		return Chased{}, err
	}
	if err := held.check(fn, "held", len(r.Compartments)); err != nil {
		return Chased{}, err
	}
	sweet := held.Sugar()
	if !(sweet > 0) {
		return Chased{}, &units.RangeError{Func: fn, Arg: "held", What: "sugar in the pans", Value: float64(sweet), Low: 0, High: liquidMass.High, Unit: "kg",
			Hint: "there is nothing to chase"}
	}
	o, err := r.follow(fn, Day{
		Pressure: pressure,
		Sap:      []Sap{{Volume: water, Temperature: at}},
		Start:    held,
		Out:      longestDay,
	}, 0, nil)
	if err != nil {
		return Chased{}, limit.Renamed(fn, err, "Day.Pressure", "pressure", "Day.Sap[0].Volume", "water", "Day.Sap[0].Temperature", "at")
	}
	return Chased{Outcome: o, Recovered: units.FractionShare(float64(o.Syrup.Sugar / sweet))}, nil
}
