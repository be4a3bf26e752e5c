package folder

import (
	"time"

	"example.org/sapreckoner/units"
)

// A Gathering is sap that waits for the fire.
type Gathering struct {
	Day               // as it was written down
	Left units.Volume // of it, what was not boiled yet
}

// LongestWait is how old sap may be: no source lets it wait longer (7 days at 38 F is the
// longest that one has). Older sap that was never boiled is neither planned nor counted by
// any program, and each asks after it until the record says that it was thrown out.
const LongestWait = 7 * 24 * time.Hour

// Old reports whether the sap is older on a day than any source lets it wait.
func (g Gathering) Old(on time.Time) bool { return on.Sub(g.Date) > LongestWait }

// Waiting lists the sap of the season that is there for the fire of a day, the oldest
// first: what was gathered until then less what was boiled on the days before, and
// thrown out. The zero time asks for what is left when all that stands in the record
// is done. The oldest goes first, of the tank that is named where sap is thrown out; but
// what was older than [LongestWait] goes into a fire behind the rest. Where less
// than a twentieth would be left the tanks were emptied: no stick tells closer.
func (h *House) Waiting(day time.Time) (all []Gathering) {
	var gone []Day
	for _, d := range h.Days {
		if !h.InSeason(d.Date) || !day.IsZero() && d.Date.After(day) {
			continue
		}
		if d.Sap > 0 {
			all = append(all, Gathering{d, d.Sap})
		}
		if !(d.Boiled > 0) || !day.IsZero() && !d.Date.Before(day) { // that fire is to come
			d.Boiled = 0
		}
		if d.Boiled > 0 || d.Thrown > 0 {
			gone = append(gone, d)
		}
	}
	// Rows of one day may stand in any order: a boil takes from all that was gathered
	// until its day.
	for _, d := range gone {
		boils := take(all, d.Boiled, func(g Day) bool { return !g.Date.After(d.Date) && !Gathering{Day: g}.Old(d.Date) })
		take(all, boils, func(g Day) bool { return !g.Date.After(d.Date) })
		if !(d.Thrown > 0) {
			continue
		}
		// What the tank holds may have been counted as boiled.
		more := take(all, d.Thrown, func(g Day) bool { return !g.Date.After(d.Date) && (d.Tank == "" || sameName(g.Tank, d.Tank)) })
		take(all, more, func(g Day) bool { return !g.Date.After(d.Date) })
	}
	var left []Gathering
	for _, g := range all {
		if g.Left > units.Milliliter {
			left = append(left, g)
		}
	}
	return left
}

// take takes sap from the gatherings that are of it, the oldest first, and returns how
// much more was asked for.
func take(all []Gathering, takes units.Volume, of func(Day) bool) (more units.Volume) {
	const rest = 0.05
	var stood units.Volume
	for _, g := range all {
		if of(g.Day) {
			stood += g.Left
		}
	}
	if !(takes > 0) {
		return 0
	}
	if more = max(0, takes-stood); stood-takes < rest*stood {
		takes = stood
	}
	for i := range all {
		if of(all[i].Day) {
			part := min(takes, all[i].Left)
			all[i].Left -= part
			takes -= part
		}
	}
	return more
}

// LastDay is the last day of the season's record, and whether it was boiled on it.
func (h *House) LastDay() (day time.Time, boiled bool) {
	for _, d := range h.Days {
		switch {
		case !h.InSeason(d.Date) || d.Date.Before(day):
			continue
		case d.Date.After(day):
			day, boiled = d.Date, false
		}
		boiled = boiled || d.Boiled > 0
	}
	return day, boiled
}

// Left lists what stands in the pan for the fire of a day: what was written down last,
// if no fire has burned since. The zero time asks for it when all that stands in the
// record is done.
func (h *House) Left(day time.Time) (all []Sweet) {
	before := func(d time.Time) bool { return h.InSeason(d) && (day.IsZero() || d.Before(day)) }
	var last, fire time.Time
	for _, s := range h.Pan {
		if before(s.Date) && s.Date.After(last) {
			last = s.Date
		}
	}
	for _, d := range h.Days {
		if before(d.Date) && d.Boiled > 0 && d.Date.After(fire) {
			fire = d.Date
		}
	}
	for _, s := range h.Pan {
		if s.Date.Equal(last) && !fire.After(last) && !last.IsZero() {
			all = append(all, s)
		}
	}
	return all
}
