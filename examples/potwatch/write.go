package main

import (
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
// read both, and what the thermometer showed must be near syrup: a pot that has cooled
// meanwhile teaches nothing.
func (p page) stopRow() folder.Rows {
	rows := folder.Rows{File: folder.StopsFile}
	day, t := p.given.day, p.thermometer
	if p.heated == nil || !p.flags.Given("shows") || len(p.apart) > 0 {
		return rows
	}
	if day.IsZero() {
		day = time.Now()
	}
	air := folder.Cell{Column: "water_boils", Text: p.given.place.WaterBoils.Text(units.ScaleFahrenheit, tenths)}
	switch t.from {
	case cli.ByWaterBoils:
	case cli.ByStation, cli.ByAltimeter:
		air = folder.Cell{Column: "pressure", Text: t.pressure.Text(units.InchMercury, thousandths)}
	default:
		return rows // nobody measured it
	}
	for _, i := range p.all {
		if i.name == "hydrometer" && i.Brix >= p.given.target-aside {
			rows.Rows = []folder.Row{{{Column: "day", Text: day.Format(time.DateOnly)}, air,
				{Column: "stop", Text: p.given.shows.Text(units.ScaleFahrenheit, tenths)}, {Column: "cup", Text: i.Brix.Text(1)}}}
		}
	}
	return rows
}
