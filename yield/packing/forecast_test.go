package packing_test

import (
	"errors"
	"math"
	"testing"
	"time"

	"example.org/sapreckoner/internal/proving/check"
	"example.org/sapreckoner/units"
	"example.org/sapreckoner/yield/packing"
)

// The peak that stands for one that is not known is that of the table.
func TestPeakFromMemory(t *testing.T) {
	table, err := check.Load("season-criteria")
	if err != nil {
		t.Fatal(err)
	}
	seen := 0
	for _, r := range table.Rows {
		if r.Name() != "storage, a day of sap per tap" {
			continue
		}
		seen++
		if got, want := packing.PeakFromMemory.USGallons(), r.Float("low"); !(math.Abs(got-want) < 1e-9) {
			t.Errorf("%v US gal a tap, the table has %v", got, want)
		}
	}
	if seen != 1 {
		t.Errorf("%d rows of 1 found in the table", seen)
	}
}

func TestLayInLimits(t *testing.T) {
	pint := jar(units.USPint)
	s, err := packing.LayIn(1, 0, pint, packing.Habits{})
	if err != nil || s.Containers != 0 || s.Filters != 0 || !math.IsNaN(float64(s.Wood)) || !s.PeakRemembered {
		t.Errorf("%+v, %v", s, err)
	}
	for name, h := range map[string]packing.Habits{
		"cord":      {SyrupPerCord: units.USGallons(0.09)},
		"cord NaN":  {SyrupPerCord: units.Volume(notNum)},
		"cord inf":  {SyrupPerCord: units.Volume(inf)},
		"filter":    {PerFilter: -units.USGallon},
		"peak":      {PeakPerTap: units.USGallons(20.1)},
		"peak NaN":  {PeakPerTap: units.Volume(notNum)},
		"held":      {Held: 30*24*time.Hour + time.Second},
		"held, neg": {Held: -time.Hour},
		"spare":     {Spare: 100.1},
		"negative":  {Spare: -1},
	} {
		if s, err := packing.LayIn(10, units.USGallon, pint, h); !errors.Is(err, units.ErrRange) || s != (packing.Stores{}) {
			t.Errorf("%s: %+v, %v", name, s, err)
		}
	}
	for name, try := range map[string]func() (packing.Stores, error){
		"no taps":    func() (packing.Stores, error) { return packing.LayIn(0, 1, pint, packing.Habits{}) },
		"negative":   func() (packing.Stores, error) { return packing.LayIn(1, -1, pint, packing.Habits{}) },
		"NaN":        func() (packing.Stores, error) { return packing.LayIn(1, units.Volume(notNum), pint, packing.Habits{}) },
		"no label":   func() (packing.Stores, error) { return packing.LayIn(1, 1, jar(0), packing.Habits{}) },
		"containers": func() (packing.Stores, error) { return packing.LayIn(1, 1e6, jar(units.Milliliter), packing.Habits{}) },
	} {
		if s, err := try(); !errors.Is(err, units.ErrRange) || s != (packing.Stores{}) {
			t.Errorf("%s: %+v, %v", name, s, err)
		}
	}
	// Sixteen pints are two gallons: rounding must not make it 17.
	s, err = packing.LayIn(7, units.USGallons(2), pint, packing.Habits{PeakPerTap: units.USGallons(3), Held: 48 * time.Hour, PerFilter: units.USGallon, SyrupPerCord: units.USGallons(10)})
	if err != nil || s.Containers != 16 || s.Filters != 2 || s.PeakRemembered ||
		!(math.Abs(gallons(s.Tank)-42) < 1e-9) || !(math.Abs(s.Wood.Cords()-0.2) < 1e-12) {
		t.Errorf("%+v, %v", s, err)
	}
}

func TestPeakPerTap(t *testing.T) {
	if v, err := packing.PeakPerTap([]units.Volume{1, 5, 2}, 10); err != nil || !(math.Abs(float64(v)-0.5) < 1e-15) {
		t.Errorf("%v, %v", v, err)
	}
	for taps, want := range map[int]float64{1: 3, 100_000_000: 3e-8} {
		if v, err := packing.PeakPerTap([]units.Volume{3}, taps); err != nil || !(math.Abs(float64(v)-want) < 1e-15) {
			t.Errorf("3 m3 of %d taps: %v, %v", taps, v, err)
		}
	}
	for name, days := range map[string][]units.Volume{
		"none": nil, "negative": {1, -1}, "NaN": {1, units.Volume(notNum)}, "infinite": {units.Volume(inf)}, "a sea": {1e6 + 1},
	} {
		v, err := packing.PeakPerTap(days, 10)
		refused(t, name, "packing.PeakPerTap", float64(v), err)
	}
	for _, taps := range []int{0, -1, 100_000_001} {
		v, err := packing.PeakPerTap([]units.Volume{1}, taps)
		refused(t, "taps", "packing.PeakPerTap", float64(v), err)
	}
}

// Containers from a milliliter to 250 L.
func TestLayInContainers(t *testing.T) {
	for liters, ok := range map[float64]bool{0.0009: false, 0.001: true, 250: true, 250.1: false} {
		_, err := packing.LayIn(10, 10*units.Liter, packing.Container{Label: units.Liters(liters)}, packing.Habits{})
		if (err == nil) != ok || !ok && !errors.Is(err, units.ErrRange) {
			t.Errorf("%v L: %v", liters, err)
		}
	}
}
