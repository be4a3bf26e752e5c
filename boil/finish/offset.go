package finish

import (
	"math"
	"slices"
	"time"

	"example.org/sapreckoner/internal/base/limit"
	"example.org/sapreckoner/internal/base/measure"
	"example.org/sapreckoner/internal/base/numeric"
	"example.org/sapreckoner/sugar"
	"example.org/sapreckoner/units"
)

// A PastStop is a boil that was stopped by thermometer, and what a cup of it
// turned out to be when it was read with care: see
// [example.org/sapreckoner/density.Hydrometer].
type PastStop struct {
	When     time.Time
	Pressure units.Pressure    // at the pan, by the barometer, when it was stopped
	Stop     units.Temperature // what the thermometer showed
	Cup      units.Brix
}

// An Offset is what a rig's own thermometer shows at the stop above the boiling
// point of pure sucrose syrup: probe, depth and the composition of the sap all
// together. It is a difference from what the barometer gives, and so it carries
// over to another day's weather.
type Offset struct {
	Mean   units.TempDiff
	Spread units.TempDiff // standard deviation from stop to stop; NaN of one
	Stops  int
	// Late is the mean of the last third of the stops, and Drifts tells that it
	// lies off the others by more than their spread explains, once in twenty
	// times by chance. Late in the season more of the sugar is inverted, and
	// microbes and a crusted probe do the rest. It takes six stops to tell.
	Late   units.TempDiff
	Drifts bool
}

// String prints the mean with the spread, to the digit that it leaves;
// [Offset.Text] takes one system of units.
func (o Offset) String() string { return o.Text(units.Both) }

// Text prints the mean with the spread in one system of units, or both: "0.5 +/-
// 0.2 F deg".
func (o Offset) Text(in units.System) string {
	if o.Spread != o.Spread { // a single stop has none
		return o.Mean.TextIn(in, 2)
	}
	return measure.Either(in,
		measure.PlusMinus(o.Mean.FahrenheitDegrees(), o.Spread.FahrenheitDegrees(), "F deg"),
		measure.PlusMinus(o.Mean.CelsiusDegrees(), o.Spread.CelsiusDegrees(), "C deg"))
}

// What past stops may be.
var (
	cupRange = limit.Range{Arg: "PastStop.Cup", What: "cup", Low: 50, High: 80, Unit: "Brix",
		Below: "that is not syrup: check the scale of the instrument",
		Above: "that is candy: check the reading"}
	offsetRange = limit.Range{Arg: "PastStop.Stop", What: "offset of a stop", Low: -10, High: 10, Unit: "C deg",
		Below: "stop, cup and pressure do not belong together: check station pressure against sea level, Fahrenheit against Celsius",
		Above: "stop, cup and pressure do not belong together: check station pressure against sea level, Fahrenheit against Celsius"}
	// No stops within offsetRange are wider apart.
	stopSpread = limit.Range{Arg: "Offset.Spread", What: "spread of the stops", Low: 0, High: 15, Unit: "C deg",
		Below: "learn it from past stops", Above: "learn it from past stops"}
)

// driftStops is the number of stops from which a drift can be told.
const driftStops = 6

// LearnOffset returns a rig's own offset from past stops, in any order.
//
// Range: at least one stop; cups of 50 to 80 Brix, 20 to 120 kPa, offsets of -10
// to 10 C deg. Uncertainty: Spread, wider the fewer the stops: see [Offset.Stop].
//
// Source: stop less [boil.SyrupPoint] of the cup. Check value: +0.5 F where 220.0 F
// gave 66.9 Brix at 1 atm, whose point is 219.5 (computed).
func LearnOffset(stops ...PastStop) (Offset, error) {
	const fn = "finish.LearnOffset"
	if len(stops) == 0 {
		return Offset{}, &units.RangeError{Func: fn, Arg: "stops", Low: 1, High: math.Inf(1),
			Hint: "nothing to learn from: boil water with the probe, and set the stop by that"}
	}
	offs := make([]pastOffset, len(stops))
	for i, s := range stops {
		if err := cupRange.CheckItem(fn, "stops", i, "Cup", float64(s.Cup)); err != nil {
			return Offset{}, err
		}
		point, err := point(fn, sugar.Solute{}, s.Cup, s.Pressure)
		if err != nil {
			return Offset{}, units.UnderArg(fn, limit.Item("stops", i, "Pressure"), err)
		}
		offs[i] = pastOffset{s.When, s.Stop.Sub(point).CelsiusDegrees()}
		if err := offsetRange.CheckItem(fn, "stops", i, "Stop", offs[i].off); err != nil {
			return Offset{}, err
		}
	}
	slices.SortStableFunc(offs, func(a, b pastOffset) int { return a.when.Compare(b.when) })
	mean, spread := meanSpread(offs)
	o := Offset{Mean: units.TempDiff(mean), Spread: units.TempDiff(spread), Stops: len(offs), Late: units.TempDiff(mean)}
	if len(offs) < driftStops {
		return o, nil
	}
	split := len(offs) - len(offs)/3
	late, lateSpread := meanSpread(offs[split:])
	early, earlySpread := meanSpread(offs[:split])
	n, m := float64(split), float64(len(offs)-split)
	pooled := math.Sqrt((earlySpread*earlySpread*(n-1) + lateSpread*lateSpread*(m-1)) / (n + m - 2))
	o.Late = units.TempDiff(late)
	o.Drifts = math.Abs(late-early) > numeric.Tail(len(offs)-2)*pooled*math.Sqrt(1/n+1/m)
	return o, nil
}

type pastOffset struct {
	when time.Time
	off  float64 // K
}

// meanSpread returns the mean and the standard deviation, which is NaN of one.
func meanSpread(offs []pastOffset) (mean, spread float64) {
	for _, o := range offs {
		mean += o.off
	}
	mean /= float64(len(offs))
	var squares float64
	for _, o := range offs {
		squares += (o.off - mean) * (o.off - mean)
	}
	return mean, math.Sqrt(squares / float64(len(offs)-1))
}

// Stop returns what this rig's thermometer shows when the syrup has the target
// strength under the pressure of the day, and by how much that is uncertain: the
// next stop lies within by two times of three. An offset that drifts is taken
// from its late stops. By is NaN after a single stop: nothing is known of it.
//
// Range: targets of 50 to 80 Brix, 20 to 120 kPa, an offset that was learned.
//
// Check value: 220.0 F for 66.9 Brix at 1 atm with an offset of +0.5 F
// (computed).
func (o Offset) Stop(target units.Brix, pressure units.Pressure) (at units.Temperature, by units.TempDiff, err error) {
	const fn = "finish.Offset.Stop"
	at, by = units.Celsius(math.NaN()), units.TempDiff(math.NaN())
	if o.Stops < 1 {
		return at, by, &units.RangeError{Func: fn, Arg: "Offset.Stops", What: "stops", Value: float64(o.Stops), Low: 1, High: math.Inf(1),
			Hint: "learn the offset from past stops first"}
	}
	if err := stopTarget.Check(fn, float64(target)); err != nil {
		return at, by, err
	}
	point, err := point(fn, sugar.Solute{}, target, pressure)
	if err != nil {
		return at, by, err
	}
	off, n, from := o.Mean, o.Stops, "Offset.Mean"
	if o.Drifts {
		off, n, from = o.Late, max(o.Stops/3, 1), "Offset.Late"
	}
	if err := offsetRange.CheckAs(fn, from, off.CelsiusDegrees()); err != nil {
		return at, by, err
	}
	if o.Stops > 1 {
		if err := stopSpread.Check(fn, o.Spread.CelsiusDegrees()); err != nil {
			return at, by, err
		}
		by = o.Spread * units.TempDiff(numeric.Widen(o.Stops-1)*math.Sqrt(1+1/float64(n)))
	}
	return point.Add(off), by, nil
}
