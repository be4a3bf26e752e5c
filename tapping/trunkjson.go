package tapping

import (
	"encoding/json"
	"errors"
	"fmt"

	"example.org/sapreckoner/internal/base/object"
	"example.org/sapreckoner/units"
)

// trunkJSON is a trunk as JSON holds it.
type trunkJSON struct {
	DBH     units.Length `json:"dbh"`
	Species Species      `json:"species"`
	Vigor   Vigor        `json:"vigor"`
}

// String prints the trunk for a person, "sugar maple of 20 in (50.8 cm), healthy".
func (t Trunk) String() string { return t.Text(units.Both) }

// Text prints the trunk in one system of units, or both.
func (t Trunk) Text(in units.System) string {
	s := fmt.Sprintf("%v of %s", t.species, t.dbh.TextIn(in, 3))
	if t.vigor != NotJudged {
		s += ", " + t.vigor.String()
	}
	return s
}

// MarshalJSON gives an object with dbh, species and vigor.
func (t Trunk) MarshalJSON() ([]byte, error) {
	return json.Marshal(trunkJSON{t.dbh, t.species, t.vigor})
}

// UnmarshalJSON reads what MarshalJSON gives. It refuses what [NewTrunk]
// refuses, and missing and unknown fields; the trunk is then left alone.
func (t *Trunk) UnmarshalJSON(b []byte) error {
	const fn = "tapping.Trunk.UnmarshalJSON"
	in := trunkJSON{DBH: unset}
	if err := object.Whole(fn, b, &in); err != nil {
		return err
	}
	made, err := NewTrunk(in.DBH, in.Species, in.Vigor)
	if err != nil {
		return units.Under(fn, err)
	}
	*t = made
	return nil
}

// reachJSON is a reach as JSON holds it: low and high by hand, the others by
// dropline.
type reachJSON struct {
	Low           *units.Length `json:"low,omitempty"`
	High          *units.Length `json:"high,omitempty"`
	FittingAngle  *units.Angle  `json:"fitting_angle,omitempty"`
	FittingHeight *units.Length `json:"fitting_height,omitempty"`
	Dropline      *units.Length `json:"dropline,omitempty"`
}

// String prints the reach for a person, "12 in (30.5 cm) to 60 in (152 cm) high".
func (r Reach) String() string { return r.Text(units.Both) }

// Text prints the reach in one system of units, or both.
func (r Reach) Text(in units.System) string {
	switch {
	case r == (Reach{}):
		return "out of reach"
	case r.dropline > 0:
		return fmt.Sprintf("a dropline of %s from %s high at %s", r.dropline.TextIn(in, 3), r.low.TextIn(in, 3), r.fitting.At.Text(units.Degree, 0))
	}
	return fmt.Sprintf("%s to %s high", r.low.TextIn(in, 3), r.high.TextIn(in, 3))
}

// MarshalJSON gives an object with low and high of a reach by hand, and with
// fitting_angle, fitting_height and dropline of one by dropline.
func (r Reach) MarshalJSON() ([]byte, error) {
	if r.dropline > 0 {
		return json.Marshal(reachJSON{FittingAngle: &r.fitting.At, FittingHeight: &r.fitting.Height, Dropline: &r.dropline})
	}
	return json.Marshal(reachJSON{Low: &r.low, High: &r.high})
}

// UnmarshalJSON reads what MarshalJSON gives. It refuses what [ReachByHand] and
// [ReachByDropline] refuse, missing and unknown fields, and the fields of both
// together; the reach is then left alone.
func (r *Reach) UnmarshalJSON(b []byte) error {
	const fn = "tapping.Reach.UnmarshalJSON"
	var in reachJSON
	if err := object.Read(fn, b, &in); err != nil {
		return err
	}
	var (
		made Reach
		err  error
	)
	switch byHand, byDropline := in.Low != nil || in.High != nil, in.FittingAngle != nil || in.FittingHeight != nil || in.Dropline != nil; {
	case byHand && byDropline:
		return &object.Error{Func: fn, Err: errBothReaches}
	case byDropline:
		made, err = ReachByDropline(Position{valueOf(in.FittingAngle), valueOf(in.FittingHeight)}, valueOf(in.Dropline))
	default:
		low, high := valueOf(in.Low), valueOf(in.High)
		if low == 0 && high == 0 {
			break
		}
		made, err = ReachByHand(low, high)
	}
	if err != nil {
		return units.Under(fn, err)
	}
	*r = made
	return nil
}

var errBothReaches = errors.New("a reach is by hand or by dropline, not both")

// valueOf is what was written, or NaN.
func valueOf[Q ~float64](p *Q) Q {
	if p == nil {
		return nan[Q]()
	}
	return *p
}

// String tells what the planner is for.
func (p Planner) String() string {
	if p == (Planner{}) {
		return "no room"
	}
	return fmt.Sprintf("planner for a trunk of %s in %d", p.diameter.TextIn(units.Both, 3), p.year)
}

const plannerParts = "encode the diameter, the year, the growth, the reach, the hole and the distances that it is made of"

// MarshalJSON refuses: a planner is made of what can be encoded.
func (p Planner) MarshalJSON() ([]byte, error) {
	return nil, object.Refuse("tapping.Planner.MarshalJSON", plannerParts)
}

// UnmarshalJSON refuses, as MarshalJSON does.
func (p *Planner) UnmarshalJSON([]byte) error {
	return object.Refuse("tapping.Planner.UnmarshalJSON", plannerParts)
}
