package packing

import (
	"math"
	"strconv"
	"strings"

	"example.org/sapreckoner/units"
)

// labelHair is the part of itself by which a label may fall short of a round
// figure that it stands for: 473.176 mL for a US pint.
const labelHair = 1e-5

// LabelUS returns the line of a label for the United States: US measure, then the
// metric one. From a pint to a gallon fluid ounces come first and the largest
// whole units follow. Figures are rounded down to three, so that the line never
// promises what is not in the jar. State law and the current text come first.
//
// Range: 1 mL to 250 L. Source: 15 USC 1453(a), read second-hand; the form from a
// pint to a gallon, 21 CFR 101.7(j), from memory. Check value: 16 FL OZ (1 PT) 473
// mL.
func LabelUS(stated units.Volume) (string, error) {
	if err := litersAs("packing.LabelUS", "stated", "label", stated, minContainer, maxContainer, containerHint); err != nil {
		return "", err
	}
	ounces := float64(stated / units.USFluidOunce)
	switch ounces *= 1 + labelHair; {
	case ounces >= 128:
		return figures(float64(stated/units.USGallon)) + " GAL (" + metric(stated) + ")", nil
	case ounces < 16:
		return figures(float64(stated/units.USFluidOunce)) + " FL OZ (" + metric(stated) + ")", nil
	}
	text := figures(float64(stated / units.USFluidOunce))
	rest, err := strconv.ParseFloat(text, 64) // what the line says, to the digit
	if err != nil {
		return "", err
	}
	var parts []string
	for _, u := range [...]struct {
		ounces float64
		name   string
	}{{32, " QT"}, {16, " PT"}} {
		if n := math.Floor(rest / u.ounces); n > 0 {
			parts = append(parts, strconv.FormatFloat(n, 'f', 0, 64)+u.name)
			rest -= n * u.ounces
		}
	}
	if rest > 0.05 { // three figures of 16 and more go to a tenth
		parts = append(parts, strconv.FormatFloat(math.Round(10*rest)/10, 'f', -1, 64)+" FL OZ")
	}
	return text + " FL OZ (" + strings.Join(parts, " ") + ") " + metric(stated), nil
}

// LabelCanada returns the line of a label for Canada: the metric measure, and the
// Canadian one beside it, which may be left out. Figures are rounded down to
// three. The current text of the law comes first.
//
// Range: 1 mL to 250 L. Source: SOR/2018-108, s. 230 to 237. Check value: 540 mL
// (19 fl oz).
func LabelCanada(stated units.Volume) (string, error) {
	if err := litersAs("packing.LabelCanada", "stated", "label", stated, minContainer, maxContainer, containerHint); err != nil {
		return "", err
	}
	if float64(stated/units.ImperialGallon)*(1+labelHair) >= 1 {
		return metric(stated) + " (" + figures(float64(stated/units.ImperialGallon)) + " gal)", nil
	}
	return metric(stated) + " (" + figures(float64(stated/units.ImperialFluidOunce)) + " fl oz)", nil
}

// metric words a volume in mL, and in L from a liter on.
func metric(v units.Volume) string {
	if v.Liters()*(1+labelHair) >= 1 {
		return figures(v.Liters()) + " L"
	}
	return figures(v.Milliliters()) + " mL"
}

// figures rounds a positive number down to three figures, but for a hair, and
// leaves out zeros behind the point.
func figures(x float64) string {
	x *= 1 + labelHair
	step := math.Pow(10, math.Floor(math.Log10(x))-2)
	if step >= 1 {
		return strconv.FormatFloat(math.Floor(x/step)*step, 'f', 0, 64)
	}
	per := math.Round(1 / step)
	return strconv.FormatFloat(math.Floor(x*per)/per, 'f', -1, 64)
}
