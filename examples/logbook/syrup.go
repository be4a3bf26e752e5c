package main

import (
	"errors"
	"fmt"
	"math"

	"example.org/sapreckoner/examples/internal/cli"
	"example.org/sapreckoner/examples/internal/folder"
	"example.org/sapreckoner/internal/base/limit"
	"example.org/sapreckoner/sugar"
	"example.org/sapreckoner/units"
	"example.org/sapreckoner/yield"
	"example.org/sapreckoner/yield/lookagain"
)

// What the files may say.
var (
	syrupStrength = limit.Range{Arg: "true strength", Low: 50, High: 85, Unit: "Brix",
		Below: "this is not syrup: what goes back into the pan is no batch", Above: "beyond 85 Brix it sets as candy"}
	batchWeight = limit.Range{Arg: "weight", Low: 1e-3, High: 1e6, Unit: "kg", Below: "leave out a row that holds nothing", Above: "check its unit"}
	jarVolume   = limit.Range{Arg: "size", Low: 0.001, High: 1000, Unit: "L", Below: "check its unit", Above: "check its unit"}
	jarCount    = limit.Range{Arg: "count", Low: 1, High: 1e6, Below: "leave the row out", Above: "check the columns"}
)

// A batch beyond these counts, and is worth a second look: a cup that was written
// down cold moves a reading by seven Brix.
const thinSyrup, thickSyrup units.Brix = 60, 72

// lot returns a batch by name.
func (b *book) lot(file string, line int, name string) (*packed, error) {
	if l := b.lots[name]; l != nil {
		return l, nil
	}
	if len(b.lots) == mostLots {
		return nil, b.fail(file, line, "batch", fmt.Errorf("more than %d batches: keep notes in a column of their own", mostLots))
	}
	l := new(packed)
	b.lots[name] = l
	return l, nil
}

// readBatch counts a batch of syrup.
func (b *book) readBatch(r folder.Batch) error {
	drawn, column, err := b.given.syrup(r)
	if err != nil {
		return b.fail(folder.BatchesFile, r.Line, column, err)
	}
	lot, err := b.lot(folder.BatchesFile, r.Line, r.Name)
	if err != nil {
		return err
	}
	b.syrups.Add(lookagain.Row{File: b.house.Shown(folder.BatchesFile), Line: r.Line, Day: r.Date, Name: r.Name, Drawn: true,
		Whole: whole(r.Date, r.Name, r.Volume, r.Weight, r.Reading, r.Cup, r.Temp)})
	lot.drawn.add(drawn)
	lot.drum = r.Drum
	if !(drawn.Brix() >= thinSyrup && drawn.Brix() <= thickSyrup) {
		lot.unlike++
	}
	b.days[r.Date.YearDay()].syrup.add(drawn)
	return nil
}

// syrup returns the lot of a batch. Each cup tells how hot its measure was, where
// nothing else does. The error is about the column.
func (s *setup) syrup(r folder.Batch) (lot sugar.Lot, column string, err error) {
	brix := s.Target
	if !math.IsNaN(float64(r.Reading)) {
		if brix, err = s.syrupHydrometer().Brix(r.Reading-s.miss.Hydrometer, r.Cup.Add(-s.miss.Thermometer)); err != nil {
			return lot, ofReading(err, "reading", "cup"), err
		}
		if err := syrupStrength.Check("", float64(brix)); err != nil {
			return lot, "reading", err
		}
	}
	at := cli.OrAt(cli.OrAt(r.Temp, r.Cup), label)
	switch measured, weighed := !math.IsNaN(float64(r.Volume)), !math.IsNaN(float64(r.Weight)); {
	case measured && weighed:
		return lot, "weight", errors.New("the batch is given by volume and by weight: give one of them")
	case measured:
		if err := sapVolume.Check("", r.Volume.Liters()); err != nil {
			return lot, "volume", err
		}
		lot, err = sugar.NewLot(r.Volume, brix, at)
		return lot, "temp", err
	case weighed:
		if err := batchWeight.Check("", r.Weight.Kilograms()); err != nil {
			return lot, "weight", err
		}
		lot, err = yield.Weighed(r.Weight, 0, brix, at)
		return lot, "temp", err
	}
	return lot, "", errors.New("neither a volume nor a weight")
}

// readBottled counts a row of bottles.
func (b *book) readBottled(r folder.Jars) error {
	if err := jarVolume.Check("", r.Size.Liters()); err != nil {
		return b.fail(folder.BottledFile, r.Line, "size", err)
	}
	if err := jarCount.Check("", float64(r.Count)); err != nil {
		return b.fail(folder.BottledFile, r.Line, "count", err)
	}
	// Two sizes are one if they agree to a tenth of a milliliter.
	key := int64(math.Round(r.Size.Milliliters() * 10))
	s := b.sizes[key]
	if s == nil {
		if len(b.sizes) == mostSizes {
			return b.fail(folder.BottledFile, r.Line, "size", fmt.Errorf("more than %d sizes: nobody keeps so many, check the column", mostSizes))
		}
		s = &size{label: r.Size}
		b.sizes[key] = s
	}
	s.count += r.Count
	lot, err := b.lot(folder.BottledFile, r.Line, r.Batch)
	if err != nil {
		return err
	}
	b.syrups.Add(lookagain.Row{File: b.house.Shown(folder.BottledFile), Line: r.Line, Day: r.Date, Name: r.Batch, Packed: true,
		Whole: whole(r.Date, r.Batch, r.Size, r.Count)})
	// The conversion forbids a fused multiply-add: jars often end on half of
	// the last digit printed, which must fall the same way on every processor.
	lot.volume += units.Volume(r.Size * units.Volume(r.Count))
	return nil
}

// readBlend counts what was poured from one batch into another.
func (b *book) readBlend(r folder.Blend) error {
	from, err := b.lot(folder.BlendsFile, r.Line, named(b.house, r.From))
	if err != nil {
		return err
	}
	into, err := b.lot(folder.BlendsFile, r.Line, named(b.house, r.Into))
	if err != nil {
		return err
	}
	from.poured -= r.Volume
	into.poured += r.Volume
	return nil
}

// tellApart says that days and batches tell of other amounts of syrup.
func (p page) tellApart() string {
	if told := p.told(); p.byBatches() && told > 0 && math.Abs(float64(told/p.Syrup)-1) > 0.05 {
		return "The days tell of " + p.In(gauged(cli.Volume(told))) + " of syrup and the batches, which count, of " + p.In(gauged(cli.Volume(p.Syrup))) + ": look which lacks a row."
	}
	return ""
}
