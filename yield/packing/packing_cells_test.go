package packing_test

import (
	"errors"
	"testing"

	"example.org/sapreckoner/sugar"
	"example.org/sapreckoner/units"
	"example.org/sapreckoner/yield/money"
	"example.org/sapreckoner/yield/packing"
)

// A lot that sets fill to the last drop makes all of them, and plenty is a
// million.
func TestPackToTheLastDrop(t *testing.T) {
	c20 := units.Celsius(20)
	p, err := packing.InMix(lotOf(t, units.Milliliters(800), 66.9, c20), 0, packing.Mix{Container: jar(units.Milliliters(100)), Parts: 2})
	if err != nil || p.Sets != 4 || p.Lines[0].Count != 8 {
		t.Errorf("%d sets, %v, %v", p.Sets, p.Lines, err)
	}
	for n, ok := range map[int]bool{1_000_000: true, 1_000_001: false} {
		_, err := packing.FewestContainers(lotOf(t, units.Milliliters(800), 66.9, c20), 0, packing.Supply{Container: jar(units.Milliliters(100)), OnHand: n})
		if ok != (err == nil) {
			t.Errorf("%d on hand: %v", n, err)
		}
	}
	_, err = packing.FewestContainers(sugar.Lot{}, 0, packing.Supply{Container: jar(units.Milliliters(100)), OnHand: 1})
	if e := (*units.RangeError)(nil); !errors.As(err, &e) || e.Value != 0 {
		t.Errorf("an empty lot: %v", err)
	}
}

// Labels count to a hundred-thousandth of a milliliter: the larger jar is handed
// out first, and of two that are alike by that the first in the list.
func TestLabelsToTheHundredThousandth(t *testing.T) {
	for more, first := range map[float64]int{0.00001: 1, 0.000004: 0} {
		got, err := money.DivideJars([]money.Jars{{Label: units.Milliliters(100), Count: 1}, {Label: units.Milliliters(100 + more), Count: 1}}, weights("1", "1"))
		if err != nil || got[0].Counts[first] != 1 || got[1].Counts[1-first] != 1 {
			t.Errorf("%v mL more: %v, %v", more, got, err)
		}
	}
}

// A million jars in all.
func TestDivideAMillionJars(t *testing.T) {
	half := money.Jars{Label: units.USPint, Count: 500_000}
	got, err := money.DivideJars([]money.Jars{half, half}, weights("1"))
	if err != nil || got[0].Counts[0]+got[0].Counts[1] != 1_000_000 {
		t.Errorf("%v, %v", got, err)
	}
	more := half
	more.Count++
	if got, err := money.DivideJars([]money.Jars{half, more}, weights("1")); err == nil || got != nil {
		t.Errorf("one more: %v", got)
	}
}
