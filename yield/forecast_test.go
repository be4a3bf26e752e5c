package yield_test

import (
	"errors"
	"math"
	"testing"

	"example.org/sapreckoner/internal/proving/check"
	"example.org/sapreckoner/units"
	"example.org/sapreckoner/yield"
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
