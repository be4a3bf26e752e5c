package tapping

import (
	"math"

	"example.org/sapreckoner/units"
)

// Reach is the part of the trunk that a hole may lie in. Make it with
// [ReachByHand] or [ReachByDropline]; the zero Reach holds nothing.
type Reach struct {
	low, high units.Length
	fitting   Position     // where a dropline hangs from
	dropline  units.Length // 0 without one
}

// ReachByHand returns the belt all round the trunk between two heights: where
// a pail can hang, over the snow and under the shoulder.
//
// Range: heights 0 to 20 ft, the band at least 1 in high.
func ReachByHand(low, high units.Length) (Reach, error) {
	const fn = "tapping.ReachByHand"
	if err := checkLength(fn, "low", low, 0, maxReach-minBandHeight, "above the ground"); err != nil {
		return Reach{}, err
	}
	if err := checkLength(fn, "high", high, low+minBandHeight, maxReach, "above the low end"); err != nil {
		return Reach{}, err
	}
	return Reach{low: low, high: high}, nil
}

// ReachByDropline returns what a dropline reaches from its fitting on the line:
// sap falls, so the hole is no lower than the fitting, and no further than the
// dropline is long, measured over the bark.
//
// Range: dropline 1 in to 20 ft; 24 to 36 in is usual (University of Vermont
// Extension, Beginning Sugarmaking); fitting one turn either way, 0 to 20 ft
// high with the dropline above it.
func ReachByDropline(fitting Position, dropline units.Length) (Reach, error) {
	const fn = "tapping.ReachByDropline"
	if err := checkLength(fn, "dropline", dropline, minBandHeight, maxReach, "24 to 36 in is usual"); err != nil {
		return Reach{}, err
	}
	if err := lengthAs(fn, "Position.Height", "height of the fitting", fitting.Height, 0, max(0, maxReach-dropline), "where the dropline leaves the line"); err != nil {
		return Reach{}, err
	}
	if err := checkAngle(fn, "Position.At", "angle of the fitting", fitting.At); err != nil {
		return Reach{}, err
	}
	return Reach{fitting.Height, fitting.Height + dropline, fitting, dropline}, nil
}

// Heights returns the lowest and the highest place within reach.
func (r Reach) Heights() (low, high units.Length) { return r.low, r.high }

// at returns the heights within reach at a place round a trunk of the given
// girth; ok is false where there are none.
func (r Reach) at(t float64, girth units.Length) (s interval, ok bool) {
	s = interval{float64(r.low), float64(r.high)}
	if r.dropline > 0 {
		side := arc(t, turn(r.fitting.At), float64(girth))
		up := float64(r.dropline)*float64(r.dropline) - side*side
		if up < 0 {
			return s, false
		}
		s.high = s.low + math.Sqrt(up)
	}
	return s, s.high > s.low
}

// arc is the distance round the trunk between two places, each a part of a turn.
func arc(a, b, girth float64) float64 {
	d := math.Abs(a - b)
	return min(d, 1-d) * girth
}

// interval is a stretch of heights, in m.
type interval struct{ low, high float64 }
