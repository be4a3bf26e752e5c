package sapreckoner_test

import (
	"fmt"
	"os"
	"strings"
	"testing"

	"example.org/sapreckoner/boil"
	"example.org/sapreckoner/boil/finish"
	"example.org/sapreckoner/boil/fuel"
	"example.org/sapreckoner/density"
	"example.org/sapreckoner/sugar"
	"example.org/sapreckoner/tapping/season"
	"example.org/sapreckoner/units"
	"example.org/sapreckoner/yield"
)

const rulesFile = "docs/rules.md"

const rulesHead = `# Rules of thumb, and what they miss by

What comes of following a rule, less what was meant or is so, in a season that should make 40 US gal of syrup of
66.0 Brix. Syrup off the fire too soon is thinner than meant and more of it, and must not be sold under the limit of the
law. Where a rule only promises, a plus is syrup that will not come. The price, 50 a gallon, is invented: put in your own.

Places are heights in the standard atmosphere. The weather of a day moves a fixed point of the scale by another Brix or
so; a rise over water boiled the same day does not feel it. Sap is at 40 F. A dash: the rule does not touch the strength,
or place and sap do not matter to it. The functions: ` + "`finish.FixedRise`, `yield.Rule.Miss`, `fuel.FixedHeat`,\n`density.Mark.StraightLine`, `sugar.VolumeBalance`, `season.FivePercentAnInch`" + `.

| rule | elevation, ft | sap, Brix | Brix | syrup, US gal | money |
|---|---|---|---|---|---|
`

// The table is what the functions answer; what they answer is held to hand
// calculations beside each of them.
func TestRulesTable(t *testing.T) {
	text := rulesHead + strings.Join(ruleRows(t), "")
	if *update {
		if err := os.WriteFile(rulesFile, []byte(text), 0o644); err != nil {
			t.Fatal(err)
		}
		return
	}
	kept, err := os.ReadFile(rulesFile)
	if err != nil || string(kept) != text {
		t.Errorf("%s is stale: go test -run RulesTable -update . (%v)", rulesFile, err)
	}
}

func ruleRows(t *testing.T) (rows []string) {
	const made, price, meant = 40 * units.USGallon, 50, 66.0
	feet, saps := []float64{0, 1000, 3000, 6000}, []units.Brix{1, 2, 3}
	add := func(rule, place, sap string, strength bool, m units.Miss, err error) {
		t.Helper()
		if err != nil {
			t.Fatal(err)
		}
		brix := "-"
		if strength {
			brix = fmt.Sprintf("%+.2f", float64(m.Brix))
		}
		rows = append(rows, fmt.Sprintf("| %s | %s | %s | %s | %+.2f | %+.0f |\n", rule, place, sap, brix, m.Syrup.USGallons(), m.Worth(price, units.USGallon)))
	}
	at := func(f float64) units.Pressure {
		p, err := boil.PressureAt(units.Feet(f))
		if err != nil {
			t.Fatal(err)
		}
		return p
	}
	for _, stop := range []struct {
		name string
		rise func(units.Pressure) units.TempDiff
	}{
		{"7 F over boiling water", func(units.Pressure) units.TempDiff { return units.FahrenheitDegrees(7) }},
		{"219 F wherever it is", func(p units.Pressure) units.TempDiff {
			water, err := boil.Water(p)
			if err != nil {
				t.Fatal(err)
			}
			return units.Fahrenheit(219).Sub(water)
		}},
	} {
		for _, f := range feet {
			rise := stop.rise(at(f))
			if rise.CelsiusDegrees() > 10 { // it would be candy or scorched: no figure
				rows = append(rows, fmt.Sprintf("| %s | %.0f | - | candy | - | - |\n", stop.name, f))
				continue
			}
			m, err := finish.FixedRise(rise, meant, at(f), made)
			add(stop.name, fmt.Sprintf("%.0f", f), "-", true, m, err)
		}
	}
	for _, sap := range saps {
		ratio, err := yield.Ratio(sap, meant)
		if err != nil {
			t.Fatal(err)
		}
		m, err := yield.Jones1946.Miss(sap, made*units.Volume(ratio))
		add("rule of 86", "-", fmt.Sprintf("%.0f", float64(sap)), true, m, err)
	}
	for _, f := range feet {
		for _, sap := range saps {
			lot, err := sugar.NewLot(1000*units.USGallon, sap, units.Fahrenheit(40))
			if err != nil {
				t.Fatal(err)
			}
			demand, err := boil.Heat(lot, meant, at(f))
			if err != nil {
				t.Fatal(err)
			}
			heat, err := demand.Per(made, units.Celsius(20))
			if err != nil {
				t.Fatal(err)
			}
			m, err := fuel.FixedHeat(heat, demand)
			add("400,000 Btu a gallon", fmt.Sprintf("%.0f", f), fmt.Sprintf("%.0f", float64(sap)), false, m, err)
		}
	}
	stem := density.Mark{For: meant, At: units.Fahrenheit(211)}
	for _, f := range []float64{80, 130, 180, 200} {
		m, err := stem.StraightLine(units.Fahrenheit(60), units.Fahrenheit(f), made)
		add(fmt.Sprintf("straight line from 60 F to 211 F on the stem, cup at %.0f F", f), "-", "-", true, m, err)
	}
	for _, sap := range saps {
		for _, to := range []units.Brix{8, 16} {
			ratio, err := yield.Ratio(sap, meant)
			if err != nil {
				t.Fatal(err)
			}
			m, err := sugar.VolumeBalance(made*units.Volume(ratio), sap, to, meant)
			add(fmt.Sprintf("membrane by volume, to %.0f Brix", float64(to)), "-", fmt.Sprintf("%.0f", float64(sap)), true, m, err)
		}
	}
	for _, inches := range []float64{5, 10, 20} {
		gain, err := season.VacuumGain(units.InchesMercury(inches))
		if err != nil {
			t.Fatal(err)
		}
		ratio, err := yield.Ratio(2, meant)
		if err != nil {
			t.Fatal(err)
		}
		// Forty gallons come with the vacuum, as the rule would have it.
		gravity := made * units.Volume(ratio/(1+gain.Low.Fraction()))
		m, err := season.FivePercentAnInch(units.InchesMercury(inches), gravity, ratio)
		add(fmt.Sprintf("5 percent an inch, %.0f inHg, at most", inches), "-", "-", false, m, err)
	}
	return rows
}
