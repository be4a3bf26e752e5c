package folder

import (
	"math"
	"testing"
	"time"

	"example.org/sapreckoner/examples/sugarhouse"
	"example.org/sapreckoner/units"
)

func near[Q ~float64](a, b Q) bool { return math.Abs(float64(a-b)) <= 1e-9*math.Abs(float64(b)) }

// The invented sugarhouse is read whole. The figures are those of its lines, read
// by eye.
func TestInvented(t *testing.T) {
	h, err := Open(sugarhouse.Files(), "", 0)
	if err != nil {
		t.Fatal(err)
	}
	if h.Season() != 2034 || len(h.Days) != 60 || len(h.Batches) != 17 || len(h.Bottled) != 39 || len(h.Seasons) != 4 || len(h.Pan) != 3 || len(h.Costs) != 6 {
		t.Fatalf("season %d: %d days, %d batches, %d bottled, %d seasons, %d pans, %d costs", h.Season(), len(h.Days), len(h.Batches), len(h.Bottled), len(h.Seasons), len(h.Pan), len(h.Costs))
	}
	// 2034-03-04,big,,21,2.3,43,70.5,08:30,15:50,1.15,2 1/2: 21 in of 2.5 gal, 2.5/25 cord.
	var d Day
	for _, d = range h.Days {
		if d.Date.Equal(time.Date(2034, 3, 4, 0, 0, 0, 0, time.UTC)) {
			break
		}
	}
	if !near(d.Sap, 52.5*units.USGallon) || !near(d.Wood, units.Cord/10) || d.Fired() != 7*time.Hour+20*time.Minute || !near(d.Sugar, 2.3) ||
		!d.ReadAt.Equal(units.Fahrenheit(43)) || !near(d.Boiled, 70.5*units.USGallon) || !near(d.Syrup, 1.15*units.USGallon) || d.Tank != "big" {
		t.Errorf("%+v", d)
	}
	b, ok := h.Batch("34-2")
	if !ok || !near(b.Volume, 2.25*units.USGallon) || given(b.Weight) || !near(b.Reading, 59.1) || !b.Temp.Equal(units.Fahrenheit(209)) || !near(b.Light, 76) {
		t.Errorf("%+v", b)
	}
	if j := h.Bottled[2]; !near(j.Size, units.USPint/2) || j.Count != 8 || j.Batch != "32-1" {
		t.Errorf("%+v", j)
	}
	if s := h.Pan[2]; !near(s.Depth, 0.75*units.Inch) || !near(s.Brix, 11.5) || s.Compartment != 1 {
		t.Errorf("%+v", s)
	}
	if s := h.Seasons[1]; s.Year != 2029 || s.Taps != 34 || !near(s.Syrup, 9.2*units.USGallon) {
		t.Errorf("%+v", s)
	}
	for _, name := range []string{TreesFile, HolesFile, StopsFile, WeatherFile, JarsFile, PeopleFile} {
		f, ok := h.File(name)
		if !ok {
			t.Errorf("%s is not there", name)
			continue
		}
		f.Close()
	}
}
