package pan_test

import (
	"math"
	"testing"
	"time"

	"example.org/sapreckoner/boil"
	"example.org/sapreckoner/boil/pan"
	"example.org/sapreckoner/units"
)

// Syrup leaves the pan at the boiling point of its own strength under the
// pressure of the day: that of [boil.SyrupPoint], 7.1 to 7.6 F above water
// near 66 Brix by any handbook.
func TestDaysSyrupIsAtItsBoilingPoint(t *testing.T) {
	for _, p := range []units.Pressure{1 * units.Atmosphere, 85 * units.Kilopascal} {
		day, err := kettle().Run(pan.Day{Pressure: p, Out: 24 * time.Hour,
			Sap: []pan.Sap{{Volume: 43.389 * units.USGallon, Brix: 2, Temperature: units.Celsius(20)}}})
		if err != nil {
			t.Fatal(err)
		}
		want, err := boil.SyrupPoint(day.Syrup.Brix(), p)
		if err != nil {
			t.Fatal(err)
		}
		got := []units.Temperature{day.Syrup.Temperature}
		for _, d := range day.Draws {
			got = append(got, d.Temperature)
		}
		for i, at := range got {
			if !(math.Abs(float64(at.Sub(want))) < 0.05) {
				t.Errorf("%v kPa, no. %d: syrup of %v Brix at %v C, want %v", p.Kilopascals(), i, float64(day.Syrup.Brix()), at.Celsius(), want.Celsius())
			}
		}
		if len(got) < 2 {
			t.Error("no draw")
		}
	}
}

// After a cold night the ice of each compartment begins at the freezing point of
// its own strength: of 2 Brix -0.12 C and of 10 Brix -0.63 C (CRC Handbook,
// concentrative properties of aqueous solutions, from memory). It is told
// whether the compartment froze or not.
func TestMeltingPointAfterANight(t *testing.T) {
	held := pan.Contents{
		{Sugar: 2, Water: 98, Temperature: units.Celsius(90)},
		{Sugar: 10, Water: 90, Temperature: units.Celsius(95)},
	}
	for _, air := range []float64{-20, 10} {
		m, err := held.Overnight(pan.Night{Length: 100 * time.Hour, Air: units.Celsius(air), Halving: time.Hour})
		if err != nil {
			t.Fatal(err)
		}
		for i, want := range []float64{-0.12, -0.63} {
			if got := m.Ice[i].Point.Celsius(); math.Abs(got-want) > 0.02 || m.Ice[i].Forms != (air < 0) {
				t.Errorf("air of %v C, compartment %d: ice at %v C (forms: %v), want %v", air, i+1, got, m.Ice[i].Forms, want)
			}
		}
	}
}
