package main

import (
	"errors"
	"fmt"
	"iter"
	"math"

	"example.org/sapreckoner/examples/internal/folder"
	"example.org/sapreckoner/internal/base/limit"
	"example.org/sapreckoner/sugar"
	"example.org/sapreckoner/units"
	"example.org/sapreckoner/yield/lookagain"
)

// What the files may say. Errors of these ranges name no function: people read
// them.
var (
	sapStrength = limit.Range{Arg: "true strength", Low: 0.3, High: 40, Unit: "Brix",
		Below: "sap is 1 to 4 Brix: check the reading, and the hydrometer in water",
		Above: "sap is 1 to 4 Brix and membrane concentrate up to 40: syrup belongs in batches.csv"}
	sapVolume = limit.Range{Arg: "volume", Low: 0.001, High: 1e6, Unit: "L",
		Below: "leave the cell empty where there is nothing", Above: "check its unit"}
)

// ofReading returns which column an error of the hydrometer is about: the reading
// or the temperature of the cup.
func ofReading(err error, reading, cup string) string {
	var re *units.RangeError
	if errors.As(err, &re) && re.Arg == "at" {
		return cup
	}
	return reading
}

// readDays counts sap, boils, wood and syrup of the days.
func (b *book) readDays(rows iter.Seq[folder.Day]) {
	list := lookagain.List{Most: mostLooked, VolumeUnit: "L"}
	each(b, rows, func(d folder.Day) error {
		on := &b.days[d.Date.YearDay()]
		if !math.IsNaN(float64(d.Sap)) {
			if err := b.readSap(on, d, &list); err != nil {
				return err
			}
		}
		if !math.IsNaN(float64(d.Syrup)) {
			on.told += d.Syrup
		}
		on.fire.add(d, b.given.readAt(d))
		return nil
	})
	b.look(&list)
}

// readSap counts the sap of a row.
func (b *book) readSap(on *day, d folder.Day, list *lookagain.List) error {
	if err := sapVolume.Check("", d.Sap.Liters()); err != nil {
		return b.fail(folder.DaysFile, d.Line, "sap", err)
	}
	from := b.sources[d.Tank]
	if from == nil {
		if len(b.sources) == mostSources {
			return b.fail(folder.DaysFile, d.Line, "tank", fmt.Errorf("more than %d names: a tank, a bush or a line has one, and notes have a column of their own", mostSources))
		}
		from = new(total)
		b.sources[d.Tank] = from
	}
	strength := math.NaN()
	if math.IsNaN(float64(d.Sugar)) {
		for _, t := range []*total{from, &on.sap} {
			t.rows++
			t.unread += d.Sap
		}
		b.unread++
	} else {
		lot, column, err := b.given.sap(d)
		if err != nil {
			return b.fail(folder.DaysFile, d.Line, column, err)
		}
		strength = float64(lot.Brix())
		from.add(lot)
		on.sap.add(lot)
	}
	if list.Looks() {
		list.Add(lookagain.Row{File: b.house.Shown(folder.DaysFile), Line: d.Line, Day: d.Date, Name: d.Tank,
			Strength: strength, Volume: d.Sap.Liters(), Whole: whole(d.Date, d.Tank, d.Sap, d.Sugar, d.ReadAt)})
	}
	return nil
}

// sap returns the sap of a row that was read. It was measured as cold as it was
// read. The error is about the column.
func (s *setup) sap(d folder.Day) (lot sugar.Lot, column string, err error) {
	brix, err := s.TrueSap(d.Sugar, d.ReadAt.Add(-s.miss.Thermometer))
	if err != nil {
		return lot, ofReading(err, "sugar", "read_at"), err
	}
	if err := sapStrength.Check("", float64(brix)); err != nil {
		return lot, "sugar", err
	}
	lot, err = sugar.NewLot(d.Sap, brix, s.readAt(d))
	return lot, "read_at", err
}

// readAt is how warm the sap was: as it was read, or as the hydrometer wants it. The prism
// of a refractometer tells nothing of it.
func (s *setup) readAt(d folder.Day) units.Temperature {
	if math.IsNaN(d.ReadAt.Celsius()) || s.Refractometer != "" {
		return s.SapHydrometer
	}
	return d.ReadAt.Add(-s.miss.Thermometer)
}

// usualSap is the strength of sap that nobody read all season. Common practice.
const usualSap units.Brix = 2

// settle counts the sap that nobody read at the strength of what was read.
func (b *book) settle() error {
	var read total
	for i := range b.days {
		read.mass += b.days[i].sap.mass
		read.sugar += b.days[i].sap.sugar
	}
	b.mean = usualSap
	if read.mass > 0 {
		b.mean = units.Brix(100 * float64(read.sugar) / float64(read.mass))
	}
	for i := range b.days {
		if err := b.days[i].sap.settle(b.mean, b.given.SapHydrometer); err != nil {
			return err
		}
	}
	for _, t := range b.sources {
		if err := t.settle(b.mean, b.given.SapHydrometer); err != nil {
			return err
		}
	}
	return nil
}
