package packing

import (
	"math"

	"example.org/sapreckoner/density"
	"example.org/sapreckoner/internal/base/limit"
	"example.org/sapreckoner/internal/base/shelf"
	"example.org/sapreckoner/units"
)

// maxNet is more than any container of [Container.Fill] holds, in kg.
const maxNet = 1000.0

// A NetCheck is what weighing a sample of filled containers told.
type NetCheck struct {
	LabelWeight units.Mass   // what the label volume weighs in air
	Average     units.Volume // average content at 68 F
	Least       units.Volume // content of the lightest
	Short       int          // containers short of the label by more than the allowance
	Passes      bool         // average at or above the label, and Short no more than allowed
}

// CheckNet compares weighed containers with their label: the average must not
// fall below it, and no more than allowedShort of the sample may fall short of it
// by more than allowance.
//
// Weights are net, of the syrup alone on a scale in air. The size of the
// sample, what a single container may lack and how many may lack it are law and
// differ by country and size: the inspector's table gives allowance and
// allowedShort.
//
// Range: label from 1 mL to 250 L, 0 to 85 Brix, allowance from 0 to the label,
// 1 to 100,000 weights from 0 to 1000 kg, allowedShort from 0 to their number.
// Uncertainty: 0.01 percent from the density, and that of the scale and the
// Brix: 0.1 Brix is 0.05 percent.
//
// Check value: a US gallon of 66.9 Brix weighs 11.0759 lb (computed).
//
// Cites canada-net-quantity, cfr-101.7.
func CheckNet(stated units.Volume, brix units.Brix, allowance units.Volume, allowedShort int, net []units.Mass) (NetCheck, error) {
	const fn = "packing.CheckNet"
	if err := litersAs(fn, "stated", "label", stated, minContainer, maxContainer, containerHint); err != nil {
		return NetCheck{}, err
	}
	if err := limit.Liters(fn, "allowance", allowance, 0, stated, "what the law lets a single container lack"); err != nil {
		return NetCheck{}, err
	}
	if err := limit.Entries(fn, "net", len(net)); err != nil {
		return NetCheck{}, err
	}
	if err := limit.InAs(fn, "allowedShort", "number allowed short", float64(allowedShort), 0, float64(len(net)), "", "how many of the sample may be short"); err != nil {
		return NetCheck{}, err
	}
	rho, err := density.Solution(brix, shelf.Temperature())
	if err != nil {
		return NetCheck{}, units.Under(fn, err)
	}
	inAir := density.InAir(rho)
	sum, least := 0.0, math.Inf(1)
	check := NetCheck{LabelWeight: inAir.Mass(stated)}
	for i, m := range net {
		if err := limit.InItem(fn, "net", i, "", "net weight", m.Kilograms(), 0, maxNet, "kg", "weigh the container full and take off its empty weight"); err != nil {
			return NetCheck{}, err
		}
		v := m.Volume(inAir).CubicMeters()
		sum, least = sum+v, math.Min(least, v)
		if law := (stated - allowance).CubicMeters(); v < law && !limit.Same(v, law) {
			check.Short++
		}
	}
	check.Average = units.Volume(sum / float64(len(net)))
	check.Least = units.Volume(least)
	check.Passes = (check.Average >= stated || limit.Same(check.Average, stated)) && check.Short <= allowedShort
	return check, nil
}
