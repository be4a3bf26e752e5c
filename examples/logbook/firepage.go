package main

import (
	"math"
	"slices"
	"time"

	"example.org/sapreckoner/examples/internal/cli"
	"example.org/sapreckoner/units"
)

func (p page) boilsPart(part *cli.Part) {
	var (
		rows  [][]cli.Value
		hours time.Duration
		water units.Mass
	)
	for _, f := range p.boils {
		hours += f.fired
		water += f.water
		rows = append(rows, []cli.Value{cli.Words(f.lit.Format(time.DateOnly)), cli.Hours(f.fired), gauged(cli.Volume(f.volume)),
			gauged(cli.Mass(f.water)), gauged(cli.Flow(rate(f.water, f.fired))), cli.Share(f.efficiency, 0)})
	}
	addUp(waterDigits, cli.Mass(water), rows, 3)
	part.Table("boils", []cli.Column{{Key: "lit", Head: "lit on"}, {Key: "fired", Head: "fired"}, {Key: "sap", Head: "sap"},
		{Key: "water", Head: "water off"}, {Key: "rate", Head: "by the hour"}, {Key: "efficiency", Head: "of heat"}}, rows)
	part.Row("hours", "Hours at the fire", cli.Hours(hours))
	part.Row("water", "Water boiled off", cli.Total(waterDigits, cli.Mass(water)))
	part.Row("rate", "By the hour", gauged(cli.Flow(rate(water, hours))))
	var gathered units.Mass
	for i := range p.days {
		gathered += p.days[i].sap.sugar
	}
	left := "sap that stands, spoiled or was boiled in a boil that is not written down"
	if gathered < p.boiled.sugar {
		left = "more was boiled than gathered: a gathering is missing, or a gauge or a reading is off"
	}
	part.Row("not_boiled", "Sugar gathered, not boiled", gauged(cli.Mass(gathered-p.boiled.sugar)), left)
}

// rate is the water boiled off in an hour, counted at its density at 68 F as
// pans are rated.
func rate(water units.Mass, t time.Duration) units.VolumeRate {
	const perCubicMeter = 998.2 * units.KilogramPerCubicMeter
	return water.Volume(perCubicMeter).Per(t)
}

func (p page) firePart(part *cli.Part) error {
	all, err := p.efficiencies()
	if err != nil {
		return err
	}
	var rows [][]cli.Value
	for _, e := range all {
		rows = append(rows, []cli.Value{cli.Words(e.fuel), cli.Words(e.of.String()), cli.Count(e.Boils, ""), cli.Share(e.Middle(), 1),
			cli.Between(cli.Share(e.Low, 0), cli.Share(e.High, 0)), cli.Share(e.Spread, 1)})
	}
	part.Table("fire", []cli.Column{{Key: "fuel", Head: "fuel"}, {Key: "basis", Head: "heat"}, {Key: "boils", Head: "boils"},
		{Key: "efficiency", Head: "into the sap"}, {Key: "next", Head: "next boil"}, {Key: "spread", Head: "spread"}}, rows)
	part.Remark("The next boil lies within these ends two times of three. Give the middle to boilday as -efficiency if the heat is net for wood, and gross for other fuels. The spread is the standard deviation from boil to boil.")
	return nil
}

func (p page) fuelPart(part *cli.Part) {
	var rows [][]cli.Value
	short := false
	for _, k := range p.stocks() {
		l := p.laid[k]
		show := func(x float64) cli.Value {
			switch {
			case k.weighed:
				return gauged(cli.Mass(units.Kilograms(x)))
			case k.kind == oil || k.kind == propane:
				return gauged(cli.Volume(units.CubicMeters(x)))
			}
			return gauged(cli.Wood(units.CubicMeters(x)))
		}
		short = short || l.burned > l.in
		in := l.in
		if slices.Contains(p.lacks, "fuel.csv") {
			in = math.NaN() // nobody told
		}
		const digits = 3
		went := cli.AddUp(digits, show(in), show(l.burned), show(in-l.burned))
		rows = append(rows, []cli.Value{cli.Words(k.kind), cli.Total(digits, show(in)), went[0], went[1]})
	}
	part.Table("fuel", []cli.Column{{Key: "kind", Head: "fuel"}, {Key: "laid", Head: "laid in"}, {Key: "burned", Head: "burned"}, {Key: "left", Head: "left"}}, rows)
	if short && !slices.Contains(p.lacks, "fuel.csv") {
		part.Remark("More of a fuel burned than was laid in: fuel.csv lacks a load, or wood was weighed once and measured by the cord another time.")
	}
}
