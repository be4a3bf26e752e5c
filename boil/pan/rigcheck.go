package pan

import (
	"math"

	"example.org/sapreckoner/internal/base/limit"
	"example.org/sapreckoner/units"
)

// What a rig may be. The times keep the liquid in a compartment long enough for
// a simulation of hours to follow it.
var (
	rigSize = limit.Range{Arg: "Rig.Compartments", What: "number of compartments", Low: 1, High: 100,
		Below: "a kettle is one compartment"}
	rigHeat = limit.Range{Arg: "Rig.Heat", What: "heat", Low: 1, High: 1e8, Unit: "W",
		Below: "without a fire nothing boils: give the heat that reaches the liquid"}
	rigArea = limit.Range{Arg: "Compartment.Area", What: "area of a compartment", Low: 1e-4, High: 1e4, Unit: "m2",
		Below: "check the unit of the area"}
	rigDepth = limit.Range{Arg: "Compartment.Depth", What: "depth of a compartment", Low: 1e-3, High: 10, Unit: "m",
		Below: "give the depth of the liquid when the compartment is full"}
	rigShare = limit.Range{Arg: "Compartment.Fire", What: "share of the fire", Low: 0, High: 100, Unit: "%"}
	rigFire  = limit.Range{Arg: "Rig.Compartments", What: "sum of the shares of the fire", Low: 99.9, High: 100.1, Unit: "%",
		Below: "leave all shares out to share the fire by area",
		Above: "the compartments share one fire"}
	rigHold = limit.Range{Arg: "Compartment.Area", What: "time in which the whole fire would boil a compartment away", Low: 10, High: math.Inf(1), Unit: "s",
		Below: "it would flash dry: check area, depth and heat, or join it with its neighbor"}
	rigFeed = limit.Range{Arg: "Rig.Feed", What: "feed", Low: float64(FloatFeed), High: float64(PailFeed),
		Above: "say whether it comes by a float or by the pail"}
	rigCoals = limit.Range{Arg: "Rig.Coals", What: "half-life of the coals", Low: 0, High: 12, Unit: "h",
		Below: "leave it zero for a fire that goes out at once",
		Above: "a fire that holds so long cannot be steered: measure how long the boil takes to fall to half"}
	rigPreheat = limit.Range{Arg: "Rig.PreheatTo", What: "temperature of the preheater", Low: 0, High: 100, Unit: "C",
		Above: "steam at the pressure of the air warms sap to its boiling point at most"}
	drawAt = limit.Range{Arg: "DrawOff.At", What: "strength of the draw", Low: 1, High: 74, Unit: "Brix",
		Below: "say at what strength it is drawn: without one a rig draws nothing",
		Above: "beyond it syrup is candy in the making: finish it in a pot"}
	drawGap = limit.Range{Arg: "DrawOff.Until", What: "strength at which the draw ends", Low: 0, High: drawAt.High, Unit: "Brix",
		Above: "it must lie below the strength at which the draw starts by 0.05 Brix or more; leave it zero for a thin stream"}
	drawTime = limit.Range{Arg: "DrawOff.Rate", What: "time in which the valve empties the last compartment", Low: 10, High: 1e7, Unit: "s",
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
		if err := r.Compartments[i].check(fn, i, r.Heat); err != nil {
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

func (c *Compartment) check(fn string, i int, heat units.Power) error {
	const list = "Rig.Compartments"
	if err := rigArea.CheckItem(fn, list, i, "Area", float64(c.Area)); err != nil {
		return err
	}
	if err := rigDepth.CheckItem(fn, list, i, "Depth", float64(c.Depth)); err != nil {
		return err
	}
	safe := limit.Range{What: "safe depth", Low: float64(rigDepth.Low) / 10, High: 0.99 * float64(c.Depth), Unit: "m",
		Below: "a pan boiled dry is ruined and may start a fire: give the least depth that you allow",
		Above: "it must lie below the depth of the full compartment"}
	if err := safe.CheckItem(fn, list, i, "SafeDepth", float64(c.SafeDepth)); err != nil {
		return err
	}
	if err := rigShare.CheckItem(fn, list, i, "Fire", float64(c.Fire)); err != nil {
		return err
	}
	return rigHold.CheckItem(fn, list, i, "Area", float64(c.Area.Volume(c.Depth))*boilAway/float64(heat))
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
		pail := limit.Range{Arg: "Rig.Pail", What: "pail", Low: min(full/100, room), High: room, Unit: "L", Per: float64(units.Liter),
			Below: "pouring so little is a thin stream: take a float",
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
