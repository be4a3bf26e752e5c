package sugar

import (
	"fmt"
	"math"

	"example.org/sapreckoner/units"
)

// A Separation is a lot parted in two: what is kept, stronger than before, and
// what was taken away, water or nearly so.
type Separation struct {
	Concentrate Lot
	Removed     Lot
}

// Concentrate returns how much water a lot must lose to come up to the target,
// over the fire or otherwise, and what is left. All the sugar stays. Both lots
// carry the temperature of the lot, so that their volumes compare with its.
//
// Range: target 0 to 85 Brix. A target below the lot's strength, a lot without
// sugar, or an empty one, is an [*InfeasibleError].
//
// Method: mass balance, water = m (1 - B/B_target). Check value: 10 US gal of
// 64.5 Brix to 66.9 lose 3.9325 lb of water and leave 9.53474 US gal, all at 20
// C (computed).
func Concentrate(lot Lot, target units.Brix) (Separation, error) {
	const fn = "sugar.Concentrate"
	if err := checkThickening(fn, "target", lot, target); err != nil {
		return Separation{}, err
	}
	if lot.has(target) {
		return Separation{Concentrate: lot}, nil // it is there already
	}
	return part(lot, lot.mass-target.Of(lot.sugar), 0), nil
}

// checkThickening returns an error unless taking water away can bring the lot
// to the target.
func checkThickening(fn, arg string, l Lot, target units.Brix) error {
	if err := checkBrix(fn, arg, "target", target); err != nil {
		return err
	}
	switch {
	case l.Empty():
		return nothing(fn)
	case l.sugar == 0 && target > 0:
		return &InfeasibleError{Func: fn, Why: "there is no sugar in the lot", Hint: "water boils away without becoming syrup"}
	case target < l.Brix() && !l.has(target):
		return &InfeasibleError{Func: fn,
			Why:  fmt.Sprintf("the lot has %s Brix, more than the target of %s", strength(l.Brix()), strength(target)),
			Hint: "thin it"}
	}
	return nil
}

// strength prints a checked strength for a message. The sign of zero tells
// nothing.
func strength(b units.Brix) string { return fmt.Sprintf("%.4g", max(float64(b), 0)) }

// part takes a mass of strength b away from a lot, unchecked. What is kept is
// the rest to the last bit.
func part(l Lot, removed units.Mass, b units.Brix) Separation {
	r := lot(removed, b, l.at)
	return Separation{Concentrate: parts(l.mass-r.mass, l.sugar-r.sugar, l.at), Removed: r}
}

// EvaporationSaved returns the share of the evaporation from sap to syrup that
// the separation did before the fire was lit. Of 2 Brix sap brought to 8 Brix,
// 75 percent of the water is gone, but 77.3 percent of the evaporation: the
// rest of the water stays in the syrup.
//
// Range: syrup from the strength of the concentrate to 85 Brix; thinner syrup,
// sap that was syrup before, or a separation of nothing, is an
// [*InfeasibleError]. Sugar lost with what was removed counts as syrup not
// made, not as evaporation saved.
//
// Method: mass balance, 1 - water to boil off the concentrate / water to boil
// off the same sugar's worth of sap. Check values: 77.3 percent for 2 to 8 and
// 51.6 for 2 to 4 Brix, to syrup of 66 (computed).
func (s Separation) EvaporationSaved(syrup units.Brix) (units.Share, error) {
	const fn = "sugar.Separation.EvaporationSaved"
	none := units.Share(math.NaN())
	if err := checkThickening(fn, "syrup", s.Concentrate, syrup); err != nil {
		return none, err
	}
	made := syrup.Of(s.Concentrate.sugar)
	left := s.Concentrate.mass - made
	if s.Concentrate.has(syrup) { // nothing is left to boil off
		left, made = 0, s.Concentrate.mass
	}
	// The same sugar in the sap as it came.
	sap := units.Mass(float64(s.Concentrate.mass+s.Removed.mass) *
		float64(s.Concentrate.sugar) / float64(s.Concentrate.sugar+s.Removed.sugar))
	water := sap - made
	if !(water > 1e-9*sap) { // 1e-9: a difference of two sums
		return none, &InfeasibleError{Func: fn, Why: "the sap was no thinner than the syrup", Hint: "it takes no fire: check the strength of the syrup"}
	}
	return units.FractionShare(1 - float64(left)/float64(water)), nil
}
