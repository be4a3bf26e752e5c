package main

import (
	"errors"
	"fmt"
	"math"
	"time"

	"example.org/sapreckoner/examples/internal/cli"
	"example.org/sapreckoner/examples/internal/folder"
	"example.org/sapreckoner/sugar"
)

// demoDay is a day of the invented sugarhouse on which much sap waits.
var demoDay = time.Date(2034, time.March, 11, 0, 0, 0, 0, time.UTC)

// today is the day that is planned: the one asked for, or else the last of the
// record. Zero is the one after it, if that was boiled.
func (s *setup) today(h *folder.House) time.Time {
	if !s.day.IsZero() {
		return s.day
	}
	day, boiled := h.LastDay()
	if boiled {
		return time.Time{}
	}
	return day
}

// fresh is the sap that waits for the fire of the day. What is too old for it is set aside
// in s.tooOld, unless it was asked for.
func (s *setup) fresh(h *folder.House) (fresh []folder.Gathering) {
	day := s.today(h)
	on := day
	if day.IsZero() {
		on, _ = h.LastDay()
		on = on.AddDate(0, 0, 1)
	}
	s.tooOld = 0
	for _, g := range h.Waiting(day) {
		if g.Old(on) && !s.old {
			s.tooOld += g.Left
		} else {
			fresh = append(fresh, g)
		}
	}
	return fresh
}

// waiting is the sap that the record says is there for the fire of the day.
func (s *setup) waiting(f *cli.Flags) ([]gathering, error) {
	h := f.House()
	var all []gathering
	for _, g := range s.fresh(h) {
		one := gathering{date: g.Date, source: g.Tank, reading: g.Sugar, read: g.ReadAt}
		line := func(err error) error { return fmt.Errorf("%s:%d: %w", h.Shown(folder.DaysFile), g.Line, err) }
		if f.Given("reading") {
			one.reading = s.reading
		}
		if math.IsNaN(float64(one.reading)) {
			return nil, line(errors.New("no sugar stands with this sap: write it there, or say it behind the program's name, as 2.1"))
		}
		if math.IsNaN(one.read.Celsius()) || f.Given("read-at") {
			one.read, s.noTemp = s.readAt, true
		}
		m, err := s.readSap(one.reading, one.read)
		if err != nil {
			return nil, line(err)
		}
		temp := one.read // as it was gathered
		if f.Given("sap-temp") || s.refractometer != "" {
			temp = s.sapTemp
		}
		if one.lot, err = sugar.NewLot(g.Left, m.Brix, temp); err != nil {
			return nil, line(err)
		}
		one.doubt = m.Uncertainty
		if one.source == "" {
			one.source = "sap"
		}
		all = append(all, one)
	}
	if len(all) == 0 && s.tooOld > 0 {
		return nil, errors.New((&cli.Sheet{Metric: s.metric}).OldSap(s.tooOld, "-old-sap"))
	}
	if len(all) == 0 {
		return nil, fmt.Errorf("no sap waits by %s: write down what was gathered, or say it behind the program's name, as 40 US gal 2.1 at 41 F", h.Shown(folder.DaysFile))
	}
	return all, nil
}

// waited is how many days the oldest sap, or the sweet in the pan, has waited for the
// fire.
func (p *plan) waited() int {
	first, last := p.sweet.since, p.sweet.since
	for _, g := range p.gatherings {
		if first.IsZero() || g.date.Before(first) {
			first = g.date
		}
		if g.date.After(last) {
			last = g.date
		}
	}
	if !p.recorded() {
		return 0
	}
	if day := p.given.today(p.flags.House()); day.After(last) {
		last = day
	}
	return int(last.Sub(first) / (24 * time.Hour))
}

// told words when sap was gathered.
func (g gathering) told() string {
	if !g.date.IsZero() {
		return g.date.Format("Jan 2")
	}
	return g.when.Format("15:04")
}

// roof tells whether the fire stands under one.
func (p *plan) roof() bool { return p.flags.House().Settings.Roof }

// recorded tells that the sap is that of the record.
func (p *plan) recorded() bool { return len(p.gatherings) > 0 && !p.gatherings[0].date.IsZero() }

// span words the days on which the sap was gathered.
func (p *plan) span() string {
	first, last := p.gatherings[0].told(), p.gatherings[len(p.gatherings)-1].told()
	if first == last {
		return first
	}
	return first + " to " + last
}

// askOld asks after the sap that is too old for the plan.
func (p page) askOld(b *cli.Brief) {
	if v := p.given.tooOld; v > 0 {
		b.Further = append(b.Further, p.OldSap(v, "-old-sap"))
	}
}
