package boil

import (
	"math"

	"example.org/sapreckoner/density"
	"example.org/sapreckoner/internal/base/limit"
	"example.org/sapreckoner/sugar"
	"example.org/sapreckoner/units"
)

// heatSteps is the number of steps of strength between sap and syrup, equal in
// ratio. At this number the total is within 2e-6 of its limit from sap to syrup.
const heatSteps = 24

// Strengths between which the heat is known, in Brix.
const heatLow, heatHigh = 0.1, 85

// What the heat of a boil may be asked for.
var (
	heatFrom = limit.Range{Arg: "sap", What: "sugar content of the sap", Low: heatLow, High: heatHigh, Unit: "Brix",
		Below: "that is water: no syrup comes of it",
		Above: "that is candy already"}
	heatTarget = limit.Range{Arg: "to", What: "target", Low: heatLow, High: heatHigh, Unit: "Brix",
		Below: "that is water: name the strength to boil to",
		Above: "the specific heat is not known beyond: the last step of hard candy takes little heat"}
)

// A HeatDemand is what it takes to boil a lot of sap down: the water that must
// go off and the heat that must get into the liquid. What the fire must give is
// more: see [example.org/sapreckoner/boil/fuel.Efficiency].
type HeatDemand struct {
	From, To units.Brix
	Sugar    units.Mass   // it stays in the pan
	Water    units.Mass   // boiled off
	Sensible units.Energy // warms the sap to its boiling point
	Latent   units.Energy // turns the water into steam
	Climb    units.Energy // warms what is left as its boiling point climbs
}

// Total returns all the heat that must get into the liquid.
func (h HeatDemand) Total() units.Energy { return h.Sensible + h.Latent + h.Climb }

// Syrup returns the mass that is left.
func (h HeatDemand) Syrup() units.Mass {
	if h.Sugar == 0 {
		return 0
	}
	return h.To.Of(h.Sugar)
}

// PerWater returns the heat for a mass of water boiled off, warming of the sap
// included: the steady need of a pan that is fed as it boils. It is NaN without
// water to boil.
func (h HeatDemand) PerWater() units.SpecificEnergy {
	return units.SpecificEnergy(float64(h.Total()) / float64(h.Water))
}

// PreheaterCeiling returns the share of the heat that warms the sap to its
// boiling point: the most that a preheater without a fire of its own can save,
// and only if it brings the sap to the boil. See
// [example.org/sapreckoner/boil/fuel.Effect.Apply].
//
// Check value: 15.3 percent for 40 F sap of 2 Brix to 66 (computed; published
// gains of heat exchangers are 15 to 17 percent, USDA Forest Service).
func (h HeatDemand) PreheaterCeiling() units.Share {
	return units.FractionShare(float64(h.Sensible) / float64(h.Total()))
}

// Per returns the heat for a volume of the finished syrup, measured at a
// temperature:
//
//	perGallon, err := demand.Per(units.USGallon, units.Celsius(20))
//
// Range: volumes of 0 to 1e15 m3, targets of 0.1 to 85 Brix, 0 to 110 C, and a
// demand that is not empty.
//
// Check value: see [Heat].
func (h HeatDemand) Per(syrup units.Volume, at units.Temperature) (units.Energy, error) {
	const fn = "boil.HeatDemand.Per"
	nan := units.Energy(math.NaN())
	if err := h.check(fn); err != nil {
		return nan, err
	}
	if err := heatTarget.CheckAs(fn, "HeatDemand.To", float64(h.To)); err != nil {
		return nan, err
	}
	if err := amountRange.Check(fn, float64(syrup)); err != nil {
		return nan, err
	}
	rho, err := density.Solution(h.To, at)
	if err != nil {
		return nan, units.Under(fn, err)
	}
	return units.Energy(float64(h.Total()) * float64(rho.Mass(syrup)) / float64(h.Syrup())), nil
}

// What a demand may hold. A crumb of sap is none.
var (
	demandMass  = limit.Range{Arg: "HeatDemand.Water", What: "water to boil off", Low: 1e-9, High: 1e15, Unit: "kg", Below: emptyDemand, Above: emptyDemand}
	demandSugar = limit.Range{Arg: "HeatDemand.Sugar", What: "sugar of the demand", Low: demandMass.Low, High: demandMass.High, Unit: "kg", Below: emptyDemand, Above: emptyDemand}
	demandHeat  = limit.Range{Arg: "HeatDemand.Latent", What: "heat of the demand", Low: 1e-9, High: 1e24, Unit: "J", Below: emptyDemand, Above: emptyDemand}
)

const emptyDemand = "reckon it for a lot with sap in it, and a stronger target"

// Check returns nil if there is water to boil, and it is told what it costs; a
// [*units.RangeError] otherwise, as of the zero HeatDemand.
func (h HeatDemand) Check() error { return h.check("boil.HeatDemand.Check") }

func (h HeatDemand) check(fn string) error {
	if err := demandMass.Check(fn, h.Water.Kilograms()); err != nil {
		return err
	}
	if err := demandSugar.Check(fn, h.Sugar.Kilograms()); err != nil {
		return err
	}
	return demandHeat.CheckAs(fn, h.heat(), h.Total().Joules())
}

// heat names the heat that is to blame if the total is none.
func (h HeatDemand) heat() string {
	switch {
	case h.Sensible != h.Sensible:
		return "HeatDemand.Sensible"
	case h.Climb != h.Climb:
		return "HeatDemand.Climb"
	}
	return demandHeat.Arg
}

// amountRange holds amounts that are counted, whatever their unit.
var amountRange = limit.Range{Arg: "syrup", What: "amount", Low: 0, High: 1e15,
	Below: "an amount cannot be less than none",
	Above: "check its unit: there is no such heap"}

// Heat returns the heat that boils a lot of sap down to a strength under the
// pressure at the pan, for a gallon of syrup ([HeatDemand.Per]) or for the sap
// of a day.
//
// The sap is warmed from its temperature to its boiling point with its specific
// heat on the way; then water goes off at the boiling point of what is left,
// which climbs. The heat of diluting sugar is left out: it is small. So is
// everything that does not get into the liquid: the cold pan, the fire, the
// open surface, which the efficiency holds.
//
// Range: sap of 0.1 to 85 Brix, not warmer than its boiling point; targets from
// there to 85 Brix; 20 to 120 kPa. An empty lot takes no heat. Uncertainty: 0.5
// percent, of the specific heat for the most part.
//
// Source: a balance of mass and heat with [LatentHeat], [SyrupPoint],
// [example.org/sapreckoner/sugar.Enthalpy] and its specific heat. Check value:
// 404,680 Btu for a US gallon of 66.0 Brix from 2.0 Brix at 40 F and 1 atm,
// where 353.22 lb of water go off, if all boils at 99.974 C (computed); within
// 0.1 percent of that as it is done here. Ohio State University Extension
// prints 400,000 Btu.
//
// Cites ohio-extension.
func Heat(sap sugar.Lot, to units.Brix, pressure units.Pressure) (HeatDemand, error) {
	const fn = "boil.Heat"
	if err := panPressure.Check(fn, pressure.Kilopascals()); err != nil {
		return HeatDemand{}, err
	}
	if err := heatTarget.Check(fn, float64(to)); err != nil {
		return HeatDemand{}, err
	}
	if sap.Empty() {
		return HeatDemand{}, nil
	}
	from := sap.Brix()
	if err := heatFrom.Check(fn, float64(from)); err != nil {
		return HeatDemand{}, err
	}
	if limit.Same(to, from) { // it is there already: the heat is that of warming
		to = from
	}
	if !(to >= from) {
		return HeatDemand{}, &units.RangeError{Func: fn, Arg: heatTarget.Arg, What: heatTarget.What, Value: float64(to), Low: float64(from), High: heatTarget.High, Unit: "Brix",
			Hint: "the sap is stronger than that already: boiling never thins"}
	}
	start, err := pointOf(fn, sugar.Solute{}, from, pressure)
	if err != nil {
		return HeatDemand{}, err
	}
	if !(start.Sub(sap.Temperature()) >= -limit.HairC) {
		return HeatDemand{}, &units.RangeError{Func: fn, Arg: "sap", What: "temperature of the sap", Value: sap.Temperature().Celsius(),
			Low: 0, High: start.Celsius(), Unit: "C", Hint: "it would boil at this pressure: check Fahrenheit against Celsius"}
	}
	cold, err := sugar.Enthalpy(from, sap.Temperature())
	if err != nil {
		return HeatDemand{}, units.Under(fn, err)
	}
	hot, err := sugar.Enthalpy(from, start)
	if err != nil {
		return HeatDemand{}, units.Under(fn, err)
	}
	h := HeatDemand{From: from, To: to, Sugar: sap.Sugar(), Water: sap.Mass() - to.Of(sap.Sugar()),
		Sensible: (hot - cold).Energy(sap.Mass())}
	if h.Latent, h.Climb, err = boilDown(fn, sap.Sugar(), from, to, start, pressure); err != nil {
		return HeatDemand{}, err
	}
	return h, nil
}

// boilDown returns the heat between two strengths of a boil: that of the steam,
// and that of warming what is left from the boiling point start.
func boilDown(fn string, solids units.Mass, from, to units.Brix, start units.Temperature, p units.Pressure) (latent, climb units.Energy, err error) {
	ratio := math.Pow(float64(to/from), 1.0/heatSteps)
	b, t := from, start
	for i := range heatSteps {
		next := b * units.Brix(ratio)
		if i == heatSteps-1 {
			next = to
		}
		u, err := pointOf(fn, sugar.Solute{}, next, p)
		if err != nil {
			return 0, 0, err
		}
		step := u.Sub(t)
		middle := t.Add(step / 2)
		steam, err := LatentHeat(middle)
		if err != nil {
			return 0, 0, units.Under(fn, err)
		}
		c, err := sugar.SpecificHeat((b+next)/2, middle)
		if err != nil {
			return 0, 0, units.Under(fn, err)
		}
		before, after := b.Of(solids), next.Of(solids)
		latent += steam.Energy(before - after)
		climb += c.Energy((before+after)/2, step)
		b, t = next, u
	}
	return latent, climb, nil
}

// More returns the ceiling of a preheater that takes its heat from steam or
// smoke, as the water that the same fire boils off beyond: with the sap fed at
// its boiling point only steam is left to make.
//
// Check value: 18.1 percent where [HeatDemand.PreheaterCeiling] is 15.3
// (computed).
func (h HeatDemand) More() units.Share {
	s := h.PreheaterCeiling().Fraction()
	return units.FractionShare(s / (1 - s))
}
