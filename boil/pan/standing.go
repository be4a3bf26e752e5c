package pan

import (
	"slices"
	"time"

	"example.org/sapreckoner/density"
	"example.org/sapreckoner/internal/base/limit"
	"example.org/sapreckoner/units"
)

// Standing is sap that stands in the tanks before the first day of a plan, and
// how long it has stood there since it was gathered.
type Standing struct {
	Gathering
	Age time.Duration
}

var standingAge = limit.Range{Arg: "Standing.Age", What: "age of the sap", Low: 0, High: backlogKeep.High, Unit: "h",
	Below: "sap is gathered before it stands",
	Above: backlogKeep.Above}

// PlanFrom is [Backlog.Plan] with sap in the tanks already: it takes the room of
// what comes, and its age counts against its keep. Among sap that is due at the
// same time the older is boiled first. It counts as of the first day in
// [Evening.First].
//
// Range: ages of 0 to 60 days, no more sap than the tanks hold; the rest, the
// uncertainty and the method as of [Backlog.Plan].
func (b Backlog) PlanFrom(start []Standing, days ...Gathering) (Plan, error) {
	return b.plan("pan.Backlog.PlanFrom", start, days)
}

func (b *Backlog) checkStart(fn string, start []Standing) error {
	var sum units.Volume
	for i, s := range start {
		if err := b.checkSap(fn, "start", i, s.Gathering); err != nil {
			return err
		}
		if err := standingAge.CheckItem(fn, "start", i, "Age", s.Age.Hours()); err != nil {
			return err
		}
		sum += s.Volume
	}
	if !(sum <= b.Storage || limit.Same(sum, b.Storage)) {
		return &units.RangeError{Func: fn, Arg: "start", What: "sap that stands there", Value: sum.Liters(), Low: 0, High: b.Storage.Liters(), Unit: "L",
			Hint: "the tanks hold no more: count all of them"}
	}
	return nil
}

// waiting is sap of one day in the tanks.
type waiting struct {
	day    int
	born   float64 // day on which it was gathered
	due    float64 // day by the evening of which it should be boiled
	volume float64 // m3
	sugar  float64 // kg/m3
	heat   float64 // J/m3
}

// into puts sap into the queue. Among what is due at the same time the older comes
// first, and what came first if they are as old.
func (lot waiting) into(queue []waiting) []waiting {
	at, _ := slices.BinarySearchFunc(queue, lot, func(q, lot waiting) int {
		if q.due < lot.due || q.due == lot.due && q.born <= lot.born {
			return -1
		}
		return 1
	})
	return slices.Insert(queue, at, lot)
}

// lot makes what waits of the sap of a day, which was so old then.
func (b *Backlog) lot(fn string, h *hot, i int, age time.Duration, d Gathering) (waiting, error) {
	rho, err := density.Solution(d.Brix, d.Temperature)
	if err != nil {
		return waiting{}, units.Under(fn, err)
	}
	w := d.Brix.Fraction()
	feed, err := newFeed(h, w, d.Temperature.Celsius(), 0)
	if err != nil {
		return waiting{}, units.Under(fn, err)
	}
	keep := d.Keep
	if keep == 0 {
		keep = b.Keep
	}
	born := float64(i) - age.Hours()/24
	due := born + keep.Hours()/24
	if keep == 0 {
		due = born + 2*backlogDays.High // after all that has a clock
	}
	off := 1 - w/b.Syrup.Fraction()
	return waiting{
		day: i, born: born, due: due, volume: float64(d.Volume), sugar: w * float64(rho),
		heat: float64(rho) * (feed.lack + off*h.at(0).latent),
	}, nil
}
