package pan

import (
	"math/rand/v2"
	"testing"
	"time"

	"example.org/sapreckoner/boil/fuel"
	"example.org/sapreckoner/units"
)

// randomClock is a random rig with a thin stream and all of its sap there at the
// lighting.
func randomClock(g *rand.Rand) (Rig, Day) {
	r := randomRig(g)
	r.Feed, r.Pail, r.Draw.Until, r.Coals = FloatFeed, 0, 0, 0
	var full units.Volume
	for _, c := range r.Compartments {
		full += c.Area.Volume(c.Depth)
	}
	if last := r.Compartments[len(r.Compartments)-1]; r.Draw.At > 0 && r.Draw.Rate == 0 {
		r.Draw.Rate = last.Area.Volume(last.Depth).Per(emptying * time.Second)
	}
	r.Heat = max(r.Heat, units.Power(float64(full)*2e5)) // no fortnights
	return r, Day{Pressure: units.Kilopascals(85 + 18*g.Float64()), Out: longestDay,
		Sap: []Sap{{Volume: full * units.Volume(1.5+6*g.Float64()), Brix: units.Brix(1 + 4*g.Float64()), Temperature: units.Celsius(30 * g.Float64())}}}
}

// Over random rigs with a thin stream and all sap there at the lighting: the boil
// ends later with more sap, and a millionth more sap moves it by no more than a
// few millionths; a fire twice as hot, over a valve twice as wide, ends it in half of
// the time, since nothing else has a clock; and each boils away the same water.
func TestClocks(t *testing.T) {
	g := rand.New(rand.NewPCG(18, 6))
	done := 0
	for done < 150 {
		r, d := randomClock(g)
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

// Over random rigs and a stoker who puts so many cords on in an hour: wetter wood ends
// the boil later, draws first syrup later and leaves as much syrup; a millionth more
// moisture moves the clock by no more than a few millionths. By hand, a cord of so much
// oven-dry wood gives 8600 - 1050 (m + 0.54) Btu/lb of it at a moisture m on its own
// basis, and the clock goes as its inverse where the valve is as much narrower.
func TestClocksOfMoisture(t *testing.T) {
	g := rand.New(rand.NewPCG(18, 7))
	wood := fuel.FirewoodMissouri()[0] // a cord of any is proportional to its oven-dry weight
	drawn, onCoals := 0, 0
	for done := 0; done < 100; {
		r, d := randomClock(g)
		dry, err := wood.Net(0)
		if err != nil {
			t.Fatal(err)
		}
		cords := float64(r.Heat) / float64(dry.Heat) // a second, at all of its heat
		run := func(m fuel.DryMoisture, coals time.Duration) (o Outcome, first float64) {
			cord, err := wood.Net(m)
			if err != nil {
				t.Fatal(err)
			}
			rig := r
			rig.Coals, rig.Heat = coals, units.Power(cords*float64(cord.Heat))
			rig.Draw.Rate *= units.VolumeRate(cord.Heat / dry.Heat)
			if o, err = rig.Run(d); err != nil {
				t.Fatal(err)
			}
			if at, drawn := o.FirstDraw(); drawn {
				first = at.Seconds()
			}
			return o, first
		}
		if r.check("", false) != nil {
			continue
		}
		o, first := run(0, 0)
		if o.End != EventLow && o.End != EventFinished {
			continue
		}
		done++
		if first > 0 {
			drawn++
		}
		perPound := func(m float64) float64 { return 8600 - 1050*(m/100+0.54) }
		m := 5 + 90*g.Float64()
		wet, later := run(fuel.DryMoisture(m), 0)
		ratio := perPound(0) / perPound(m)
		if !(wet.Ended > o.Ended && later >= first) || !near(wet.Ended.Seconds(), ratio*o.Ended.Seconds(), 1e-5) || !near(later, ratio*first, 1e-5) || !near(float64(wet.Syrup.Sugar), float64(o.Syrup.Sugar), 1e-5) {
			t.Errorf("%v %% of moisture: ended %v, first %v, %v of sugar; dry %v, %v, %v; by hand %v times as long", m, wet.Ended, later, wet.Syrup.Sugar, o.Ended, first, o.Syrup.Sugar, ratio)
		}
		if more, _ := run(fuel.DryMoisture(m*(1+1e-6)), 0); !near(more.Ended.Seconds(), wet.Ended.Seconds(), 2e-5) {
			t.Errorf("%v %% of moisture: ended %v, with a millionth more %v", m, wet.Ended, more.Ended)
		}
		coals := time.Duration(10+g.IntN(900)) * time.Second
		dryEnd, _ := run(0, coals)
		wetEnd, _ := run(fuel.DryMoisture(m), coals)
		if dryEnd.ToCome > 0 || wetEnd.ToCome > 0 {
			continue
		}
		if onCoals++; !(wetEnd.LastWood > dryEnd.LastWood && wetEnd.Ended > dryEnd.Ended) {
			t.Errorf("%v %% of moisture, coals of %v: last wood %v, ended %v; dry %v, %v", m, coals, wetEnd.LastWood, wetEnd.Ended, dryEnd.LastWood, dryEnd.Ended)
		}
	}
	if drawn < 20 || onCoals < 20 {
		t.Errorf("%d days drew syrup, %d ended on coals", drawn, onCoals)
	}
}
