package season

import (
	"slices"

	"example.org/sapreckoner/internal/base/limit"
	"example.org/sapreckoner/units"
)

// The published depths.
const (
	leastByDepth = 1 * units.Inch
	usualDepth   = 1.5 * units.Inch
	fullDepth    = 2 * units.Inch
	deepest      = 4 * units.Inch

	shallowShare = 0.63
	fullShare    = 1.25
)

// SapByDepth returns the sap of a hole of the given depth as a share of one of 1.5
// in: 63 % at 1 in, 125 % at 2, straight lines between them, and nothing more
// beyond. It was measured under vacuum; of gravity it is taken as the same.
//
// Range: depth 1 to 4 in. The source counts the depth of the hole; whether bark is
// in it was not seen. It is no advice: a deeper hole spoils more wood, see
// [example.org/sapreckoner/tapping.DepthAdvised].
//
// Source: University of Vermont, van den Berg and others, a study of three years.
// Check value: 1.75 in gives 112.5 %.
func SapByDepth(depth units.Length) (units.Share, error) {
	if err := limit.Within("season.SapByDepth", "depth", depth, leastByDepth, deepest, units.Inch, "in", "1.5 in is usual"); err != nil {
		return nan[units.Share](), err
	}
	switch {
	case depth < usualDepth:
		return units.FractionShare(1 - (1-shallowShare)*float64((usualDepth-depth)/(usualDepth-leastByDepth))), nil
	default:
		deeper := min(1, float64((depth-usualDepth)/(fullDepth-usualDepth)))
		return units.FractionShare(1 + (fullShare-1)*deeper), nil
	}
}

// CleaningFigure is what clean or new spouts and lines were found to bring: more
// sap, or what is left of that of new ones.
type CleaningFigure struct {
	What      string
	Low, High units.Share // equal where the source has one
	Left      bool        // it is a share of the sap of new gear, and not a gain
	Obtained  string
	Source    string
}

const cornell2011 = "Cornell, 2011 maple tubing and taphole sanitation research"

var cleaningFigures = []CleaningFigure{
	{"new spout and drop against a spout that stops backflow and an old drop", 21 * units.Percent, 21 * units.Percent, false, "read", cornell2011},
	{"new against older tubing at 22 inHg", 6 * units.Percent, 6 * units.Percent, false, "read", cornell2011},
	{"other contrasts, whose treatments were not seen", 31 * units.Percent, 133 * units.Percent, false, "read", cornell2011},
	{"tubing with nothing replaced for 5 years", 50 * units.Percent, 50 * units.Percent, true, "read, second-hand", "USDA SARE final report FNE11-725 (2013), citing University of Vermont"},
	{"white against black spouts", 7 * units.Percent, 7 * units.Percent, false, "read, second-hand", "Centre ACER, quoted by University of Vermont, 2018"},
}

// CleaningFigures returns the published figures. Of the effect of dirt 70 percent
// lies in the spout, 20 in the dropline, 10 in the lateral line and under 3 in the
// mainline (University of Vermont, transcript): so a new spout comes first. A
// dirty hole begins to slow midway through the season.
func CleaningFigures() []CleaningFigure { return slices.Clone(cleaningFigures) }
