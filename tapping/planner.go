package tapping

import (
	"errors"
	"fmt"
	"math"

	"example.org/sapreckoner/internal/base/limit"
	"example.org/sapreckoner/units"
)

// ErrNoRoom says that no place within reach keeps the distances this year: rest
// the trunk, take fewer taps, or reach further.
var ErrNoRoom = errors.New("no clear place within reach: rest the trunk, take fewer taps or reach further")

// A roomError tells what finds no room, and unwraps to [ErrNoRoom].
type roomError struct{ fn, why string }

// Error tells the function and the reason.
func (e *roomError) Error() string { return e.fn + ": " + e.Text(units.Both) }

// Text tells the reason to a person.
func (e *roomError) Text(units.System) string { return e.why + ": " + ErrNoRoom.Error() }

// Unwrap returns [ErrNoRoom].
func (e *roomError) Unwrap() error { return ErrNoRoom }

// Distances is how far a new hole keeps from old ones.
type Distances struct {
	// Side and Up keep it from the holes of the year before: to the side at any
	// height, and up or down too within Open to the side.
	Side, Up units.Length
	// Open keeps it from the open holes of the same year, to the side.
	Open units.Length
	// Column is how far the stain behind a hole is taken to reach up and down.
	// Over that height, a hole keeps Side from every old hole whose stain the
	// bit would still reach.
	Column units.Length
	// Step is how far the pattern moves on round the trunk from year to year.
	Step units.Length
}

// DefaultDistances returns the distances of [NewPlanner] in ordinary use: 2 in
// to the side and 6 in up or down from last year's hole (the near ends of 2-4
// and 6-12 in, University of Vermont, Quick tips to achieve higher sap yield,
// 2024), 6 in from any open hole (University of Vermont Extension, Beginning
// Sugarmaking), steps of 3 in over and 6 in up or down by turns (Ohio State
// University Extension). The stain is taken to reach 12 in up and down: the
// far end of that advice, and our own reading of it.
func DefaultDistances() Distances {
	return Distances{
		Side: 2 * units.Inch, Up: 6 * units.Inch,
		Open: 6 * units.Inch, Column: 12 * units.Inch, Step: 3 * units.Inch,
	}
}

// Planner places holes on one trunk so that they keep their distances from the
// old ones and stay out of stained wood.
//
// A stain is out of the way once new wood over it is as thick as the new hole
// is deep: after h/g years. Make one with [NewPlanner]; the zero Planner finds
// no room.
type Planner struct {
	diameter units.Length // in year
	year     int
	growth   units.Length
	reach    Reach
	hole     Hole
	keep     Distances
}

// NewPlanner returns a planner for a trunk that has the given diameter in the
// given year and grows by that much a year on the radius.
//
// Range: diameter twice the hole's depth to 5 m; year -10000 to 10000; growth 0
// to 1 in; with 0 a stain never gets out of the way, which is what to say when
// the growth is not known. Reach and hole must have been made; distances Side
// and Step 0.1 in to 20 ft, the others 0 to 20 ft, Column no less than Up, Open
// no less than Side.
func NewPlanner(diameter units.Length, year int, growth units.Length, reach Reach, hole Hole, keep Distances) (Planner, error) {
	const fn = "tapping.NewPlanner"
	if err := checkHole(fn, "hole", hole); err != nil {
		return Planner{}, err
	}
	if err := checkLength(fn, "diameter", diameter, 2*hole.depth, maxDiameter, "the hole must fit into half the trunk"); err != nil {
		return Planner{}, err
	}
	if err := limit.Count(fn, "year", year, firstYear, lastYear, "the year of the diameter"); err != nil {
		return Planner{}, err
	}
	if err := checkLength(fn, "growth", growth, 0, maxGrowth, growthHint); err != nil {
		return Planner{}, err
	}
	if reach == (Reach{}) {
		return Planner{}, checkLength(fn, "reach", 0, minBandHeight, maxReach, "make the reach first, by hand or by dropline")
	}
	const least, hint = units.Inch / 10, "the default distances are the published ones"
	for _, d := range []struct {
		arg, what string
		v, low    units.Length
	}{
		{"Distances.Side", "distance to the side", keep.Side, least},
		{"Distances.Up", "distance up or down", keep.Up, 0},
		{"Distances.Open", "distance from open holes", keep.Open, keep.Side},
		{"Distances.Column", "reach of the stain", keep.Column, keep.Up},
		{"Distances.Step", "step of the pattern", keep.Step, least},
	} {
		if err := lengthAs(fn, d.arg, d.what, d.v, d.low, maxReach, hint); err != nil {
			return Planner{}, err
		}
	}
	return Planner{diameter, year, growth, reach, hole, keep}, nil
}

// girth returns the girth in a year. Before the planner's own year it stands
// still: the past is not made narrower than the record.
func (p Planner) girth(year int) units.Length {
	grown := 2 * p.growth * units.Length(max(0, year-p.year))
	return math.Pi * (p.diameter + grown)
}

// inReach reports whether the bit of a hole drilled in year would meet the
// stain of a hole of the year old.
func (p Planner) inReach(old, year int) bool {
	age := float64(year - old)
	return age <= 0 || age*float64(p.growth) < float64(p.hole.depth)
}

// Check returns nil where a hole at the place in the year keeps every distance
// from the record, and the reason where it does not. Holes of later years than
// the given one count as open.
//
// Range: record up to 10000 holes, each within one turn and 0 to 20 ft high,
// with its Hole; the place within one turn. A place out of reach or too near
// gives an error that wraps [ErrNoRoom].
func (p Planner) Check(record []OldHole, year int, at Position) error {
	const fn = "tapping.Planner.Check"
	if err := p.checkUse(fn, record, year); err != nil {
		return err
	}
	if err := checkAngle(fn, "Position.At", "angle of the place", at.At); err != nil {
		return err
	}
	if math.IsNaN(float64(at.Height)) {
		return lengthAs(fn, "Position.Height", "height of the place", at.Height, 0, maxReach, "above the ground")
	}
	t, z := turn(at.At), float64(at.Height)
	girth := p.girth(year)
	if s, ok := p.reach.at(t, girth); !ok || !(z >= s.low-slack && z <= s.high+slack) {
		return &roomError{fn, at.Height.Text(units.Inch, 1) + " high is out of reach there"}
	}
	for _, old := range record {
		if s, ok := p.forbidden(spotOf(old), year, t, float64(girth)); ok && z > s.low+slack && z < s.high-slack {
			return &roomError{fn, fmt.Sprintf("too near the hole of %d at %s round and %s high", old.Year,
				old.At.Text(units.Degree, 0), old.Height.Text(units.Inch, 1))}
		}
	}
	return nil
}

// slack is a rounding error of lengths, in m.
const slack = 1e-9

// forbidden returns the heights at the place t round the trunk that the old
// hole keeps a new one out of; ok is false where there are none.
func (p Planner) forbidden(old spot, year int, t, girth float64) (s interval, ok bool) {
	if !p.inReach(old.year, year) {
		return interval{}, false
	}
	side := arc(t, old.t, girth)
	everywhere := interval{math.Inf(-1), math.Inf(1)}
	around := func(d units.Length) interval {
		return interval{old.z - float64(d), old.z + float64(d)}
	}
	near := side < float64(p.keep.Side)-slack
	switch age := year - old.year; {
	case age <= 0:
		return everywhere, side < float64(p.keep.Open)-slack
	case age == 1 && near:
		return everywhere, true
	case age == 1:
		return around(p.keep.Up), side < float64(p.keep.Open)-slack
	default:
		return around(p.keep.Column), near
	}
}

// Next returns where to drill the given number of holes this year. The first
// goes on from last year's hole by the pattern, a step over and up or down by
// turns; where the pattern is blocked, it looks all round. Without a record the
// holes stand evenly round the trunk. It spreads the holes of a year: it takes
// the best spread that the distances allow where the pattern keeps less than
// 0.8 of that, round the trunk and from the open holes of the record.
//
// Range: taps 1 to 10; count them with a [Guideline] first; year -10000 to
// 10000. Record as in [Planner.Check]. Where there is no room for all, it
// returns the places that it finds one after the other, with [ErrNoRoom].
func (p Planner) Next(record []OldHole, year, taps int) ([]Position, error) {
	const fn = "tapping.Planner.Next"
	if err := p.checkUse(fn, record, year); err != nil {
		return nil, err
	}
	if err := limit.Count(fn, "taps", taps, 1, maxTaps, "holes this year"); err != nil {
		return nil, err
	}
	w := p.work(record, year)
	w.begin(year)
	out := w.drill(year, taps)
	if len(out) < taps {
		return out, &roomError{fn, fmt.Sprintf("hole %d of %d in %d", len(out)+1, taps, year)}
	}
	return out, nil
}

// Plan is where to drill on one trunk over many years.
type Plan struct {
	Holes   []OldHole // by year
	Resting []int     // years with fewer holes than were asked for, for want of room
}

// Plan returns where to drill in each of so many years from the given one on,
// as [Planner.Next] would year after year while the trunk grows. It does not
// add taps when the trunk outgrows its class: look at the guideline anew when
// it does.
//
// Holes of the record from that year on keep their distances, but the pattern
// does not go on from them: it does in Next, once they are last year's.
//
// Range: years 1 to 1000. The rest as in [Planner.Next], but years without room
// are no error: they are told in Resting.
func (p Planner) Plan(record []OldHole, from, years, taps int) (Plan, error) {
	const fn, most = "tapping.Planner.Plan", 1000
	if err := p.checkUseAs(fn, "from", record, from); err != nil {
		return Plan{}, err
	}
	if err := limit.Count(fn, "years", years, 1, most, "years to plan"); err != nil {
		return Plan{}, err
	}
	if err := limit.WithinAs(fn, "years", "last year", float64(from+years-1), firstYear, lastYear, 1, "", "years to plan"); err != nil {
		return Plan{}, err
	}
	if err := limit.Count(fn, "taps", taps, 1, maxTaps, "holes a year"); err != nil {
		return Plan{}, err
	}
	w := p.work(record, from)
	plan := Plan{Holes: make([]OldHole, 0, years*taps)}
	closed := false
	for year := from; year < from+years; year++ {
		if closed {
			plan.Resting = append(plan.Resting, year)
			continue
		}
		w.begin(year)
		places := w.drill(year, taps)
		for _, at := range places {
			plan.Holes = append(plan.Holes, OldHole{year, at, p.hole})
		}
		if len(places) < taps {
			plan.Resting = append(plan.Resting, year)
			closed = w.closed()
		}
	}
	return plan, nil
}

func (p Planner) checkUse(fn string, record []OldHole, year int) error {
	return p.checkUseAs(fn, "year", record, year)
}

func (p Planner) checkUseAs(fn, arg string, record []OldHole, year int) error {
	if p.diameter == 0 {
		return &roomError{fn, "make the planner first"}
	}
	if err := limit.WithinAs(fn, arg, "year", float64(year), firstYear, lastYear, 1, "", "the year to drill in"); err != nil {
		return err
	}
	return checkRecord(fn, record)
}
