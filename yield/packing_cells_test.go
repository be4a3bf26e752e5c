package yield_test

import (
	"errors"
	"testing"

	"example.org/sapreckoner/sugar"
	"example.org/sapreckoner/units"
	"example.org/sapreckoner/yield"
)

// twoSizes packs a lot of so many mL at 20 C into two sizes, in mL.
func twoSizes(t *testing.T, lot, a, b float64) (plan yield.PackPlan) {
	t.Helper()
	plan, err := yield.FewestLeftovers(lotOf(t, units.Milliliters(lot), 66.9, units.Celsius(20)), 0,
		yield.Supply{Container: jar(units.Milliliters(a)), OnHand: yield.Plenty}, yield.Supply{Container: jar(units.Milliliters(b)), OnHand: yield.Plenty})
	if err != nil {
		t.Fatal(err)
	}
	return plan
}

// Contents count in tenths of a milliliter, rounded up: three of 66.65 mL are 200.1
// and go into 200.2; in fifths they would be 200.4.
func TestPackCountsInTenths(t *testing.T) {
	if p := twoSizes(t, 200.2, 66.65, 49.9); p.Lines[0].Count != 3 || p.Lines[1].Count != 0 {
		t.Errorf("%d of 66.65 mL and %d of 49.9 mL", p.Lines[0].Count, p.Lines[1].Count)
	}
}

// To 40 L all combinations are searched; above, the largest container comes
// first, also where two of the smaller hold all.
func TestPackSearchesFortyLiters(t *testing.T) {
	if p := twoSizes(t, 40000, 20100, 20000); p.Lines[0].Count != 0 || p.Lines[1].Count != 2 {
		t.Errorf("40 L: %d and %d", p.Lines[0].Count, p.Lines[1].Count)
	}
	if p := twoSizes(t, 40000.1, 20100, 20000); p.Lines[0].Count != 1 || p.Lines[1].Count != 0 {
		t.Errorf("a tenth of a milliliter more: %d and %d", p.Lines[0].Count, p.Lines[1].Count)
	}
}

// A lot that sets fill to the last drop makes all of them, and plenty is a
// million.
func TestPackToTheLastDrop(t *testing.T) {
	c20 := units.Celsius(20)
	p, err := yield.InMix(lotOf(t, units.Milliliters(800), 66.9, c20), 0, yield.Mix{Container: jar(units.Milliliters(100)), Parts: 2})
	if err != nil || p.Sets != 4 || p.Lines[0].Count != 8 {
		t.Errorf("%d sets, %v, %v", p.Sets, p.Lines, err)
	}
	for n, ok := range map[int]bool{1_000_000: true, 1_000_001: false} {
		_, err := yield.FewestLeftovers(lotOf(t, units.Milliliters(800), 66.9, c20), 0, yield.Supply{Container: jar(units.Milliliters(100)), OnHand: n})
		if ok != (err == nil) {
			t.Errorf("%d on hand: %v", n, err)
		}
	}
	_, err = yield.FewestLeftovers(sugar.Lot{}, 0, yield.Supply{Container: jar(units.Milliliters(100)), OnHand: 1})
	if e := (*units.RangeError)(nil); !errors.As(err, &e) || e.Value != 0 {
		t.Errorf("an empty lot: %v", err)
	}
}

// Labels count to a hundred-thousandth of a milliliter: the larger jar is handed
// out first, and of two that are alike by that the first in the list.
func TestLabelsToTheHundredThousandth(t *testing.T) {
	for more, first := range map[float64]int{0.00001: 1, 0.000004: 0} {
		got, err := yield.DivideJars([]yield.Jars{{Label: units.Milliliters(100), Count: 1}, {Label: units.Milliliters(100 + more), Count: 1}}, weights("1", "1"))
		if err != nil || got[0].Counts[first] != 1 || got[1].Counts[1-first] != 1 {
			t.Errorf("%v mL more: %v, %v", more, got, err)
		}
	}
}

// A million jars in all.
func TestDivideAMillionJars(t *testing.T) {
	half := yield.Jars{Label: units.USPint, Count: 500_000}
	got, err := yield.DivideJars([]yield.Jars{half, half}, weights("1"))
	if err != nil || got[0].Counts[0]+got[0].Counts[1] != 1_000_000 {
		t.Errorf("%v, %v", got, err)
	}
	more := half
	more.Count++
	if got, err := yield.DivideJars([]yield.Jars{half, more}, weights("1")); err == nil || got != nil {
		t.Errorf("one more: %v", got)
	}
}
