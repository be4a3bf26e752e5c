package main

import (
	"errors"
	"time"

	"example.org/sapreckoner/examples/internal/cli"
	"example.org/sapreckoner/examples/internal/folder"
	"example.org/sapreckoner/units"
)

// tenths are what a thermometer is read to, and thousandths a barometer.
const (
	tenths      = 1
	thousandths = 3
)

// stopRow is this stop for the record, once it is one: syrup by the hydrometer, what
// the thermometer showed with it, and the air of the day. Who writes it down must have
// read both.
func (p page) stopRow() (folder.Rows, error) {
	rows := folder.Rows{File: folder.StopsFile}
	day, err := p.given.today()
	t := p.thermometer
	if err != nil || t == nil || !p.flags.Given("shows") || len(p.apart) > 0 {
		return rows, err
	}
	air := folder.Cell{Column: "water_boils", Text: p.given.place.WaterBoils.Text(units.ScaleFahrenheit, tenths)}
	switch t.from {
	case cli.ByWaterBoils:
	case cli.ByStation, cli.ByAltimeter:
		air = folder.Cell{Column: "pressure", Text: t.pressure.Text(units.InchMercury, thousandths)}
	default:
		return rows, nil // nobody measured it
	}
	for _, i := range p.all {
		if i.name == "hydrometer" && i.Brix >= p.given.target-aside {
			rows.Rows = []folder.Row{{{Column: "day", Text: day.Format(time.DateOnly)}, air,
				{Column: "stop", Text: p.given.shows.Text(units.ScaleFahrenheit, tenths)}, {Column: "cup", Text: i.Brix.Text(1)}}}
		}
	}
	return rows, nil
}

// today is the day of a stop.
func (s *setup) today() (time.Time, error) {
	if s.day == "" {
		return time.Now(), nil
	}
	day, err := time.Parse(time.DateOnly, s.day)
	if err != nil {
		return day, cli.For("day", errors.New("write a date as 2034-03-11"))
	}
	return day, nil
}
