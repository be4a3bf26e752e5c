package main

import (
	"errors"
	"math"

	"example.org/sapreckoner/tapping"
	"example.org/sapreckoner/units"
)

// A reason is why a trunk is left alone.
type reason uint8

// The reasons, in the order in which they are looked at.
const (
	tapped reason = iota
	notSure
	noMaple
	unhealthy
	slow
	silent
	small
)

var reasons = [...]string{
	notSure:   "species not sure: mark it while it is in leaf",
	noMaple:   "no maple: the guidelines speak of maples alone",
	unhealthy: "unhealthy",
	slow:      "slow growth: let it rest",
	silent:    "a size of which the guideline says nothing",
	small:     "small: the guideline gives it no tap",
}

// An answer is what is planned for a trunk.
type answer struct {
	why       reason
	taps      int
	low, high int // among all guidelines that cover it
	open      int // holes already drilled in the year
	next      []tapping.Position
	choose    int // holes to choose by the scars: no old hole is recorded
}

// short is how many holes find no place.
func (a *answer) short() int { return max(0, a.taps-a.open-a.choose-len(a.next)) }

// counts is the stand counted: all of it, and those trunks of it that a
// guideline is asked about.
type counts struct{ whole, asked tapping.StandCount }

// asksNo reports whether no guideline is asked about the trunk, and why.
func (st *stand) asksNo(t *trunk) reason {
	switch {
	case !t.sure:
		return notSure
	case t.Vigor() == tapping.Slow && st.given.slow == restSlow:
		return slow
	}
	return tapped
}

// plan counts the taps of every trunk and finds the places of their holes.
func (st *stand) plan() error {
	s := st.given
	for i := range st.trunks {
		t := &st.trunks[i]
		t.count(s.guideline, st.asksNo(t))
		if t.taps == 0 {
			continue
		}
		for _, h := range t.record {
			if h.Year == st.year {
				t.open++
			}
		}
		if t.open >= t.taps {
			continue
		}
		if len(t.record) == 0 {
			t.choose = t.taps
			continue
		}
		planner, err := st.planner(t)
		if err != nil {
			return err
		}
		t.next, err = planner.Next(t.record, st.year, t.taps-t.open)
		if err != nil && !errors.Is(err, tapping.ErrNoRoom) {
			return err
		}
	}
	return st.total()
}

// count asks the guidelines about a trunk.
func (t *trunk) count(g tapping.Guideline, no reason) {
	advice := t.Advise(g)
	t.low, t.high = advice.Range()
	switch {
	case no == notSure:
		t.why, t.low, t.high = no, 0, 0
	case !t.Species().IsMaple():
		t.why = noMaple
	case t.Vigor() == tapping.Unhealthy:
		t.why = unhealthy
	case no != tapped:
		t.why = no
	case !advice.Covered:
		t.why = silent
	case advice.Taps == 0:
		t.why = small
	default:
		t.taps = advice.Taps
	}
}

// hole is the hole that a trunk gets.
func (st *stand) hole(t *trunk) tapping.Hole {
	if t.Vigor() == tapping.Slow {
		return st.given.shallow
	}
	return st.given.hole
}

func (st *stand) planner(t *trunk) (tapping.Planner, error) {
	return tapping.NewPlanner(t.DBH(), st.year, t.growth, st.given.reach, st.hole(t), st.given.keep)
}

// total counts the stand by every guideline.
func (st *stand) total() (err error) {
	stems := make([]tapping.Trunk, len(st.trunks))
	asked := make([]tapping.Trunk, 0, len(st.trunks))
	whole, some := make([]tapping.Tree, 0, st.trees), make([]tapping.Tree, 0, st.trees)
	for i, t := range st.trunks {
		stems[i] = t.Trunk
		if t.stem == 1 {
			whole = append(whole, tapping.Tree{Label: t.label, Stems: stems[i : i+t.stems]})
			some = append(some, tapping.Tree{Label: t.label, Stems: asked[len(asked):]})
		}
		if st.asksNo(&t) == tapped {
			asked = append(asked, t.Trunk)
			tree := &some[len(some)-1]
			tree.Stems = tree.Stems[:len(tree.Stems)+1]
		}
	}
	if st.whole, err = tapping.CountStand(whole, st.given.guideline, st.given.class); err != nil {
		return err
	}
	st.asked, err = tapping.CountStand(some, st.given.guideline, st.given.class)
	return err
}

// nearest returns how far a place is from the nearest old hole, over the bark,
// and the year of that hole; NaN without a record.
func (t *trunk) nearest(at tapping.Position) (distance units.Length, year int) {
	girth := t.girth()
	distance = units.Length(math.NaN())
	for _, h := range t.record {
		side := math.Abs(float64(at.Along(girth) - h.Along(girth)))
		side = min(side, float64(girth)-side)
		// To a billionth of an inch, so that a distance that ends on half of its last
		// printed digit is printed alike by every processor.
		d := units.Inches(math.Round(units.Length(math.Hypot(side, float64(at.Height-h.Height))).Inches()*1e9) / 1e9)
		if !(distance <= d) {
			distance, year = d, h.Year
		}
	}
	return distance, year
}
