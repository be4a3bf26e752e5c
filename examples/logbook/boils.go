package main

import (
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
	at     units.Temperature // of the sap
	fired  time.Duration
	wood   units.Volume
	line   int // of the file
}

// add adds a row of the days. Boils of one day count as one.
func (f *fire) add(d folder.Day, at units.Temperature) {
	if !math.IsNaN(float64(d.Boiled)) {
		f.boiled, f.at, f.line = f.boiled+d.Boiled, at, d.Line
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
			continue
		}
		lot, err := b.boil(&stands, &d.fire)
		if err != nil {
			return b.fail(folder.DaysFile, d.line, "boiled", err)
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

// boil takes what was boiled from the sap that stands. It has the strength of all of
// that, or of the season where less was gathered than boiled.
func (b *book) boil(stands *total, f *fire) (sugar.Lot, error) {
	all, err := stands.lot()
	if err != nil {
		return sugar.Lot{}, err
	}
	brix := b.mean
	if !all.Empty() {
		brix = all.Brix()
	}
	lot, err := sugar.NewLot(f.boiled, brix, f.at)
	if err != nil {
		return lot, err
	}
	b.boiled.add(lot)
	stands.mass, stands.sugar = max(0, stands.mass-lot.Mass()), max(0, stands.sugar-lot.Sugar())
	return lot, nil
}
