package book

import (
	"fmt"
	"math"
	"path/filepath"
	"strings"

	"example.org/sapreckoner/boil/finish"
	"example.org/sapreckoner/density"
	"example.org/sapreckoner/units"
	"example.org/sapreckoner/yield"
)

// uncertainty writes the chapter with its budgets.
func uncertainty(root string) (map[string]string, error) {
	bodies, err := examples(filepath.Join(root, "season_test.go"))
	if err != nil {
		return nil, err
	}
	var b strings.Builder
	b.WriteString("# Uncertainty: from a reading to syrup\n\n" + made + plusOrMinus)
	if err := cupBudget(&b); err != nil {
		return nil, err
	}
	b.WriteString("```go\n" + bodies["Example_hotCup"] + "```\n\n")
	if err := probeBudget(&b); err != nil {
		return nil, err
	}
	if err := tankBudget(&b); err != nil {
		return nil, err
	}
	return map[string]string{"docs/uncertainty.md": b.String()}, nil
}

const plusOrMinus = `A reading without its plus or minus is half a reading. The hydrometer says 59.0 in the hot cup: is it syrup? That depends on how wrong 59.0 may be, and each thing
that can be wrong is a **part**: the eye between two marks, the thermometer in the cup, the scale that came out of the box, the formula. Four rules make one plus or
minus of them.

1. **Say each part as two times of three.** If you would bet two to one that the thermometer is within 1 F, its standard uncertainty is 1 F. If all you know is that it lies
   somewhere within 1 F either way, no place likelier than another, divide by 1.73; of a step that you read to, by 3.46.
2. **Turn it into Brix.** Ask what the answer does when that thing alone moves by its part. A degree in a hot cup is 0.06 Brix, a degree at a thermometer stop is 2.5.
3. **Add the squares, and take the root.** Parts that know nothing of each other partly cancel. The largest rules: halving a small one buys nothing.
4. **Double it** for 19 times of 20. Pages of the programs print that (k = 2) and say so; fields that end in By are the single one.

What does not cancel is what all readings share. Ten readings of a thermometer that is 1 F high are 1 F high. A check in boiling water, or in a syrup that is known, takes the
shared part out; more readings do not. The law behind the rules is equation 10 of gum; twice the spread of a Monte Carlo (gum-s1) of the same parts agrees within 3 percent.

`

// cupBudget works one budget through: a hydrometer in the hot cup.
func cupBudget(b *strings.Builder) error {
	stem := density.Hydrometer{GraduatedAt: units.Fahrenheit(60)}
	doubt := density.Doubt{Division: 0.5, Thermometer: 1 * units.FahrenheitDegree, Calibration: 0.1}
	m, err := stem.Measure(59.0, units.Fahrenheit(209), doubt)
	if err != nil {
		return err
	}
	b.WriteString("## One budget, worked: the hot cup\n\nA stem graduated at 60 F reads 59.0 in a cup at 209 F. It has marks of half a Brix, the thermometer is good to 1 F, and the\n" +
		"scale was checked to 0.1 Brix (k = 2).\n\n| part | what is known | Brix, two times of three | square |\n|---|---|--:|--:|\n")
	sum := 0.0
	for _, p := range []struct {
		name, known string
		part        units.Brix
	}{
		{"the eye", "steps of 0.5 Brix, anywhere in the step: 0.5/3.46", m.Parts.Division},
		{"the cup", "within 1 F: 0.58 F, times 0.06 Brix a degree", m.Parts.Thermometer},
		{"the scale", "0.1 Brix, 19 times of 20: the half of it", m.Parts.Calibration},
		{"the glass", "its expansion, 20 to 30e-6 per K, from 60 to 209 F", m.Parts.Glass},
		{"the surface", "370e-6 of the density, 19 times of 20 (aguilera-2008)", m.Parts.Surface},
		{"the formula", "0.1 kg/m3, and what flattens above 90 C", m.Parts.Model},
	} {
		sum += float64(p.part * p.part)
		fmt.Fprintf(b, "| %s | %s | %.3f | %.4f |\n", p.name, p.known, float64(p.part), float64(p.part*p.part))
	}
	fmt.Fprintf(b, "| all | | root of the sum: %.3f | %.4f |\n\n", math.Sqrt(sum), sum)
	fmt.Fprintf(b, "Twice the root is %.2f: the cup holds **%.2f Brix plus or minus %.2f**. So it is syrup of 66.0 more than 19 times of 20, and of 66.9 it is likelier a little\nthin than not. The eye is the\n"+
		"largest part by far: a stem with marks of 0.2 Brix would do more than any thermometer.\n\nThe same in Go:\n\n", 2*math.Sqrt(sum), float64(m.Brix), float64(m.Uncertainty))
	return nil
}

// probeBudget shows the budget of a stop by thermometer beside it.
func probeBudget(b *strings.Builder) error {
	stop := finish.ThermometerStop{
		Target: 66.9, Pressure: 1 * units.Atmosphere,
		ProbeBy: 0.3 * units.FahrenheitDegree, DepthBy: units.Inch / 4, BarometerBy: 0.05 * units.InchMercury,
		InvertedBy: 0.5 * units.Percent,
	}
	p, err := stop.Parts()
	if err != nil {
		return err
	}
	b.WriteString("## Beside it: a thermometer\n\nWater was boiled this morning with the same probe at the same depth.\n\n" +
		"| part | what is known | Brix, two times of three |\n|---|---|--:|\n")
	for _, row := range []struct {
		name, known string
		part        units.Brix
	}{
		{"the probe", "0.3 F between its two readings", p.Probe},
		{"depth", "a quarter inch more or less syrup over it", p.Depth},
		{"barometer", "0.05 inHg since the morning", p.Barometer},
		{"inverted sugar", "half a percent of it", p.Inverted},
		{"the formula", "0.1 K of the rise, until your own stops say better", p.Formula},
		{"all", "root of the sum of squares", p.Total},
	} {
		fmt.Fprintf(b, "| %s | %s | %.2f |\n", row.name, row.known, float64(row.part))
	}
	fmt.Fprintf(b, "\nDoubled, plus or minus %.1f Brix: the thermometer brings you near, the cup decides. Stops of your own rig, written down, take the place of the formula's part.\n\n", 2*float64(p.Total))
	return nil
}

// tankBudget goes from the tank to gallons of syrup.
func tankBudget(b *strings.Builder) error {
	const gallons, volumeBy = 88.0, 3.0 // percent
	ratio, err := yield.Ratio(1.95, 66.9)
	if err != nil {
		return err
	}
	const by = 0.15
	less, err := yield.Ratio(1.95-by, 66.9)
	if err != nil {
		return err
	}
	more, err := yield.Ratio(1.95+by, 66.9)
	if err != nil {
		return err
	}
	percent := 100 * (gallons/more - gallons/less) / 2 / (gallons / ratio)
	all := math.Hypot(percent, volumeBy)
	fmt.Fprintf(b, "## And before the fire: how much syrup?\n\n88 gallons of sap read 1.95 Brix, good to %.2f (two times of three): a thin liquid and a coarse stem. The dipstick is good to %.0f percent. One of syrup takes %.1f of sap,\n"+
		"and so there are %.2f gallons in it. The reading alone makes that uncertain by %.1f percent, with the dipstick by %.1f: %.2f gallons plus or minus %.2f, 19 times of 20.\n"+
		"A loss of three percent at the end of such a day is no loss that anyone has seen. What helps is what reads thin\nsap finer: a sap stem of narrow marks, or a refractometer that was checked in water.\n",
		by, volumeBy, ratio, gallons/ratio, percent, all, gallons/ratio, 2*all/100*gallons/ratio)
	return nil
}
