package main

import (
	"errors"
	"fmt"
	"math"
	"time"

	"example.org/sapreckoner/internal/base/limit"
	"example.org/sapreckoner/sugar"
	"example.org/sapreckoner/units"
	"example.org/sapreckoner/units/records"
	"example.org/sapreckoner/yield/lookagain"
)

// minutes are the ways to write a time, and dates a day.
var (
	minutes = []string{"2006-01-02 15:04", "2006-01-02T15:04", "2006-01-02 15:04:05", time.DateOnly}
	dates   = []string{time.DateOnly, "2006-01-02 15:04"}
)

// What the files may say. Errors of these ranges name no function: people read
// them.
var (
	sapStrength = limit.Range{Arg: "true strength", Low: 0.3, High: 40, Unit: "Brix",
		Below: "sap is 1 to 4 Brix: check the reading, and the hydrometer in water",
		Above: "sap is 1 to 4 Brix and membrane concentrate up to 40: syrup belongs in draws.csv"}
	sapVolume = limit.Range{Arg: "volume", Low: 0.001, High: 1e6, Unit: "L",
		Below: "leave out a row that holds nothing", Above: "check its unit"}
	syrupStrength = limit.Range{Arg: "true strength", Low: 50, High: 85, Unit: "Brix",
		Below: "this is not syrup: what goes back into the pan is no draw", Above: "beyond 85 Brix it sets as candy"}
)

// A sapCols reads a lot of sap: how much, and what the hydrometer read in the
// cup.
type sapCols struct {
	volume       units.Volume
	reading      units.Brix
	readAt, temp units.Temperature
}

func (s *sapCols) cols(volume string) []records.Col {
	return []records.Col{
		records.Volume(volume, &s.volume),
		records.Brix("reading", &s.reading),
		records.Temperature("read_at", &s.readAt),
		records.Temperature("temp", &s.temp).Optional(),
	}
}

// ofReading returns which column an error of the hydrometer is about: the reading
// or the temperature of the cup.
func ofReading(err error, reading, cup string) string {
	var re *units.RangeError
	if errors.As(err, &re) && re.Arg == "at" {
		return cup
	}
	return reading
}

// lot returns the sap of the row. Without a temperature of its own the sap was
// measured as cold as it was read.
func (s *sapCols) lot(b *book, r *records.Reader, volume string) (sugar.Lot, error) {
	brix, err := b.given.sapHydrometer().Brix(s.reading, s.readAt)
	if err != nil {
		return sugar.Lot{}, r.Fail(ofReading(err, "reading", "read_at"), err)
	}
	if err := sapStrength.Check("", float64(brix)); err != nil {
		return sugar.Lot{}, r.Fail("reading", err)
	}
	if err := sapVolume.Check("", s.volume.Liters()); err != nil {
		return sugar.Lot{}, r.Fail(volume, err)
	}
	at := s.temp
	if math.IsNaN(at.Celsius()) {
		at = s.readAt
	}
	lot, err := sugar.NewLot(s.volume, brix, at)
	if err != nil {
		return sugar.Lot{}, r.Fail("temp", err)
	}
	return lot, nil
}

func (b *book) readGatherings() error {
	var (
		when   time.Time
		source string
		sap    sapCols
	)
	list := lookagain.List{Most: mostLooked, VolumeUnit: "L"}
	const what = "a source is a bush, a line or a tank: keep notes in a column of their own"
	err := b.file(sheet{
		name: "gatherings.csv", needed: true,
		cols: append([]records.Col{
			records.Time("time", &when, minutes...),
			records.Text("source", &source).Optional(),
		}, sap.cols("volume")...),
		row: func(r *records.Reader) error {
			lot, err := sap.lot(b, r, "volume")
			if err != nil {
				return err
			}
			from := b.sources[source]
			if from == nil {
				if err := named(r, "source", source); err != nil {
					return err
				}
				if len(b.sources) == mostSources {
					return r.Fail("source", full("sources", mostSources, what))
				}
				from = new(total)
			}
			on, err := b.on(r, "time", when)
			if err != nil {
				return err
			}
			if list.Looks() {
				list.Add(lookagain.Row{File: b.given.shown("gatherings.csv"), Line: r.Line(), Day: when, Name: source,
					Strength: float64(lot.Brix()), Volume: sap.volume.Liters(), Whole: whole(when, source, sap)})
			}
			b.sources[source] = from
			from.add(lot)
			on.sap.add(lot)
			return nil
		},
	})
	b.look(&list)
	if err == nil && !b.begun {
		return fmt.Errorf("%s: no gathering that counts below the header: there is no season to draw a balance of", b.given.shown("gatherings.csv"))
	}
	return err
}
