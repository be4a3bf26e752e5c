package pan

import (
	"time"

	"example.org/sapreckoner/units"
)

// Comparison is one day on two rigs, or two days on one: what a preheater, a
// membrane, a hotter fire or a bigger pan would buy. Dry wood burns hotter, and
// less of it is needed: [example.org/sapreckoner/boil/fuel.Fuel.Needed] for the
// heat of either outcome.
type Comparison struct {
	Now, Then Outcome
}

// Compare boils through the same day on two rigs. Run each rig on its own day,
// and make the [Comparison] of the two outcomes, if the sap changes too, as by
// a membrane. Give the fire time enough for the slower rig if hours are to be
// compared: see [Outcome.End].
//
// Range and errors: as of [Rig.Run].
func Compare(d Day, now, then Rig) (Comparison, error) {
	const fn = "pan.Compare"
	a, err := now.follow(fn, d, 0, nil)
	if err != nil {
		return Comparison{}, err
	}
	b, err := then.follow(fn, d, 0, nil)
	if err != nil {
		return Comparison{}, err
	}
	return Comparison{Now: a, Then: b}, nil
}

// TimeSaved returns by how much less the fire burns.
func (c Comparison) TimeSaved() time.Duration { return c.Now.Burned - c.Then.Burned }

// HeatSaved returns how much less heat the liquid takes up. As fuel it is that
// over efficiency and heat value, each of its own rig.
func (c Comparison) HeatSaved() units.Energy { return c.Now.Heat - c.Then.Heat }

// SugarGained returns how much more sugar is drawn as syrup.
func (c Comparison) SugarGained() units.Mass { return c.Then.Syrup.Sugar - c.Now.Syrup.Sugar }

// BacklogCut returns by how much less sap waits in the tank at the worst time.
func (c Comparison) BacklogCut() units.Mass { return c.Now.Backlog - c.Then.Backlog }
