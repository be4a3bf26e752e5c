package main

import (
	"maps"
	"slices"
	"time"

	"example.org/sapreckoner/boil/pan"
	"example.org/sapreckoner/examples/internal/cli"
	"example.org/sapreckoner/examples/internal/folder"
	"example.org/sapreckoner/tapping/season"
	"example.org/sapreckoner/units"
)

// record is what the days of the folder tell of this season up to today, which was
// gathered and boiled if its row stands there.
type record struct {
	tapped   time.Time // when sap first came; zero if nothing tells
	gathered bool      // today's sap is in the record
	stands   []pan.Standing
	gone     units.Volume // never boiled, and too old to wait for a fire
	taken    []season.Gathering
	floods   []time.Time // days of so much sap that the taps or the unit must be wrong
}

// flood is more than a tap ever gave on a day, several times over.
const flood = 100 * units.Liter

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
	p.takeIn(byDate)
	if s := p.given; p.flags.Given("waiting") {
		p.stands = []pan.Standing{{Gathering: pan.Gathering{Volume: s.waiting}, Age: s.age}}
		return nil
	}
	for _, g := range h.Waiting(p.today.AddDate(0, 0, 1)) {
		switch age := p.today.Sub(g.Date); {
		case age < 0 || g.Date.Before(p.start):
		case g.Old(p.today):
			p.gone += g.Left
		default:
			p.stands = append(p.stands, pan.Standing{Gathering: pan.Gathering{Volume: g.Left}, Age: age})
		}
	}
	return nil
}

// takeIn puts the gatherings of a tap in order.
func (p *plan) takeIn(byDate map[time.Time]units.Volume) {
	for _, date := range slices.SortedFunc(maps.Keys(byDate), time.Time.Compare) {
		if v := byDate[date]; v > flood {
			p.floods = append(p.floods, date)
		} else {
			p.taken = append(p.taken, season.Gathering{Date: date, PerTap: v})
		}
	}
}

// waits is the sap that waits, and for how long the oldest of it has.
func (r *record) waits() (sap units.Volume, age time.Duration) {
	for _, w := range r.stands {
		sap, age = sap+w.Volume, max(age, w.Age)
	}
	return sap, age
}
