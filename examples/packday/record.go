package main

import (
	"fmt"
	"math"
	"strconv"
	"time"

	"example.org/sapreckoner/examples/internal/folder"
	"example.org/sapreckoner/sugar"
	"example.org/sapreckoner/units"
)

// record is what -write adds: one lot becomes a batch; batches are poured together,
// and the jars that are filled are of the largest of them. Before it is read again
// nothing is.
func (d *day) record() []folder.Rows {
	today := d.given.day
	if today.IsZero() {
		today = time.Now()
	}
	date := today.Format(time.DateOnly)
	switch {
	case !d.batches:
		return []folder.Rows{{File: folder.BatchesFile, Rows: []folder.Row{d.given.asBatch(date)}}}
	case d.do == sugar.ReadAgain:
		return nil
	}
	into := d.cans[0]
	for _, c := range d.cans {
		if c.lot.Mass() > into.lot.Mass() {
			into = c
		}
	}
	poured, jars := folder.Rows{File: folder.BlendsFile}, folder.Rows{File: folder.BottledFile}
	for _, c := range d.cans {
		if c.name != into.name {
			poured.Rows = append(poured.Rows, folder.Row{{Column: "date", Text: date}, {Column: "from", Text: c.name}, {Column: "into", Text: into.name}, {Column: "volume", Text: d.given.asVolume(c.lot.Volume())}})
		}
	}
	for _, l := range d.plan.Lines {
		if l.Count > 0 {
			jars.Rows = append(jars.Rows, folder.Row{{Column: "date", Text: date}, {Column: "batch", Text: into.name}, {Column: "size", Text: asLabel(l.Container.Label)}, {Column: "count", Text: strconv.Itoa(l.Count)}})
		}
	}
	if len(poured.Rows) == 0 {
		return []folder.Rows{jars}
	}
	return []folder.Rows{poured, jars}
}

// asBatch is the lot of the flags as a row.
func (s *setup) asBatch(date string) folder.Row {
	name := s.batch
	if name == "" {
		name = date
	}
	row := folder.Row{{Column: "batch", Text: name}, {Column: "date", Text: date}}
	add := func(column, text string) { row = append(row, folder.Cell{Column: column, Text: text}) }
	if !math.IsNaN(float64(s.volume)) {
		add("volume", s.asVolume(s.volume))
	} else {
		pound, decimals := units.Pound, 2
		if s.metric {
			pound, decimals = units.Kilogram, 3
		}
		add("weight", s.weight.Text(pound, decimals))
	}
	degrees := units.ScaleFahrenheit
	if s.metric {
		degrees = units.ScaleCelsius
	}
	add("reading", s.reading.Text(1))
	add("cup", s.readAt.Text(degrees, 1))
	add("temp", s.temp.Text(degrees, 1))
	if !math.IsNaN(float64(s.light)) {
		add("light", s.light.Text(1))
	}
	return row
}

// asVolume writes a volume to a thousandth of a gallon, or to a hundredth of a liter, as
// the page counts: 3 L stay 3.
func (s *setup) asVolume(v units.Volume) string {
	if s.metric {
		return v.Text(units.Liter, 2)
	}
	return v.Text(units.USGallon, 3)
}

// asLabel writes what a label says in the measure in which it is a plain number.
func asLabel(v units.Volume) string {
	const near = 0.1 * units.Milliliter // labels in milliliters are rounded
	for _, m := range []struct {
		size  units.Volume
		name  string
		parts float64 // in which the trade halves it
	}{{units.USGallon, "US gal", 2}, {units.USQuart, "US qt", 1}, {units.USPint, "US pt", 2}, {units.USFluidOunce, "US fl oz", 1}, {units.Liter, "L", 2}} {
		n := math.Round(float64(v/m.size)*m.parts) / m.parts
		if n > 0 && math.Abs(float64(v-units.Volume(n)*m.size)) < float64(near) {
			return fmt.Sprintf("%g %s", n, m.name)
		}
	}
	return fmt.Sprintf("%g mL", math.Round(v.Milliliters()*10)/10)
}
