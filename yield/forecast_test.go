package yield_test

import (
	"errors"
	"math"
	"testing"
	"time"

	"example.org/sapreckoner/internal/check"
	"example.org/sapreckoner/units"
	"example.org/sapreckoner/yield"
	"example.org/sapreckoner/yield/packing"
)

func gallons(v units.Volume) float64 { return v.USGallons() }

func TestForecastFromPast(t *testing.T) {
	past := []yield.PastSeason{
		{Year: 1, Taps: 100, Syrup: units.USGallons(30)},
		{Year: 2, Taps: 50, Syrup: units.USGallons(10)},
		{Year: 3, Taps: 80, Syrup: units.USGallons(20)},
		{Year: 4, Taps: 80, Syrup: units.USGallons(18)},
	}
	for n, want := range map[int][3]float64{ // low, median, high per tap
		1: {0.3, 0.3, 0.3},
		2: {0.2, 0.25, 0.3},
		3: {0.2, 0.25, 0.3},
		4: {0.2, 0.2375, 0.3},
	} {
		f, err := yield.ForecastFromPast(40, past[:n])
		if err != nil || f.Seasons != n || f.Basis != yield.OwnSeasons {
			t.Errorf("%d seasons: %+v, %v", n, f, err)
		}
		for i, v := range []units.Volume{f.Low, f.Middle, f.High} {
			if !(math.Abs(gallons(v)-40*want[i]) < 1e-9) {
				t.Errorf("%d seasons: %v, want %v", n, gallons(v), 40*want[i])
			}
		}
	}
	if past[0].Year != 1 || past[1].Year != 2 {
		t.Error("the caller's list was sorted")
	}
}

func TestForecastLimits(t *testing.T) {
	ok := []yield.PastSeason{{Taps: 1, Syrup: 0}}
	for _, taps := range []int{1, 100_000_000} {
		if _, err := yield.ForecastFromPast(taps, ok); err != nil {
			t.Error(err)
		}
	}
	for _, taps := range []int{0, -1, 100_000_001} {
		for name, try := range map[string]func() (yield.Forecast, error){
			"past":    func() (yield.Forecast, error) { return yield.ForecastFromPast(taps, ok) },
			"gravity": func() (yield.Forecast, error) { return yield.ForecastFromGravity(taps, 2, 66.9) },
			"state":   func() (yield.Forecast, error) { return yield.ForecastFromState(taps, yield.Vermont) },
		} {
			if f, err := try(); !errors.Is(err, units.ErrRange) || f != (yield.Forecast{}) {
				t.Errorf("%s, %d taps: %+v, %v", name, taps, f, err)
			}
		}
	}
	for name, past := range map[string][]yield.PastSeason{
		"none":     nil,
		"too many": make([]yield.PastSeason, 1001),
		"no taps":  {{Syrup: 1}},
		"negative": {{Taps: 1, Syrup: -1}},
		"NaN":      {{Taps: 1, Syrup: units.Volume(notNum)}},
		"infinite": {{Taps: 1, Syrup: units.Volume(inf)}},
	} {
		if f, err := yield.ForecastFromPast(1, past); !errors.Is(err, units.ErrRange) || f != (yield.Forecast{}) {
			t.Errorf("%s: %+v, %v", name, f, err)
		}
	}
	if _, err := yield.ForecastFromGravity(1, 70, 66.9); !errors.Is(err, units.ErrRange) {
		t.Errorf("sap above syrup: %v", err)
	}
	for _, s := range []yield.State{0, 9, 255} {
		if f, err := yield.ForecastFromState(1, s); !errors.Is(err, units.ErrRange) || f != (yield.Forecast{}) {
			t.Errorf("State(%d): %+v, %v", s, f, err)
		}
		v, err := s.PerTap(2020)
		refused(t, s.String(), "yield.State.PerTap", float64(v), err)
		if s.String() != "no state" {
			t.Errorf("State(%d) is %q", s, s)
		}
	}
	for _, year := range []int{2018, 2022} {
		v, err := yield.Maine.PerTap(year)
		refused(t, "Maine", "yield.State.PerTap", float64(v), err)
	}
	for _, b := range []yield.Basis{0, 4} {
		if b.String() != "no basis" || b.Warning() == "" {
			t.Errorf("Basis(%d): %q, %q", b, b, b.Warning())
		}
	}
}

// What is kept of the survey is production over taps to the printed digit, and
// half of the last digit of either.
func TestStatesAgainstProduction(t *testing.T) {
	table, err := check.Load("nass-yield-per-tap")
	if err != nil {
		t.Fatal(err)
	}
	if len(table.Rows) != 24 {
		t.Errorf("%d rows", len(table.Rows))
	}
	for _, r := range table.Rows {
		for s := yield.Maine; s <= yield.UnitedStates; s++ {
			if s.String() != r.Text("state") {
				continue
			}
			v, err := s.PerTap(int(r.Float("year")))
			want := r.Float("production_thousand_gal") / r.Float("taps_thousand")
			slack := 0.0005 + 0.5/r.Float("taps_thousand")
			if err != nil || !(math.Abs(gallons(v)-want) <= slack) {
				t.Errorf("%s: %v, %v; production over taps is %v", r.Name(), gallons(v), err, want)
			}
		}
	}
}

func TestSeasonsCount(t *testing.T) {
	past := make([]yield.PastSeason, 1001)
	for i := range past {
		past[i] = yield.PastSeason{Taps: 1}
	}
	if _, err := yield.ForecastFromPast(1, past[:1000]); err != nil {
		t.Error(err)
	}
	if _, err := yield.ForecastFromPast(1, past); !errors.Is(err, units.ErrRange) {
		t.Errorf("1001 seasons: %v", err)
	}
}

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
