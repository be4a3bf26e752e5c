package main

import (
	"math"
	"time"

	"example.org/sapreckoner/boil/pan"
	"example.org/sapreckoner/density"
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
	gone     units.Volume // never boiled, and too old to be there still
	readings int          // gatherings that the sugar is read of
}

// Sap that old is taken as thrown away: no source lets it wait longer (7 days at 38 F
// is the longest that one has).
const longestWait = 7 * day

// mostReadings are enough to tell the sugar of now: older sap was sweeter.
const mostReadings = 5

// readRecord looks through the days of the season.
func (p *plan) readRecord() error {
	var waiting []pan.Standing
	var sugar []units.Brix
	h := p.flags.House()
	if p.flags.Dir() == "" && p.flags.Source("weather").Kind != cli.Invented {
		h = new(folder.House) // invented days are not of this weather
	}
	for _, d := range h.Days {
		if d.Date.Before(p.start) || d.Date.After(p.today) {
			continue
		}
		if d.Sap > 0 {
			if p.tapped.IsZero() {
				p.tapped = d.Date
			}
			p.gathered = p.gathered || d.Date.Equal(p.today)
			age := p.today.Sub(d.Date)
			waiting = append(waiting, pan.Standing{Gathering: pan.Gathering{Volume: d.Sap}, Age: age})
			if brix, err := p.strength(d); err != nil {
				return err
			} else if brix > 0 {
				sugar = append(sugar, brix)
			}
		}
		waiting = boilOldest(waiting, d)
	}
	if s := p.given; p.flags.Given("waiting") {
		waiting = []pan.Standing{{Gathering: pan.Gathering{Volume: s.waiting}, Age: s.age}}
	}
	for _, w := range waiting {
		if w.Age > longestWait {
			p.gone += w.Volume
		} else {
			p.stands = append(p.stands, w)
		}
	}
	p.readSugar(sugar)
	return nil
}

// strength is what the sap hydrometer told of a gathering, 0 if nothing.
func (p *plan) strength(d folder.Day) (units.Brix, error) {
	if !(d.Sugar > 0) {
		return 0, nil
	}
	stem := density.Hydrometer{GraduatedAt: p.flags.House().Settings.SapHydrometer}
	at := d.ReadAt
	if math.IsNaN(at.Celsius()) {
		at = stem.GraduatedAt
	}
	brix, err := stem.Brix(d.Sugar, at)
	if err != nil {
		err = cli.For("weather", err)
	}
	return brix, err
}

// boilOldest takes what a day boiled off what waits, the oldest first. A fire of
// which nobody told how much it took is taken to have boiled all.
func boilOldest(waiting []pan.Standing, d folder.Day) []pan.Standing {
	boiled := d.Boiled
	if math.IsNaN(float64(boiled)) {
		if d.Lit.IsZero() && !(d.Syrup > 0) {
			return waiting
		}
		return nil
	}
	for len(waiting) > 0 && boiled >= waiting[0].Volume {
		boiled -= waiting[0].Volume
		waiting = waiting[1:]
	}
	if len(waiting) > 0 {
		waiting[0].Volume -= boiled
	}
	return waiting
}

// waits is the sap that waits, and for how long the oldest of it has.
func (r *record) waits() (sap units.Volume, age time.Duration) {
	for _, w := range r.stands {
		sap, age = sap+w.Volume, max(age, w.Age)
	}
	return sap, age
}

// readSugar takes the mean of the latest readings where nothing else tells.
func (p *plan) readSugar(read []units.Brix) {
	f := p.flags
	if len(read) == 0 || f.Given("sugar") || f.Given("species") || f.Given("part") {
		return
	}
	read = read[max(0, len(read)-mostReadings):]
	var sum units.Brix
	for _, b := range read {
		sum += b
	}
	p.readings = len(read)
	p.given.reading = sum / units.Brix(len(read))
}
