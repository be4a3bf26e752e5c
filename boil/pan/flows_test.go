package pan

import (
	"slices"
	"testing"
	"time"

	"example.org/sapreckoner/units"
)

// TestLowLevel holds the moment of the low level to the balance: what the pan
// holds between full and safe, and the sap.
func TestLowLevel(t *testing.T) {
	r, d := partitioned(), longDay()
	d.Sap[0].Volume = 100 * units.USGallon
	o, at := times(t, r, d)
	if o.End != EventLow || !o.WasLow || o.LowAt != at[EventLow] || at[EventSapOut] >= at[EventLow] {
		t.Fatalf("%+v at %v", o, at)
	}
	h, err := newHot("test", "pressure", d.Pressure)
	if err != nil {
		t.Fatal(err)
	}
	for i, l := range o.Held {
		c := r.Compartments[i]
		want := float64(c.Area.Volume(c.Depth))
		if i == 0 {
			want = float64(c.Area.Volume(c.SafeDepth))
		}
		if got := float64(l.Mass()) * h.at(l.Brix().Fraction()).volume; !near(got, want, 1e-5) {
			t.Errorf("compartment %d holds %v m3, want %v", i, got, want)
		}
	}

	// With more sap to come the fire waits for it.
	d.Sap = append(d.Sap, Sap{At: 9 * time.Hour, Volume: 100 * units.USGallon, Brix: 2})
	o, at = times(t, r, d)
	if at[EventBanked] != at[EventLow] || at[EventRekindled] != 9*time.Hour {
		t.Errorf("banked at %v, low at %v, rekindled at %v", at[EventBanked], at[EventLow], at[EventRekindled])
	}
	if idle := o.Ended - o.Burned; !near(idle.Seconds(), (9*time.Hour - at[EventBanked]).Seconds(), 1e-9) {
		t.Errorf("idle for %v", idle)
	}
}

func TestPails(t *testing.T) {
	r := kettle()
	r.Feed = PailFeed
	r.Pail = 2 * units.USGallon
	r.Draw.Until = 60
	full := r.Compartments[0].Area.Volume(r.Compartments[0].Depth)
	d := Day{Pressure: 98 * units.Kilopascal, Out: 48 * time.Hour,
		Sap: []Sap{{Volume: full + 21*units.USGallon, Brix: 2, Temperature: units.Celsius(5)}}}
	var least, most units.Volume = 1, 0
	o, err := r.Trace(d, time.Minute, func(m Moment) bool {
		if m.SapLeft() > 0 {
			least, most = min(least, m.Volume(0)), max(most, m.Volume(0))
		}
		return true
	})
	if err != nil {
		t.Fatal(err)
	}
	checkConserved(t, d, o)
	// Cold sap swells by 4.8 percent on the way to the boil: the first filling
	// takes 19 of the 20 gallons that the kettle holds, and 22 are left for pails.
	if o.Pails != 11 {
		t.Errorf("%d pails", o.Pails)
	}
	// In the minute between two readings half a liter boils off.
	if low := full - r.Pail; least < low || least > low+0.6*units.Liter || most > full*1.01 {
		t.Errorf("level between %v and %v", least, most)
	}
}

func TestReverse(t *testing.T) {
	r, d := partitioned(), longDay()
	d.Reverse = []time.Duration{8 * time.Hour}
	o := mustRun(t, r, d)
	if first, last := o.Held[0].Brix(), o.Held[4].Brix(); !(first > last) {
		t.Errorf("sweet end %v, sap end %v", first, last)
	}
	// Two changes at once are none.
	d.Reverse = append(d.Reverse, 8*time.Hour)
	twice := mustRun(t, r, d)
	d.Reverse = nil
	never := mustRun(t, r, d)
	if !near(float64(twice.Held.Sugar()), float64(never.Held.Sugar()), 1e-6) {
		t.Errorf("held %v and %v", twice.Held.Sugar(), never.Held.Sugar())
	}
	// A rig turned round from the first is a rig built the other way.
	d.Reverse = []time.Duration{0}
	turned := mustRun(t, r, d)
	d.Reverse = nil
	built := partitioned()
	slices.Reverse(built.Compartments)
	mirror := mustRun(t, built, d)
	if !near(float64(turned.Syrup.Sugar), float64(mirror.Syrup.Sugar), 1e-6) {
		t.Errorf("drawn %v and %v", turned.Syrup.Sugar, mirror.Syrup.Sugar)
	}
}

func TestPreheater(t *testing.T) {
	r, d := partitioned(), longDay()
	plain := mustRun(t, r, d)
	r.PreheatTo = units.Fahrenheit(190)
	warm := mustRun(t, r, d)
	gain := float64(warm.Evaporated/plain.Evaporated) - 1
	// The ceiling is the sensible share of the heat, about 15 percent, of which
	// 190 F instead of 212 leaves seven eighths.
	if !(gain > 0.10 && gain < 0.18) {
		t.Errorf("a preheater brings %.1f percent", 100*gain)
	}
}
