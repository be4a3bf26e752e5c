package pan

import (
	"time"

	"example.org/sapreckoner/internal/base/enum"
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
// it is out, or until the last wood and then Coals: the time in which the arch
// itself warms is not in it. Sugar neither burns nor spatters.
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
	// at no cost to the fire, 0 to 100 C. The zero value, 0 C, is no preheater.
	PreheatTo units.Temperature

	// Coals is the time in which the fire falls to half once no more wood goes
	// on, and to half of that in as much again, up to 12 hours: see [Rig.Run]. Zero
	// is a fire that goes out at once, as gas does. None was found in print: measure
	// in how long the boil falls to half.
	Coals time.Duration

	// Draw is when syrup is taken off the last compartment. The zero value
	// draws nothing, for a pan that is emptied by hand after the fire.
	Draw DrawOff
}

// Compartment is one part of a pan, with straight sides.
type Compartment struct {
	Area  units.Area   // 1 cm2 to 10,000 m2
	Depth units.Length // of the hot liquid when it is full, 1 mm to 10 m

	// SafeDepth is the least that may stand over the fire, 0.1 mm to 99 percent of
	// the depth: with less, syrup scorches and the pan burns. A pan that is not level
	// needs more.
	SafeDepth units.Length

	// Fire is the share of the heat. If all are zero the fire is shared by area;
	// otherwise they add up to 100 percent.
	Fire units.Share
}

// DrawOff says when syrup leaves the last compartment: at the boiling point of
// At, 1 to 74 Brix, which [boil.SyrupPoint] gives.
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

var feeds = enum.Names[Feed]{Type: "pan.Feed", Of: []string{FloatFeed: "float", PailFeed: "pail"}}

// Feeds lists the ways sap comes in.
func Feeds() []Feed { return feeds.List() }

// String names the way, "float" or "pail".
func (f Feed) String() string { return feeds.String(f) }

// MarshalText returns the name, and an error for what is no way.
func (f Feed) MarshalText() ([]byte, error) { return feeds.Marshal(f) }

// UnmarshalText reads it. An unknown one is an error that tells the nearest.
func (f *Feed) UnmarshalText(text []byte) error { return feeds.Unmarshal(f, text) }
