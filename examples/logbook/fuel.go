package main

import (
	"strings"

	"example.org/sapreckoner/boil/fuel"
	"example.org/sapreckoner/examples/internal/cli"
	"example.org/sapreckoner/units"
)

func (s *setup) declareFuel(f *cli.Flags) {
	var species []string
	for _, w := range fuel.FirewoodKentucky() {
		species = append(species, w.Species)
	}
	f.Choice(&s.fuel, "fuel", "wood", []string{"wood", "oil", "propane", "pellets"}, "what burns: wood, oil or propane; of pellets, which are weighed, nothing is learned")
	f.Choice(&s.wood, "wood", "Sugar maple", species, "species of the wood: "+strings.Join(species, ", "))
	f.Quantity(&s.moisture, "moisture", "25 %", "moisture of the wood on the dry basis, as a pin meter shows it")
}

// liquid reports whether the fuel is measured as a liquid.
func (s *setup) liquid() bool { return s.fuel == "oil" || s.fuel == "propane" }

// fuelName is the fuel in words.
func (s *setup) fuelName() string {
	if s.liquid() {
		return s.fuel
	}
	return strings.ToLower(s.wood) + ", " + s.moisture.Text(0) + " moisture"
}

// heat returns the heat in what burned: net of wood, gross of the others.
func (s *setup) heat(v units.Volume) (fuel.Heat, error) {
	switch s.fuel {
	case "oil":
		return fuel.HeatingOil().Of(v)
	case "propane":
		return fuel.Propane().Of(v)
	}
	for _, w := range fuel.FirewoodKentucky() {
		if w.Species == s.wood {
			net, err := w.Net(fuel.DryMoisture(s.moisture))
			if err != nil {
				return fuel.Heat{}, cli.For("moisture", err)
			}
			return net.Of(v)
		}
	}
	return fuel.GenericCordwood().Of(v)
}
