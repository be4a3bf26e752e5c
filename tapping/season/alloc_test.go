package season_test

import (
	"testing"

	"example.org/sapreckoner/tapping"
	"example.org/sapreckoner/tapping/season"
	"example.org/sapreckoner/units"
)

// On the way to a good answer a formula takes no memory from the heap.
func TestNoAllocations(t *testing.T) {
	trunk := must[tapping.Trunk](t)(tapping.NewTrunk(15*units.Inch, tapping.SugarMaple, tapping.Healthy))
	g, b, h := tapping.DefaultGuideline(), band(t, 12, 30, 0.3125, 1.5, 1), hole(t, 0.3125, 1.5)
	record := gravityRecord(t, season.Weather{})
	c, d, quebec := season.SapFlowDay(), day("2024-03-01", -5, 5), tapping.HoleLimits()[0]
	for name, f := range map[string]func(){
		"DiameterFromGirth": func() { _, _ = tapping.DiameterFromGirth(1) },
		"Guideline.Taps":    func() { _, _ = g.Taps(15 * units.Inch) },
		"Trunk.Taps":        func() { _, _ = trunk.Taps(g) },
		"NewHole":           func() { _, _ = tapping.NewHole(h.Bit(), h.Depth(), 0) },
		"Compare":           func() { quebec.Compare(h) },
		"NewTappingBand":    func() { _, _ = tapping.NewTappingBand(1*units.Foot, 1, h, 1) },
		"Conductive":        func() { _, _ = b.Conductive(0.05*units.Inch, 20, 0) },
		"Steady":            func() { _, _ = b.Steady(0.05 * units.Inch) },
		"GrowthNeeded":      func() { _, _ = b.GrowthNeeded(90) },
		"YearsToRecover":    func() { _, _ = b.YearsToRecover(0.05*units.Inch, 20, 99) },
		"RadialGrowth":      func() { _, _ = tapping.RadialGrowth(1, 1*units.SquareInch) },
		"UsualGrowth":       func() { _, _ = tapping.UsualGrowth(15 * units.Inch) },
		"LeastGrowth":       func() { _, _ = tapping.LeastGrowth(15 * units.Inch) },
		"GrowthFromGirths":  func() { _, _ = tapping.GrowthFromGirths(1, 1.1, 5, 0) },
		"SapByDepth":        func() { _, _ = season.SapByDepth(1.75 * units.Inch) },
		"SapRecord.Over":    func() { _, _ = record.Over(1 * units.USGallon) },
		"HouleProbability":  func() { _, _ = season.HouleProbability(15, 10) },
		"Met":               func() { c.Met(d) },
		"GrowingDegreeDays": func() { season.GrowingDegreeDays(d, units.Celsius(5)) },
		"DegreeDayRule.Day": func() { season.BloomRule().Day(d) },
		"VacuumGain":        func() { _, _ = season.VacuumGain(20 * units.InchMercury) },
		"NaturalVacuum":     func() { _, _ = season.NaturalVacuum(4) },
	} {
		if n := testing.AllocsPerRun(100, f); n > 0 {
			t.Errorf("%s takes memory %v times", name, n)
		}
	}
}
