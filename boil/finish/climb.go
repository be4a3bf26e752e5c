package finish

import (
	"math"
	"time"

	"example.org/sapreckoner/boil"
	"example.org/sapreckoner/internal/base/limit"
	"example.org/sapreckoner/sugar"
	"example.org/sapreckoner/units"
)

// A Batch is syrup that boils down in the finishing pan without anything poured
// in: a mass at a strength, and the water that goes off it.
//
// Sugar stays, so that the inverse of the strength falls along a straight line
// in time, and the strength climbs faster and faster.
//
// The level falls with it: a pan that runs low scorches in a minute, and one
// that runs dry is ruined. Keep defoamer at hand; syrup climbs over the rim
// where sap does not.
type Batch struct {
	Mass        units.Mass
	Brix        units.Brix
	Evaporation units.MassRate
}

// What a batch may be.
var (
	batchMass = limit.Range{Arg: "Batch.Mass", What: "mass of the batch", Low: 1e-3, High: 1e6, Unit: "kg",
		Below: "there is nothing to boil",
		Above: "check the unit of the mass"}
	batchBrix = limit.Range{Arg: "Batch.Brix", What: "sugar content", Low: 0.1, High: 92, Unit: "Brix",
		Below: "that is water: it never becomes syrup",
		Above: "hardly any water is left to boil: the formula ends here"}
	batchRate = limit.Range{Arg: "Batch.Evaporation", What: "evaporation", Low: 1e-9, High: 1e3, Unit: "kg/s",
		Below: "nothing boils off, and the strength stays",
		Above: "check the unit of the rate"}
	coalsTarget = limit.Range{Arg: "target", Low: 0.2, High: 92, Unit: "Brix",
		Below: "that is water: no fire brings it nearer",
		Above: "hardly any water is left to boil: the formula ends here"}
	spanRange = limit.Range{Arg: "elapsed", What: "time", Low: 0, High: 1e6, Unit: "s",
		Below: "time does not run backward",
		Above: "check the unit of the time"}
	storedRange = limit.Range{Arg: "stored", What: "stored heat", Low: 0, High: 1e12, Unit: "J",
		Below: "heat that is left cannot be less than none",
		Above: "check the unit of the heat"}
)

func (b Batch) check(fn string) error {
	if err := batchMass.Check(fn, b.Mass.Kilograms()); err != nil {
		return err
	}
	if err := batchBrix.Check(fn, float64(b.Brix)); err != nil {
		return err
	}
	return batchRate.Check(fn, float64(b.Evaporation))
}

// PerMinute returns how far the strength climbs in a minute at this moment.
//
// Range: 1 g to 1,000 t, 0.1 to 92 Brix, evaporation over 0.
//
// Source: conservation of sugar, dB/dt = B E/m. Check value: 1.115 Brix for 10
// kg at 66.9 Brix that lose 10 kg in an hour.
func (b Batch) PerMinute() (units.Brix, error) {
	if err := b.check("finish.Batch.PerMinute"); err != nil {
		return units.Brix(math.NaN()), err
	}
	return b.Brix * units.Brix(float64(b.Evaporation.Over(time.Minute)/b.Mass)), nil
}

// Time returns how long the batch takes to a strength: to the target, or to
// where it is spoiled.
//
// Range: strengths from that of the batch to 92 Brix; the rest as for
// [Batch.PerMinute]. Uncertainty: that of the evaporation; it holds steady only
// under a steady fire.
//
// Source: conservation of sugar, t = m (1 - B/B1)/E. Check value: 6 min 11 s from
// 60 to 66.9 Brix for 10 kg that lose 10 kg in an hour.
func (b Batch) Time(to units.Brix) (time.Duration, error) {
	const fn = "finish.Batch.Time"
	if err := b.check(fn); err != nil {
		return 0, err
	}
	if !limit.Holds(to, b.Brix, units.Brix(batchBrix.High)) {
		return 0, &units.RangeError{Func: fn, Arg: "to", What: "target", Value: float64(to), Low: float64(b.Brix), High: batchBrix.High, Unit: "Brix",
			Hint: "boiling never thins, and the formula ends at 92 Brix"}
	}
	return b.Evaporation.Time(b.Mass * units.Mass(1-min(b.Brix/to, 1))), nil
}

// After returns the strength after a time: the inverse of [Batch.Time].
//
// Range: times of 0 to where the batch has 92 Brix, beyond which the answer is
// NaN and [ErrBurns]. Check value: 66.9 Brix of 60 after 6 min 11 s for 10 kg
// that lose 10 kg in an hour.
func (b Batch) After(elapsed time.Duration) (units.Brix, error) {
	const fn = "finish.Batch.After"
	if err := b.check(fn); err != nil {
		return units.Brix(math.NaN()), err
	}
	if err := spanRange.Check(fn, elapsed.Seconds()); err != nil {
		return units.Brix(math.NaN()), err
	}
	return b.less(fn, b.Evaporation.Over(elapsed))
}

// less returns the strength of the batch with water gone.
func (b Batch) less(fn string, water units.Mass) (units.Brix, error) {
	// What may go is what takes it to the end of the range; rounding must not
	// refuse just that.
	most := b.Mass * units.Mass(1-float64(b.Brix)/batchBrix.High)
	if !(water <= most || limit.Same(water, most)) {
		return units.Brix(math.NaN()), &limit.Outcome{RangeError: &units.RangeError{Func: fn, Arg: "answer", What: "water boiled off", Value: water.Kilograms(), Low: 0, High: most.Kilograms(), Unit: "kg",
			Hint: "at 92 Brix the syrup is hard candy and then burns: take the pan off long before"}, Err: ErrBurns}
	}
	return b.Brix * units.Brix(float64(b.Mass)/float64(b.Mass-min(water, most))), nil
}

// Coast returns the strength to which the batch climbs after the last firing,
// while its evaporation dies away and halves in each halving time. Measure the
// halving on a night when nothing is at stake; coals and brick hold it up for a
// quarter of an hour (common practice).
//
// Range: halving times of 0 to 1e6 s; the rest as for [Batch.PerMinute]. The
// answer is NaN and [ErrBurns] where the batch would pass 92 Brix.
//
// Source: conservation of sugar; the water E halving/ln 2 is still to go. Check
// value: 65 Brix coast to 66.6 where 20 kg lose 10 kg in an hour and the halving
// takes 2 minutes (computed).
func (b Batch) Coast(halving time.Duration) (units.Brix, error) {
	const fn = "finish.Batch.Coast"
	if err := b.check(fn); err != nil {
		return units.Brix(math.NaN()), err
	}
	if err := spanRange.CheckAs(fn, "halving", halving.Seconds()); err != nil {
		return units.Brix(math.NaN()), err
	}
	return b.less(fn, b.coasting(halving))
}

// coasting returns the water that goes off after the last firing.
func (b Batch) coasting(halving time.Duration) units.Mass {
	return b.Evaporation.Over(halving) / math.Ln2
}

// CoastOn returns the strength to which the batch climbs on heat that is still
// to come into it, of coals, brick and iron, under the pressure at the pan.
//
// Range: 0 to 1e12 J, 20 to 120 kPa; the rest as for [Batch.PerMinute]. The
// warming of the syrup as its boiling point climbs is left out: it takes a few
// percent of the heat. The answer is NaN and [ErrBurns] where the batch would
// pass 92 Brix.
//
// Source: conservation of sugar and [boil.LatentHeat] at the boiling point of the
// batch. Check value: 65 Brix become 67.1 where 20 kg take in 1.4 MJ, which boil
// off 0.62 kg (computed).
func (b Batch) CoastOn(stored units.Energy, pressure units.Pressure) (units.Brix, error) {
	const fn = "finish.Batch.CoastOn"
	nan := units.Brix(math.NaN())
	if err := b.check(fn); err != nil {
		return nan, err
	}
	if err := storedRange.Check(fn, stored.Joules()); err != nil {
		return nan, err
	}
	at, err := point(fn, sugar.Solute{}, b.Brix, pressure)
	if err != nil {
		return nan, err
	}
	steam, err := boil.LatentHeat(at)
	if err != nil {
		return nan, units.Under(fn, err)
	}
	return b.less(fn, stored.Divide(steam))
}

// LastFiring returns the strength at which to stop firing so that the batch
// coasts to the target: the inverse of [Batch.Coast], for the sugar that is in
// the batch.
//
// Range: targets from the strength of the batch to 92 Brix; the rest as for
// [Batch.Coast]. The answer is NaN and [ErrCoalsFinish] where the batch as it
// is would coast beyond the target. Check value: 65.0 Brix for a target of 66.6
// where the batch of [Batch.Coast] is at 50 Brix and weighs 26 kg (computed).
func (b Batch) LastFiring(target units.Brix, halving time.Duration) (units.Brix, error) {
	const fn = "finish.Batch.LastFiring"
	nan := units.Brix(math.NaN())
	if err := b.check(fn); err != nil {
		return nan, err
	}
	if err := spanRange.CheckAs(fn, "halving", halving.Seconds()); err != nil {
		return nan, err
	}
	solids := b.Brix.Sugar(b.Mass)
	low := float64(b.Brix) * float64(b.Mass) / float64(b.Mass-min(b.coasting(halving), b.Mass))
	if !limit.Holds(float64(target), low, batchBrix.High) {
		err := &units.RangeError{Func: fn, Arg: "target", Value: float64(target), Low: min(low, batchBrix.High), High: batchBrix.High, Unit: "Brix",
			Hint: "it coasts beyond that on what heat is left: take the pan off, or pour in thin syrup; live coals are never raked out"}
		if target >= b.Brix && float64(target) < low && target <= units.Brix(batchBrix.High) {
			return nan, &limit.Outcome{RangeError: err, Err: ErrCoalsFinish}
		}
		return nan, err
	}
	return units.Brix(100 * float64(solids) / float64(target.Of(solids)+b.coasting(halving))), nil
}

// nearEnough is as near to a strength as a hydrometer tells.
const nearEnough units.Brix = 0.1

// CoalsTime returns how long coals take from the last firing, at a strength, until the
// batch is within 0.1 Brix of the target, as near as a hydrometer tells: quite there they
// never bring it. The boil halves in each halving time, and so does what is still to go.
//
// Range: targets of 0.2 to 92 Brix, strengths from 0.1 Brix to the target, halving times as
// for [Batch.Coast]. It is 0 where the strength is as near already.
//
// Source: conservation of sugar, t = halving log2((1/B1 - 1/B)/(1/(B - 0.1) - 1/B)). Check
// value: 9 min 57 s from 63.9 Brix for a target of 66.9 and a halving of 2 minutes.
func CoalsTime(last, target units.Brix, halving time.Duration) (time.Duration, error) {
	const fn = "finish.CoalsTime"
	if err := coalsTarget.Check(fn, float64(target)); err != nil {
		return 0, err
	}
	if !limit.Holds(float64(last), batchBrix.Low, float64(target)) {
		return 0, &units.RangeError{Func: fn, Arg: "last", What: "strength at the last firing", Value: float64(last), Low: batchBrix.Low, High: float64(target), Unit: "Brix",
			Hint: "coals only thicken: beyond the target take the pan off"}
	}
	if err := spanRange.CheckAs(fn, "halving", halving.Seconds()); err != nil {
		return 0, err
	}
	still := func(b units.Brix) float64 { return float64(1/b - 1/target) } // to go, by the sugar
	halvings := math.Log2(still(last) / still(target-nearEnough))
	return time.Duration(float64(halving) * max(0, halvings)), nil
}
