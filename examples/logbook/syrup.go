package main

import (
	"errors"
	"math"
	"time"

	"example.org/sapreckoner/density"
	"example.org/sapreckoner/internal/base/limit"
	"example.org/sapreckoner/sugar"
	"example.org/sapreckoner/units"
	"example.org/sapreckoner/units/records"
	"example.org/sapreckoner/yield/lookagain"
)

// lot returns a lot of syrup by name; it is kept once it is used.
func (b *book) lot(r *records.Reader, name string) (*packed, error) {
	if l := b.lots[name]; l != nil {
		return l, nil
	}
	if err := named(r, "lot", name); err != nil {
		return nil, err
	}
	if len(b.lots) == mostLots {
		return nil, r.Fail("lot", full("lots", mostLots, "a lot is a draw or a day: keep notes in a column of their own"))
	}
	l := new(packed)
	b.lots[name] = l
	return l, nil
}

// A draw beyond these counts, and is worth a second look: a cup that was written
// down cold moves a reading by seven Brix.
const thinSyrup, thickSyrup units.Brix = 60, 72

func (b *book) readDraws() error {
	var (
		when      time.Time
		name      string
		volume    units.Volume
		weight    units.Mass
		reading   units.Brix
		cup, temp units.Temperature
	)
	return b.file(sheet{
		name: "draws.csv", one: []string{"volume", "weight"},
		cols: []records.Col{
			records.Time("time", &when, minutes...), records.Text("lot", &name),
			records.Volume("volume", &volume).Optional(), records.Mass("weight", &weight).Optional(),
			records.Brix("reading", &reading), records.Temperature("cup", &cup), records.Temperature("temp", &temp).Optional(),
		},
		row: func(r *records.Reader) error {
			brix, err := b.given.syrupHydrometer().Brix(reading, cup)
			if err == nil {
				err = syrupStrength.Check("", float64(brix))
			}
			if err != nil {
				return r.Fail(ofReading(err, "reading", "cup"), err)
			}
			at := temp
			if math.IsNaN(at.Celsius()) {
				at = cup
			}
			drawn, err := draw(r, volume, weight, brix, at)
			if err != nil {
				return err
			}
			on, err := b.on(r, "time", when)
			if err != nil {
				return err
			}
			lot, err := b.lot(r, name)
			if err != nil {
				return err
			}
			b.syrups.Add(lookagain.Row{File: b.given.shown("draws.csv"), Line: r.Line(), Day: when, Name: name, Drawn: true,
				Whole: whole(when, name, volume, weight, reading, cup, temp)})
			lot.drawn.add(drawn)
			if !(brix >= thinSyrup && brix <= thickSyrup) {
				lot.unlike++
			}
			on.syrup.add(drawn)
			return nil
		},
	})
}

var drawWeight = limit.Range{Arg: "weight", Low: 1e-3, High: 1e6, Unit: "kg", Below: "leave out a row that holds nothing", Above: "check its unit"}

// draw returns the syrup of a row that gives its volume or its weight. What a
// scale in air shows is a little less than the mass.
func draw(r *records.Reader, volume units.Volume, weight units.Mass, brix units.Brix, at units.Temperature) (sugar.Lot, error) {
	byVolume, byWeight := !math.IsNaN(float64(volume)), !math.IsNaN(float64(weight))
	switch {
	case byVolume && byWeight:
		return sugar.Lot{}, r.Fail("weight", errors.New("the draw is given by volume and by weight: give one of them"))
	case byVolume:
		if err := sapVolume.Check("", volume.Liters()); err != nil {
			return sugar.Lot{}, r.Fail("volume", err)
		}
		lot, err := sugar.NewLot(volume, brix, at)
		if err != nil {
			return sugar.Lot{}, r.Fail("temp", err)
		}
		return lot, nil
	case byWeight:
		if err := drawWeight.Check("", weight.Kilograms()); err != nil {
			return sugar.Lot{}, r.Fail("weight", err)
		}
		rho, err := density.Solution(brix, at)
		if err != nil {
			return sugar.Lot{}, r.Fail("temp", err)
		}
		lot, err := sugar.NewLotByMass(weight*units.Mass(rho/density.InAir(rho)), brix, at)
		if err != nil {
			return sugar.Lot{}, r.Fail("temp", err)
		}
		return lot, nil
	}
	return sugar.Lot{}, r.Fail("", errors.New("neither a volume nor a weight"))
}

// What is packed.
var (
	jarVolume = limit.Range{Arg: "size", Low: 0.001, High: 1000, Unit: "L", Below: "check its unit", Above: "check its unit"}
	jarCount  = limit.Range{Arg: "count", Low: 1, High: 1e6, Below: "leave the row out", Above: "check the columns"}
)

func (b *book) readPacking() error {
	var (
		when  time.Time
		name  string
		label units.Volume
		count float64
	)
	return b.file(sheet{
		name: "packing.csv",
		cols: []records.Col{
			records.Time("day", &when, dates...), records.Text("lot", &name),
			records.Volume("size", &label), records.Number("count", &count),
		},
		row: func(r *records.Reader) error {
			if err := jarVolume.Check("", label.Liters()); err != nil {
				return r.Fail("size", err)
			}
			if err := jarCount.Check("", count); err != nil {
				return r.Fail("count", err)
			}
			if count != math.Trunc(count) {
				return r.Fail("count", errors.New("containers are counted in whole numbers"))
			}
			if _, err := b.on(r, "day", when); err != nil {
				return err
			}
			// Two sizes are one if they agree to a tenth of a milliliter.
			key := int64(math.Round(label.Milliliters() * 10))
			s := b.sizes[key]
			if s == nil {
				if len(b.sizes) == mostSizes {
					return r.Fail("size", full("sizes", mostSizes, "nobody keeps so many: check the column"))
				}
				s = &size{label: label}
			}
			lot, err := b.lot(r, name)
			if err != nil {
				return err
			}
			b.syrups.Add(lookagain.Row{File: b.given.shown("packing.csv"), Line: r.Line(), Day: when, Name: name, Packed: true,
				Whole: whole(when, name, label, count)})
			b.sizes[key] = s
			s.count += int(count)
			// The conversion forbids a fused multiply-add: jars often end on half of
			// the last digit printed, which must fall the same way on every processor.
			lot.volume += units.Volume(label * units.Volume(count))
			return nil
		},
	})
}
