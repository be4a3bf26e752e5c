package pan

import (
	"math/rand/v2"
	"testing"
	"time"

	"example.org/sapreckoner/units"
)

// Over random rigs with a thin stream and all sap there at the lighting: the boil
// ends later with more sap, and a millionth more sap moves it by no more than a
// few millionths; a fire twice as hot, over a valve twice as wide, ends it in half of
// the time, since nothing else has a clock; and each boils away the same water.
func TestClocks(t *testing.T) {
	g := rand.New(rand.NewPCG(18, 6))
	done := 0
	for done < 150 {
		r := randomRig(g)
		r.Feed, r.Pail, r.Draw.Until, r.Coals = FloatFeed, 0, 0, 0
		var full units.Volume
		for _, c := range r.Compartments {
			full += c.Area.Volume(c.Depth)
		}
		d := Day{Pressure: units.Kilopascals(85 + 18*g.Float64()), Out: longestDay,
			Sap: []Sap{{Volume: full * units.Volume(1.5+6*g.Float64()), Brix: units.Brix(1 + 4*g.Float64()), Temperature: units.Celsius(30 * g.Float64())}}}
		run := func(sap, heat float64) Outcome {
			then, rig := d, r
			then.Sap = []Sap{d.Sap[0]}
			then.Sap[0].Volume *= units.Volume(sap)
			rig.Heat *= units.Power(heat)
			rig.Draw.Rate *= units.VolumeRate(heat)
			o, err := rig.Run(then)
			if err != nil {
				t.Fatal(err)
			}
			return o
		}
		if last := r.Compartments[len(r.Compartments)-1]; r.Draw.At > 0 && r.Draw.Rate == 0 {
			r.Draw.Rate = last.Area.Volume(last.Depth).Per(emptying * time.Second)
		}
		r.Heat = max(r.Heat, units.Power(float64(full)*2e5)) // no fortnights
		if r.check("", false) != nil {
			continue
		}
		o := run(1, 1)
		if o.End != EventLow && o.End != EventFinished { // too thick is a matter of the pan and not of the tank
			continue
		}
		done++
		end := o.Ended.Seconds()
		if more := run(1.05, 1).Ended.Seconds(); !(more > end) {
			t.Errorf("%v %+v: %v s, with more sap %v", o.End, r.Draw, end, more)
		}
		if near1 := run(1+1e-6, 1).Ended.Seconds(); !near(near1, end, 2e-5) {
			t.Errorf("%+v: %v s, with a millionth more sap %v", r, end, near1)
		}
		twice := run(1, 2)
		if got := twice.Ended.Seconds(); !near(2*got, end, 1e-5) || !near(float64(twice.Evaporated), float64(o.Evaporated), 1e-6) {
			t.Errorf("%v/%v %+v %v: %v s and %v kg, of twice the fire %v and %v", o.End, twice.End, r.Draw, len(r.Compartments), end, o.Evaporated, got, twice.Evaporated)
		}
		r.Coals = time.Duration(10+g.IntN(900)) * time.Second
		if coals := run(1, 1); coals.ToCome == 0 && !(coals.LastWood < o.Ended && coals.Ended > coals.LastWood) {
			t.Errorf("%+v: last wood at %v of %v", r, coals.LastWood, o.Ended)
		}
	}
}
