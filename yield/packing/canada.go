package packing

import (
	"math"

	"example.org/sapreckoner/density"
	"example.org/sapreckoner/internal/base/limit"
	"example.org/sapreckoner/internal/base/shelf"
	"example.org/sapreckoner/units"
)

// Limits of a lot of containers.
const (
	fewestSampled = 2
	mostSampled   = 125 // the rule prints no more
	largestLot    = 1e7 // containers
)

// CanadianSample returns how many containers of a lot are weighed, taken at
// random: all to 10, a quarter and at least 10 to 128, then 32, 64 above 4000,
// 96 above 8000 and 125 above 12,000.
//
// Range: 2 to 10,000,000 containers. Source: SOR/2018-108, s. 200 and Schedule 5.
func CanadianSample(lot int) (int, error) {
	if err := limit.InAs("packing.CanadianSample", "lot", "containers in the lot", float64(lot), fewestSampled, largestLot, "", "count what was filled from one batch on one day; a single jar is held against its label"); err != nil {
		return 0, err
	}
	switch {
	case lot <= 10:
		return lot, nil
	case lot <= 128:
		return max(10, (lot+3)/4), nil
	case lot <= 4000:
		return 32, nil
	case lot <= 8000:
		return 64, nil
	case lot <= 12_000:
		return 96, nil
	}
	return mostSampled, nil
}

// tolerances of Schedule 4 in mL: a part of the label or an amount, to each label
// included.
var tolerances = [...]struct{ upTo, part, amount float64 }{
	{50, 0.09, 0}, {100, 0, 4.5}, {200, 0.045, 0}, {300, 0, 9}, {500, 0.03, 0}, {1000, 0, 15}, {10_000, 0.015, 0}, {15_000, 0, 150}, {math.Inf(1), 0.01, 0},
}

// CanadianTolerance returns what a single container may be short of its label by
// the metric table of Canada's rule.
//
// Range: labels from 1 mL to 250 L. Source: SOR/2018-108, Schedule 4. Check value:
// 15 mL for 946 mL.
func CanadianTolerance(stated units.Volume) (units.Volume, error) {
	if err := litersAs("packing.CanadianTolerance", "stated", "label", stated, minContainer, maxContainer, containerHint); err != nil {
		return nan[units.Volume](), err
	}
	return canadianTolerance(stated), nil
}

func canadianTolerance(stated units.Volume) units.Volume {
	ml := stated.Milliliters()
	for _, t := range tolerances {
		if ml <= t.upTo || limit.Same(ml, t.upTo) {
			return units.Milliliters(t.part*ml + t.amount)
		}
	}
	return nan[units.Volume]()
}

// A LotRule is what Canada's rule holds a sample of so many containers against.
type LotRule struct {
	T          float64 // Student's, as printed: the spread times T/sqrt(n) is the benefit of the doubt
	ShortFails int     // so many that are short by more than the tolerance fail the lot
}

// studentT is printed for samples of 2 to 32.
var studentT = [...]float64{
	63.657, 9.925, 5.841, 4.604, 4.032, 3.707, 3.499, 3.355, 3.25, 3.169, 3.106, 3.055, 3.012, 2.977, 2.947, 2.921,
	2.898, 2.878, 2.861, 2.845, 2.831, 2.819, 2.807, 2.797, 2.787, 2.779, 2.771, 2.763, 2.756, 2.75, 2.746,
}

// studentMore is printed for larger samples.
var studentMore = [...]struct{ n, t float64 }{{32, 2.746}, {64, 2.657}, {96, 2.634}, {125, 2.615}}

// shortFails are the samples up to which so many short containers fail a lot.
var shortFails = [...]int{8, 20, 32, 50, 65, 80, 102, 125}

// CanadianLotRule returns the limits for a sample of n containers. Between 32,
// 64, 96 and 125 T is interpolated in 120/n, as the rule says.
//
// Range: 2 to 125. Source: SOR/2018-108, Schedule 5. Check value: 2.746 and 3
// short for 32.
func CanadianLotRule(n int) (LotRule, error) {
	if err := limit.InAs("packing.CanadianLotRule", "n", "containers weighed", float64(n), fewestSampled, mostSampled, "", "the rule is for samples of 2 to 125"); err != nil {
		return LotRule{}, err
	}
	return lotRule(n), nil
}

func lotRule(n int) LotRule {
	r := LotRule{ShortFails: 1}
	for n > shortFails[r.ShortFails-1] {
		r.ShortFails++
	}
	if n <= 32 {
		r.T = studentT[n-fewestSampled]
		return r
	}
	k := 1
	for float64(n) > studentMore[k].n {
		k++
	}
	a, b := studentMore[k-1], studentMore[k]
	along := (120/a.n - 120/float64(n)) / (120/a.n - 120/b.n)
	r.T = a.t + along*(b.t-a.t)
	return r
}

// A LotCheck is what weighing a sample told by Canada's rule. The lot passes
// unless it fails in one of three ways.
type LotCheck struct {
	Needed     int          // containers that the rule samples
	Average    units.Volume // content at 20 C
	Spread     units.Volume // standard deviation of the contents
	Least      units.Volume
	Doubtless  units.Volume // the average with the benefit of the doubt: Average + Spread T/sqrt(n)
	Tolerance  units.Volume
	Short      int // by more than the tolerance
	ShortFails int // so many fail the lot
	FarShort   int // by more than twice the tolerance: two fail the lot

	AverageFails, ShortFail, FarShortFail bool
	Passes                                bool
}

// CheckCanadianLot holds a lot of containers against their label by the rule of
// Canada: it fails if the average, with the benefit of the doubt, is below the
// label, if too many are short by more than the tolerance, or if two are by more
// than twice. Where every container was weighed there is no doubt to benefit
// from.
//
// Weights are net, of the syrup alone on a scale in air, of at least
// [CanadianSample] containers taken at random from a lot of so many. The
// inspector's own measurement counts, and the current text of the law.
//
// Range: label from 1 mL to 250 L, 0 to 85 Brix, lot from 2 to 10,000,000, as many
// weights as the sample needs to 125, 0 to 1000 kg each.
//
// Source: SOR/2018-108, s. 200, Schedules 4 and 5.
func CheckCanadianLot(stated units.Volume, brix units.Brix, lot int, net []units.Mass) (LotCheck, error) {
	const fn = "packing.CheckCanadianLot"
	if err := litersAs(fn, "stated", "label", stated, minContainer, maxContainer, containerHint); err != nil {
		return LotCheck{}, err
	}
	rho, err := density.Solution(brix, shelf.Temperature())
	if err != nil {
		return LotCheck{}, units.Under(fn, err)
	}
	needed, err := CanadianSample(lot)
	if err != nil {
		return LotCheck{}, units.Under(fn, err)
	}
	if err := limit.InAs(fn, "net", "containers weighed", float64(len(net)), float64(needed), float64(min(lot, mostSampled)), "", "weigh as many as the rule samples, taken at random"); err != nil {
		return LotCheck{}, err
	}
	inAir, n := density.InAir(rho), float64(len(net))
	rule := lotRule(len(net))
	c := LotCheck{Needed: needed, Tolerance: canadianTolerance(stated), ShortFails: rule.ShortFails, Least: units.Volume(math.Inf(1))}
	contents := func(i int) units.Volume { return net[i].Volume(inAir) }
	for i, m := range net {
		if err := limit.InItem(fn, "net", i, "", "net weight", m.Kilograms(), 0, maxNet, "kg", "weigh the container full and take off its empty weight"); err != nil {
			return LotCheck{}, err
		}
		v := contents(i)
		c.Average += v / units.Volume(n)
		c.Least = min(c.Least, v)
		c.Short += below(v, stated-c.Tolerance)
		c.FarShort += below(v, stated-2*c.Tolerance)
	}
	squares := 0.0
	for i := range net {
		off := float64(contents(i) - c.Average)
		squares += off * off
	}
	c.Spread = units.Volume(math.Sqrt(squares / (n - 1)))
	c.Doubtless = c.Average
	if len(net) < lot {
		c.Doubtless += c.Spread * units.Volume(rule.T/math.Sqrt(n))
	}
	c.AverageFails = below(c.Doubtless, stated) == 1
	c.ShortFail = c.Short >= c.ShortFails
	c.FarShortFail = c.FarShort >= 2
	c.Passes = !(c.AverageFails || c.ShortFail || c.FarShortFail)
	return c, nil
}

// below is 1 if a volume is less than another by more than a hair, and 0 if not.
func below(v, limitOf units.Volume) int {
	if v < limitOf && !limit.Same(v, limitOf) {
		return 1
	}
	return 0
}
