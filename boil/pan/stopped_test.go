package pan

import (
	"errors"
	"math"
	"math/rand/v2"
	"testing"
	"time"

	"example.org/sapreckoner/boil"
	"example.org/sapreckoner/units"
)

// shallow is a flat pan of 12 ft2 that boils off 12 US gal/h of cold sap.
func shallow(t testing.TB) (Rig, Contents, units.Pressure) {
	t.Helper()
	p := units.Atmosphere
	r := Rig{
		Compartments: []Compartment{{Area: 12 * units.SquareFoot, Depth: 2 * units.Inch, SafeDepth: units.Inch}},
		Heat:         units.Kilowatt, Draw: DrawOff{At: 66.9},
	}
	// A gallon of water at 60 F weighs 8.337 lb.
	heat, err := r.HeatFor(units.Pounds(12*8.337).Per(time.Hour), Sap{Brix: 2, Temperature: units.Fahrenheit(40)}, p)
	if err != nil {
		t.Fatal(err)
	}
	r.Heat = heat
	hot, err := boil.SyrupPoint(15, p)
	if err != nil {
		t.Fatal(err)
	}
	held, err := r.FromLevels([]Level{{Depth: 2 * units.Inch, Brix: 15, Temperature: hot}})
	if err != nil {
		t.Fatal(err)
	}
	return r, held, p
}

// By hand: an inch of 12 ft2 is a cubic foot, 28.317 L. The pan of 15 Brix
// shrinks by what its water takes, which near the boil weighs 0.958 kg/L, and so
// 27.1 kg go, 7.2 gallons. The fire warmed 1.03 lb of sap by 172 F (1 Btu/lb F) for
// each pound that it boiled off at 970 Btu; with the cold sap gone it boils off
// 12 (970 + 1.03 172)/970 = 14.2 gallons an hour. That is 30.3 minutes, and not
// the 36 that 12 gallons would give.
func TestFeedStoppedByHand(t *testing.T) {
	r, held, p := shallow(t)
	s, err := r.FeedStopped(held, p)
	if err != nil {
		t.Fatal(err)
	}
	if got := s.After.Minutes(); !(got > 30 && got < 31) || s.End != EventLow || s.Compartment != 0 || s.LastWood != s.After || s.Overruns {
		t.Errorf("%v min, %+v", got, s)
	}
	// A half-life of 10 minutes gives as much as 14.4 minutes of full fire.
	r.Coals = 10 * time.Minute
	c, err := r.FeedStopped(held, p)
	if err != nil || c.After != s.After || math.Abs((s.After-c.LastWood).Minutes()-14.427) > 0.01 || c.Overruns {
		t.Errorf("coals: %+v, %v", c, err)
	}
	r.Coals = 22 * time.Minute // 31.7 minutes of full fire
	if c, err = r.FeedStopped(held, p); err != nil || !c.Overruns || c.LastWood != 0 {
		t.Errorf("more coals: %+v, %v", c, err)
	}
	// Water of 2 inches, cold, is 124.8 lb. Warming it by 160 F takes 20,000 Btu of
	// 114,500 an hour, 10.5 minutes; and since it swells by 4 percent on the way, 5 lb
	// more have to go at 970 Btu, 2.6 minutes.
	cold, err := r.FromLevels([]Level{{Depth: 2 * units.Inch, Temperature: units.Fahrenheit(52)}})
	if err != nil {
		t.Fatal(err)
	}
	if c, err = r.FeedStopped(cold, p); err != nil || !(c.After > s.After+12*time.Minute && c.After < s.After+14*time.Minute) {
		t.Errorf("from cold: %+v, %v", c, err)
	}
}

// What comes first is told: the same pan of 60 Brix is syrup long before it is
// low. 60 to 66.9 Brix takes a tenth of its mass, 1 - 60/66.9: 14.5 lb of 141, at 14
// gallons of 8.34 lb an hour about 7 minutes.
func TestFeedStoppedAtSyrup(t *testing.T) {
	r, _, p := shallow(t)
	hot, err := boil.SyrupPoint(60, p)
	if err != nil {
		t.Fatal(err)
	}
	held, err := r.FromLevels([]Level{{Depth: 2 * units.Inch, Brix: 60, Temperature: hot}})
	if err != nil {
		t.Fatal(err)
	}
	s, err := r.FeedStopped(held, p)
	if err != nil || s.End != EventDrawOpens || !(s.After.Minutes() > 6.5 && s.After.Minutes() < 8.5) {
		t.Errorf("%v min, %+v, %v", s.After.Minutes(), s, err)
	}
	// Without a strength to draw at it is the level that counts.
	r.Draw = DrawOff{}
	if s, err = r.FeedStopped(held, p); err != nil || s.End != EventTooThick && s.End != EventLow || s.After < 8*time.Minute {
		t.Errorf("no draw: %+v, %v", s, err)
	}
}

// A pan that stands at its safe depth already has no time, and one that is empty
// neither.
func TestFeedStoppedLow(t *testing.T) {
	r, held, p := shallow(t)
	r.Compartments[0].SafeDepth = 1.97 * units.Inch
	for _, c := range []Contents{held, nil, {{}}} {
		if s, err := r.FeedStopped(c, p); err != nil || s.After != 0 || s.End != EventLow {
			t.Errorf("%v: %+v, %v", c, s, err)
		}
	}
	if _, err := r.FeedStopped(Contents{{}, {}}, p); !errors.Is(err, units.ErrRange) {
		t.Error(err)
	}
	if _, err := r.FeedStopped(held, 1); !errors.Is(err, units.ErrRange) {
		t.Error(err)
	}
}

// Over random pans: a hotter fire leaves less time in inverse proportion, and at
// the time told the pan is where it is said to be.
func TestFeedStoppedRandom(t *testing.T) {
	g := rand.New(rand.NewPCG(18, 3))
	ends := map[Event]int{}
	for range 200 {
		r, d := randomRig(g), longDay()
		r.Coals, r.Feed, r.Pail = 0, FloatFeed, 0
		var levels []Level
		for _, c := range r.Compartments {
			levels = append(levels, Level{Depth: c.Depth * units.Length(0.7+0.3*g.Float64()), Brix: units.Brix(2 + 60*g.Float64()), Temperature: units.Celsius(101)})
		}
		held, err := r.FromLevels(levels)
		if err != nil {
			t.Fatal(err)
		}
		s, err := r.FeedStopped(held, d.Pressure)
		if err != nil {
			continue // so little liquid over so hot a fire is refused
		}
		ends[s.End]++
		if s.After > time.Minute {
			checkStopped(t, r, held, d.Pressure, s)
		}
		r.Heat *= 1.25
		hotter, err := r.FeedStopped(held, d.Pressure)
		if err != nil {
			continue
		}
		if hotter.End != s.End || hotter.Compartment != s.Compartment || math.Abs(1.25*hotter.After.Seconds()-s.After.Seconds()) > 0.01+1e-5*s.After.Seconds() {
			t.Errorf("%+v, hotter %+v", s, hotter)
		}
	}
	if ends[EventLow] < 20 || ends[EventDrawOpens] < 20 {
		t.Errorf("%v", ends)
	}
}

// checkStopped boils without sap from the levels as they stand: a thousandth before
// the time told nothing has come about, and a thousandth after it what was told and
// nothing else has.
func checkStopped(t *testing.T, r Rig, held Contents, p units.Pressure, s Stopped) {
	t.Helper()
	h, err := newHot("test", "pressure", p)
	if err != nil {
		t.Fatal(err)
	}
	r.Draw.Until, r.Draw.Rate = 0, 0
	r.Compartments = append([]Compartment(nil), r.Compartments...)
	for i, l := range held {
		r.Compartments[i].Depth = units.Length(float64(l.Mass()) * h.at(l.Brix().Fraction()).volume / float64(r.Compartments[i].Area))
	}
	for _, by := range []float64{0.999, 1.001} {
		o, err := r.Run(Day{Pressure: p, Start: held, Out: time.Duration(by * float64(s.After))})
		if err != nil {
			t.Fatal(err)
		}
		came := map[Event]bool{EventLow: o.WasLow, EventDrawOpens: len(o.Draws) > 0, EventTooThick: o.End == EventTooThick}
		for e, has := range came {
			if has != (by > 1 && e == s.End) {
				t.Errorf("%+v: at %v times that %v is %v", s, by, e, has)
			}
		}
	}
}
