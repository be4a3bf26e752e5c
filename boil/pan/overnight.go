package pan

import (
	"math"
	"time"

	"example.org/sapreckoner/internal/base/limit"
	"example.org/sapreckoner/sugar"
	"example.org/sapreckoner/units"
)

// Night is a stop between two fires: how long, in what air, and how fast the
// pans cool. Halving is the time in which the liquid comes half of the way from
// its temperature to that of the air: measure it, see [Halving]. Embers, a lid
// and a deep pan make it longer, wind makes it shorter.
type Night struct {
	Length  time.Duration
	Air     units.Temperature
	Halving time.Duration
}

// Morning is what a [Night] left.
type Morning struct {
	Contents Contents
	Ice      []Ice // one for each compartment

	// Warm is how long each compartment stood between 50 and 140 F, where what
	// spoils sweet grows fast: above 50 F by [Spoiling], to 140 F by the rule of
	// kitchens (from memory). Boiled sweet is food ready made, and keeps worse
	// than sap as cold.
	Warm []time.Duration
}

// Ice tells whether a compartment froze, and if so how long after the fire its
// first ice formed.
type Ice struct {
	Point units.Temperature // at which its first ice forms
	Forms bool
	After time.Duration
}

// What a night may be.
var (
	nightLength = limit.Range{Arg: "Night.Length", What: "length of the night", Low: 0, High: 60 * 24, Unit: "h",
		Below: "a night cannot be less than nothing",
		Above: "sweet left for months ferments: boil it off at the end of the season"}
	nightAir = limit.Range{Arg: "Night.Air", What: "temperature of the air", Low: -60, High: 60, Unit: "C",
		Below: "check the thermometer",
		Above: "check Fahrenheit against Celsius"}
	nightHalving = limit.Range{Arg: "Night.Halving", What: "halving time", Low: 1, High: 1e8, Unit: "s",
		Below: "measure it with two readings of the thermometer"}
)

// Overnight lets the contents cool after the fire. Nothing evaporates, sugar and
// water stay where they are, and every compartment cools at the same halving
// time. The temperature is that of the first ice where ice forms: what is left
// liquid grows thicker and colder from there.
//
// Contents that froze are thawed before a fire is lit under them: ice keeps the
// liquid from the metal, and a dry spot scorches. Syrup above 60 Brix is taken to
// freeze like 60.
//
// Range: nights to 60 days, air of -60 to 60 C, halving times of 1 to 1e8 s.
// Uncertainty: a measured halving time holds for the same depth and wind.
//
// Source: Newton's law of cooling; [example.org/sapreckoner/sugar.FreezingPoint].
// Check value: 212 F in air of 32 F are 77 F after two halvings.
func (c Contents) Overnight(n Night) (Morning, error) {
	const fn = "pan.Contents.Overnight"
	if err := c.check(fn, "Contents", len(c)); err != nil {
		return Morning{}, err
	}
	for _, q := range []struct {
		r *limit.Range
		x float64
	}{{&nightLength, n.Length.Hours()}, {&nightAir, n.Air.Celsius()}, {&nightHalving, n.Halving.Seconds()}} {
		if err := q.r.Check(fn, q.x); err != nil {
			return Morning{}, err
		}
	}
	m := Morning{Contents: make(Contents, len(c)), Ice: make([]Ice, len(c)), Warm: make([]time.Duration, len(c))}
	for i, l := range c {
		m.Contents[i] = l
		if !(l.Mass() > 0) {
			continue
		}
		point, err := sugar.FreezingPoint(min(l.Brix(), mostFreezing))
		if err != nil {
			return Morning{}, units.Under(fn, err)
		}
		m.Ice[i].Point = point
		m.Warm[i] = n.passes(l.Temperature, units.Fahrenheit(50)) - n.passes(l.Temperature, units.Fahrenheit(140))
		m.Warm[i] = m.Warm[i].Abs()
		above := l.Temperature.Sub(n.Air)
		left := units.TempDiff(math.Exp2(-n.Length.Seconds() / n.Halving.Seconds()))
		t := n.Air.Add(above * left)
		if t.Compare(point) < 0 {
			m.Ice[i].Forms = true
			halvings := math.Log2(float64(above / point.Sub(n.Air)))
			m.Ice[i].After = time.Duration(max(0, halvings) * float64(n.Halving))
			t = point
		}
		m.Contents[i].Temperature = t
	}
	return m, nil
}

// passes returns when what starts at one temperature comes by another, within the
// night: at once if it is past it, and at the end if it never does.
func (n *Night) passes(from, by units.Temperature) time.Duration {
	way := n.Air.Compare(from) // -1 down, 1 up
	switch {
	case way*by.Compare(from) <= 0 && (way != 0 || by.Compare(from) >= 0):
		return 0
	case way*by.Compare(n.Air) >= 0:
		return n.Length
	}
	halvings := math.Log2(float64(from.Sub(n.Air) / by.Sub(n.Air)))
	return time.Duration(min(halvings*float64(n.Halving), float64(n.Length)))
}

// mostFreezing is the strongest liquid whose freezing point is known.
const mostFreezing units.Brix = 60

// cooled is how far readings of a cooling pan must lie apart, from each other and
// from the air, to tell anything, in K.
const cooled = 0.1

// Halving returns the halving time of a [Night] from two readings of a
// thermometer in the pan, so long apart, in air of one temperature.
//
// Range: air of -60 to 60 C, from above to and to above air by a tenth of a
// degree or more, up to 110 C; a minute to 1e6 s apart. Uncertainty: read when
// the liquid is far above the air and has cooled a good part of the way.
//
// Check value: an hour from 212 F to 122 F in air of 32 F.
func Halving(from, to, air units.Temperature, apart time.Duration) (time.Duration, error) {
	const fn = "pan.Halving"
	if err := nightAir.CheckAs(fn, "air", air.Celsius()); err != nil {
		return 0, err
	}
	hot := limit.Range{Arg: "from", What: "first reading", Low: air.Celsius() + 2*cooled, High: liquidTemp.High, Unit: "C",
		Below: "the liquid must be warmer than the air", Above: liquidTemp.Above}
	if err := hot.Check(fn, from.Celsius()); err != nil {
		return 0, err
	}
	later := limit.Range{Arg: "to", What: "second reading", Low: air.Celsius() + cooled, High: from.Celsius() - cooled, Unit: "C",
		Below: "it has come to the temperature of the air: read earlier",
		Above: "it has not cooled: read later"}
	if err := later.Check(fn, to.Celsius()); err != nil {
		return 0, err
	}
	wait := limit.Range{Arg: "apart", What: "time between the readings", Low: 60, High: 1e6, Unit: "s",
		Below: "wait longer between the readings", Above: "check the times of the readings"}
	if err := wait.Check(fn, apart.Seconds()); err != nil {
		return 0, err
	}
	halvings := math.Log2(float64(from.Sub(air) / to.Sub(air)))
	return time.Duration(float64(apart) / halvings), nil
}
