package pan

import (
	"math"
	"strconv"
	"time"

	"example.org/sapreckoner/internal/base/limit"
	"example.org/sapreckoner/units"
)

// Rig is a pan or a row of pans over a fire, as a chain of compartments from
// the sap's end to the draw-off:
//
//	rig := pan.Rig{
//		Compartments: []pan.Compartment{
//			{Area: 12 * units.SquareFoot, Depth: 2 * units.Inch, SafeDepth: 1 * units.Inch},
//			{Area: 4 * units.SquareFoot, Depth: 2 * units.Inch, SafeDepth: 1 * units.Inch},
//		},
//		Heat: 40 * units.Kilowatt,
//		Draw: pan.DrawOff{At: 66.9},
//	}
//	day, err := rig.Run(pan.Day{ ... })
//
// One compartment is a kettle, two are a sap pan and a finishing pan, more are a
// partitioned pan.
//
// # What is assumed
//
// Every compartment is well mixed and boils at the boiling point of its own
// liquid under the pressure of the day; levels and depths are those of the hot
// liquid, without foam. The level of every compartment but the first is held by
// liquid from the one before, as a float between two pans or a gate in a
// partition holds it, and nothing flows back. The heat that brings colder liquid
// to the boil comes out of that compartment's share of the fire before anything
// evaporates; a compartment that is too cold is off the boil until the fire has
// made up for it. The heat that the contents take up as their own boiling point
// climbs, and the heat of concentrating the sugar, are left out: together less
// than a tenth of a percent. The fire gives Heat from the moment it is lit until
// it is out, or until the last wood and then Coals: the hour in which the arch itself warms is not in it. Sugar neither
// burns nor spatters.
//
// A simulation plans a day and does not watch the pan: foam climbs over the rim,
// a float sticks, and a pan runs dry in minutes. Somebody stays with the fire.
type Rig struct {
	Compartments []Compartment

	// Heat is what reaches the liquid: the heat of the fuel times the
	// efficiency. Water boiled off in an hour gives it too: see
	// [Rig.HeatFor].
	Heat units.Power

	// Feed is how sap comes into the first compartment.
	Feed Feed

	// Pail is what is poured in at a time under [PailFeed].
	Pail units.Volume

	// PreheatTo is the temperature to which steam from the pans warms the feed
	// at no cost to the fire. The zero value, 0 C, is no preheater.
	PreheatTo units.Temperature

	// Coals is the time in which the fire falls to half once no more wood goes
	// on, and to half of that in as much again: see [Rig.Run]. Zero is a fire that
	// goes out at once, as gas does.
	Coals time.Duration

	// Draw is when syrup is taken off the last compartment. The zero value
	// draws nothing, for a pan that is emptied by hand after the fire.
	Draw DrawOff
}

// Compartment is one part of a pan, with straight sides.
type Compartment struct {
	Area  units.Area
	Depth units.Length // of the hot liquid when it is full

	// SafeDepth is the least that may stand over the fire: with less, syrup
	// scorches and the pan burns. A pan that is not level needs more.
	SafeDepth units.Length

	// Fire is the share of the heat. If all are zero the fire is shared by area;
	// otherwise they add up to 100 percent.
	Fire units.Share
}

// Feed is the way sap comes into the first compartment.
type Feed uint8

const (
	// FloatFeed holds the level with a thin stream as long as there is sap, as a
	// float valve does, or a kettle that is topped up all day. Then the level
	// falls.
	FloatFeed Feed = iota
	// PailFeed pours in a pail whenever there is room for it.
	PailFeed
)

// String names the way.
func (f Feed) String() string {
	switch f {
	case FloatFeed:
		return "float"
	case PailFeed:
		return "pail"
	}
	return "feed " + strconv.Itoa(int(f))
}

// DrawOff says when syrup leaves the last compartment: at the boiling point of
// At, which [boil.SyrupPoint] gives.
//
// With Until zero a thin stream is drawn that just holds the strength. With
// Until below At the valve is opened at At and shut at Until, as by hand.
//
// A kettle, which is a rig of one compartment, is emptied when it comes to At
// and no sap is left, and the day is over.
type DrawOff struct {
	At    units.Brix
	Until units.Brix

	// Rate is the flow of hot syrup through the open valve. Zero is a twelfth of
	// the last compartment a minute. A thin stream needs it only when the
	// compartment before holds syrup as thick as At.
	Rate units.VolumeRate
}

// emptying is how long the valve takes for the last compartment if its rate is
// not given, in seconds.
const emptying = 720.0

// What a rig may be. The times keep the liquid in a compartment long enough for
// a simulation of hours to follow it.
var (
	rigSize = limit.Range{Arg: "number of compartments", Low: 1, High: 100,
		Below: "a kettle is one compartment"}
	rigHeat = limit.Range{Arg: "heat", Low: 1, High: 1e8, Unit: "W",
		Below: "without a fire nothing boils: give the heat that reaches the liquid"}
	rigArea = limit.Range{Arg: "area of a compartment", Low: 1e-4, High: 1e4, Unit: "m2",
		Below: "check the unit of the area"}
	rigDepth = limit.Range{Arg: "depth of a compartment", Low: 1e-3, High: 10, Unit: "m",
		Below: "give the depth of the liquid when the compartment is full"}
	rigShare = limit.Range{Arg: "share of the fire", Low: 0, High: 100, Unit: "%"}
	rigFire  = limit.Range{Arg: "sum of the shares of the fire", Low: 99.9, High: 100.1, Unit: "%",
		Below: "leave all shares out to share the fire by area",
		Above: "the compartments share one fire"}
	rigHold = limit.Range{Arg: "time in which the whole fire would boil a compartment away", Low: 10, High: math.Inf(1), Unit: "s",
		Below: "it would flash dry: check area, depth and heat, or join it with its neighbor"}
	rigFeed = limit.Range{Arg: "feed", Low: float64(FloatFeed), High: float64(PailFeed),
		Above: "take FloatFeed or PailFeed"}
	rigCoals = limit.Range{Arg: "half-life of the coals", Low: 0, High: 12, Unit: "h",
		Below: "leave it zero for a fire that goes out at once",
		Above: "a fire that holds so long cannot be steered: measure how long the boil takes to fall to half"}
	rigPreheat = limit.Range{Arg: "temperature of the preheater", Low: 0, High: 100, Unit: "C",
		Above: "steam at the pressure of the air warms sap to its boiling point at most"}
	drawAt = limit.Range{Arg: "strength of the draw", Low: 1, High: 74, Unit: "Brix",
		Above: "beyond it syrup is candy in the making: finish it in a pot"}
	drawGap = limit.Range{Arg: "strength at which the draw ends", Low: 0, High: drawAt.High, Unit: "Brix",
		Above: "it must lie below the strength at which the draw starts by 0.05 Brix or more; leave it zero for a thin stream"}
	drawTime = limit.Range{Arg: "time in which the valve empties the last compartment", Low: 10, High: 1e7, Unit: "s",
		Below: "check the unit of the rate",
		Above: "check the unit of the rate"}
)

// leastGap is the least difference between the two strengths of a draw, in Brix.
const leastGap = 0.05

// check tells what is wrong with the rig. If the flow turns, both ends must
// suit as the first compartment and as the last.
func (r *Rig) check(fn string, turns bool) error {
	if err := rigSize.Check(fn, float64(len(r.Compartments))); err != nil {
		return err
	}
	if err := rigHeat.Check(fn, float64(r.Heat)); err != nil {
		return err
	}
	if err := rigPreheat.Check(fn, r.PreheatTo.Celsius()); err != nil {
		return err
	}
	if err := rigCoals.Check(fn, r.Coals.Hours()); err != nil {
		return err
	}
	fire := 0.0
	for i := range r.Compartments {
		if err := r.Compartments[i].check(fn, r.Heat); err != nil {
			return err
		}
		fire += float64(r.Compartments[i].Fire)
	}
	if fire > 0 {
		if err := rigFire.Check(fn, fire); err != nil {
			return err
		}
	}
	first := r.Compartments[:1]
	last := r.Compartments[len(r.Compartments)-1:]
	if turns {
		first = []Compartment{first[0], last[0]}
		last = first
	}
	if err := r.checkFeed(fn, first); err != nil {
		return err
	}
	return r.checkDraw(fn, last)
}

func (c *Compartment) check(fn string, heat units.Power) error {
	if err := rigArea.Check(fn, float64(c.Area)); err != nil {
		return err
	}
	if err := rigDepth.Check(fn, float64(c.Depth)); err != nil {
		return err
	}
	safe := limit.Range{Arg: "safe depth", Low: float64(rigDepth.Low) / 10, High: 0.99 * float64(c.Depth), Unit: "m",
		Below: "a pan boiled dry is ruined and may start a fire: give the least depth that you allow",
		Above: "it must lie below the depth of the full compartment"}
	if err := safe.Check(fn, float64(c.SafeDepth)); err != nil {
		return err
	}
	if err := rigShare.Check(fn, float64(c.Fire)); err != nil {
		return err
	}
	return rigHold.Check(fn, float64(c.Area.Volume(c.Depth))*boilAway/float64(heat))
}

// boilAway is about what it takes to boil off water, in J/m3.
const boilAway = 2.16e9

func (r *Rig) checkFeed(fn string, first []Compartment) error {
	if err := rigFeed.Check(fn, float64(r.Feed)); err != nil {
		return err
	}
	if r.Feed != PailFeed {
		return nil
	}
	for _, c := range first {
		full := float64(c.Area.Volume(c.Depth))
		room := full - float64(c.Area.Volume(c.SafeDepth))
		pail := limit.Range{Arg: "pail", Low: min(full/100, room), High: room, Unit: "L", Per: float64(units.Liter),
			Below: "pouring so little is a float feed: take FloatFeed",
			Above: "there is no room for it between the safe depth and the full one"}
		if err := pail.Check(fn, float64(r.Pail)); err != nil {
			return err
		}
	}
	return nil
}

func (r *Rig) checkDraw(fn string, last []Compartment) error {
	d := &r.Draw
	if d.At == 0 && d.Until == 0 && d.Rate == 0 {
		return nil
	}
	if err := drawAt.Check(fn, float64(d.At)); err != nil {
		return err
	}
	if d.Until != 0 || (r.Feed == PailFeed && len(r.Compartments) == 1) {
		gap := drawGap
		gap.Low, gap.High = drawAt.Low/2, float64(d.At)-leastGap
		gap.Below = "a kettle fed by the pail is drawn between two strengths"
		if err := gap.Check(fn, float64(d.Until)); err != nil {
			return err
		}
	}
	if d.Rate == 0 {
		return nil
	}
	for _, c := range last {
		if err := drawTime.Check(fn, float64(c.Area.Volume(c.Depth))/float64(d.Rate)); err != nil {
			return err
		}
	}
	return nil
}

// fire returns the heat of each compartment in watts.
func (r *Rig) fire() []float64 {
	q := make([]float64, len(r.Compartments))
	sum := 0.0
	for i, c := range r.Compartments {
		q[i] = float64(c.Fire)
		sum += q[i]
	}
	if sum == 0 {
		for i, c := range r.Compartments {
			q[i] = float64(c.Area)
			sum += q[i]
		}
	}
	for i := range q {
		q[i] *= float64(r.Heat) / sum
	}
	return q
}
