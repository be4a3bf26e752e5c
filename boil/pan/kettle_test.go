package pan

import (
	"testing"
	"time"

	"example.org/sapreckoner/units"
)

// A kettle that is being drawn when its sap runs out is emptied there and then:
// left over the fire, what is in it would run down to the depth at which it
// scorches. So all sugar of the day is syrup, whenever the sap runs out, and
// the draw that is under way takes in the last of it.
func TestKettleEmptiedWithItsSap(t *testing.T) {
	full := kettle().Compartments[0].Area.Volume(kettle().Compartments[0].Depth)
	drawing, waiting := 0, 0
	for i := range 60 {
		r := kettle()
		// A slow valve, so that the sap runs out now in a draw and now between two.
		r.Draw.Until, r.Draw.Rate = 50, (full / 2).Per(20*time.Minute)
		d := Day{Pressure: 98 * units.Kilopascal, Out: 72 * time.Hour,
			Sap: []Sap{{Volume: full * units.Volume(2+float64(i)/15), Brix: 20, Temperature: units.Celsius(5)}}}
		open, caught := false, false
		var out, finished time.Duration
		o, err := r.Trace(d, 0, func(m Moment) bool {
			switch m.Event {
			case EventDrawOpens, EventDrawShuts:
				open = m.Event == EventDrawOpens
			case EventSapOut:
				out, caught = m.At, open
			case EventFinished:
				finished = m.At
			}
			return true
		})
		if err != nil {
			t.Fatal(err)
		}
		checkConserved(t, d, o)
		sugar, _ := brought(t, d)
		if o.End != EventFinished || o.WasLow || o.Held.Mass() != 0 || !near(float64(o.Syrup.Sugar), sugar, 1e-9) {
			t.Errorf("%v of sap: %v with %v in the kettle and %v of %v kg of sugar drawn", d.Sap[0].Volume, o.End, o.Held.Mass(), o.Syrup.Sugar, sugar)
		}
		if caught {
			drawing++
			if finished != out {
				t.Errorf("%v of sap: out at %v in a draw, emptied at %v", d.Sap[0].Volume, out, finished)
			}
		} else {
			waiting++
		}
	}
	if drawing < 5 || waiting < 5 {
		t.Errorf("the sap ran out %d times in a draw, %d times between two", drawing, waiting)
	}
}
