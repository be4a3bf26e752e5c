package tapping

import (
	"fmt"

	"example.org/sapreckoner/units"
)

// Answer is what one guideline says about a trunk.
type Answer struct {
	Guideline Guideline
	Taps      int
	Covered   bool // false where the guideline is silent; Taps is then 0
}

// Advice is the number of taps for one trunk, with the guideline that gave it
// and what the other published guidelines say, so that a page can show the
// range.
type Advice struct {
	Answer
	Others []Answer
	Notes  []string // what to look at before drilling
}

// Range returns the least and the greatest count among the guidelines that
// cover the trunk, 0 and 0 where none does.
func (a Advice) Range() (low, high int) {
	covered := false
	for _, o := range append([]Answer{a.Answer}, a.Others...) {
		switch {
		case !o.Covered:
		case !covered:
			low, high, covered = o.Taps, o.Taps, true
		default:
			low, high = min(low, o.Taps), max(high, o.Taps)
		}
	}
	return low, high
}

// Taps returns how many taps the trunk can bear by the guideline. An unhealthy
// trunk bears none, and a slow one no more than one.
//
// Where the guideline is silent, of the diameter or the species, it returns 0
// and a [*NotCoveredError].
//
// Check value: a healthy sugar maple of 20 in bears 2 by the default guideline,
// a slow one 1.
func (t Trunk) Taps(g Guideline) (int, error) {
	if !t.species.IsMaple() {
		return 0, &NotCoveredError{g.ID(), t.dbh, "it speaks of maples, not of " + t.species.String()}
	}
	if n, ok := t.taps(g); ok {
		return n, nil
	}
	return 0, &NotCoveredError{g.ID(), t.dbh, g.silence()}
}

func (t Trunk) taps(g Guideline) (int, bool) { return t.bear(g.taps(t.dbh)) }

// bear turns what a guideline says of a healthy maple into what it says of this
// trunk.
func (t Trunk) bear(n int, ok bool) (int, bool) {
	if !ok || !t.species.IsMaple() {
		return 0, false
	}
	switch t.vigor {
	case Slow:
		n = min(n, 1)
	case Unhealthy:
		n = 0
	}
	return n, true
}

// Advise returns the number of taps by the guideline, the answers of the other
// published guidelines, and notes. Where the guideline is silent, Covered is
// false; [Trunk.Taps] tells why.
func (t Trunk) Advise(g Guideline) Advice {
	n, ok := t.taps(g)
	a := Advice{Answer: Answer{g, n, ok}, Notes: t.notes()}
	for _, other := range published {
		if other != g {
			n, ok := t.taps(other)
			a.Others = append(a.Others, Answer{other, n, ok})
		}
	}
	return a
}

// notes are the cautions that belong to this trunk.
func (t Trunk) notes() []string {
	var notes []string
	switch t.vigor {
	case NotJudged:
		notes = append(notes, "vigor was not judged: a healthy, vigorous trunk is assumed; look at crown, bark and growth first")
	case Slow:
		_, deepest := DepthAdvised(Slow)
		notes = append(notes, fmt.Sprintf("slow growth: at most one tap, near %s deep into the wood, bark not counted; the University of Vermont would not tap it at all",
			deepest.Text(units.Inch, 0)))
	case Unhealthy:
		notes = append(notes, "an unhealthy trunk is not tapped")
	}
	if t.species == Maple {
		notes = append(notes, "the species was not told: be sure of the tree before drilling, and mark trees in leaf")
	}
	return append(notes, "look up for dead limbs, ask the owner of the land, and follow the local rule first")
}
