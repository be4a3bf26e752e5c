package season_test

import (
	"errors"
	"math"
	"testing"
	"time"

	"example.org/sapreckoner/tapping/season"
	"example.org/sapreckoner/units"
)

func pailsAndPump(t testing.TB) (season.GearUse, []season.Gear) {
	t.Helper()
	pump := must[season.Method](t)(season.WithVacuum(20 * units.InchMercury))
	return season.GearUse{Taps: 100, FlowDays: 20, Worth: 0.4, Per: units.USGallon, Hour: 10}, []season.Gear{
		{Name: "pails", Depth: 1.5 * units.Inch, Clean: units.Whole, Round: time.Hour},
		{Name: "pump", Method: pump, Depth: 1.5 * units.Inch, Clean: units.Whole, Round: 15 * time.Minute, First: 1500, Yearly: 150},
	}
}

// By hand. Pails: 100 taps of 5 to 15 gal at 0.40 are 200 to 600, less 20 hours at
// 10: 0 to 400. The pump: 20 inHg brings twice the sap at the low end (5 % an inch),
// and 2.51^(20/16.5) = 3.051 times at the high: 400 to 1830.5; less 5 hours at 10
// and 150 it leaves 200 to 1630.5. So it brings 200 to 1230.5 more a season, and
// 1500 is back after 1.22 to 7.5 seasons.
func TestCompareGearByHand(t *testing.T) {
	use, gears := pailsAndPump(t)
	got := must[[]season.GearSeason](t)(season.CompareGear(use, gears))
	pails, pump := got[0], got[1]
	if !near(pails.LeastLeft, 0) || !near(pails.MostLeft, 400) || pails.Walking != 20*time.Hour || pails.Pays || pails.Spouts != 100 {
		t.Errorf("%+v", pails)
	}
	if !near(pump.LeastLeft, 200) || !(math.Abs(pump.MostLeft-1630.5) < 0.2) || pump.Walking != 5*time.Hour {
		t.Errorf("%+v", pump)
	}
	if !pump.Pays || !pump.Surely || !near(pump.PaysTo, 7.5) || !(math.Abs(pump.PaysFrom-1.219) < 0.001) {
		t.Errorf("%+v", pump)
	}
	// With dear current it pays in good seasons only; with dearer in none.
	gears[1].Yearly = 400
	if s := must[[]season.GearSeason](t)(season.CompareGear(use, gears))[1]; !s.Pays || s.Surely || s.PaysTo != 0 {
		t.Errorf("%+v", s)
	}
	gears[1].Yearly = 4000
	if s := must[[]season.GearSeason](t)(season.CompareGear(use, gears))[1]; s.Pays || s.Surely || s.PaysFrom != 0 {
		t.Errorf("%+v", s)
	}
	// What takes no more to begin and leaves more pays at once.
	gears[1].Yearly, gears[1].First = 150, 0
	if s := must[[]season.GearSeason](t)(season.CompareGear(use, gears))[1]; !s.Surely || s.PaysTo != 0 {
		t.Errorf("%+v", s)
	}
}

// A falling line has no vacuum in a poor season and that of its fall in a good one.
func TestFallingLine(t *testing.T) {
	use, gears := pailsAndPump(t)
	gears[1].Falls = true
	got := must[[]season.GearSeason](t)(season.CompareGear(use, gears))
	if pails, line := got[0].Sap, got[1].Sap; !near(float64(line.Low), float64(pails.Low)) || !(line.High > 3*pails.High) {
		t.Errorf("pails %v, the line %v", pails, line)
	}
}

// Half the sap of new lines is half of it; 1 in deep is 63 percent.
func TestGearFactors(t *testing.T) {
	use, gears := pailsAndPump(t)
	gears[0].Clean, gears[0].Depth = 50*units.Percent, units.Inch
	s := must[[]season.GearSeason](t)(season.CompareGear(use, gears))[0]
	if !near(s.Sap.Low.USGallons(), 500*0.5*0.63) || !near(s.Sap.High.USGallons(), 1500*0.5*0.63) {
		t.Errorf("%v", s.Sap)
	}
}

func TestGearRefuses(t *testing.T) {
	refused := func(name string, f func(u *season.GearUse, g *season.Gear)) {
		t.Helper()
		use, gears := pailsAndPump(t)
		f(&use, &gears[1])
		if got, err := season.CompareGear(use, gears); !errors.Is(err, units.ErrRange) || got != nil {
			t.Errorf("%s: %v, %v", name, got, err)
		}
	}
	nan := math.NaN()
	refused("taps", func(u *season.GearUse, _ *season.Gear) { u.Taps = 0 })
	refused("too many taps", func(u *season.GearUse, _ *season.Gear) { u.Taps = 1_000_001 })
	refused("days", func(u *season.GearUse, _ *season.Gear) { u.FlowDays = 0.9 })
	refused("worth", func(u *season.GearUse, _ *season.Gear) { u.Worth = nan })
	refused("per", func(u *season.GearUse, _ *season.Gear) { u.Per = 0 })
	refused("hour", func(u *season.GearUse, _ *season.Gear) { u.Hour = -1 })
	refused("depth", func(_ *season.GearUse, g *season.Gear) { g.Depth = 0.99 * units.Inch })
	refused("deep", func(_ *season.GearUse, g *season.Gear) { g.Depth = 4.01 * units.Inch })
	refused("clean", func(_ *season.GearUse, g *season.Gear) { g.Clean = 0 })
	refused("cleaner than new", func(_ *season.GearUse, g *season.Gear) { g.Clean = 101 * units.Percent })
	refused("round", func(_ *season.GearUse, g *season.Gear) { g.Round = 25 * time.Hour })
	refused("first", func(_ *season.GearUse, g *season.Gear) { g.First = math.Inf(1) })
	refused("yearly", func(_ *season.GearUse, g *season.Gear) { g.Yearly = -1 })
	if _, err := season.CompareGear(season.GearUse{Taps: 1, FlowDays: 1, Per: units.USGallon}, nil); !errors.Is(err, units.ErrRange) {
		t.Errorf("no gear: %v", err)
	}
}

// The three published depths, half way between two of them, and no more beyond.
func TestSapByDepth(t *testing.T) {
	at := func(row string) float64 { return fact(t, "tap-depth", row).Float("low") }
	for in, want := range map[float64]float64{
		1: at("yield at 1 in against 1.5 in, vacuum"), 1.25: 81.5, 1.5: 100, 1.75: 112.5,
		2: 100 + at("yield at 2 in against 1.5 in, vacuum"), 3: 125 + at("beyond 2 in"), 4: 125,
	} {
		if got := must[units.Share](t)(season.SapByDepth(units.Inches(in))); !near(got.Percents(), want) {
			t.Errorf("%v in: %v, want %v", in, got, want)
		}
	}
	checkRange(t, "depth", float64(units.Inch), float64(4*units.Inch), func(x float64) error {
		_, err := season.SapByDepth(units.Length(x))
		return err
	})
}

func TestCleaningFigures(t *testing.T) {
	rows := []string{
		"new spout and drop against backflow-stopping spout and old drop", "new against older tubing at 22 inHg",
		"range of other sanitation contrasts, 2011", "yield of tubing with nothing replaced for 5 years", "white spouts against black",
	}
	figures := season.CleaningFigures()
	if len(figures) != len(rows) {
		t.Fatalf("%d figures", len(figures))
	}
	for i, f := range figures {
		r := fact(t, "tap-timing", rows[i])
		if !near(f.Low.Percents(), r.Float("low")) || !near(f.High.Percents(), r.Float("high")) || f.Left != (i == 3) {
			t.Errorf("%+v, the table has %v to %v", f, r.Float("low"), r.Float("high"))
		}
	}
}

// A running day without a record brings more than the good run of a producer, 1
// gallon, about one time in twenty, and the chance of more than nothing is none less
// than that of more than anything.
func TestSapOver(t *testing.T) {
	r := gravityRecord(t, season.Weather{})
	last := units.Whole
	for _, gal := range []float64{0, 0.1, 0.5, 1, 2, 4, 20} {
		over := must[units.Share](t)(r.Over(units.USGallons(gal)))
		if !(over <= last && over >= 0) {
			t.Errorf("more than %v gal: %v", gal, over)
		}
		last = over
	}
	day := r.Days(recordDays(t, "r"))[0].Sap
	if over := must[units.Share](t)(r.Over(day.High)); !(math.Abs(over.Percents()-10) < 1e-3) {
		t.Errorf("more than the high end: %v", over)
	}
	checkRange(t, "v", 0, float64(100*units.Liter), func(x float64) error {
		_, err := r.Over(units.Volume(x))
		return err
	})
	if over, err := (season.SapRecord{}).Over(units.USGallon); err != nil || over != 0 {
		t.Errorf("the zero record: %v, %v", over, err)
	}
}
