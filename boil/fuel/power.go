package fuel

import (
	"example.org/sapreckoner/boil"
	"example.org/sapreckoner/internal/base/limit"
	"example.org/sapreckoner/units"
)

var powerRate = limit.Range{Arg: "rate", Low: 0, High: 1e3, Unit: "kg/s",
	Below: "a pan boils off no less than nothing",
	Above: "check the unit of the rate"}

// PowerFor returns the power of a fire that boils off so much water in a pan
// fed with cold sap: the inverse of [HeatRate], whose Low belongs to the High
// of the power, since the poorer fire needs more. Give [Delivered] and the zero
// [Efficiency] for what gets into the liquid, as
// [example.org/sapreckoner/boil/pan.Rig] takes it.
//
// Range: 0 to 1e3 kg/s; a demand with water to boil. Uncertainty: that of the
// efficiency. An efficiency on another basis gives a [*BasisError].
//
// Check value: 100,000 Btu/h delivered for 87.3 lb in an hour, 2 Brix sap at 40 F
// to 66 and 1 atm, where 353.22 lb take 404,680 Btu (computed).
func PowerFor(rate units.MassRate, on Basis, demand boil.HeatDemand, at Efficiency) (units.Span[units.Power], error) {
	const fn = "fuel.PowerFor"
	if err := powerRate.Check(fn, float64(rate)); err != nil {
		return limit.NoSpan[units.Power](), err
	}
	if err := units.Under(fn, demand.Check()); err != nil {
		return limit.NoSpan[units.Power](), err
	}
	share, err := at.of(fn, on)
	if err != nil {
		return limit.NoSpan[units.Power](), err
	}
	whole := units.Power(float64(demand.PerWater()) * float64(rate))
	return units.Span[units.Power]{Low: whole / units.Power(share.High), Middle: whole / units.Power(share.Middle), High: whole / units.Power(share.Low)}, nil
}
