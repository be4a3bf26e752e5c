package pan

import (
	"math"
	"math/bits"

	"example.org/sapreckoner/internal/base/limit"
	"example.org/sapreckoner/units"
)

// fewestDays is how many days may be tried in every combination.
var fewestDays = limit.Range{Arg: "days", What: "number of days", Low: backlogDays.Low, High: 10,
	Below: backlogDays.Below,
	Above: "no forecast of sap reaches farther: plan ten days at a time"}

// Fewest is [Backlog.PlanFrom] with a fire on as few evenings as will do: which
// evenings of the week to keep for it. Nothing more spills and nothing waits
// longer past its keep than if there were a fire on every evening; among plans
// of as few evenings it takes the one that leaves the least sap, and then the
// one in which the least waits. Evenings without a fire have no Hours. Sap that
// need not be boiled yet may be left for the week after.
//
// Range: 1 to 10 days; the rest, and the uncertainty, as of [Backlog.PlanFrom]. A
// forecast of sap may miss by half (a guess): look again every morning.
//
// Method: every choice of evenings is planned. Check value: of three days of 30
// gallons, a keep of two days and an evening that boils 100, one evening, the
// last.
func (b Backlog) Fewest(start []Standing, days []Gathering) (Plan, error) {
	const fn = "pan.Backlog.Fewest"
	if err := fewestDays.Check(fn, float64(len(days))); err != nil {
		return Plan{}, err
	}
	h, err := b.ready(fn, start, days)
	if err != nil {
		return Plan{}, err
	}
	n := len(days)
	every := uint(1)<<n - 1
	on := func(evenings uint) (Plan, error) {
		return b.planOn(fn, h, start, days, func(i int) bool { return evenings>>i&1 == 1 })
	}
	best, err := on(every)
	if err != nil {
		return Plan{}, err
	}
	spilled, overdue, _ := best.toll()
	crumb := crumbs * b.Storage // what rounding may leave
	fewest := best.fires()
	left, waiting := units.Volume(math.Inf(1)), units.Volume(math.Inf(1))
	for count := 0; count <= fewest; count++ {
		for choice := range every + 1 {
			if bits.OnesCount(choice) != count {
				continue
			}
			p, err := on(choice)
			if err != nil {
				return Plan{}, err
			}
			s, o, w := p.toll()
			if s > spilled+crumb || o > overdue+crumb {
				continue
			}
			if less := p.LeftAfter - left; less < -crumb || less <= crumb && w < waiting {
				best, left, waiting, fewest = p, p.LeftAfter, w, count
			}
		}
	}
	return best, nil
}

// crumbs is the share of the tanks that counts as no sap.
const crumbs = 1e-9

// fires counts the evenings with a fire.
func (p *Plan) fires() (n int) {
	for i := range p.Evenings {
		if p.Evenings[i].Hours > 0 {
			n++
		}
	}
	return n
}

// toll sums what a plan costs: sap spilled, and over the evenings what is overdue
// and what waits.
func (p *Plan) toll() (spilled, overdue, waiting units.Volume) {
	for i := range p.Evenings {
		overdue += p.Evenings[i].Overdue
		waiting += p.Evenings[i].Waiting
	}
	return p.Spilled, overdue, waiting
}
