package pan

import (
	"errors"
	"math"
	"math/rand/v2"
	"testing"
	"time"

	"example.org/sapreckoner/density"
	"example.org/sapreckoner/units"
)

// brought returns the sugar and the water of a day.
func brought(t testing.TB, d Day) (sugar, water float64) {
	t.Helper()
	for _, s := range d.Sap {
		rho, err := density.Solution(s.Brix, s.Temperature)
		if err != nil {
			t.Fatal(err)
		}
		m := rho.Mass(s.Volume)
		sugar += float64(s.Brix.Sugar(m))
		water += float64(m - s.Brix.Sugar(m))
	}
	for _, l := range d.Start {
		sugar += float64(l.Sugar)
		water += float64(l.Water)
	}
	return sugar, water
}

// checkConserved holds the outcome of a day to what the day brought.
func checkConserved(t testing.TB, d Day, o Outcome) {
	t.Helper()
	sugar, water := brought(t, d)
	gotSugar := float64(o.Syrup.Sugar + o.Held.Sugar() + o.Sweet)
	gotWater := float64(o.Syrup.Water + o.Held.Mass() - o.Held.Sugar() + o.Evaporated + o.SapLeft - o.Sweet)
	if !(math.Abs(gotSugar-sugar) <= 1e-9*sugar) {
		t.Errorf("sugar %v, brought %v", gotSugar, sugar)
	}
	if !(math.Abs(gotWater-water) <= 1e-9*water) {
		t.Errorf("water %v, brought %v", gotWater, water)
	}
}

func TestConserved(t *testing.T) {
	r := rand.New(rand.NewPCG(5, 1))
	ends := map[Event]int{}
	days := 2000
	if testing.Short() {
		days = 300
	}
	for i := range days {
		rig := randomRig(r)
		day := randomDay(r, rig)
		last, most := math.NaN(), units.Mass(0)
		o, err := rig.Trace(day, 20*time.Minute, func(m Moment) bool {
			all := float64(m.Drawn().Mass() + m.Evaporated() + m.SapLeft())
			for i := range m.Len() {
				all += float64(m.Liquid(i).Mass())
			}
			if m.Event != EventSapIn && !(math.Abs(all-last) <= 1e-9*all) && !math.IsNaN(last) {
				t.Errorf("%d: %v kg at %v (%v), %v before", i, all, m.At, m.Event, last)
			}
			last = all
			switch m.Event {
			case EventBoils, EventOffBoil, EventLow, EventTooThick:
				if m.Compartment < 0 || m.Compartment >= m.Len() {
					t.Errorf("%d: %v of compartment %d", i, m.Event, m.Compartment)
				} else if b := m.Liquid(m.Compartment).Brix(); m.Event == EventTooThick && !near(float64(b), 75, 1e-6) {
					t.Errorf("%d: too thick at %v", i, b)
				}
			default:
				if m.Compartment != -1 {
					t.Errorf("%d: %v speaks of compartment %d", i, m.Event, m.Compartment)
				}
			}
			if m.Event == EventSapIn {
				most = max(most, m.SapLeft())
			}
			if m.Event == EventSapOut && m.SapLeft() > 1e-9 {
				t.Errorf("%d: sap out with %v left", i, m.SapLeft())
			}
			if m.Event == EventFinished && m.Len() != 1 { // only a kettle is emptied
				t.Errorf("%d: %d compartments finish", i, m.Len())
			}
			return true
		})
		if err != nil {
			// The smallest pail of a random rig may be too small for its largest pan.
			if !errors.Is(err, units.ErrRange) || rig.Feed != PailFeed {
				t.Errorf("%d: %v", i, err)
			}
			continue
		}
		ends[o.End]++
		checkConserved(t, day, o)
		if !(o.Backlog >= most*(1-1e-12)) {
			t.Errorf("%d: a backlog of %v at most, yet %v stood in the tank", i, o.Backlog, most)
		}
		if t.Failed() {
			t.Fatalf("%d: %+v\n%+v\n%+v", i, rig, day, o)
		}
		if o.Burned < 0 || o.Burned > day.Out-day.Light || o.Evaporated < 0 {
			t.Errorf("%d: %+v", i, o)
		}
	}
	for _, e := range []Event{EventFireOut, EventLow, EventFinished, EventTooThick} {
		if ends[e] == 0 {
			t.Errorf("no day ended with %v: %v", e, ends)
		}
	}
	t.Log(ends)
}

// Compartments without fire pass the sap on as cold as it comes, and the last
// has to warm it: once all runs evenly, the fire makes of its heat what the
// balance in the doc of [Backlog.Plan] says, 353.22 lb of water off for 404,680
// Btu, at 1 atm from sap of 2 Brix and 40 F.
func TestColdCompartments(t *testing.T) {
	rig, day := partitioned(), longDay()
	rig.Draw.At = 66
	day.Pressure = 1 * units.Atmosphere
	for i := range rig.Compartments {
		rig.Compartments[i].Fire = 0
	}
	rig.Compartments[len(rig.Compartments)-1].Fire = 100 * units.Percent
	var gone []float64 // lb of water, by the hour
	if _, err := rig.Trace(day, time.Hour, func(m Moment) bool {
		if m.Event == EventReading {
			gone = append(gone, m.Evaporated().Pounds())
		}
		return true
	}); err != nil || len(gone) != 13 {
		t.Fatal(gone, err)
	}
	perHour := rig.Heat.Over(time.Hour).BtusIT() / 404680 * 353.22
	for i := 9; i < len(gone); i++ {
		if got := gone[i] - gone[i-1]; !near(got, perHour, 5e-3) {
			t.Errorf("hour %d: %v lb of water, want %v", i, got, perHour)
		}
	}
}
