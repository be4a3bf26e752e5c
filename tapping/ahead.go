package tapping

import (
	"example.org/sapreckoner/internal/base/limit"
	"example.org/sapreckoner/units"
)

// AheadPlan is how a trunk is tapped in years to come.
type AheadPlan struct {
	Guideline Guideline
	Growth    units.Length // on the radius a year, 0 to 1 in; see [UsualGrowth] and [GrowthFromGirths]
	Years     int          // seasons from this one on, 1 to 100
	Before    int          // seasons that it was tapped before this one, 0 to 200
	Hole      Hole
	Band      units.Length // height of the belt that the holes are spread over, 1 in to 20 ft
}

// TrunkAhead is what a trunk bears in years to come.
type TrunkAhead struct {
	Taps []int // of each season, this one first; none where the guideline is silent
	// Next is in how many years the trunk takes one more tap than now; 0 where it
	// does not within the years.
	Next   int
	DBH    units.Length // in the last season
	Least  units.Length // growth that tapping asks for by what is published
	Enough bool         // the growth is that, or more
	// Clear is the share of the belt that conducts sap after the last season.
	Clear units.Share
}

// Ahead looks at a trunk for so many seasons: how many taps it bears in each while
// it grows, whether it grows enough for them, and what clear wood is left.
//
// The wood is that of [TappingBand]: each season stains wood by its own number of
// holes, over which new wood grows, in a belt of the last season's thickness; the
// seasons before this one had as many holes as this one. [StainRatio] leaves a
// fifth of doubt in what is stained. The growth stays as it is, though tapping
// itself slows trees: rings of 8 maples were half as wide in later years of tapping
// as in the first (McNulty and others 2025, abstract). Whether it is enough is
// asked by [LeastGrowth] of today's thickness, for sugar maple and taken for the
// others.
//
// Errors: a guideline that is silent about the trunk now is a [*NotCoveredError];
// where it falls silent later, the taps stay. Check value: 10 in that grows 0.05 in
// on the radius is 11.9 in thick in the twentieth season.
func (t Trunk) Ahead(p AheadPlan) (TrunkAhead, error) {
	const fn = "tapping.Trunk.Ahead"
	if err := lengthAs(fn, "AheadPlan.Growth", "growth", p.Growth, 0, maxGrowth, growthHint); err != nil {
		return TrunkAhead{}, err
	}
	for _, n := range []struct {
		arg, what string
		v, low    int
		high      int
	}{{"AheadPlan.Years", "years ahead", p.Years, 1, 100}, {"AheadPlan.Before", "years tapped before", p.Before, 0, 200}} {
		if err := limit.InAs(fn, n.arg, n.what, float64(n.v), float64(n.low), float64(n.high), "", "seasons"); err != nil {
			return TrunkAhead{}, err
		}
	}
	if err := checkHole(fn, "AheadPlan.Hole", p.Hole); err != nil {
		return TrunkAhead{}, err
	}
	if err := lengthAs(fn, "AheadPlan.Band", "height of the belt", p.Band, minBandHeight, maxBandHeight, "the belt that the holes are spread over"); err != nil {
		return TrunkAhead{}, err
	}
	now, err := t.Taps(p.Guideline)
	if err != nil {
		return TrunkAhead{}, err
	}
	least, err := LeastGrowth(t.dbh)
	if err != nil {
		return TrunkAhead{}, units.Under(fn, err)
	}
	a := TrunkAhead{Taps: make([]int, p.Years), Least: least, Enough: limit.Holds(p.Growth, least, units.Inch)}
	taps := now
	for year := range a.Taps {
		grown := t
		grown.dbh = min(t.dbh+2*p.Growth*units.Length(year), maxDiameter)
		if n, ok := grown.taps(p.Guideline); ok {
			taps = n
		}
		if a.Taps[year] = taps; taps > now && a.Next == 0 {
			a.Next = year
		}
		a.DBH = grown.dbh
	}
	if a.Clear, err = a.clear(p); err != nil {
		return TrunkAhead{}, units.Under(fn, err)
	}
	return a, nil
}

// clear sums what the holes of all seasons still stain after the last.
func (a *TrunkAhead) clear(p AheadPlan) (units.Share, error) {
	last := len(a.Taps) - 1
	holes := 0.0 // open to the bit, the last season's counted whole
	r := float64(p.Growth / p.Hole.depth)
	for year, taps := range a.Taps {
		holes += float64(taps) * max(0, 1-r*float64(last-year))
	}
	holes += float64(a.Taps[0]) * stainSum(r, last+1, last+1+p.Before)
	if !(holes > 0) {
		return units.Whole, nil
	}
	one, err := NewTappingBand(a.DBH, p.Band, p.Hole, 1)
	if err != nil {
		return 0, err
	}
	return share(holes * one.perYear()), nil
}
