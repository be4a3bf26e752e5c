package main

import (
	"fmt"
	"math"
	"strings"
	"time"

	"example.org/sapreckoner/examples/internal/cli"
	"example.org/sapreckoner/examples/internal/folder"
	"example.org/sapreckoner/units"
)

func (p page) boilsPart(part *cli.Part) {
	var rows [][]cli.Value
	for _, f := range p.boils {
		rows = append(rows, []cli.Value{cli.Words(p.date(f.day).Format(time.DateOnly)), hours(f.fired), gauged(cli.Volume(f.sap.Volume())),
			gauged(cli.Mass(f.water)), gauged(cli.Flow(rate(f.water, f.fired))), cli.Share(f.efficiency, 0)})
	}
	addUp(waterDigits, cli.Mass(p.water), rows, 3)
	part.Table("boils", []cli.Column{{Key: "lit", Head: "lit on"}, {Key: "fired", Head: "fired"}, {Key: "sap", Head: "sap"},
		{Key: "water", Head: "water off"}, {Key: "rate", Head: "by the hour"}, {Key: "efficiency", Head: "of heat"}}, rows)
	part.Row("hours", "Hours at the fire", hours(p.fired))
	part.Row("water", "Water boiled off", cli.Total(waterDigits, cli.Mass(p.water)))
	timed := units.Mass(0)
	for _, f := range p.boils {
		if f.fired > 0 {
			timed += f.water
		}
	}
	part.Row("rate", "By the hour", gauged(cli.Flow(rate(timed, p.fired))), "all water by all hours; what the programs learn is the middle of the boils")
	left := "sap that stands, spoiled or was boiled in a boil that is not written down"
	switch {
	case p.moreBoiled() && p.moreLine > 0:
		left = fmt.Sprintf("more was boiled than gathered, most of it in row %d of %s: a gathering is missing, or a gauge or a reading is off", p.moreLine, folder.DaysFile)
	case p.moreBoiled():
		left = "more was boiled than gathered: a gathering is missing, or a gauge or a reading is off"
	case p.gathered() < p.boiled.sugar+p.thrown.sugar:
		left = "all was boiled: no gauge tells closer"
	}
	part.If(p.thrown.sugar > 0).Row("thrown", "Sap thrown out", gauged(cli.Mass(p.thrown.sugar)), "its sugar")
	part.Row("not_boiled", "Sugar gathered, not boiled", gauged(cli.Mass(p.gathered()-p.boiled.sugar-p.thrown.sugar)), left)
	part.Remark("What was boiled on a day counts at the strength of all sap that then stood.")
}

// hours shows a time at the fire, unless nobody told it.
func hours(t time.Duration) cli.Value {
	if t == 0 {
		return cli.Number(math.NaN(), 0, "h")
	}
	return cli.Hours(t)
}

// gathered is the sugar in all sap.
func (b *book) gathered() (all units.Mass) {
	for i := range b.days {
		all += b.days[i].sap.sugar
	}
	return all
}

// rate is the water boiled off in an hour, counted at its density at 68 F as
// pans are rated; NaN if nobody told the time.
func rate(water units.Mass, t time.Duration) units.VolumeRate {
	const perCubicMeter = 998.2 * units.KilogramPerCubicMeter
	if t <= 0 {
		return units.VolumeRate(math.NaN())
	}
	return water.Volume(perCubicMeter).Per(t)
}

func (p page) firePart(part *cli.Part) error {
	if len(p.learns) > 0 {
		e, err := p.learned()
		if err != nil {
			return err
		}
		part.Row("efficiency", "Into the sap", cli.Share(e.Middle(), 1), "of the "+e.Basis.String()+" heat, by "+cli.Plural(e.Boils, "boil"))
		part.Row("next", "Next boil", cli.Between(cli.Share(e.Low, 0), cli.Share(e.High, 0)), "two times of three")
		part.Row("spread", "From boil to boil", cli.Share(e.Spread, 1), "the standard deviation")
	}
	laid := p.given.laid
	const digits = 3
	show := func(v units.Volume) cli.Value {
		if p.given.liquid() {
			return cli.Volume(v)
		}
		return cli.Wood(v)
	}
	went := []cli.Value{gauged(show(p.wood)), show(units.Volume(math.NaN()))}
	if laid > 0 {
		went = cli.AddUp(digits, show(laid), show(p.wood), show(laid-p.wood))
		part.Row("laid", "Laid in", cli.Total(digits, show(laid)))
	}
	part.Row("burned", "Burned", went[0], p.given.fuelName())
	if laid > 0 {
		part.Row("left", "Left", went[1])
		part.If(p.wood > laid).Remark("More burned than was laid in: a load is missing, or the measure is not what it is told to hold.")
	}
	if cords := p.toTheCord(); cords > 0 {
		part.Row("to_the_cord", "Syrup to the cord", gauged(cli.Volume(cords)))
	}
	return nil
}

// toTheCord is the syrup made of a cord; 0 if no wood is told.
func (p page) toTheCord() units.Volume {
	if p.wood <= 0 || p.given.Fuel != "wood" {
		return 0
	}
	return p.Syrup * units.Volume(units.Cord/p.wood)
}

// liquid reports whether the fuel is measured as a liquid.
func (s *setup) liquid() bool { return s.Fuel == "oil" || s.Fuel == "propane" }

// fuelName is the fuel in words.
func (s *setup) fuelName() string {
	if s.liquid() {
		return s.Fuel
	}
	return strings.ToLower(s.Wood) + ", " + s.Moisture.Text(0) + " moisture"
}
