package fuel

import (
	"example.org/sapreckoner/boil"
	"example.org/sapreckoner/internal/base/limit"
	"example.org/sapreckoner/units"
)

// An Effect is what a change to a rig was found to do: more water off with the
// same fuel, by Low to High. The effects of several do not add up.
//
// Cites forest-service-evaporators, osti-5036199.
type Effect struct {
	Change    string
	Low, High units.Share
	// Preheats says that it only warms the sap: physics holds it at
	// [boil.HeatDemand.More].
	Preheats bool
	Obtained string
	Source   string
	Note     string
}

// Effects returns the published effects of changes to a rig. None is published
// for a hood alone: it carries the steam out, and pays by what it feeds, a
// preheater or clean condensate. What a better draft can do ends where the best
// evaporators do: see [BuiltEvaporator].
func Effects() []Effect {
	return []Effect{
		{"preheater from steam, small wood rig", 8 * units.Percent, 8 * units.Percent, true, "read", "DOE grant final report OSTI 5036199",
			"measured on a rig; the hood that gathers the steam is part of it"},
		{"preheater, forced draft and stack-heated air", 27 * units.Percent, 27 * units.Percent, false, "read", "DOE grant final report OSTI 5036199",
			"all three together, the same wood"},
		{"heat exchanger", 15 * units.Percent, 17 * units.Percent, true, "read", "USDA Forest Service, heat exchangers report (abstract)",
			"printed as a gain of efficiency"},
	}
}

var effectRange = limit.Range{Arg: "rate", What: "evaporation", Low: 0, High: 1e6, Unit: "kg/s",
	Below: "a pan boils off no less than nothing",
	Above: "check the unit of the rate"}

var shareRange = limit.Range{Arg: "Effect.Low", What: "effect of the change", Low: 0, High: 1000, Unit: "%",
	Below: "take a published effect, or say how much more water goes off",
	Above: "take a published effect, or say how much more water goes off"}

// Apply returns what the evaporation of a boil becomes with the change; what
// only warms the sap is held at [boil.HeatDemand.More] of the boil.
//
// Range: evaporation of 0 to 1e6 kg/s, effects of 0 to 1000 percent with Low no
// more than High, and for what preheats a demand that is not empty. Check
// value: 8 percent more of 100 lb/h is 108 lb/h.
func (e Effect) Apply(rate units.MassRate, demand boil.HeatDemand) (units.Span[units.MassRate], error) {
	const fn = "fuel.Effect.Apply"
	if err := effectRange.Check(fn, float64(rate)); err != nil {
		return limit.NoSpan[units.MassRate](), err
	}
	if err := shareRange.Check(fn, float64(e.Low)); err != nil {
		return limit.NoSpan[units.MassRate](), err
	}
	if err := limit.WithinAs(fn, "Effect.High", "effect of the change, high end", e.High, e.Low, units.Share(shareRange.High), units.Percent, "%", shareRange.Above); err != nil {
		return limit.NoSpan[units.MassRate](), err
	}
	low, high := e.Low, e.High
	if e.Preheats {
		if err := units.Under(fn, demand.Check()); err != nil {
			return limit.NoSpan[units.MassRate](), err
		}
		low, high = min(low, demand.More()), min(high, demand.More())
	}
	return units.Span[units.MassRate]{
		Low:    rate * units.MassRate(1+low.Fraction()),
		Middle: rate * units.MassRate(1+(low+high).Fraction()/2),
		High:   rate * units.MassRate(1+high.Fraction()),
	}, nil
}
