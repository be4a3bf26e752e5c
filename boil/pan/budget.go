package pan

import (
	"errors"
	"math"
	"time"

	"example.org/sapreckoner/internal/base/limit"
	"example.org/sapreckoner/units"
)

// Budget is what a day's boil may take: a clock by which it is done, of 0 to 14
// days, heat in the wood that is left, of 0 to 1e15 J, or both. A zero Heat is wood
// without end.
type Budget struct {
	Done time.Duration // by the clock of the [Day]: the end of the boil, with its coals
	Heat units.Energy  // that reaches the liquid: the wood's times the efficiency
}

// Fit is what of a day's sap a [Budget] has room for: see [Rig.Fits].
type Fit struct {
	Share units.Share // of every load; all of it if it fits
	Outcome
}

// ErrNoRoom is that of [Rig.Fits] and [Rig.LightBy]: not even the least boil is done
// by then, or on so little wood. It comes with a [*units.RangeError].
var ErrNoRoom = errors.New("there is no room for a boil")

// What a budget may be.
var (
	budgetDone = limit.Range{Arg: "Budget.Done", What: "time to be done", Low: 0, High: longestDay.Hours(), Unit: "h",
		Below: dayHours.Below, Above: dayHours.Above}
	budgetHeat = limit.Range{Arg: "Budget.Heat", What: "heat of the wood that is left", Low: 0, High: 1e15, Unit: "J",
		Below: "leave it zero if there is wood enough", Above: "check its unit"}
	budgetSap = limit.Range{Arg: "Day.Sap", What: "sap", Low: 1e-6, High: sapVolume.High, Unit: "L", Per: float64(units.Liter),
		Below: "without sap nothing is to be fitted"}
)

// fitStep is to what share of the sap the fit is found.
const fitStep = 1e-5

// Fits tells how much of the day's sap can be boiled down within a budget, as a
// share of every load, and what comes of that. The Out of the day does not count:
// the fire burns until the pans are low or a kettle is emptied. What is left of
// the sap stays in the tank, and [Outcome.SapLeft] does not count it.
//
// Range: as of [Rig.Run] and [Budget]; sap that covers the pans. If the budget has
// no room for as much as that, it is [ErrNoRoom]. Uncertainty: that of the rig's
// Heat, in proportion, and of that in the wood.
//
// Method: [Rig.Run] forwards, and a search for the share, to 1e-5 of the sap. Check
// value: 66 US gallons of sap of 2 Brix and 40 F in 5 hours of 114,800 Btu/h, down
// to an inch over 12 ft2 (computed: a gallon takes 1,430 Btu to the boil and 8,090
// to boil off, and 7.2 stay).
func (r Rig) Fits(d Day, b Budget) (Fit, error) {
	const fn = "pan.Rig.Fits"
	if err := budgetDone.Check(fn, b.Done.Hours()); err != nil {
		return Fit{}, err
	}
	if err := budgetHeat.Check(fn, float64(b.Heat)); err != nil {
		return Fit{}, err
	}
	if err := d.bringsSap(fn); err != nil {
		return Fit{}, err
	}
	d.Out = longestDay
	o, err := r.follow(fn, d, 0, nil)
	if err != nil {
		return Fit{}, err
	}
	if o.neverLit() {
		return Fit{}, tooLittle(fn, &d)
	}
	if b.over(&o) <= 0 {
		return Fit{Share: units.Whole, Outcome: o}, nil
	}
	loads := d.Sap
	boil := func(share float64) float64 {
		if err != nil {
			return math.NaN()
		}
		d.Sap = make([]Sap, len(loads))
		for i, s := range loads {
			s.Volume *= units.Volume(share)
			d.Sap[i] = s
		}
		o, err = r.follow(fn, d, 0, nil)
		return b.over(&o)
	}
	low, high := 0.0, 1.0
	// The boil grows with its sap, though a draw between two strengths may make
	// it jump: halving finds an end on the safe side of a jump.
	for high-low > fitStep && err == nil {
		if middle := (low + high) / 2; boil(middle) > 0 {
			high = middle
		} else {
			low = middle
		}
	}
	if boil(low); o.neverLit() {
		boil(high) // the least that covers the pans
		if err == nil {
			return Fit{}, b.noRoom(fn, &o)
		}
	}
	if err != nil {
		return Fit{}, err
	}
	return Fit{Share: units.FractionShare(low), Outcome: o}, nil
}

// neverLit reports whether the sap never covered the pans, so that the fire waited
// all the time.
func (o *Outcome) neverLit() bool { return o.Burned == 0 && o.Heat == 0 }

func tooLittle(fn string, d *Day) error {
	var sum units.Volume
	for _, s := range d.Sap {
		sum += s.Volume
	}
	e := budgetSap.CheckAs(fn, budgetSap.Arg, math.NaN()).(*units.RangeError)
	e.Value, e.Hint = sum.Liters(), "it does not cover the pans to their safe depth: wait for more, or use a smaller pan"
	return e
}

// over tells by how much an outcome is over the budget, in hours of the fire or
// parts of the wood. A fire that never burns is not over it.
func (b *Budget) over(o *Outcome) float64 {
	if o.neverLit() {
		return -1
	}
	late := (o.Ended - b.Done).Hours()
	if b.Heat == 0 {
		return late
	}
	return max(late, float64((o.Heat+o.ToCome)/b.Heat)-1)
}

func (b *Budget) noRoom(fn string, o *Outcome) error {
	e := &units.RangeError{Func: fn, Arg: budgetDone.Arg, What: budgetDone.What, Value: b.Done.Hours(), Low: clockUp(o.Ended), High: budgetDone.High, Unit: "h",
		Hint: "the pans alone take longer: light earlier, or boil on another day"}
	if o.Ended <= b.Done {
		e = &units.RangeError{Func: fn, Arg: budgetHeat.Arg, What: budgetHeat.What, Value: float64(b.Heat), Low: float64(o.Heat + o.ToCome), High: budgetHeat.High, Unit: "J",
			Hint: "the pans alone take more: get wood first"}
	}
	return &limit.Outcome{RangeError: e, Err: ErrNoRoom}
}

// clockUp is a time in hours as a message quotes it, on the side that is accepted.
func clockUp(t time.Duration) float64 { return math.Ceil(t.Hours()*100) / 100 }

func (d *Day) bringsSap(fn string) error {
	var sum units.Volume
	for i := range d.Sap {
		if err := d.Sap[i].check(fn, "Day.Sap", i); err != nil {
			return err
		}
		sum += d.Sap[i].Volume
	}
	return budgetSap.Check(fn, float64(sum))
}

// LightBy returns the latest lighting with which all of the day's sap is boiled
// down by a clock, and what comes of it: the day turned round. Light and Out of
// the day do not count.
//
// Range: as of [Rig.Run]; done up to 14 days. If lighting at 0, the first of the
// day's times, is too late already, it is [ErrNoRoom]. Uncertainty: that of Heat: take
// an hour and more for the arch to warm and for what goes wrong.
//
// Method: [Rig.Run] forwards, and a search for the lighting, to a second. Check
// value: two hours before, for a boil that takes two hours.
func (r Rig) LightBy(d Day, done time.Duration) (time.Duration, Outcome, error) {
	const fn = "pan.Rig.LightBy"
	if err := budgetDone.CheckAs(fn, "done", done.Hours()); err != nil {
		return 0, Outcome{}, err
	}
	if err := d.bringsSap(fn); err != nil {
		return 0, Outcome{}, err
	}
	d.Out = longestDay
	var o Outcome
	var err error
	late := func(light time.Duration) time.Duration {
		if err == nil {
			d.Light = light
			o, err = r.follow(fn, d, 0, nil)
		}
		return o.Ended - done
	}
	over := late(0)
	if err != nil {
		return 0, Outcome{}, err
	}
	if o.neverLit() {
		return 0, Outcome{}, tooLittle(fn, &d)
	}
	if over > 0 {
		return 0, Outcome{}, &limit.Outcome{Err: ErrNoRoom, RangeError: &units.RangeError{Func: fn, Arg: "done", What: budgetDone.What,
			Value: done.Hours(), Low: clockUp(o.Ended), High: budgetDone.High, Unit: "h", Hint: "light the day before, or boil a part of it"}}
	}
	low, high := time.Duration(0), done
	try := func(light time.Duration) {
		if late(light) <= 0 {
			low = max(low, light)
		} else {
			high = min(high, light)
		}
	}
	// With all sap there in time the boil moves with its lighting, and this is the
	// answer.
	try(-over - time.Millisecond)
	try(-over + time.Second/2)
	for high-low > time.Second && err == nil {
		try(low + (high-low)/2)
	}
	late(low)
	if err != nil {
		return 0, Outcome{}, err
	}
	return low, o, nil
}
