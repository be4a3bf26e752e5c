package boil

import (
	"errors"
	"math/rand/v2"
	"testing"
	"time"

	"example.org/sapreckoner/units"
)

func TestTraceStops(t *testing.T) {
	n := 0
	o, err := partitioned().Trace(longDay(), time.Hour, func(m Moment) bool {
		n++
		return m.At < 3*time.Hour || m.Event == FireOut
	})
	if err != nil || o.End != Reading || o.Ended > 4*time.Hour {
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
		if m.Event != Reading {
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
	for range 300 {
		rig := randomRig(r)
		_, err := rig.Trace(randomDay(r, rig), time.Hour, func(m Moment) bool {
			seen[m.Event] = true
			switch m.Event {
			case Boils, OffBoil, Low, TooThick:
				if m.Compartment < 0 || m.Compartment >= m.Len() {
					t.Errorf("%v in compartment %d of %d", m.Event, m.Compartment, m.Len())
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
	for e := Reading; e <= FireOut; e++ {
		if !seen[e] {
			t.Errorf("no day had the event %v", e)
		}
	}
}

func TestNames(t *testing.T) {
	seen := map[string]bool{}
	for e := Reading; e <= FireOut; e++ {
		if s := e.String(); s == "" || seen[s] {
			t.Errorf("event %d is called %q", e, s)
		} else {
			seen[s] = true
		}
	}
	for _, c := range []struct{ got, want string }{
		{(FireOut + 1).String(), "event 16"},
		{FloatFeed.String(), "float"}, {PailFeed.String(), "pail"}, {(PailFeed + 1).String(), "feed 2"},
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
