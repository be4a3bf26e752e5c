package finish

import (
	"math"
	"slices"
	"time"

	"example.org/sapreckoner/boil"
	"example.org/sapreckoner/internal/base/enum"
	"example.org/sapreckoner/internal/base/limit"
	"example.org/sapreckoner/internal/base/measure"
	"example.org/sapreckoner/sugar"
	"example.org/sapreckoner/units"
)

// A Watch tells from timed readings of the thermometer in the finishing pan when
// the syrup is done. Nothing may be poured in meanwhile: at a steady fire the
// inverse of the strength then falls along a straight line in time, and that
// line is fitted, not the temperature, which rises ever faster.
//
// All that ends in By is a standard uncertainty.
type Watch struct {
	Target units.Brix
	// Water is what the same probe shows in boiling water today.
	Water units.Temperature
	// WaterBy is that of Water, which all readings share.
	WaterBy units.TempDiff
	// ProbeBy is that of one reading: a third of a division that jumps, 0.1 F
	// and more in a rolling boil (common practice).
	ProbeBy units.TempDiff
	// Sugar is the sugar of the sap; the zero value is sucrose.
	Sugar sugar.Solute
	// Learned tells that the readings are what is left when this rig's [Offset]
	// is taken away: what the formula is off by is in it, and [boil.RiseDoubt] is not
	// counted again.
	Learned bool
}

// A WatchReading is what the thermometer showed at a time since any start.
type WatchReading struct {
	At    time.Duration
	Shown units.Temperature
}

// An Odd names what is wrong with a reading.
type Odd uint8

// What may be wrong with a reading. Readings that go backward are found, since
// syrup that boils down never cools, and a leap of the last one.
const (
	// Dip is one reading under those around it: foam, or a probe bumped out of
	// the liquid. It is left out, and so is a last reading that fell.
	Dip Odd = iota + 1
	// Spike is one reading over those around it: a probe that touched the pan.
	// It is left out, and so is a last reading far over the line of three or more.
	Spike
	// SetBack is a fall that lasts: something was poured in, or the fire sank.
	// The watch starts anew with it.
	SetBack
)

var odds = enum.Names[Odd]{Type: "finish.Odd", Of: []string{Dip: "dip", Spike: "spike", SetBack: "setback"}}

// String names it: "dip", "spike" or "setback".
func (o Odd) String() string {
	if o < Dip || o > SetBack {
		return "not odd"
	}
	return odds.String(o)
}

// MarshalText returns the name, and an error for what is not odd.
func (o Odd) MarshalText() ([]byte, error) { return odds.Marshal(o) }

// UnmarshalText reads it. An unknown one is an error that tells the nearest.
func (o *Odd) UnmarshalText(text []byte) error { return odds.Unmarshal(o, text) }

// Why tells what is behind it.
func (o Odd) Why() string {
	switch o {
	case Dip:
		return "foam, or a bumped probe"
	case Spike:
		return "the probe touched the pan"
	case SetBack:
		return "something was poured in, or the fire sank"
	}
	return ""
}

// An OddReading is a reading that does not fit the others, by its place from 0.
type OddReading struct {
	Index int
	What  Odd
	// Open tells that it is the last reading, so that the next one decides: as
	// low again it was a setback, as high again the climb is real.
	Open bool
}

// An Outlook is what a [Watch] makes of its readings, at the time of the last
// one that is on the line. All that ends in By is a standard uncertainty.
type Outlook struct {
	Now, NowBy             units.Brix
	PerMinute, PerMinuteBy units.Brix
	// Left is the time to the target, negative if it lies behind. Without a
	// climb it means nothing: see Climbs.
	Left, LeftBy time.Duration
	Climbs       bool
	Used         int // readings on the line
	Last         int // place of the last of them, from 0
	Odd          []OddReading
}

// String tells the strength, the climb and what is left, each with its
// uncertainty and to the digit that it leaves.
func (o Outlook) String() string {
	s := measure.PlusMinus(float64(o.Now), float64(o.NowBy), "Brix")
	if !o.Climbs {
		return s + ", no climb"
	}
	return s + ", " + measure.PlusMinus(float64(o.PerMinute), float64(o.PerMinuteBy), "Brix a minute") +
		", " + measure.PlusMinus(o.Left.Minutes(), o.LeftBy.Minutes(), "min left")
}

// What a watch may be given.
var (
	watchBrix = limit.Range{Arg: "WatchReading.Shown", What: "strength shown", Low: 30, High: 92, Unit: "Brix",
		Below: "a thermometer tells little of so thin a pan: wait, or check today's boiling water",
		Above: "hardly any water is left: take the pan off"}
	watchTarget = limit.Range{Arg: "Watch.Target", What: "target", Low: 30, High: 92, Unit: "Brix",
		Below: "syrup so thin ferments",
		Above: "hardly any water is left to boil: the formula ends here"}
	watchProbe = limit.Range{Arg: "Watch.ProbeBy", What: "uncertainty of a reading", Low: 0.001, High: 5, Unit: "C deg",
		Below: "say how well the thermometer is read: a third of a division at best",
		Above: "with that the readings tell nothing"}
	watchWater = limit.Range{Arg: "Watch.WaterBy", What: "uncertainty of the boiling water", Low: 0, High: 5, Unit: "C deg",
		Below: "an uncertainty is not negative",
		Above: "with that the readings tell nothing"}
)

// oddSigma is how many standard uncertainties of a difference a reading must
// fall to be called odd: one in 700 does so by chance.
const oddSigma = 3

// leapAfter is the number of readings whose line a leap is told from.
const leapAfter = 3

// Outlook returns the strength now, how fast it climbs and how long is left.
//
// Range: two readings or more since the last setback, at times that rise; shown
// strengths and a target of 30 to 92 Brix; ProbeBy of 0.001 to 5 C deg, WaterBy
// of 0 to 5. Uncertainty: of the scatter that ProbeBy allows, or that of the
// readings about the line if it is more, of WaterBy, and of [boil.RiseDoubt]
// unless the readings are Learned. It does not hold the fire: feed it evenly.
// Fewer readings give an empty answer and [ErrFewReadings]. Odd is filled
// beside an error, too.
//
// Source: weighted least squares of 1/B against time, B by [boil.BrixFromRise];
// conservation of sugar at a steady evaporation makes it straight. Check value:
// 6 min 11 s from 60 to 66.9 Brix for 10 kg that lose 10 kg in an hour
// (computed).
func (w Watch) Outlook(readings ...WatchReading) (Outlook, error) {
	const fn = "finish.Watch.Outlook"
	out, err := w.outlook(fn, readings)
	return out, limit.Renamed(fn, err, "at", "Watch.Water", "pressure", "Watch.Water", "rise", "WatchReading.Shown")
}

func (w Watch) outlook(fn string, readings []WatchReading) (Outlook, error) {
	if err := watchTarget.Check(fn, float64(w.Target)); err != nil {
		return Outlook{}, err
	}
	if err := watchProbe.Check(fn, float64(w.ProbeBy)); err != nil {
		return Outlook{}, err
	}
	if err := watchWater.Check(fn, float64(w.WaterBy)); err != nil {
		return Outlook{}, err
	}
	p, err := boil.PressureFromWater(w.Water)
	if err != nil {
		return Outlook{}, units.Under(fn, err)
	}
	for i, r := range readings {
		if i > 0 && r.At <= readings[i-1].At {
			return Outlook{}, &units.RangeError{Func: fn, Arg: limit.Item("readings", i, "At"), What: "time of a reading", Value: r.At.Seconds(), Low: readings[i-1].At.Seconds(), High: math.Inf(1), Unit: "s",
				Hint: "readings follow each other: sort them by time"}
		}
	}
	used, odd := w.straight(readings)
	if n := len(used); n > leapAfter && used[n-1].At == readings[len(readings)-1].At {
		leaps, err := w.leaps(fn, used[:n-1], used[n-1], p)
		if err != nil {
			return Outlook{Odd: odd}, err
		}
		if leaps {
			used, odd = used[:n-1], append(odd, OddReading{len(readings) - 1, Spike, true})
		}
	}
	if len(used) < 2 {
		return Outlook{Odd: odd}, &limit.Outcome{RangeError: &units.RangeError{Func: fn, Arg: "readings", What: "readings on one line", Value: float64(len(used)), Low: 2, High: math.Inf(1),
			Hint: "wait for another reading"}, Err: ErrFewReadings}
	}
	out, err := w.fit(fn, used, p, lean{})
	if err != nil {
		return Outlook{Odd: odd}, err
	}
	out.Odd = odd
	out.Last = slices.IndexFunc(readings, func(r WatchReading) bool { return r.At == used[len(used)-1].At })
	if w.WaterBy > 0 {
		if err := w.widen(fn, &out, used, p, lean{by: w.WaterBy}); err != nil {
			return Outlook{Odd: odd}, err
		}
	}
	if !w.Learned {
		if err := w.widen(fn, &out, used, p, lean{share: riseShare}); err != nil {
			return Outlook{Odd: odd}, err
		}
	}
	return out, nil
}

// straight returns the readings since the last setback without dips and spikes,
// and names all that go backward. A fall of the last reading is a dip so far.
func (w Watch) straight(readings []WatchReading) (used []WatchReading, odd []OddReading) {
	slack := oddSigma * math.Sqrt2 * w.ProbeBy
	falls := func(from, to WatchReading) bool { return from.Shown.Sub(to.Shown) > slack }
	used = make([]WatchReading, 0, len(readings))
	var last int // place of the last reading used
	for i, r := range readings {
		n := len(used)
		switch {
		case n == 0 || !falls(used[n-1], r):
			used, last = append(used, r), i
		case i+1 < len(readings) && !falls(used[n-1], readings[i+1]):
			odd = append(odd, OddReading{i, Dip, false})
		case n >= 3 && jumps(used[n-3:], slack) && !falls(used[n-2], r):
			odd = append(odd, OddReading{last, Spike, false})
			used, last = append(used[:n-1], r), i
		case i+1 == len(readings):
			odd = append(odd, OddReading{i, Dip, true})
		default:
			odd = append(odd, OddReading{i, SetBack, false})
			used, last = append(used[:0], r), i
		}
	}
	return used, odd
}

// jumps reports whether the last of three readings lies above the line through
// the two before it by more than slack.
func jumps(r []WatchReading, slack units.TempDiff) bool {
	share := float64(r[2].At-r[1].At) / float64(r[1].At-r[0].At)
	climb := max(r[1].Shown.Sub(r[0].Shown), 0) * units.TempDiff(share)
	return r[2].Shown.Sub(r[1].Shown)-climb > slack
}
