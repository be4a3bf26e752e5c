package main

import (
	"slices"
	"time"

	"example.org/sapreckoner/boil/pan"
	"example.org/sapreckoner/examples/internal/cli"
	"example.org/sapreckoner/examples/internal/folder"
	"example.org/sapreckoner/units"
)

// record is what the days of the folder tell of this season up to today, which was
// gathered and boiled if its row stands there.
type record struct {
	tapped   time.Time // when sap first came; zero if nothing tells
	gathered bool      // today's sap is in the record
	stands   []pan.Standing
	gone     units.Volume             // never boiled, and too old to be there still
	usual    units.Span[units.Volume] // of one tap: the middle half of the days on which sap was gathered
	of       int                      // so many of these
}

// Sap that old is taken as thrown away: no source lets it wait longer (7 days at 38 F
// is the longest that one has).
const longestWait = 7 * day

// fewestDays tell what a tap usually gives.
const fewestDays = 10

// house is the sugarhouse whose record goes with the weather: an invented one has
// nothing to say of weather that was told.
func (p *plan) house() *folder.House {
	if f := p.flags; f.Dir() != "" || f.Source("weather").Kind == cli.Invented {
		return f.House()
	}
	return new(folder.House)
}

// readRecord looks through the days of the folder.
func (p *plan) readRecord() error {
	h := p.house()
	byDate := map[time.Time]units.Volume{}
	for _, d := range h.Days {
		if !(d.Sap > 0) || d.Date.After(p.today) {
			continue
		}
		if taps := h.Taps(d.Date.Year()); taps > 0 {
			byDate[d.Date] += d.Sap / units.Volume(taps)
		}
		if d.Date.Before(p.start) {
			continue
		}
		p.gathered = p.gathered || d.Date.Equal(p.today)
		if p.tapped.IsZero() || d.Date.Before(p.tapped) {
			p.tapped = d.Date
		}
	}
	p.middleHalf(byDate)
	if s := p.given; p.flags.Given("waiting") {
		p.stands = []pan.Standing{{Gathering: pan.Gathering{Volume: s.waiting}, Age: s.age}}
		return nil
	}
	for _, g := range h.Waiting(p.today.AddDate(0, 0, 1)) {
		switch age := p.today.Sub(g.Date); {
		case age < 0 || g.Date.Before(p.start):
		case age > longestWait:
			p.gone += g.Left
		default:
			p.stands = append(p.stands, pan.Standing{Gathering: pan.Gathering{Volume: g.Left}, Age: age})
		}
	}
	return nil
}

// middleHalf finds what a tap gave on most days, if there are enough of them.
func (p *plan) middleHalf(byDate map[time.Time]units.Volume) {
	var all []units.Volume
	for _, v := range byDate {
		all = append(all, v)
	}
	if len(all) < fewestDays {
		return
	}
	slices.Sort(all)
	p.of = len(all)
	p.usual = units.Span[units.Volume]{Low: all[len(all)/4], High: all[len(all)-1-len(all)/4]}
}

// waits is the sap that waits, and for how long the oldest of it has.
func (r *record) waits() (sap units.Volume, age time.Duration) {
	for _, w := range r.stands {
		sap, age = sap+w.Volume, max(age, w.Age)
	}
	return sap, age
}
