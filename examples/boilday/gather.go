package main

import (
	"errors"
	"fmt"
	"time"

	"example.org/sapreckoner/examples/internal/cli"
	"example.org/sapreckoner/examples/internal/folder"
	"example.org/sapreckoner/sugar"
	"example.org/sapreckoner/units"
	"example.org/sapreckoner/units/records"
	"example.org/sapreckoner/yield/lookagain"
)

// A gathering is sap from one source.
type gathering struct {
	when    time.Time
	date    time.Time // of the record
	source  string
	reading units.Brix // as read
	read    units.Temperature
	lot     sugar.Lot
	doubt   units.Brix // about its strength
}

// gather returns the sap of the day, from the flags, a file or the record.
func (s *setup) gather(e *cli.Env, f *cli.Flags, demo bool) ([]gathering, error) {
	switch {
	case s.sapFile != "":
		return s.readFile(e)
	case !f.Given("sap") && (demo || f.Dir() != ""):
		return s.waiting(f)
	}
	if !f.Given("reading") && f.Dir() != "" {
		if err := s.lastRead(f); err != nil {
			return nil, err
		}
	}
	m, err := s.readSap(s.reading, s.readAt)
	if err != nil {
		return nil, cli.ForArg(err, "reading", "at", "read-at")
	}
	from, temp := "sap-temp", s.sapTemp
	if f.Given("read-at") && !f.Given("sap-temp") && s.refractometer == "" {
		from, temp = "read-at", s.readAt // a cup is as warm as the sap that it was filled with
	}
	lot, err := sugar.NewLot(s.sap, m.Brix, temp)
	if err != nil {
		return nil, cli.For(from, err)
	}
	return []gathering{{source: "all sap", reading: s.reading, read: s.readAt, lot: lot, doubt: m.Uncertainty}}, nil
}

// lastRead takes the strength that the record read last, where nobody read today.
func (s *setup) lastRead(f *cli.Flags) error {
	b, from := f.House().LastSugar()
	if from == "" {
		return fmt.Errorf("how sweet is the sap? No reading stands in %s: say it behind the sap, as 40 US gal 2.1 at 41 F", f.House().Shown(folder.DaysFile))
	}
	// It is the true one, as a hydrometer reads where its scale is true.
	s.reading, s.readings, s.refractometer = b, from, ""
	if !f.Given("read-at") {
		s.readAt = s.sapStem
	}
	return nil
}

// mostGatherings is more than anybody carries home in a day.
const mostGatherings = 1000

// readFile reads the day's gatherings.
func (s *setup) readFile(e *cli.Env) ([]gathering, error) {
	file, err := e.Open("sap-file", s.sapFile)
	if err != nil {
		return nil, err
	}
	defer file.Close()
	var (
		g    gathering
		sap  units.Volume
		temp units.Temperature
		all  []gathering
	)
	readAt := records.Temperature("read_at", &g.read)
	if s.refractometer == compensated {
		readAt = readAt.Optional()
	}
	r, err := records.New(s.sapFile, file,
		records.Time("time", &g.when, "15:04", "2006-01-02 15:04"),
		records.Text("source", &g.source).Optional(),
		records.Volume("volume", &sap),
		records.Brix("reading", &g.reading),
		readAt,
		records.Temperature("temp", &temp).Optional(),
	)
	if err != nil {
		return nil, err
	}
	var together units.Volume
	again := lookagain.List{VolumeUnit: "US gal"}
	err = cli.Rows(r, mostGatherings, ": give those of one day; logbook reads a season", func() error {
		m, err := s.readSap(g.reading, g.read)
		if err != nil {
			return r.Fail("reading", err)
		}
		if !(sap > 0) {
			return r.Fail("volume", errors.New("a gathering holds more than nothing"))
		}
		gathered := g
		if gathered.lot, err = sugar.NewLot(sap, m.Brix, cli.OrAt(temp, s.sapTemp)); err != nil {
			return r.Fail("volume", err)
		}
		gathered.doubt = m.Uncertainty
		again.Add(lookagain.Row{File: s.sapFile, Line: r.Line(), Name: g.source, Strength: float64(m.Brix), Volume: sap.USGallons(),
			Whole: fmt.Sprintln(g.when, g.source, sap, g.reading, g.read, temp)})
		if gathered.source == "" {
			gathered.source = "sap"
		}
		all = append(all, gathered)
		together += sap
		return nil
	})
	if err != nil {
		return nil, err
	}
	s.again = again.Findings()
	onOneDay(all)
	return all, cli.Within("sap-file", "all sap", together, 0.1*units.USGallon, tank, units.USGallon, "US gal", "check its unit")
}

// onOneDay brings gatherings with a date to the clock of the fire, which is lit
// on the last of the dates: those of earlier days come before it.
func onOneDay(all []gathering) {
	const day = 24 * time.Hour
	var last time.Time
	for _, g := range all {
		if g.when.After(last) {
			last = g.when
		}
	}
	clock, _ := time.Parse("15:04", "00:00")
	for i, g := range all {
		if g.when.Year() > 0 {
			all[i].when = clock.Add(g.when.Sub(last.Truncate(day)))
		}
	}
}

// lastComes is when the last sap of a file comes, from lighting the fire.
func (p *plan) lastComes() (last time.Duration) {
	for _, g := range p.gatherings {
		if !g.when.IsZero() {
			last = max(last, g.when.Sub(p.start))
		}
	}
	return last
}
