package cli

import (
	"cmp"
	"strings"

	"example.org/sapreckoner/boil"
	"example.org/sapreckoner/boil/fuel"
	"example.org/sapreckoner/density"
	"example.org/sapreckoner/units"
)

// Pan is what a pan boils off: by its area, or as it was measured.
type Pan struct {
	Area units.Area
	Flux units.Flux
	Rate units.VolumeRate // once it is checked, that of Area and Flux if nobody measured it

	flags *Flags
}

// Pan declares the flags of a pan. The area is the one of the demo.
func (f *Flags) Pan(p *Pan, area string) {
	p.flags = f
	f.Quantity(&p.Area, "pan-area", area, "area of the boiling liquid")
	f.Quantity(&p.Flux, "pan-rate", "1 US gal/ft2/h", "water boiled off by an area in an hour; about 1 in a flat pan (from memory)")
	f.Quantity(&p.Rate, "boil-rate", "", "water boiled off in an hour, measured on your own pan, instead of -pan-rate")
}

// Check holds the pan against what pans are, and finds its rate.
func (p *Pan) Check() error {
	if !p.flags.Given("boil-rate") {
		p.Rate = p.Flux.Through(p.Area)
	}
	const flux, rate = units.USGallonPerSquareFootHour, units.USGallonPerHour
	return cmp.Or(p.flags.Alone("boil-rate", "pan-rate"),
		Within("pan-area", "area", p.Area, 0.1*units.SquareFoot, 1e4*units.SquareFoot, units.SquareFoot, "ft2", "give length times width of the liquid"),
		Within("pan-rate", "rate", p.Flux, 0.01*flux, 20*flux, flux, "US gal/ft2/h", "flat pans boil off about 1, flue pans about 2"),
		Within("boil-rate", "rate", p.Rate, 0.05*rate, 1e5*rate, rate, "US gal/h", "measure how far the level falls in an hour"))
}

// Evaporation is the rate as a mass of water, at the temperature at which pans are rated.
func (p *Pan) Evaporation() (units.MassRate, error) {
	water, err := density.Water(units.Celsius(20))
	return water.MassRate(p.Rate), err
}

// Power is what gets into the sap of a demand, since the rate is told while cold sap is
// added.
func (p *Pan) Power(demand boil.HeatDemand) (units.Power, error) {
	rate, err := p.Evaporation()
	if err != nil {
		return 0, err
	}
	power, err := fuel.PowerFor(rate, fuel.Delivered, demand, fuel.Efficiency{})
	return power.Middle, err
}

// Firewood is the wood of the fire, and what the fire makes of it.
type Firewood struct {
	Species    string
	Moisture   units.Share
	Efficiency units.Share // of the net heat of wood and the gross heat of another fuel
	Learned    bool        // the efficiency is told, or learned
}

// Firewood declares the flags of the wood.
func (f *Flags) Firewood(w *Firewood) {
	var species []string
	for _, s := range fuel.FirewoodKentucky() {
		species = append(species, s.Species)
	}
	f.Choice(&w.Species, "wood", "Sugar maple", species, "species of the wood: "+strings.Join(species, ", "))
	f.Quantity(&w.Moisture, "moisture", "25 %", "moisture of the wood on the dry basis, as a pin meter shows it")
	f.Quantity(&w.Efficiency, "efficiency", "", "share of the fuel's heat that gets into the sap, learned from a past day: of the net heat of wood, of the gross heat of other fuels; without it the page shows a range")
	f.checks = append(f.checks, func() error {
		if w.Learned = f.Given("efficiency"); !w.Learned {
			return nil
		}
		return Within("efficiency", "efficiency", w.Efficiency, 1, 100, 1, "%", "a pan takes in no more than the heat of its fuel: weigh the fuel, or leave this out if you have not learned yours")
	})
}

// Stock is the wood as the tables have it.
func (w *Firewood) Stock() (stock fuel.Firewood) {
	for _, stock = range fuel.FirewoodKentucky() {
		if stock.Species == w.Species {
			break
		}
	}
	return stock
}
