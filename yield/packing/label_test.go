package packing_test

import (
	"errors"
	"math"
	"strconv"
	"strings"
	"testing"

	"example.org/sapreckoner/units"
	"example.org/sapreckoner/yield/packing"
)

// By hand: a US fluid ounce is 29.5735 mL and an imperial one 28.4131; three
// figures, rounded down. 500 mL are 16.907 US fl oz, a pint and 0.9.
func TestLabels(t *testing.T) {
	for _, tt := range []struct {
		v          units.Volume
		us, canada string
	}{
		{units.USPint / 2, "8 FL OZ (236 mL)", "236 mL (8.32 fl oz)"},
		{units.Milliliters(236.588), "8 FL OZ (236 mL)", "236 mL (8.32 fl oz)"},
		{units.USPint, "16 FL OZ (1 PT) 473 mL", "473 mL (16.6 fl oz)"},
		{units.Milliliters(473.176), "16 FL OZ (1 PT) 473 mL", "473 mL (16.6 fl oz)"},
		{units.Milliliters(500), "16.9 FL OZ (1 PT 0.9 FL OZ) 500 mL", "500 mL (17.5 fl oz)"},
		{units.USQuart, "32 FL OZ (1 QT) 946 mL", "946 mL (33.3 fl oz)"},
		{1.5 * units.USQuart, "48 FL OZ (1 QT 1 PT) 1.41 L", "1.41 L (49.9 fl oz)"},
		{2 * units.USQuart, "64 FL OZ (2 QT) 1.89 L", "1.89 L (66.6 fl oz)"},
		{units.USGallon, "1 GAL (3.78 L)", "3.78 L (133 fl oz)"},
		{units.Milliliters(50), "1.69 FL OZ (50 mL)", "50 mL (1.75 fl oz)"},
		{units.Milliliters(250), "8.45 FL OZ (250 mL)", "250 mL (8.79 fl oz)"},
		{units.Milliliters(540), "18.2 FL OZ (1 PT 2.2 FL OZ) 540 mL", "540 mL (19 fl oz)"},
		{units.Liter, "33.8 FL OZ (1 QT 1.8 FL OZ) 1 L", "1 L (35.1 fl oz)"},
		{units.ImperialGallon, "1.2 GAL (4.54 L)", "4.54 L (1 gal)"},
		{40 * units.USGallon, "40 GAL (151 L)", "151 L (33.3 gal)"},
	} {
		us, err := packing.LabelUS(tt.v)
		if us != tt.us || err != nil {
			t.Errorf("%v mL: %q, not %q, %v", tt.v.Milliliters(), us, tt.us, err)
		}
		canada, err := packing.LabelCanada(tt.v)
		if canada != tt.canada || err != nil {
			t.Errorf("%v mL: %q, not %q, %v", tt.v.Milliliters(), canada, tt.canada, err)
		}
	}
	for _, ml := range []float64{0, 0.9, -1, 250_001, math.NaN(), math.Inf(1)} {
		_, err := packing.LabelUS(units.Milliliters(ml))
		_, err2 := packing.LabelCanada(units.Milliliters(ml))
		if !errors.Is(err, units.ErrRange) || !errors.Is(err2, units.ErrRange) {
			t.Errorf("%v: %v, %v", ml, err, err2)
		}
	}
}

// No line promises more than the jar holds, but for the hair of a round figure, nor
// leaves out as much as the third figure.
func TestLabelsPromiseNoMore(t *testing.T) {
	for ml := 1.0; ml < 250_000; ml *= 1.0007 {
		for _, label := range []func(units.Volume) (string, error){packing.LabelUS, packing.LabelCanada} {
			text, err := label(units.Milliliters(ml))
			if err != nil {
				t.Fatal(err)
			}
			fields := strings.FieldsFunc(text, func(r rune) bool { return strings.ContainsRune(" ()", r) })
			found := false
			for i, f := range fields {
				if f != "mL" && f != "L" {
					continue
				}
				found = true
				x, err := strconv.ParseFloat(fields[i-1], 64)
				if f == "L" {
					x *= 1000
				}
				if err != nil || !(x <= ml*(1+1.1e-5)) || !(x > ml*0.99) {
					t.Errorf("%v mL: %q, %v", ml, text, err)
				}
			}
			if !found {
				t.Errorf("%q has no metric measure", text)
			}
		}
	}
}
