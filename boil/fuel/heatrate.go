package fuel

import (
	"example.org/sapreckoner/boil"
	"example.org/sapreckoner/internal/base/limit"
	"example.org/sapreckoner/units"
)

var powerRange = limit.Range{Arg: "power", Low: 0, High: 1e9, Unit: "W",
	Below: "a fire gives no less than no heat",
	Above: "check the unit of the power"}

// HeatRate returns the water that a fire boils off in a pan fed with cold sap: a
// burner's rating, or [Fuel.Of] the wood of an hour, times the efficiency, over
// the heat that a pound of water takes with the warming of its sap. Give a
// demand of [boil.Heat] for the sap and the syrup of the day, and a power on the
// basis of the efficiency; for heat that is in the sap already, such as that of
// an element under its surface, give the zero [Efficiency] and [Delivered].
//
// Range: 0 to 1e9 W; a demand with water to boil. Uncertainty: that of the
// efficiency. An efficiency on another basis gives a [*BasisError].
//
// Check value: 87.3 lb in an hour of 100,000 Btu/h delivered, 2 Brix sap at 40 F
// to 66 and 1 atm, where 353.22 lb take 404,680 Btu (computed).
func HeatRate(power units.Power, on Basis, demand boil.HeatDemand, at Efficiency) (units.Span[units.MassRate], error) {
	const fn = "fuel.HeatRate"
	if err := powerRange.Check(fn, power.Watts()); err != nil {
		return limit.NoSpan[units.MassRate](), err
	}
	if err := units.Under(fn, demand.Check()); err != nil {
		return limit.NoSpan[units.MassRate](), err
	}
	share, err := at.of(fn, on)
	if err != nil {
		return limit.NoSpan[units.MassRate](), err
	}
	whole := units.MassRate(float64(power) / float64(demand.PerWater()))
	return units.Span[units.MassRate]{Low: whole * units.MassRate(share.Low), Middle: whole * units.MassRate(share.Middle), High: whole * units.MassRate(share.High)}, nil
}
