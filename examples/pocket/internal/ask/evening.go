package ask

import (
	"fmt"
	"time"

	"example.org/sapreckoner/boil"
	"example.org/sapreckoner/boil/finish"
	"example.org/sapreckoner/boil/fuel"
	"example.org/sapreckoner/boil/pan"
	"example.org/sapreckoner/density"
	"example.org/sapreckoner/sugar"
	"example.org/sapreckoner/units"
)

// longestFire is the most that the page plans.
const longestFire = 72 * time.Hour

// An evening is one pan over one fire.
type evening struct {
	rig      pan.Rig
	brix     units.Brix
	cold     units.Temperature
	pressure units.Pressure
}

func (e evening) run(v units.Volume) (pan.Outcome, error) {
	return e.rig.Run(pan.Day{Pressure: e.pressure, Out: longestFire, Sap: []pan.Sap{{Volume: v, Brix: e.brix, Temperature: e.cold}}})
}

// evening reads the fire and the pan.
func (f *Form) evening(v units.Volume, brix, target units.Brix) (e evening, ok bool) {
	rate, area, depth, safe, coals := f.rate("rate"), f.area("pan"), f.length("depth"), f.length("safe"), f.hours("coals")
	cold, elevation := f.temperature("tempered"), f.length("elevation")
	if f.failed {
		return e, false
	}
	if !(safe < depth) {
		f.refuse("safe", fmt.Errorf("it does not lie below the depth that is kept, %s", depth.TextIn(f.System, 2)))
		return e, false
	}
	p, err := boil.PressureAt(elevation)
	if f.blame(err, "elevation") {
		return e, false
	}
	lot, err := sugar.NewLot(v, brix, cold)
	if f.blame(err, "volume", "at", "tempered") {
		return e, false
	}
	demand, err := boil.Heat(lot, target, p)
	if f.blame(err, "target") {
		return e, false
	}
	water, err := density.Water(label)
	if f.blame(err, "rate") {
		return e, false
	}
	power, err := fuel.PowerFor(water.MassRate(rate), fuel.Delivered, demand, fuel.Efficiency{})
	if f.blame(err, "rate") {
		return e, false
	}
	e = evening{rig: pan.Rig{Heat: power.Middle, Coals: coals, Draw: pan.DrawOff{At: target}, Compartments: []pan.Compartment{{Area: area, Depth: depth, SafeDepth: safe}}}, brix: brix, cold: cold, pressure: p}
	return e, true
}

// takeOff tells what leaves the pan, at what heat, and when it is syrup.
func (f *Form) takeOff(e evening, o pan.Outcome, lit time.Duration) {
	if len(o.Draws) > 0 {
		boils, err := boil.SyrupPoint(e.rig.Draw.At, e.pressure)
		if f.blame(err, "target") {
			return
		}
		f.row("off", "Draw it off at", f.boils(e, boils), "", "it is syrup in the pan")
		return
	}
	held := o.Held[0]
	boils, err := boil.SyrupPoint(held.Brix(), e.pressure)
	if f.blame(err, "target") {
		return
	}
	hot, err := held.VolumeAt(boils)
	if f.blame(err, "target") {
		return
	}
	f.row("off", "Take it off at", f.boils(e, boils), "", held.Brix().Text(1)+": as syrup it would lie too low in the pan and scorch. Finish it in a pot")
	f.row("hot", "So much comes off, hot", hot.TextIn(f.System, 3), "", "use a pot that holds twice as much")
	rate := f.rate("pot")
	water, err := density.Water(label)
	if f.blame(err, "pot") || f.failed {
		return
	}
	left, err := finish.Batch{Mass: held.Mass(), Brix: held.Brix(), Evaporation: water.MassRate(rate)}.Time(e.rig.Draw.At)
	if f.blame(err, "pot") {
		return
	}
	f.row("pot", "Then in the pot", fmt.Sprintf("%.1f h", left.Hours()), "", "it is syrup near "+at((lit+o.Ended+left).Round(10*time.Minute))+", if the pot is heated at once")
}

// boils words a boiling point. Where nobody told the elevation it counts from
// boiling water, which the thermometer shows anywhere.
func (f *Form) boils(e evening, at units.Temperature) string {
	water, err := boil.Water(e.pressure)
	if err == nil && !f.typed("elevation") && f.house.value("elevation") == "" {
		return at.Sub(water).TextIn(f.System, 2) + " above boiling water"
	}
	return f.temp(at)
}

// doneBy tells when to light, or how much sap is done by then.
func (f *Form) doneBy(e evening, o pan.Outcome, v units.Volume, lit, by time.Duration) {
	const day = 24 * time.Hour
	if by <= lit {
		by += day
	}
	if lit+o.Ended <= by {
		f.row("by", "For the pan to be done by "+at(by), "light it by "+at((by-o.Ended+day)%day))
		return
	}
	f.row("late", "For the pan to be done by "+at(by), "light it by "+at(((by-o.Ended)%day+day)%day), "", "or gather less")
	// The time rises with the sap very nearly along a line. A fire without coals is
	// soon reckoned, and the coals take about as long after any of them.
	bare := e
	bare.rig.Coals = 0
	t0, ok := bare.ends(v)
	if !ok {
		return
	}
	want := float64(by - lit - (o.Ended - t0))
	v1 := float64(v) * want / float64(t0)
	t1, ok := bare.ends(units.Volume(v1))
	if !ok {
		return
	}
	const sure = 0.99 // a hundredth less
	done := units.Volume(sure * (v1 - (float64(t1)-want)*(float64(v)-v1)/float64(t0-t1)))
	if c := e.rig.Compartments[0]; done >= c.Area.Volume(c.Depth) { // with less the coals may overrun the pan
		f.row("by", "The pan does by "+at(by), done.TextIn(f.System, 3))
	}
}

// ends is when the fire of so much sap has done. It is false for sap that does not
// cover the pan.
func (e evening) ends(v units.Volume) (time.Duration, bool) {
	c := e.rig.Compartments[0]
	if !(v > c.Area.Volume(c.SafeDepth)) {
		return 0, false
	}
	o, err := e.run(v)
	return o.Ended, err == nil && o.SapLeft < units.Kilogram
}
