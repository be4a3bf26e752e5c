package pan

import (
	"errors"
	"math/rand/v2"
	"testing"
	"time"

	"example.org/sapreckoner/units"
)

// Steam that is gone does not come back: what has evaporated never falls, from
// any event or minute of a day to the next, though sap be thicker than the
// strength at which it is drawn.
func TestSteamNeverFalls(t *testing.T) {
	r := rand.New(rand.NewPCG(13, 87))
	days, thick := 2000, 0
	if testing.Short() {
		days = 300
	}
	for i := range days {
		rig := randomRig(r)
		day := randomDay(r, rig)
		if rig.Draw.At > 0 && i%2 == 0 {
			// Sap a little thicker than the draw comes into pans of thin liquid. While
			// it is cold, it can hold the strength of a thin stream without any steam.
			thick++
			rig.Draw.At, rig.Draw.Until, rig.Feed = 10+50*units.Brix(r.Float64()), 0, FloatFeed
			for k := range day.Sap {
				day.Sap[k].Brix = rig.Draw.At * units.Brix(0.95+0.25*r.Float64())
			}
			if start, err := rig.Fill(rig.Draw.At*units.Brix(r.Float64()), units.Celsius(90), day.Pressure); err == nil {
				day.Start = start
			}
		}
		var was units.Mass
		_, err := rig.Trace(day, time.Minute, func(m Moment) bool {
			all := m.Drawn().Mass() + m.Evaporated() + m.SapLeft()
			for i := range m.Len() {
				all += m.Liquid(i).Mass()
			}
			// The rounding of a few thousand steps.
			if is := m.Evaporated(); is < was-1e-11*all {
				t.Errorf("%d: %v evaporated at %v (%v), %v before, of %v", i, is, m.At, m.Event, was, all)
				t.Logf("%+v\n%+v", rig, day)
			} else {
				was = max(was, is)
			}
			return !t.Failed()
		})
		if err != nil && !errors.Is(err, units.ErrRange) && !errors.Is(err, ErrTooBusy) {
			t.Fatal(err)
		}
		if t.Failed() {
			return
		}
	}
	if thick == 0 {
		t.Error("no sap was thicker than the draw")
	}
}
