package main

import (
	"errors"
	"fmt"
	"math"
	"strings"
	"time"

	"example.org/sapreckoner/boil"
	"example.org/sapreckoner/boil/fuel"
	"example.org/sapreckoner/internal/base/limit"
	"example.org/sapreckoner/units"
	"example.org/sapreckoner/units/records"
	"example.org/sapreckoner/yield/lookagain"
)

// A fuelCols reads which fuel, and how much of it.
type fuelCols struct {
	kind    string
	volume  units.Volume // NaN if it was weighed
	weighed units.Mass   // NaN if it was measured by volume
}

func (c *fuelCols) cols(volume string) []records.Col {
	return []records.Col{
		records.Text("kind", &c.kind).Optional(),
		records.Volume(volume, &c.volume).Optional(),
		records.Mass("weighed", &c.weighed).Optional(),
	}
}

// What a fuel may be called beside its species.
const (
	anyWood = "wood"
	oil     = "oil"
	propane = "propane"
	pellets = "pellets"
)

// stock returns which stock the row is about, and how much of it in cubic
// meters or kilograms.
func (c *fuelCols) stock(r *records.Reader, volume string) (k stock, amount float64, err error) {
	byVolume, byWeight := !math.IsNaN(float64(c.volume)), !math.IsNaN(float64(c.weighed))
	column := volume
	amount = c.volume.CubicMeters()
	switch {
	case byVolume && byWeight:
		return k, 0, r.Fail("weighed", errors.New("the fuel is given by volume and by weight: give one of them"))
	case !byVolume && !byWeight:
		return k, 0, r.Fail("", errors.New("no amount of fuel"))
	case byWeight:
		k.weighed, column = true, "weighed"
		amount = c.weighed.Kilograms()
	}
	if !(amount > 0 && amount <= 1e6) {
		return k, 0, r.Fail(column, errors.New("an amount of fuel lies above nothing and below a million kilograms or cubic meters"))
	}
	k.kind, err = kindOf(c.kind)
	if err != nil {
		return k, 0, r.Fail("kind", err)
	}
	if liquid := k.kind == oil || k.kind == propane; liquid && k.weighed {
		return k, 0, r.Fail(column, fmt.Errorf("%s is counted by volume", k.kind))
	}
	if k.kind == pellets && !k.weighed {
		return k, 0, r.Fail(column, errors.New("pellets are counted by weight: name the column weighed_lb or weighed_kg"))
	}
	return k, amount, nil
}

// kindOf returns a kind of fuel as it is spelled here.
func kindOf(kind string) (string, error) {
	switch k := strings.ToLower(kind); k {
	case "":
		return anyWood, nil
	case anyWood, oil, propane, pellets:
		return k, nil
	}
	if w, ok := species(kind); ok {
		return strings.ToLower(w.Species), nil
	}
	return "", fmt.Errorf("%q is not known: wood, oil, propane, pellets, or a species such as sugar maple (go run ./examples/boilday -h lists them)", kind)
}

func species(kind string) (fuel.Firewood, bool) {
	for _, w := range fuel.FirewoodKentucky() {
		if strings.EqualFold(w.Species, kind) {
			return w, true
		}
	}
	return fuel.Firewood{}, false
}

// heat returns the heat in an amount of a stock. That of wood is net where the
// species or the weight is known, and gross of a cord of whatever wood.
func heat(k stock, amount float64, moisture fuel.DryMoisture) (fuel.Heat, error) {
	volume, mass := units.CubicMeters(amount), units.Kilograms(amount)
	switch k.kind {
	case oil:
		return fuel.HeatingOil().Of(volume)
	case propane:
		return fuel.Propane().Of(volume)
	case pellets:
		return fuel.Pellets().Of(mass)
	}
	if k.weighed {
		wood, err := fuel.NetWood(moisture.Wet())
		if err != nil {
			return fuel.Heat{}, err
		}
		return wood.Of(mass)
	}
	w, ok := species(k.kind)
	if !ok {
		return fuel.GenericCordwood().Of(volume)
	}
	wood, err := w.Net(moisture)
	if err != nil {
		return fuel.Heat{}, err
	}
	return wood.Of(volume)
}

// group returns under which name a fuel is learned on: the net heats of all wood
// compare.
func group(kind string, on fuel.Basis) string {
	if on == fuel.Net {
		return anyWood
	}
	return kind
}

// dryMoisture is what still burns: up to 70 percent of the wet wood.
var dryMoisture = limit.Range{Arg: "moisture on the dry basis", Low: 0, High: 233, Unit: "%",
	Below: "water as a share of the dry wood", Above: "such wet wood does not burn: give the water as a share of the dry wood"}

// possible is what a boil can make of its fuel.
var possible = limit.Range{Arg: "efficiency of this boil", Low: 1, High: 100, Unit: "%",
	Below: "check the amount of fuel, its unit and the sap", Above: "more heat went into the sap than the fuel holds: check the amount of fuel, its unit and the sap"}

func (b *book) readBoils() error {
	var (
		f        firing
		sap      sapCols
		burns    fuelCols
		end      units.Brix
		moisture units.Share
	)
	cols := []records.Col{
		records.Time("lit", &f.lit, minutes...),
		records.Hours("fired", &f.fired),
		records.Brix("end", &end).Optional(),
		records.Share("moisture", &moisture).Optional(),
	}
	cols = append(cols, sap.cols("sap")...)
	cols = append(cols, burns.cols("burned")...)
	list := lookagain.List{Most: mostLooked, VolumeUnit: "L"}
	defer b.look(&list)
	return b.file(sheet{
		name: "boils.csv", cols: cols, one: []string{"burned", "weighed"},
		row: func(r *records.Reader) error {
			if len(b.boils) == mostBoils {
				return r.Fail("", full("boils", mostBoils, "no season has so many: split the folder by year"))
			}
			if _, err := b.on(r, "lit", f.lit); err != nil {
				return err
			}
			if !(f.fired >= time.Minute) {
				return r.Fail("fired", errors.New("a boil takes longer than a minute"))
			}
			lot, err := sap.lot(b, r, "sap")
			if err != nil {
				return err
			}
			to := end
			if math.IsNaN(float64(to)) {
				to = b.given.target
			}
			demand, err := boil.Heat(lot, to, b.given.pressure)
			if err != nil {
				return r.Fail("end", err)
			}
			if demand.Water <= 0 {
				return r.Fail("end", errors.New("no water was boiled off"))
			}
			k, amount, err := burns.stock(r, "burned")
			if err != nil {
				return err
			}
			wet := moisture
			if math.IsNaN(float64(wet)) {
				wet = b.given.moisture
			}
			if err := dryMoisture.Check("", wet.Percents()); err != nil {
				return r.Fail("moisture", err)
			}
			held, err := heat(k, amount, fuel.DryMoisture(wet))
			if err != nil {
				return r.Fail("moisture", err)
			}
			column := "burned"
			if k.weighed {
				column = "weighed"
			}
			f.efficiency = units.FractionShare(float64(demand.Total() / held.Energy))
			if err := possible.Check("", f.efficiency.Percents()); err != nil {
				return r.Fail(column, err)
			}
			f.sap, f.water, f.heat, f.volume = lot.Mass(), demand.Water, demand.Total(), lot.Volume()
			f.burnt = burnt{group(k.kind, held.Basis), held.Basis}
			list.Add(lookagain.Row{File: b.given.shown("boils.csv"), Line: r.Line(), Day: f.lit, Strength: float64(lot.Brix()), Volume: sap.volume.Liters(),
				Whole: whole(f.lit, f.fired, sap, burns, end, moisture)})
			b.boils = append(b.boils, f)
			b.boiled.add(lot)
			b.stock(k).burned += amount
			b.learns[f.burnt] = append(b.learns[f.burnt], fuel.Firing{Into: demand.Total(), Burned: held})
			return nil
		},
	})
}

func (b *book) readFuel() error {
	var (
		when  time.Time
		burns fuelCols
	)
	return b.file(sheet{
		name: "fuel.csv", one: []string{"laid", "weighed"},
		cols: append([]records.Col{records.Time("day", &when, dates...)}, burns.cols("laid")...),
		row: func(r *records.Reader) error {
			k, amount, err := burns.stock(r, "laid")
			if err != nil {
				return err
			}
			b.stock(k).in += amount
			return nil
		},
	})
}
