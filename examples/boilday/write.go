package main

import (
	"errors"
	"time"

	"example.org/sapreckoner/examples/internal/cli"
	"example.org/sapreckoner/examples/internal/folder"
	"example.org/sapreckoner/units"
)

// rows is the day for the record: the sap that was told, what is boiled of it and from
// when, and what then stands in a pan of compartments. When the fire was out and what
// came of it nobody knows yet: a person writes it behind.
func (p page) rows() ([]folder.Rows, error) {
	if p.runsAway() {
		if p.flags.Writes() {
			return nil, cli.For("write", errors.New("this fire is not to be lit, so there is no boil to add: the program folder adds the sap"))
		}
		return nil, nil
	}
	f, day := p.flags, p.given.today(p.flags.House())
	if day.IsZero() || !p.recorded() && p.given.day.IsZero() {
		day = time.Now()
	}
	// In the units of the page, which are mostly those of the file: 380 L are not 380.06.
	gallon, degrees := units.USGallon, units.ScaleFahrenheit
	if p.Metric {
		gallon, degrees = units.Liter, units.ScaleCelsius
	}
	date := folder.Cell{Column: "date", Text: day.Format(time.DateOnly)}
	row := folder.Row{date}
	if !p.recorded() && p.given.sapFile == "" && f.Given("sap") {
		row = append(row, folder.Cell{Column: "sap", Text: p.given.sap.Text(gallon, 2)})
		if f.Given("reading") {
			row = append(row, folder.Cell{Column: "sugar", Text: p.given.reading.Text(2)})
		}
		if f.Given("reading") && f.Given("read-at") {
			row = append(row, folder.Cell{Column: "read_at", Text: p.given.readAt.Text(degrees, 1)})
		}
	}
	boiled := p.pooled().Volume()
	if p.run != nil {
		boiled -= p.pooled().Volume() * units.Volume(p.run.SapLeft/p.sap.Mass())
	}
	row = append(row, folder.Cell{Column: "boiled", Text: boiled.Text(gallon, 1)}, folder.Cell{Column: "lit", Text: p.start.Format("15:04")})
	return []folder.Rows{{File: folder.DaysFile, Rows: []folder.Row{row}}, {File: folder.PanFile, Rows: p.sweetRows(date)}}, nil
}

// sweetRows is what a pan of compartments holds when the fire is out.
func (p page) sweetRows(date folder.Cell) (rows []folder.Row) {
	if p.run == nil || p.small {
		return nil
	}
	inch, decimals := units.Inch, 2
	if p.Metric {
		inch, decimals = units.Centimeter, 1
	}
	for i, l := range p.run.Held {
		deep := units.Length(cold(l) / units.Volume(p.given.compartments[i]))
		rows = append(rows, folder.Row{date, {Column: "compartment", Text: p.In(cli.Count(i+1, ""))},
			{Column: "depth", Text: deep.Text(inch, decimals)}, {Column: "brix", Text: l.Brix().Text(1)}})
	}
	return rows
}
