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

func TestTraceStops(t *testing.T) {
	n := 0
	o, err := partitioned().Trace(longDay(), time.Hour, func(m Moment) bool {
		n++
		return m.At < 3*time.Hour || m.Event == EventFireOut
	})
	if err != nil || o.End != EventReading || o.Ended > 4*time.Hour {
		t.Errorf("%v after %v, %v", o.End, o.Ended, err)
	}
	checkConserved(t, longDay(), o)
}

func TestTraceReadings(t *testing.T) {
	d := longDay()
	d.Light = 90 * time.Minute
	d.Out = d.Light + 6*time.Hour
	want := d.Light
	_, err := partitioned().Trace(d, 7*time.Minute, func(m Moment) bool {
		if m.Event != EventReading {
			return true
		}
		if (m.At - want).Abs() > time.Microsecond {
			t.Errorf("reading at %v, want %v", m.At, want)
		}
		want += 7 * time.Minute
		return true
	})
	if err != nil || want != d.Light+52*7*time.Minute {
		t.Errorf("next reading %v, %v", want, err)
	}
}

// What stands in the pans is never colder than the sap nor hotter than it boils,
// and a compartment that comes to the boil boils. The fire gives what it gives.
// Only some events speak of a compartment.
func TestTraceTemperatures(t *testing.T) {
	// A boiling point of the simulation stands for the series to 1e-7 K by cubics
	// that come within 1e-6 of it.
	const hair = 2e-6
	cold := units.Fahrenheit(40)
	finishes := longDay()
	finishes.Sap[0].Volume = 30 * units.USGallon
	finishes.Out = 48 * time.Hour
	for name, c := range map[string]struct {
		rig Rig
		day Day
	}{"partitioned": {partitioned(), longDay()}, "kettle": {kettle(), finishes}} {
		point := func(l Liquid) units.Temperature {
			t.Helper()
			p, err := boil.SyrupPoint(l.Brix(), c.day.Pressure)
			if err != nil {
				t.Fatal(err)
			}
			return p
		}
		within := func(what string, l Liquid) {
			t.Helper()
			if l.Mass() > 0 && !(l.Temperature.Sub(cold) >= -hair && l.Temperature.Sub(point(l)) <= hair) {
				t.Errorf("%s: %s at %v, boils at %v", name, what, l.Temperature, point(l))
			}
		}
		boils, finished := 0, 0
		o, err := c.rig.Trace(c.day, 20*time.Minute, func(m Moment) bool {
			for i := range m.Len() {
				within(m.Event.String(), m.Liquid(i))
			}
			speaks := m.Event == EventBoils || m.Event == EventOffBoil || m.Event == EventLow || m.Event == EventTooThick
			if speaks != (m.Compartment >= 0) || !speaks && m.Compartment != -1 {
				t.Errorf("%s: %v speaks of compartment %d", name, m.Event, m.Compartment)
			}
			switch m.Event {
			case EventLit:
				for i := range m.Len() {
					if d := m.Liquid(i).Temperature.Sub(cold); math.Abs(float64(d)) > hair {
						t.Errorf("%s: %v K over the sap when the fire is lit", name, float64(d))
					}
				}
			case EventBoils:
				boils++
				if l := m.Liquid(m.Compartment); math.Abs(float64(l.Temperature.Sub(point(l)))) > 1e-3 {
					t.Errorf("%s: boils at %v, not at %v", name, l.Temperature, point(l))
				}
			case EventFinished:
				finished++
			}
			return true
		})
		if err != nil || boils < len(c.rig.Compartments) || finished != 0 != (name == "kettle") {
			t.Errorf("%s: %d came to the boil, %d finished, %v", name, boils, finished, err)
		}
		for _, l := range o.Held {
			within("held", l)
		}
		if want := float64(c.rig.Heat) * o.Burned.Seconds(); !near(float64(o.Heat), want, 1e-9) {
			t.Errorf("%s: %v J of %v", name, float64(o.Heat), want)
		}
	}
}

// The fire is lit under pans that are full, whether they stood empty or low, and
// nothing stands where there is no pan.
func TestLitFillsUp(t *testing.T) {
	rig, day := partitioned(), longDay()
	for _, left := range []float64{0, 0.3, 0.7, 1} { // of a full pan; the safe depth is at half
		start, err := rig.Fill(10, units.Celsius(90), day.Pressure)
		if err != nil {
			t.Fatal(err)
		}
		for i := range start {
			start[i].Sugar *= units.Mass(left)
			start[i].Water *= units.Mass(left)
		}
		day.Start = start
		lit := false
		o, err := rig.Trace(day, 0, func(m Moment) bool {
			if m.Event != EventLit {
				return false
			}
			lit = true
			for i, c := range rig.Compartments {
				if full := c.Area.Volume(c.Depth); !near(m.Volume(i).Liters(), full.Liters(), 1e-6) {
					t.Errorf("%v left: compartment %d holds %v L when the fire is lit, of %v", left, i, m.Volume(i).Liters(), full.Liters())
				}
			}
			for _, i := range []int{-1, m.Len()} {
				if m.Liquid(i) != (Liquid{}) || m.Volume(i) != 0 {
					t.Errorf("%+v in compartment %d of %d", m.Liquid(i), i, m.Len())
				}
			}
			return false
		})
		if err != nil || !lit {
			t.Errorf("lit: %v, %v", lit, err)
		}
		checkConserved(t, day, o)
	}
}

// A second is the least time between readings, and is one.
func TestTraceEverySecond(t *testing.T) {
	d := longDay()
	d.Out = 10 * time.Second
	n := 0
	_, err := kettle().Trace(d, time.Second, func(m Moment) bool {
		if m.Event == EventReading {
			n++
		}
		return true
	})
	if err != nil || n != 11 {
		t.Errorf("%d readings in ten seconds, %v", n, err)
	}
}

func TestZeroMoment(t *testing.T) {
	var m Moment
	if m.Len() != 0 || m.Liquid(0) != (Liquid{}) || m.Volume(1) != 0 || m.Drawn() != (Liquid{}) || m.Evaporated() != 0 || m.SapLeft() != 0 {
		t.Errorf("the zero moment holds something: %+v", m)
	}
}

// A moment speaks of a compartment where its event is one of a compartment.
func TestCompartmentOfEvents(t *testing.T) {
	r := rand.New(rand.NewPCG(19, 20))
	seen := map[Event]bool{}
	for i := range 300 {
		rig := randomRig(r)
		if i%10 == 0 {
			rig.Coals = 8 * time.Minute
		}
		_, err := rig.Trace(randomDay(r, rig), time.Hour, func(m Moment) bool {
			seen[m.Event] = true
			switch m.Event {
			case EventBoils, EventOffBoil, EventLow, EventTooThick:
				if m.Compartment < 0 || m.Compartment >= m.Len() {
					t.Errorf("%v in compartment %d of %d", m.Event, m.Compartment, m.Len())
					break
				}
				if c := rig.Compartments[m.Compartment]; m.Event == EventLow && !(m.Volume(m.Compartment) <= c.Area.Volume(c.SafeDepth)*(1+1e-4)) {
					t.Errorf("low in compartment %d with %v, safe is %v", m.Compartment, m.Volume(m.Compartment), c.Area.Volume(c.SafeDepth))
				}
			default:
				if m.Compartment != -1 {
					t.Errorf("%v in compartment %d, want -1", m.Event, m.Compartment)
				}
			}
			return !t.Failed()
		})
		if err != nil && !errors.Is(err, units.ErrRange) {
			t.Error(err)
		}
	}
	for e := EventReading; e <= EventFireOut; e++ {
		if !seen[e] {
			t.Errorf("no day had the event %v", e)
		}
	}
}

func TestNames(t *testing.T) {
	seen := map[string]bool{}
	for e := EventReading; e <= EventFireOut; e++ {
		if s := e.String(); s == "" || seen[s] {
			t.Errorf("event %d is called %q", e, s)
		} else {
			seen[s] = true
		}
	}
	for _, c := range []struct{ got, want string }{
		{(EventFireOut + 1).String(), "Event(17)"},
		{FloatFeed.String(), "float"}, {PailFeed.String(), "pail"}, {(PailFeed + 1).String(), "Feed(2)"},
	} {
		if c.got != c.want {
			t.Errorf("%q, want %q", c.got, c.want)
		}
	}
}

func TestNoFirstDraw(t *testing.T) {
	if at, ok := new(Outcome).FirstDraw(); at != 0 || ok {
		t.Errorf("of a day without syrup: %v, %v", at, ok)
	}
}
