package tapping

import (
	"math"

	"example.org/sapreckoner/internal/base/limit"
	"example.org/sapreckoner/units"
)

// The published growth of tapped sugar maples at two thicknesses.
const (
	thinAt, thickAt = 10 * units.Inch, 18 * units.Inch
	thinGrew        = 1.8 * units.SquareInch
	thickGrew       = 3.5 * units.SquareInch
	thinNeeds       = 1.4 * units.SquareInch
	thickNeeds      = 2.6 * units.SquareInch
)

// UsualGrowth returns the radial growth a year of a healthy, dominant or
// codominant sugar maple under high-yield tapping, where nobody measured the
// trunk.
//
// Range: DBH 0 to 5 m. Between 10 and 18 in the basal area is a straight line
// between the two published means, 1.8 and 3.5 in2 a year; beyond them the ring is
// as wide as at the end. Uncertainty: 0.2 and 0.3 in2 of the means; trees differ
// far more, and 35 percent of those sampled grew less than [LeastGrowth]. Another
// species, site or crown grows otherwise: measure the girth again.
//
// Source: van den Berg and others, Forest Science 62 (2016) 107-114, abstract: 18
// sites in Vermont. Check value: 10 in grows 0.0570 in a year on the radius.
func UsualGrowth(dbh units.Length) (units.Length, error) {
	return publishedGrowth("tapping.UsualGrowth", dbh, thinGrew, thickGrew)
}

// LeastGrowth returns the radial growth a year that conservative tapping of a
// sugar maple asks for: at less, wood is spoiled faster than it grows.
//
// Range and source as of [UsualGrowth]: 1.4 in2 at 10 in, 2.6 at 18. The counts of
// taps behind them are not in the abstract. [TappingBand.GrowthNeeded] reckons it
// for holes and a band of one's own. Check value: 10 in needs 0.0444 in a year on
// the radius.
func LeastGrowth(dbh units.Length) (units.Length, error) {
	return publishedGrowth("tapping.LeastGrowth", dbh, thinNeeds, thickNeeds)
}

func publishedGrowth(fn string, dbh units.Length, thin, thick units.Area) (units.Length, error) {
	if err := diameterRange.CheckAs(fn, "dbh", float64(dbh)); err != nil {
		return nan[units.Length](), err
	}
	at := min(max(dbh, thinAt), thickAt)
	area := thin + (thick-thin)*units.Area((at-thinAt)/(thickAt-thinAt))
	g, err := RadialGrowth(at, area)
	if err != nil {
		return g, units.Under(fn, err)
	}
	return g, nil
}

// GrowthRead is the growth between two measurements of the girth.
type GrowthRead struct {
	PerYear units.Length // on the radius
	Doubt   units.Length // give or take so much, from the tape alone
}

// DoubtShare returns the doubt as a share of the growth, 100 % where it is as much
// or more: the growth is then not known.
func (g GrowthRead) DoubtShare() units.Share {
	if !(g.PerYear > g.Doubt) {
		return units.Whole
	}
	return units.FractionShare(float64(g.Doubt / g.PerYear))
}

// GrowthFromGirths returns the radial growth a year of a trunk whose girth was
// measured twice, so many years apart, with the same tape at the same height. The
// tape is off by so much each time, one way or the other.
//
// Range: girths 1 in to 5 pi m, the second no less than the first and no more than
// 1 in a year on the radius allows; years 1 to 200; tape 0 to 2 in. Bark that grows
// or falls off is in it.
//
// Formula: g = (second - first)/(2 pi years), give or take sqrt(2) tape/(2 pi
// years). Check value: 38 and 40 in, 5 years apart, make 0.0637 in; a quarter inch
// of tape leaves 0.0113 in of doubt, 18 %.
func GrowthFromGirths(first, second units.Length, years int, tape units.Length) (GrowthRead, error) {
	const fn = "tapping.GrowthFromGirths"
	none := GrowthRead{nan[units.Length](), nan[units.Length]()}
	if err := lengthAs(fn, "first", "first girth", first, units.Inch, maxGirth, girthHint); err != nil {
		return none, err
	}
	if err := limit.Count(fn, "years", years, 1, 200, "years between the two measurements"); err != nil {
		return none, err
	}
	round := 2 * math.Pi * units.Length(years)
	if err := lengthAs(fn, "second", "second girth", second, first, min(maxGirth, first+round*maxGrowth), "no trunk shrinks: measure again at the same height"); err != nil {
		return none, err
	}
	if err := lengthAs(fn, "tape", "error of the tape", tape, 0, 2*units.Inch, "a quarter inch is usual"); err != nil {
		return none, err
	}
	return GrowthRead{(second - first) / round, math.Sqrt2 * tape / round}, nil
}
