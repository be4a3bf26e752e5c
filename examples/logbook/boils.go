package main

import (
	"fmt"
	"math"
	"time"

	"example.org/sapreckoner/boil"
	"example.org/sapreckoner/boil/fuel"
	"example.org/sapreckoner/examples/internal/folder"
	"example.org/sapreckoner/internal/base/limit"
	"example.org/sapreckoner/sugar"
	"example.org/sapreckoner/units"
)

// fire is what was boiled on a day, and on what.
type fire struct {
	boiled units.Volume
	thrown units.Volume
	at     units.Temperature // of the sap
	fired  time.Duration
	wood   units.Volume
	line   int // of the file

	thrownLine int
}

// add adds a row of the days. Boils of one day count as one.
func (f *fire) add(d folder.Day, at units.Temperature) {
	if !math.IsNaN(float64(d.Boiled)) {
		f.boiled, f.at, f.line = f.boiled+d.Boiled, at, d.Line
	}
	if !math.IsNaN(float64(d.Thrown)) {
		f.thrown, f.thrownLine = f.thrown+d.Thrown, d.Line
	}
	f.fired += d.Fired()
	if !math.IsNaN(float64(d.Wood)) {
		f.wood += d.Wood
	}
}

// A firing is one day's boil worked out.
type firing struct {
	day        int
	fired      time.Duration
	sap        sugar.Lot
	water      units.Mass
	efficiency units.Share // NaN if the wood is not told, or makes no sense
}

// possible is what a boil can make of its fuel.
var possible = limit.Range{Arg: "efficiency of this boil", Low: 1, High: 100, Unit: "%",
	Below: "check the amount of fuel, its unit and the sap", Above: "more heat went into the sap than the fuel holds: check the amount of fuel, its unit and the sap"}

// fires works out the boils, day by day.
func (b *book) fires() error {
	var stands total
	for i := range b.days {
		d := &b.days[i]
		stands.mass, stands.sugar = stands.mass+d.sap.mass, stands.sugar+d.sap.sugar
		b.wood += d.wood
		if d.boiled == 0 {
			if err := b.throw(&stands, &d.fire); err != nil {
				return err
			}
			continue
		}
		stood, err := stands.lot()
		if err != nil {
			return b.fail(folder.DaysFile, d.line, "boiled", err)
		}
		lot, err := b.take(&stands, d.boiled, d.at)
		if err != nil {
			return b.fail(folder.DaysFile, d.line, "boiled", err)
		}
		b.boiled.add(lot)
		b.missed(stood.Volume(), &d.fire)
		if err := b.throw(&stands, &d.fire); err != nil {
			return err
		}
		demand, err := boil.Heat(lot, b.given.Target, b.given.Pressure())
		if err != nil {
			return b.fail(folder.DaysFile, d.line, "boiled", err)
		}
		f := firing{day: i, fired: d.fired, sap: lot, water: demand.Water, efficiency: units.Share(math.NaN())}
		if d.wood > 0 && b.given.Fuel != "pellets" {
			held, err := b.given.Heat(d.wood)
			if err != nil {
				return err
			}
			share := units.FractionShare(float64(demand.Total() / held.Energy))
			if err := possible.Check("", share.Percents()); err != nil {
				b.again.add(b.fail(folder.DaysFile, d.line, "wood", err).Error())
			} else {
				f.efficiency = share
				b.learns = append(b.learns, fuel.Firing{Into: demand.Total(), Burned: held})
			}
		}
		b.boils = append(b.boils, f)
		b.water += demand.Water
		b.fired += d.fired
	}
	return nil
}

// missed takes note of a boil of more sap than stood. No stick tells closer than a
// twentieth.
func (b *book) missed(stood units.Volume, f *fire) {
	const stick = 0.05
	more := f.boiled - stood
	if more > b.more {
		b.more, b.moreLine = more, f.line
	}
	if more > stick*stood {
		b.again.add(b.fail(folder.DaysFile, f.line, "boiled", fmt.Errorf("only %.3g US gal stood then: a gathering is missing, or a gauge is off", stood.USGallons())).Error())
	}
}

// moreBoiled reports whether more sugar was boiled and thrown out than gathered, by more
// than the gauge of the sap leaves open.
func (b *book) moreBoiled() bool {
	gathered := b.gathered()
	return b.boiled.sugar+b.thrown.sugar-gathered > units.Mass(b.given.sapGauge.Fraction())*gathered
}

// throw takes what was thrown out of the tanks, after the fire of the day.
func (b *book) throw(stands *total, f *fire) error {
	if f.thrown == 0 {
		return nil
	}
	lot, err := b.take(stands, f.thrown, b.given.SapHydrometer)
	if err != nil {
		return b.fail(folder.DaysFile, f.thrownLine, "thrown", err)
	}
	b.thrown.add(lot)
	return nil
}

// take takes some of the sap that stands. It has the strength of all of that, or of
// the season where less was gathered than taken.
func (b *book) take(stands *total, takes units.Volume, at units.Temperature) (sugar.Lot, error) {
	all, err := stands.lot()
	if err != nil {
		return sugar.Lot{}, err
	}
	brix := b.mean
	if !all.Empty() {
		brix = all.Brix()
	}
	lot, err := sugar.NewLot(takes, brix, at)
	if err != nil {
		return lot, err
	}
	stands.mass, stands.sugar = max(0, stands.mass-lot.Mass()), max(0, stands.sugar-lot.Sugar())
	return lot, nil
}
