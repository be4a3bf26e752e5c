package main

import (
	"errors"
	"slices"
	"time"

	"example.org/sapreckoner/boil"
	"example.org/sapreckoner/boil/fuel"
	"example.org/sapreckoner/boil/pan"
	"example.org/sapreckoner/examples/internal/cli"
	"example.org/sapreckoner/sugar"
	"example.org/sapreckoner/tapping/season"
	"example.org/sapreckoner/units"
)

// label is the temperature at which syrup is measured: 68 F.
var label = units.Celsius(20)

// evenings is the firing of the days ahead: low at the low end of sap and sugar
// on every day, high at the high end.
type evenings struct {
	pressure  units.Pressure
	from      string // the flag that tells it
	keep      time.Duration
	growth    pan.Growth
	low, high firing
	burns     [2]units.Volume // wood
	lit       pan.Evening     // of the last day to light it, if it was not lit before; at the high end
}

// A firing is a plan of the fire with the syrup that it makes.
type firing struct {
	pan.Plan
	few   pan.Plan // on as few evenings as will do; none of more days than can be tried
	power units.Power
	syrup units.Volume
}

// A wait is by when sap is to be boiled, in words, and what the plan of the fires
// makes of it: a fire a day, so that less than a day is the fire of the same day.
type wait struct {
	words string
	plan  time.Duration
}

// Sources give no hours for sap, and contradict each other in days: at 38 F one
// leaflet has 7, another 1 to 2. The plan keeps to the shorter.
var (
	today      = wait{"boil it today", 12 * time.Hour}
	byTomorrow = wait{"boil it by tomorrow", 24 * time.Hour}
)

// waits reads the guide of pan.Spoiling to the careful side.
func waits(g pan.Growth) wait {
	if g == pan.GrowthSlow || g == pan.GrowthBetween {
		return byTomorrow
	}
	return today
}

// fire plans the evenings at both ends of the band.
func (p *plan) fire() (err error) {
	s := p.given
	if s.evening > 0 && s.warmup >= s.evening {
		return cli.For("warmup", errors.New("all of -evening goes into warming the pan: keep the fire longer"))
	}
	if p.pressure, p.from, err = s.place.Pressure(); err != nil {
		return err
	}
	p.growth = pan.Spoiling(s.sapTemp)
	if p.keep = s.keep; p.keep == 0 {
		p.keep = waits(p.growth).plan
	}
	least := func(v season.Figure[units.Volume]) units.Volume { return v.Low }
	most := func(v season.Figure[units.Volume]) units.Volume { return v.High }
	if p.low, err = p.firing(0, p.sugar.Low, least); err != nil {
		return err
	}
	if p.high, err = p.firing(0, p.sugar.High, most); err != nil {
		return err
	}
	if i := p.fireDay(); i >= 0 {
		late, err := p.firing(i, p.sugar.High, most)
		if err != nil {
			return err
		}
		p.lit = late.Evenings[0]
	}
	return p.burn()
}

// firing plans one end of the band from a day on: the sap of those before stands then.
func (p *plan) firing(from int, brix units.Brix, end func(season.Figure[units.Volume]) units.Volume) (out firing, err error) {
	s := p.given
	if out.power, err = p.power(brix); err != nil {
		return out, err
	}
	gathered := make([]pan.Gathering, len(p.all))
	for i, v := range p.all {
		gathered[i] = pan.Gathering{Volume: end(v), Brix: brix, Temperature: s.sapTemp}
	}
	stands := slices.Clone(p.stands)
	for i := range stands {
		stands[i].Brix, stands[i].Temperature = brix, s.sapTemp
		stands[i].Age += time.Duration(from) * day
	}
	for i, g := range gathered[:from] {
		stands = append(stands, pan.Standing{Gathering: g, Age: time.Duration(from-i) * day})
	}
	b := pan.Backlog{
		Storage: s.storage, Hours: s.evening, Warmup: s.warmup, Heat: out.power,
		Syrup: s.syrup, At: p.pressure, Keep: p.keep,
	}
	if out.Plan, err = b.PlanFrom(stands, gathered[from:]...); err == nil && from == 0 && len(gathered) <= mostTried {
		out.few, err = b.Fewest(stands, gathered)
	}
	if err != nil {
		return out, cli.ForArg(err, "evening",
			"Backlog.Storage", "storage", "Warmup", "warmup", "Keep", "keep", "Syrup", "syrup", "Temperature", "sap-temp",
			"Heat", "heat", "Volume", "taps", "start", "waiting", "Age", "waiting-age", "At", p.from)
	}
	out.syrup, err = s.syrupOf(out.Sugar)
	return out, err
}

// mostTried is how many days are tried for the fewest fires.
const mostTried = 10

// power is the heat that reaches the liquid. An evaporation is that of a pan fed
// with this sap as it boils.
func (p *plan) power(brix units.Brix) (units.Power, error) {
	s := p.given
	if p.flags.Given("heat") {
		return s.heat, nil
	}
	lot, err := sugar.NewLot(units.USGallon, brix, s.sapTemp)
	if err != nil {
		return 0, cli.For("sap-temp", err)
	}
	demand, err := boil.Heat(lot, s.syrup, p.pressure)
	if err != nil {
		return 0, cli.ForArg(err, "sap-temp", "to", "syrup", "pressure", p.from)
	}
	return s.pan.Power(demand)
}

// syrupOf is the volume of the syrup that holds an amount of sugar.
func (s *setup) syrupOf(held units.Mass) (units.Volume, error) {
	if held == 0 {
		return 0, nil
	}
	lot, err := sugar.NewLotByMass(s.syrup.Of(held), s.syrup, label)
	return lot.Volume(), err
}

// burn finds the wood. A learned efficiency is of the net heat at the wood's
// moisture; the range for home-built pans is of the gross heat of the species.
func (p *plan) burn() error {
	wood := p.given.wood
	stock := wood.Stock()
	burned, at := stock.Cord(), fuel.HomeBuiltPan()
	if wood.Learned {
		var err error
		if burned, err = stock.Net(fuel.DryMoisture(wood.Moisture)); err != nil {
			return cli.For("moisture", err)
		}
		at = fuel.Efficiency{Low: wood.Efficiency, High: wood.Efficiency, Basis: fuel.Net}
	}
	least, err := burned.Needed(p.low.Heat, at)
	if err != nil {
		return cli.For("efficiency", err)
	}
	most, err := burned.Needed(p.high.Heat, at)
	p.burns = [2]units.Volume{least.Low, most.High}
	return cli.For("efficiency", err)
}
