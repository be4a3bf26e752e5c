package season_test

import (
	"testing"
	"time"

	"example.org/sapreckoner/tapping"
	"example.org/sapreckoner/tapping/season"
	"example.org/sapreckoner/units"
)

// Facts are tables that nothing computes. Where the package holds one as data,
// it is the published one.
func TestFacts(t *testing.T) {
	const week = 7 * 24 * time.Hour
	keep := tapping.DefaultDistances()
	quebec := tapping.HoleLimits()[0]
	bits := map[string]units.Length{}
	for _, s := range tapping.Spouts() {
		bits[s.Name] = s.Bit
	}
	low, high := tapping.DepthAdvised(tapping.Healthy)
	slow, _ := tapping.DepthAdvised(tapping.Slow)
	dry, dried := tapping.HoleLife()
	lives := tapping.LifeFigures()
	bloom, full := season.SilverMapleBloom()
	gain16 := must[season.Figure[units.Share]](t)(season.VacuumGain(16.5 * units.InchMercury))
	one := must[season.Figure[units.Share]](t)(season.VacuumGain(1 * units.InchMercury))
	spring := must[season.SapModel](t)(season.NewSapModel(season.Method{}, 30)).Season()
	good, hours := season.GoodRun(), season.UsualHours()
	largest, largestOf := season.LargestRun()
	redFirst, redFull := season.RedMapleBloom()
	flow := season.SapFlowDay()
	for _, c := range []struct {
		table, row, column string
		got                float64
	}{
		{"tap-hole", "bit diameter, traditional", "low", bits["7/16 in"].Inches()},
		{"tap-hole", "bit diameter, today", "low", bits["5/16 in"].Inches()},
		{"tap-hole", "bit diameters also in use", "low", bits["3/16 in"].Inches()},
		{"tap-hole", "bit diameters also in use", "high", bits["19/64 in"].Inches()},
		{"tap-hole", "legal maximum diameter, Quebec public land", "high", quebec.Bit.Millimeters()},
		{"tap-hole", "legal maximum depth, Quebec public land", "high", quebec.DepthWithBark.Centimeters()},
		{"tap-hole", "depth", "low", low.Inches()},
		{"tap-hole", "depth", "high", high.Inches()},
		{"tap-hole", "depth, slow or small trees", "low", slow.Inches()},
		{"tap-hole", "from last year's hole, to the side", "low", keep.Side.Inches()},
		{"tap-hole", "from last year's hole, up or down", "low", keep.Up.Inches()},
		{"tap-hole", "from last year's hole, up or down", "high", keep.Column.Inches()},
		{"tap-hole", "geometric pattern, over", "low", keep.Step.Inches()},
		{"tap-hole", "geometric pattern, up or down", "low", keep.Up.Inches()},
		{"tap-hole", "from any open hole, buckets", "low", keep.Open.Inches()},
		{"tap-hole", "drill no colder than", "low", tapping.ColdestDrilling().Celsius()},
		{"tap-hole", "open pail or bag: a hole is good for", "low", float64(dry) / float64(week)},
		{"tap-hole", "an open bucket hole dries after", "high", float64(dried) / float64(week)},
		{"tap-hole", "open pail or bag: a hole is good for", "low", float64(lives[0].Low) / float64(week)},
		{"tap-hole", "open pail or bag: a hole is good for", "high", float64(lives[0].High) / float64(week)},
		{"tap-hole", "an open bucket hole dries after", "low", float64(lives[1].Low) / float64(week)},
		{"tap-hole", "an open bucket hole dries after", "high", float64(lives[1].High) / float64(week)},
		{"conductive-wood-facts", "target conductive share of the tapping band", "low", tapping.TargetConductive.Percents()},
		{"conductive-wood-facts", "stained volume over hole volume, sugar maple", "value", tapping.StainRatio},
		{"bud-degree-days", "silver maple first bloom", "value", bloom.Fahrenheit()},
		{"bud-degree-days", "silver maple full bloom", "value", full.Fahrenheit()},
		{"bud-degree-days", "red maple first bloom", "value", redFirst.Fahrenheit()},
		{"bud-degree-days", "red maple full bloom", "value", redFull.Fahrenheit()},
		{"bud-degree-days", "calendar base", "value", season.BloomRule().Base().Fahrenheit()},
		{"bud-degree-days", "calendar upper limit", "value", season.BloomRule().Upper().Fahrenheit()},
		{"yield-effects", "per tap, gravity", "low", spring.Low.USGallons()},
		{"yield-effects", "per tap, gravity", "high", spring.High.USGallons()},
		{"yield-effects", "each inHg of vacuum at the hole", "low", one.Low.Percents()},
		{"sap-runs", "a pretty good run", "low", good.USGallons()},
		// From nearly 1000 taps.
		{"sap-runs", "largest run in 25 years, 20 h", "low", 1000 * largest.USGallons()},
		{"sap-runs", "largest run in 25 years, 20 h", "high", 1000 * largestOf.USGallons()},
		{"sap-runs", "sap run starts, time of day, mean", "low", hours.BeginsFrom.Hours()},
		{"sap-runs", "sap run starts, time of day, mean", "high", hours.BeginsTo.Hours()},
		{"sap-runs", "sap run ends, time of day, mean", "low", hours.EndsFrom.Hours()},
		{"sap-runs", "sap run ends, time of day, mean", "high", hours.EndsTo.Hours()},
		{"yield-effects", "vacuum 16-17 inHg against gravity", "high", gain16.High.Percents()},
	} {
		t.Run(c.table+"/"+c.row+"/"+c.column, func(t *testing.T) {
			if want := fact(t, c.table, c.row).Float(c.column); !near(c.got, want) {
				t.Errorf("%v, the source has %v", c.got, want)
			}
		})
	}
	// The criterion of a sap-flow day turns at the two published temperatures.
	below := fact(t, "season-criteria", "sap-flow day, minimum below").Float("high")
	above := fact(t, "season-criteria", "sap-flow day, maximum above").Float("low")
	for _, c := range []struct {
		low, high float64
		want      bool
	}{{below - 0.01, above + 0.01, true}, {below, above + 0.01, false}, {below - 0.01, above, false}} {
		if got := flow.Met(day("2024-03-01", c.low, c.high)); got != c.want {
			t.Errorf("%v to %v C: %v", c.low, c.high, got)
		}
	}
}
