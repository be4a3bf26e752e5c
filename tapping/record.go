package tapping

import (
	"math"

	"example.org/sapreckoner/internal/base/limit"
	"example.org/sapreckoner/units"
)

// Position is a place on the trunk: the angle round it, clockwise seen from
// above from a mark of your own, and the height above the ground. An angle
// stays with the wood while the trunk grows; a distance along the girth does
// not.
type Position struct {
	At     units.Angle
	Height units.Length
}

// PositionAlong returns the position at a distance along the girth, clockwise
// from the mark, as a tape shows it today.
//
// Range: girth 1 in to 5 pi m; along 0 to the girth; height 0 to 20 ft. Check
// value: 15 in along a girth of 60 in is a quarter turn.
func PositionAlong(along, girth, height units.Length) (Position, error) {
	const fn = "tapping.PositionAlong"
	if err := checkLength(fn, "girth", girth, units.Inch, maxGirth, girthHint); err != nil {
		return Position{}, err
	}
	if err := checkLength(fn, "along", along, 0, girth, "from the mark, clockwise seen from above"); err != nil {
		return Position{}, err
	}
	if err := checkLength(fn, "height", height, 0, maxReach, "above the ground"); err != nil {
		return Position{}, err
	}
	return Position{units.Angle(along/girth) * units.Turn, height}, nil
}

// Along returns the distance along the girth, clockwise from the mark.
func (p Position) Along(girth units.Length) units.Length {
	return units.Length(turn(p.At)) * girth
}

// turn returns the angle as a part of a turn, 0 to below 1.
func turn(a units.Angle) float64 {
	t := a.In(units.Turn)
	t -= math.Floor(t)
	if t >= 1 { // a tiny negative angle
		return 0
	}
	return t
}

// OldHole is a hole in the record of a trunk.
type OldHole struct {
	Year int
	Position
	Hole Hole
}

const (
	maxReach  = 20 * units.Foot
	maxRecord = 10000
	firstYear = -10000
	lastYear  = 10000
)

// checkRecord is the door for the record of a trunk.
func checkRecord(fn string, record []OldHole) error {
	if err := limit.WithinAs(fn, "record", "holes in the record", float64(len(record)), 0, maxRecord, 1, "", "holes that closed long ago can be left out"); err != nil {
		return err
	}
	for i := range record {
		h := &record[i]
		if h.Hole == (Hole{}) {
			return checkHole(fn, limit.Item("record", i, "Hole"), h.Hole)
		}
		if h.Year < firstYear || h.Year > lastYear {
			return limit.WithinAs(fn, limit.Item("record", i, "Year"), "year of a hole", float64(h.Year), firstYear, lastYear, 1, "", "the year it was drilled")
		}
		if err := checkPlace(fn, "record", i, "a hole", h.Position, "Position."); err != nil {
			return err
		}
	}
	return nil
}

// checkPlace is the door for an entry of a list of places, in the fields that
// lead to it. The names are made only when they are needed.
func checkPlace(fn, list string, i int, whose string, at Position, fields string) error {
	if at.At >= -mostAngle && at.At <= mostAngle && at.Height >= 0 && at.Height <= maxReach {
		return nil
	}
	if err := checkAngle(fn, limit.Item(list, i, fields+"At"), "angle of "+whose, at.At); err != nil {
		return err
	}
	return lengthAs(fn, limit.Item(list, i, fields+"Height"), "height of "+whose, at.Height, 0, maxReach, "above the ground")
}

// checkAngle is the door for angles: one turn either way, with room for the
// rounding of 360 degrees.
func checkAngle(fn, arg, what string, a units.Angle) error {
	return limit.WithinAs(fn, arg, what, a, -mostAngle, mostAngle, units.Degree, "deg", "round the trunk from the mark")
}

const mostAngle = units.Turn * (1 + 1e-13)
