package main

import (
	"example.org/sapreckoner/examples/internal/cli"
	"example.org/sapreckoner/tapping"
	"example.org/sapreckoner/units"
)

// A stop is one trunk of the walk: the holes to drill there, or why there are
// none.
type stop struct {
	*trunk
	holes []spot
	note  string // what to do besides, or instead
}

// A spot is a hole of the year, as a person measures it on the trunk.
type spot struct {
	letter string
	tapping.Position
	along, depth units.Length
	done         bool // it stands in the record
}

// brisk words of the reasons, for a narrow page.
var brisk = [...]string{
	notSure:   "species?",
	noMaple:   "no maple",
	unhealthy: "sick",
	slow:      "slow",
	silent:    "no rule",
	small:     "small",
}

// walk lists the trunks in the order of the file.
func (st *stand) walk() []stop {
	stops := make([]stop, len(st.trunks))
	for i := range st.trunks {
		t := &st.trunks[i]
		stops[i] = stop{t, st.spots(t), t.note()}
	}
	return stops
}

// spots are the holes of the year on a trunk: those of the record, then those to
// drill.
func (st *stand) spots(t *trunk) (all []spot) {
	for _, h := range t.record {
		if h.Year == st.year {
			all = append(all, st.spot(t, len(all), h.Position, h.Hole.Depth(), true))
		}
	}
	for _, at := range t.next {
		all = append(all, st.spot(t, len(all), at, st.hole(t).Depth(), false))
	}
	return all
}

func (st *stand) spot(t *trunk, i int, at tapping.Position, depth units.Length, done bool) spot {
	return spot{letter(i), at, at.Along(t.girth()), depth, done}
}

// note tells what there is to do at a trunk besides its holes.
func (t *trunk) note() string {
	switch {
	case t.why != tapped:
		return "Left alone: " + reasons[t.why]
	case t.choose > 0:
		return "Choose " + cli.Plural(t.choose, "place") + " by the scars"
	case t.short() > 0:
		return "No clear place for " + cli.Plural(t.short(), "hole") + ": let it rest"
	}
	return ""
}
