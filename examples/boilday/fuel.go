package main

import (
	"fmt"
	"strings"

	"example.org/sapreckoner/boil"
	"example.org/sapreckoner/boil/fuel"
	"example.org/sapreckoner/examples/internal/cli"
	"example.org/sapreckoner/units"
)

// burn is what the fire takes.
type burn struct {
	low, high cli.Value
	ready     cli.Value     // the most, as a person counts it
	weight    *[2]cli.Value // of wood
	cords     units.Volume  // of wood, the most
	how       string
}

// fire finds the fuel for the heat of the day.
func (p *plan) fire(s *setup) (err error) {
	demand, err := boil.Heat(p.sap, s.target, p.pressure)
	if err != nil {
		return err
	}
	p.heat = demand.Total()
	if p.run != nil {
		p.heat = p.run.Heat
	}
	at, how := fuel.HomeBuiltPan(), "a range for a home-built flat pan, from memory: learn your own from a past day and give -efficiency"
	if s.fuel != "wood" {
		at, how = fuel.BuiltEvaporator(), "a published range for built evaporators: give -efficiency if you know yours"
	}
	if s.fuel == "wood" {
		if err := cli.Within("moisture", "moisture", s.wood.Moisture, 0, 120, 1, "%", "a pin meter shows the dry basis, and hardly any green wood is so wet: check the meter"); err != nil {
			return err
		}
	}
	given := s.wood.Learned
	if given {
		at = fuel.Efficiency{Low: s.wood.Efficiency, High: s.wood.Efficiency, Basis: fuel.Gross}
		how = fmt.Sprintf("at %s of the gross heat", s.wood.Efficiency.Text(0))
	}
	p.burn.how = how
	switch s.fuel {
	case "oil":
		return p.liquid(fuel.HeatingOil(), at)
	case "propane":
		return p.liquid(fuel.Propane(), at)
	case "pellets":
		need, err := fuel.Pellets().Needed(p.heat, at)
		p.burn.low, p.burn.high, p.burn.ready = cli.Mass(need.Low), cli.Mass(need.High), cli.Pounds(need.High, cli.Up)
		return cli.For("efficiency", err)
	}
	return p.cords(s, s.wood.Stock(), at, given)
}

func (p *plan) liquid(stock fuel.Fuel[units.Volume], at fuel.Efficiency) error {
	need, err := stock.Needed(p.heat, at)
	p.burn.low, p.burn.high, p.burn.ready = cli.Volume(need.Low), cli.Volume(need.High), cli.Gallons(need.High, cli.Up)
	return cli.For("efficiency", err)
}

// cords counts wood by its net heat at its moisture. A cord holds the same dry
// wood whatever the water in it, so that cords follow the net heat of that.
func (p *plan) cords(s *setup, w fuel.Firewood, at fuel.Efficiency, given bool) error {
	stock, err := w.Net(fuel.DryMoisture(s.wood.Moisture))
	if err != nil {
		return cli.For("moisture", err)
	}
	if !given {
		if at, err = fuel.OnNetWood(at); err != nil {
			return err
		}
	} else {
		at.Basis = fuel.Net
		p.burn.how = fmt.Sprintf("at %s of the net heat", s.wood.Efficiency.Text(0))
		if from := p.flags.Source("efficiency").From; from != "" {
			p.burn.how += ", learned from " + from
		}
	}
	need, err := stock.Needed(p.heat, at)
	if err != nil {
		return cli.For("efficiency", err)
	}
	cord, err := w.CordWeight(fuel.DryMoisture(s.wood.Moisture))
	if err != nil {
		return cli.For("moisture", err)
	}
	p.burn.cords = need.High
	p.burn.low, p.burn.high, p.burn.ready = cli.Wood(need.Low), cli.Wood(need.High), cli.Measure(p.flags.House().Settings.Measure).Carried(need.High, cli.Up)
	weight := func(v units.Volume) cli.Value { return cli.Mass(cord * units.Mass(v/units.Cord)) }
	p.burn.weight = &[2]cli.Value{weight(need.Low), weight(need.High)}
	return nil
}

// warmed tells what the heat goes into.
func (p page) warmed() string {
	switch {
	case p.run != nil && p.small:
		return "until the fire is out, without the pot"
	case p.run != nil:
		return "until the fire is out"
	case p.alone:
		return "in the pot"
	case p.small:
		return "in the pan and then in the pot"
	}
	return "from cold sap to syrup"
}

// fuelName names what burns.
func (p page) fuelName() string {
	if p.given.fuel == "wood" {
		return strings.ToLower(p.given.wood.Species)
	}
	return p.given.fuel
}

func (p page) fuelPart(part *cli.Part) {
	part.Row("heat", "Heat into the liquid", cli.Energy(p.heat), p.warmed())
	name := p.fuelName()
	show := func(low, high cli.Value) cli.Value {
		if p.given.wood.Learned {
			return cli.Rough(high)
		}
		return cli.Between(cli.Rough(low), cli.Rough(high))
	}
	part.Row("burns", "It burns", show(p.burn.low, p.burn.high), name, p.burn.how)
	if w := p.burn.weight; w != nil {
		part.Row("wood", "Of wood, by weight", show(w[0], w[1]), p.given.wood.Moisture.Text(0)+" moisture on the dry basis, as a pin meter shows it")
		part.If(p.given.wood.Moisture > 20).Remark("That is the least: wood wetter than 20 % also weakens the fire, and makes more smoke and tar in the flue. Split it and dry it first; green wood is not for this fire.")
	}
}
