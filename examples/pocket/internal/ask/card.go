package ask

import (
	"fmt"
	"math"
	"strings"

	"example.org/sapreckoner/boil"
	"example.org/sapreckoner/density"
	"example.org/sapreckoner/units"
	"example.org/sapreckoner/yield"
)

var cardScreen = Screen{
	Key: "card", Title: "Numbers of this place", Lead: "The wall card's numbers: boiling points by the barometer, cups, sap, filling.",
	Questions: []Question{
		{Key: "card", Title: "Boiling", Inputs: append(placeInputs(), setting("target", "target", "66.9 Brix")), answer: cardBoiling},
		{Key: "cups", Title: "Hydrometers", Inputs: []Input{
			setting("syrup hydrometer", "graduated", "60 F"), setting("sap hydrometer", "sapgraduated", "38 F"),
		}, answer: cardCups},
		{Key: "amounts", Title: "Amounts", answer: cardAmounts},
	},
}

// steps are the rows of a table in the person's units, as the wall card has them.
func (f *Form) steps(fahrenheit, celsius string) (all []units.Temperature) {
	list, unit := fahrenheit, " F"
	if f.metric() {
		list, unit = celsius, " C"
	}
	for _, w := range strings.Fields(list) {
		t, err := units.ParseTemperature(w + unit)
		if err == nil {
			all = append(all, t)
		}
	}
	return all
}

// cardBoiling tells the boiling points five steps of the barometer to both sides.
func cardBoiling(f *Form) {
	p, ok := f.place()
	target := f.brix("target")
	if !ok || f.failed {
		return
	}
	step, decimals, unit := 0.2*units.InchMercury, 1, units.InchMercury
	if f.metric() {
		step, decimals, unit = 5*units.Hectopascal, 0, units.Hectopascal
	}
	t := Table{Key: "boiling", Title: "By the barometer at the pan", Head: []string{"Barometer", "Water", "Syrup"}}
	middle := math.Round(float64(p.pressure / step))
	for i := -5; i <= 5; i++ {
		at := units.Pressure(middle+float64(i)) * step
		water, err := boil.Water(at)
		if f.blame(err, p.by) {
			return
		}
		syrup, err := boil.SyrupPoint(target, at)
		if f.blame(err, p.by, "target", "target") {
			return
		}
		t.Rows = append(t.Rows, []string{at.Text(unit, decimals), f.temp(water), f.temp(syrup)})
	}
	syrup, err := boil.SyrupPoint(target, p.pressure)
	if f.blame(err, p.by, "target", "target") {
		return
	}
	f.row("water", "Water boils here at", f.temp(p.water))
	f.row("syrup", "Syrup at", f.below(syrup))
	f.answer.Tables = append(f.answer.Tables, t)
	f.caution("Station pressure, not a weather map's. Finish by the hydrometer.")
}

// cardCups tells what the hydrometers read.
func cardCups(f *Form) {
	graduated, sapGraduated, target := f.temperature("graduated"), f.temperature("sapgraduated"), f.brix("target")
	if f.failed {
		return
	}
	cups := Table{Key: "cups", Title: "Hydrometer in finished syrup", Head: []string{"Cup", "Brix", "Baume"}}
	h := density.Hydrometer{GraduatedAt: graduated}
	for _, at := range f.steps("210 205 200 195 190 180 170 160 140 120 100 80 60", "98 95 92 90 85 80 70 60 50 40 30 20") {
		b, err := h.Reading(target, at)
		if f.blame(err, "graduated", "target", "target") {
			return
		}
		baume, err := h.Baume(target, at)
		if f.blame(err, "graduated") {
			return
		}
		cups.Rows = append(cups.Rows, []string{at.TextIn(f.System, 0), fmt.Sprintf("%.1f", float64(b)), fmt.Sprintf("%.1f", float64(baume))})
	}
	sap := Table{Key: "sap", Title: "Sap hydrometer near 2 Brix: add", Head: []string{"Sap", "Brix"}}
	h = density.Hydrometer{GraduatedAt: sapGraduated}
	for _, at := range f.steps("32 40 45 50 55 60 70", "0 4 8 12 16 20") {
		b, err := h.Brix(2, at)
		if f.blame(err, "sapgraduated") {
			return
		}
		sap.Rows = append(sap.Rows, []string{at.TextIn(f.System, 0), signed(float64(b - 2))})
	}
	f.answer.Tables = append(f.answer.Tables, cups, sap)
}

// cardAmounts tells sap to syrup, and how much more to fill hot.
func cardAmounts(f *Form) {
	target := f.brix("target")
	if f.failed {
		return
	}
	ratio := Table{Key: "ratio", Title: "Sap to one of syrup", Head: []string{"Sap Brix", "Exact", "Rule of 86"}}
	for _, sap := range []units.Brix{1, 1.5, 1.8, 2, 2.2, 2.5, 3, 4, 6, 10} {
		exact, err := yield.Ratio(sap, target)
		if f.blame(err, "target") {
			return
		}
		rule, err := yield.RuleOf86(sap)
		if f.blame(err, "target") {
			return
		}
		ratio.Rows = append(ratio.Rows, []string{fmt.Sprintf("%.1f", float64(sap)), fmt.Sprintf("%.1f", exact), fmt.Sprintf("%.1f", rule)})
	}
	per, name := units.USQuart, "a US quart"
	if f.metric() {
		per, name = units.Liter, "a liter"
	}
	fill := Table{Key: "fill", Title: "Hot filling: add to " + name, Head: []string{"Syrup", "More"}}
	for _, at := range f.steps("180 183 185 187 190", "83 84 85 86 87") {
		hot, err := density.HotVolume(per, target, at)
		if f.blame(err, "target") {
			return
		}
		more := (hot - per).Text(units.USFluidOunce, 2)
		if f.metric() {
			more = (hot - per).Text(units.Milliliter, 0)
		}
		fill.Rows = append(fill.Rows, []string{at.TextIn(f.System, 0), more})
	}
	f.answer.Tables = append(f.answer.Tables, ratio, fill)
	f.caution(pours + " " + scalds)
}

// signed is a correction with its sign, and nothing without one.
func signed(x float64) string {
	if s := fmt.Sprintf("%+.2f", x); s != "-0.00" && s != "+0.00" {
		return s
	}
	return "0.00"
}
